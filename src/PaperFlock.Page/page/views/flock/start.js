// The day everything is counted from: the day the tup goes in, or the day lambs are wanted. One of the two is known.
import { el, put } from '#page/dom.js';
import { dayField } from '#page/day-field.js';
import { textAt } from '#page/values.js';
import { labelOf } from '#page/views/flock/labels.js';
import { wrongs } from '#page/views/flock/mistakes.js';

/** @typedef {import('#page/views/flock/fields.js').Context} Context */

const ways = ['tup-in', 'lambing-from'];

/**
 * The question which day is known, and the day.
 * @param {import('#page/state.js').State} state @param {string} id @param {(way: string, day: string) => void} onTyped
 */
export function startQuestion(state, id, onTyped) {
  const radios = ways.map(way => el('input', { type: 'radio', name: id, value: way, id: `${id}-${way}` }));
  const way = () => radios.find(radio => radio.checked)?.value ?? ways[0];
  const label = el('label', { for: id });
  const wrong = el('div', { id: `${id}-wrong` });
  const hint = el('p', { class: 'hint', id: `${id}-hint` }, 'Everything is counted from this day. Write it as you like: 10 Aug 2026, or 10/8/26.');
  const day = dayField(state, { id }, typed => onTyped(way(), typed));
  day.input.setAttribute('aria-describedby', `${id}-wrong ${id}-hint ${id}-words`);
  /** @param {string} chosen */
  function choose(chosen) {
    for (const radio of radios) radio.checked = radio.value === chosen;
    label.textContent = labelOf('season', chosen);
  }
  for (const radio of radios) radio.addEventListener('change', () => { choose(radio.value); day.show('', undefined); day.input.focus(); });
  choose(ways[0]);
  const element = el('div', {},
    el('fieldset', { class: 'field' }, el('legend', {}, 'Which day do you know?'), el('p', { class: 'hint' }, 'The other is worked out.'), el('div', { class: 'ticks' }, ...radios.map(radio => el('label', {}, radio, labelOf('season', radio.value))))),
    el('div', { class: 'field' }, label, hint, wrong, day.element));
  return { element, day, wrong, choose, way };
}

/** @param {Context} context @returns {import('#page/views/flock/fields.js').Part} */
export function startField(context) {
  const { state } = context.app;
  const id = 'f-season-tup-in';
  const question = startQuestion(state, id, (way, day) => state.type(['season', way], day, ways.filter(other => other !== way).map(other => ({ path: ['season', other], set: '' }))));
  let chosen = '';
  return {
    element: question.element,
    update() {
      const values = state.reading?.values;
      const found = [['season'], ...ways.map(way => ['season', way])].flatMap(path => context.mistakes.at(path));
      put(question.wrong, ...wrongs(found));
      question.day.input.setAttribute('aria-invalid', String(found.some(each => each.severity === 'error')));
      const said = ways.find(way => textAt(values, ['season', way]) !== '') ?? '';
      const isAsked = document.activeElement === question.day.input || ways.some(way => state.isTyping(['season', way]));
      if (isAsked || said === '' || (said === chosen && said !== question.way())) return;
      chosen = said;
      question.choose(said);
      const day = textAt(values, ['season', said]);
      question.day.show(day, state.reading?.days[day]);
    },
  };
}
