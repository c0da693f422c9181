// Where the holding is, in one field: the engine works out the rest, and it is said back.
import { el, put } from '#page/dom.js';
import { textAt } from '#page/values.js';
import { idOf, wrongs } from '#page/views/flock/mistakes.js';

/** @typedef {import('#page/views.js').App} App */
/** @typedef {import('#page/views/flock/fields.js').Context} Context */
/** @typedef {import('#page/engine.js').PlaceRead} PlaceRead */

export const whereHelp = 'A map reference such as NY 480 046, or the two numbers a map on a telephone shows: 54.46, -2.74. The rounds go by the sun there, and the call sheet has it for an ambulance or a vet who does not know the way.';

/** A field that reads a place. @param {App} app @param {string} id @param {(read: PlaceRead, typed: string) => void} onRead */
export function whereField(app, id, onRead) {
  const words = el('output', { for: id, class: 'words', id: `${id}-words` });
  const wrong = el('div', { id: `${id}-wrong` });
  const input = el('input', { id, autocomplete: 'off', 'aria-describedby': `${id}-wrong ${id}-hint ${id}-words` });
  input.addEventListener('input', async () => {
    const typed = input.value.trim();
    const read = typed === '' ? {} : await app.state.engine.readPlace(typed, app.state.today);
    if (typed !== input.value.trim()) return;
    put(words, read.words);
    onRead(read, typed);
  });
  return { element: el('div', { class: 'field' }, el('label', { for: id }, 'Where is it?'), el('p', { class: 'hint', id: `${id}-hint` }, whereHelp), wrong, input, words), input, words, wrong };
}

/** @param {Context} context @returns {import('#page/views/flock/fields.js').Part} */
export function placeField(context) {
  const { app } = context;
  const { state } = app;
  let whyNot = '';
  /** The place whose words stand there. */
  let said = '';
  const where = whereField(app, 'f-where', (read, typed) => {
    whyNot = read.wrong ?? '';
    said = '';
    show();
    if (typed !== '' && read.latitude && read.longitude && read.zone) {
      state.type(['holding', 'location', 'latitude'], read.latitude, [
        { path: ['holding', 'location', 'longitude'], set: read.longitude },
        { path: ['holding', 'time-zone'], set: read.zone },
        { path: ['holding', 'grid-reference'], set: read.grid ?? '' },
      ]);
    }
  });

  function show() {
    const found = [['holding'], ['holding', 'location']].flatMap(path => context.mistakes.at(path));
    put(where.wrong, whyNot === '' ? null : el('p', { class: 'wrong' }, el('b', {}, `${whyNot.charAt(0).toUpperCase()}${whyNot.slice(1)}.`)), ...wrongs(found));
    where.input.setAttribute('aria-invalid', String(whyNot !== '' || found.some(each => each.severity === 'error')));
  }

  return {
    element: el('div', { id: idOf(['holding', 'location']), tabindex: -1 }, where.element),
    update() {
      show();
      if (document.activeElement === where.input || whyNot !== '') return;
      const values = state.reading?.values;
      const numbers = ['latitude', 'longitude'].map(key => textAt(values, ['holding', 'location', key])).filter(text => text !== '').join(', ');
      where.input.value = numbers;
      if (numbers === said) return;
      said = numbers;
      if (where.input.value === '') put(where.words);
      else void state.engine.readPlace(numbers, state.today).then(read => put(where.words, read.words));
    },
  };
}
