// Print: the whole pack, the sitter's days, what has changed, some sheets or leaves, a draft, a test page.
import { el, put, heading } from '#page/dom.js';
import { todayField } from '#page/today.js';
import { Maker, wholePackButton } from '#page/make.js';
import { changed } from '#page/print/changed.js';
import { draft, some } from '#page/print/some.js';
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
    const changes = changed(app, maker);
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
      el('div', { class: 'boxes' }, sitter(app, maker, away), changes.element, some(app, maker), draft(app, maker)));
    const update = async () => {
      changes.update();
      const plan = state.flock && state.reading?.ok ? await state.engine.plan(state.flock).catch(() => null) : null;
      put(away, ...(plan?.away ?? []).filter(a => !a.over).map(a => el('p', { class: 'go' },
        el('button', { type: 'button', onclick: () => make(app, maker, { from: a.from, to: a.to }) }, `Make the pack for ${a.sitter ?? 'the sitter'}, ${a.words}`))));
    };
    void update();
    return update;
  },
};

/** @param {App} app @param {Maker} maker @param {PackOptions} options */
function make(app, maker, options) {
  return maker.make(async progress => app.state.engine.pack(await app.state.current(), options, null, progress));
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
    el('p', { class: 'go' }, el('button', { type: 'button', onclick: () => make(app, maker, { from: from.value || null, to: to.value || null }) }, 'Make the sitter’s pack')));
}

/** A date with its weekday beside it. @param {App} app @param {string} label @param {HTMLInputElement} input */
function day(app, label, input) {
  const words = el('output', { for: input.id, class: 'words' });
  input.addEventListener('input', async () => put(words, input.value === '' ? null : (await app.state.engine.readDay(input.value, app.state.today)).day?.words));
  return el('div', { class: 'field' }, el('label', { for: input.id }, label), input, words);
}
