// The flock, as a form: a step at a time, each field with its help and its mistakes.
import { el, put, heading, count } from '#page/dom.js';
import { sentence } from '#page/found.js';
import { listAt, textAt, at } from '#page/values.js';
import { ewes } from '#page/views/flock/ewes.js';
import { idOf, Mistakes } from '#page/views/flock/mistakes.js';
import { section } from '#page/views/flock/sections.js';
import { steps, stepOf } from '#page/views/flock/steps.js';

/** @typedef {import('#page/views.js').App} App */
/** @typedef {import('#page/engine.js').Found} Found */
/** @typedef {import('#page/views/flock/fields.js').Context} Context */
/** @typedef {import('#page/views/flock/steps.js').Step} Step */

/** @type {import('#page/views.js').View} */
export const flock = {
  id: 'flock',
  title: 'Flock',
  inParts: true,
  needsFlock: true,
  show(root, app, rest) {
    const { state } = app;
    if (state.reading?.values === null) {
      app.go('mend');
      return;
    }
    const number = Math.max(0, steps.findIndex(step => step.id === rest));
    const step = steps[number];
    /** @type {Context} */
    const context = { app, mistakes: new Mistakes([], new Map()) };
    const parts = step.id === 'ewes' ? [ewes(context)] : step.parts.map(part => {
      const inner = section(context, part.path, part.path.join('.'), { first: part.keys, leave: part.leave });
      return { element: el('section', {}, part.head ? el('h3', { class: 'part' }, part.head) : null, part.says ? el('p', {}, part.says) : null, inner.element), update: inner.update };
    });
    const head = el('h2', { tabindex: -1 }, step.head);
    const trouble = el('div', { role: 'status' });
    const list = el('ol', { class: 'steps' });
    const come = el('p', { role: 'status' });
    const [next, before] = [steps[number + 1], steps[number - 1]];
    const form = el('form', { class: 'form', novalidate: true }, ...parts.map(part => part.element), come,
      el('p', { class: 'go' },
        next ? el('a', { class: `button${number < 2 ? ' main' : ''}`, href: `#flock/${next.id}` }, `Go on: ${next.head.toLowerCase()}`) : null,
        number >= 2 ? el('a', { class: 'button main', href: '#plan' }, 'See what it comes to') : null,
        before ? el('a', { class: 'button', href: `#flock/${before.id}` }, 'Back') : null));
    form.addEventListener('submit', event => event.preventDefault());
    put(root, heading('The flock', `step ${number + 1} of ${steps.length}`), el('nav', { 'aria-label': 'Steps' }, list), trouble, head, form);
    if (rest !== '') queueMicrotask(() => head.focus({ preventScroll: true }));

    function update() {
      const { reading, refused } = state;
      if (!reading) return;
      context.mistakes = new Mistakes(reading.found, refused);
      const errors = reading.found.filter(found => found.severity === 'error');
      put(list, ...steps.map((each, i) => el('li', {}, el('a', { href: `#flock/${each.id}`, 'aria-current': each === step ? 'step' : null }, `${i + 1} ${each.title}`, el('small', {}, standing(app, each, errors))))));
      for (const part of parts) part.update();
      const own = [...errors.filter(found => stepOf(found.path) === step.id), ...[...refused.values()].flat()];
      showTrouble(trouble, own);
      void said(reading);
    }

    /** What it comes to so far. @param {import('#page/engine.js').Reading} reading */
    async function said(reading) {
      if (!reading.ok) put(come, null);
      if (!reading.ok || !reading.planned || !state.flock || step.id !== 'tup') return;
      const plan = await state.engine.plan(state.flock).catch(() => null);
      if (reading === state.reading && plan) put(come, el('b', {}, `So far: ${plan.summary}.`));
    }

    update();
    return update;
  },
};

/** How a step stands. @param {App} app @param {Step} step @param {Found[]} errors */
function standing(app, step, errors) {
  const wrong = errors.filter(found => stepOf(found.path) === step.id).length;
  if (wrong > 0) return `${wrong} to put right`;
  const values = app.state.reading?.values;
  if (step.id === 'ewes') return listAt(values, ['ewes']).some((_, i) => textAt(values, ['ewes', i, 'tag']).startsWith(app.description.tagLine)) ? 'tags to come' : count(listAt(values, ['ewes']).length, 'ewe');
  if (step.id === 'place' && at(values, ['holding', 'location']) === null) return 'needed';
  const isSaid = step.id === 'people' ? textAt(values, ['holding', 'keeper']) !== '' : step.parts.some(part => part.path.length > 0 ? at(values, part.path) !== null : part.keys.some(key => at(values, [key]) !== null));
  return isSaid ? '✓ done' : 'can wait';
}

/** All that is wrong in this step, each with the way to its field. @param {HTMLElement} trouble @param {Found[]} found */
function showTrouble(trouble, found) {
  const words = found.map(each => `${each.message}${each.path.join()}`).join('\n');
  // Said once, not after every key.
  if (trouble.dataset.words === words) return;
  trouble.dataset.words = words;
  put(trouble, found.length === 0 ? null : el('section', { class: 'note alarm' },
    el('h2', {}, `${count(found.length, 'thing')} to put right`),
    el('ul', {}, ...found.map(each => el('li', {}, el('a', { href: `#${idOf(each.path)}`, onclick: (/** @type {Event} */ event) => goTo(event, each) }, sentence(each)[0]))))));
}

/** The address says which view is shown, so that the way to a field is walked here. @param {Event} event @param {Found} found */
function goTo(event, found) {
  event.preventDefault();
  for (let length = found.path.length; length > 0; length--) {
    const field = document.getElementById(idOf(found.path.slice(0, length)));
    if (!field) continue;
    (field.closest('.field, tr') ?? field).scrollIntoView({ block: 'center' });
    field.focus({ preventScroll: true });
    return;
  }
}
