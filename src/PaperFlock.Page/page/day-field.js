// A day to be typed as people write it, or picked from a calendar, and said back with its weekday.
import { el, put } from '#page/dom.js';

/** @typedef {import('#page/state.js').State} State */

/**
 * @param {State} state
 * @param {string} id of the input
 * @param {(day: string) => void} onTyped told what is meant, year first, or what was typed where that is no day
 */
export function dayField(state, id, onTyped) {
  const words = el('output', { for: id, class: 'words', id: `${id}-words` });
  const input = el('input', { id, autocomplete: 'off', class: 'day' });
  const picker = el('input', { type: 'date', class: 'picker', tabindex: -1, 'aria-hidden': 'true', min: '1950-01-01', max: '2100-12-31' });
  const pick = el('button', { type: 'button', class: 'pick', 'aria-label': 'Pick a day from a calendar', onclick: () => picker.showPicker() }, 'Calendar');
  let isoDay = '';

  async function typed() {
    const text = input.value.trim();
    isoDay = '';
    onTyped(text);
    const read = text === '' ? {} : await state.engine.readDay(text, state.today);
    // More has been typed since.
    if (text !== input.value.trim()) return;
    if (read.day) choose(read.day);
    else put(words, read.either ? el('span', { class: 'go' }, ...read.either.map(day => el('button', { type: 'button', onclick: () => { input.value = day.iso; choose(day); input.focus(); } }, day.words))) : null);
  }

  /** @param {import('#page/engine.js').Day} day */
  function choose(day) {
    isoDay = day.iso;
    put(words, day.words);
    if (day.iso !== input.value.trim() || picker.value !== day.iso) onTyped(day.iso);
    picker.value = day.iso;
  }

  input.addEventListener('input', typed);
  input.addEventListener('change', () => { if (isoDay !== '') input.value = isoDay; });
  picker.addEventListener('change', () => {
    input.value = picker.value;
    void typed();
  });

  return {
    input,
    element: el('div', { class: 'days' }, input, el('span', { class: 'picking' }, picker, pick), words),
    /** Shows a day of the file. @param {string} day @param {string | undefined} said the day in words */
    show(day, said) {
      input.value = day;
      picker.value = said ? day : '';
      put(words, said);
    },
  };
}
