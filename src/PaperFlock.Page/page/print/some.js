// Some sheets, single leaves by the code at their foot, and a draft of all.
import { el } from '#page/dom.js';
import { Trouble } from '#page/engine.js';

/** @typedef {import('#page/views.js').App} App */
/** @typedef {import('#page/make.js').Maker} Maker */

/** @param {App} app @param {Maker} maker */
export function some(app, maker) {
  const boxes = app.description.sheets.map(sheet => ({ sheet, box: el('input', { type: 'checkbox', value: sheet.kind }) }));
  const codes = el('input', { id: 'codes', autocomplete: 'off', 'aria-describedby': 'codes-hint' });
  return el('section', {},
    el('h3', {}, 'One leaf, or some sheets'),
    el('div', { class: 'field' },
      el('label', { for: 'codes' }, 'The code at its foot'),
      el('p', { class: 'hint', id: 'codes-hint' }, 'Such as ', el('span', { class: 'code' }, 'CARD-00101'), '; several with blanks between.'),
      codes),
    el('details', {}, el('summary', {}, 'Or all of a kind'), el('fieldset', {}, el('legend', { class: 'unseen' }, 'Sheets'),
      ...boxes.map(({ sheet, box }) => el('div', { class: 'ticks' }, el('label', {}, box, el('span', {}, el('b', {}, sheet.kind), `, ${sheet.code}: ${sheet.purpose}`)))))),
    el('p', { class: 'go' }, el('button', {
      type: 'button',
      onclick: () => maker.make(async progress => {
        const sheets = [codes.value.trim(), ...boxes.filter(({ box }) => box.checked).map(({ box }) => box.value)].filter(word => word !== '').join(' ');
        if (sheets === '') throw new Trouble('write a code or tick a kind of sheet first');
        return app.state.engine.pack(await app.state.current(), { sheets }, null, progress);
      }),
    }, 'Make these sheets')));
}

/** @param {App} app @param {Maker} maker */
export function draft(app, maker) {
  return el('section', {},
    el('h3', {}, 'A draft'),
    el('p', {}, 'The whole pack with the word draft at every foot: to look through, never to hang up. It is no issue, and no number is used up.'),
    el('p', { class: 'go' }, el('button', { type: 'button', onclick: () => maker.make(async progress => app.state.engine.pack(await app.state.current(), { draft: true }, null, progress)) }, 'Make a draft')));
}
