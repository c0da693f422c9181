// Print: the whole pack, the sitter's days, what has changed, some sheets, a test page.
import { el, put, heading } from '#page/dom.js';
import { todayField } from '#page/today.js';
import { Maker, wholePackButton } from '#page/make.js';
import { Trouble } from '#page/engine.js';
import { textAt } from '#page/values.js';

/** @typedef {import('#page/views.js').App} App */
/** @typedef {import('#page/engine.js').PackOptions} PackOptions */

/** @type {import('#page/views.js').View} */
export const print = {
  id: 'print',
  title: 'Print',
  inParts: true,
  needsFlock: true,
  show(root, app) {
    const { state } = app;
    const maker = new Maker(state);
    const away = el('div');
    put(
      root,
      heading('Print', state.reading?.holding),
      todayField(state),
      maker.element,
      el('section', { class: 'note' },
        el('h2', {}, 'The whole pack'),
        el('p', {}, 'For the wall, the bins, the rounds, the phone and the shed, and a card for every ewe.'),
        el('p', { class: 'go' },
          wholePackButton(state, maker),
          el('button', { type: 'button', onclick: () => maker.make(progress => state.engine.leaf(true, isLetter(app), progress)) }, 'Make a test page'),
          el('button', { type: 'button', onclick: () => maker.make(progress => state.engine.leaf(false, isLetter(app), progress)) }, 'Make the leaf “How to use this pack”'))),
      el('h2', {}, 'Or only a part'),
      el('div', { class: 'boxes' }, sitter(app, maker, away), changed(app, maker), some(app, maker)));
    const update = async () => {
      const plan = state.flock && state.reading?.ok ? await state.engine.plan(state.flock).catch(() => null) : null;
      put(away, ...(plan?.away ?? []).filter(a => !a.over).map(a => el('p', { class: 'go' },
        el('button', { type: 'button', onclick: () => make(app, maker, { from: a.from, to: a.to }) }, `Make the pack for ${a.sitter ?? 'the sitter'}, ${a.words}`))));
    };
    void update();
    return update;
  },
};

/** @param {App} app @param {Maker} maker @param {PackOptions} options @param {{ name: string, bytes: Uint8Array } | null} [earlier] */
function make(app, maker, options, earlier = null) {
  return maker.make(async progress => app.state.engine.pack(await app.state.current(), options, earlier, progress));
}

/** Whether the printer holds US Letter. @param {App} app */
function isLetter(app) {
  return textAt(app.state.reading?.values, ['print', 'paper']).toLowerCase() === 'letter';
}

/** @param {App} app @param {Maker} maker @param {Element} away */
function sitter(app, maker, away) {
  const from = el('input', { type: 'date', id: 'from' });
  const to = el('input', { type: 'date', id: 'to' });
  return el('section', {},
    el('h3', {}, 'The sitter’s days'),
    el('p', {}, 'Only what somebody needs who has the flock for some days.'),
    away,
    day(app, 'First day', from),
    day(app, 'Last day', to),
    el('button', { type: 'button', onclick: () => make(app, maker, { from: from.value || null, to: to.value || null }) }, 'Make the sitter’s pack'));
}

/** A date with its weekday beside it. @param {App} app @param {string} label @param {HTMLInputElement} input */
function day(app, label, input) {
  const words = el('output', { for: input.id, class: 'words' });
  input.addEventListener('input', async () => put(words, input.value === '' ? null : (await app.state.engine.readDay(input.value, app.state.today)).day?.words));
  return el('div', { class: 'field' }, el('label', { for: input.id }, label), input, words);
}

/** @param {App} app @param {Maker} maker */
function changed(app, maker) {
  const input = el('input', { type: 'file', id: 'earlier', accept: '.pdf' });
  return el('section', {},
    el('h3', {}, 'Only what changed'),
    el('div', { class: 'field' },
      el('label', { for: 'earlier' }, 'The PDF of the issue in your binder'),
      el('p', { class: 'hint', id: 'earlier-hint' }, 'The number of the issue stands at the foot of every sheet. The PDF knows what is in it.'),
      input),
    el('button', {
      type: 'button',
      onclick: async () => {
        const chosen = input.files?.[0];
        const bytes = chosen ? new Uint8Array(await chosen.slice(0, app.description.mostPdfBytes + 1).arrayBuffer()) : null;
        await make(app, maker, { changed: true }, chosen && bytes ? { name: chosen.name, bytes } : null);
      },
    }, 'Make the changed sheets'));
}

/** @param {App} app @param {Maker} maker */
function some(app, maker) {
  const boxes = app.description.sheets.map(sheet => ({ sheet, box: el('input', { type: 'checkbox', value: sheet.kind }) }));
  return el('section', {},
    el('h3', {}, 'Some sheets'),
    el('details', {}, el('summary', {}, 'Which?'), el('fieldset', {}, el('legend', { class: 'unseen' }, 'Sheets'),
      ...boxes.map(({ sheet, box }) => el('div', { class: 'ticks' }, el('label', {}, box, el('span', {}, el('b', {}, sheet.kind), `: ${sheet.purpose}`)))))),
    el('button', {
      type: 'button',
      onclick: () => maker.make(async progress => {
        const sheets = boxes.filter(({ box }) => box.checked).map(({ box }) => box.value).join(' ');
        if (sheets === '') throw new Trouble('tick the sheets you want first, under “Which?”');
        return app.state.engine.pack(await app.state.current(), { sheets }, null, progress);
      }),
    }, 'Make these sheets'));
}
