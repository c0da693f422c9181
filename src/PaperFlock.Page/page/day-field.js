// A day to be typed as people write it, or picked from a calendar, and said back with its weekday.
import { el, put } from '#page/dom.js';

/** @typedef {import('#page/engine.js').Day} Day */

/**
 * @param {import('#page/state.js').State} state
 * @param {{ id: string, label?: string, quick?: boolean }} how id: of the input; quick: with buttons for today and yesterday
 * @param {(day: string, isDone: boolean) => void} tell told at every key what is meant, year first, or what was typed where that is no day; isDone: whoever typed has left the field, or picked a day
 */
export function dayField(state, { id, label, quick }, tell) {
  const words = el('output', { for: id, class: 'words', id: `${id}-words` });
  const input = el('input', { id, autocomplete: 'off', class: 'day', 'aria-describedby': `${id}-words` });
  const picker = el('input', { type: 'date', class: 'picker', tabindex: -1, 'aria-hidden': 'true', min: '1950-01-01', max: '2100-12-31' });
  const pick = el('button', { type: 'button', class: 'pick', 'aria-label': label ? `Pick a day from a calendar: ${label}` : 'Pick a day from a calendar', onclick: () => picker.showPicker() }, 'Calendar');
  let reading = 0;

  /** @param {boolean} isDone */
  async function typed(isDone) {
    const turn = ++reading;
    const text = input.value.trim();
    if (!isDone) tell(text, false);
    const { day, either } = text === '' ? {} : await state.engine.readDay(text, state.today);
    // More has been typed since.
    if (turn !== reading) return;
    if (day) return choose(day, isDone);
    put(words, ...(either ? ['Which? ', ...either.map(each => el('button', { type: 'button', onclick: () => { input.focus(); choose(each, true); } }, each.words))] : []));
    if (isDone && !either) tell(text, true);
  }

  /** @param {Day} day @param {boolean} isDone */
  function choose(day, isDone) {
    if (isDone) input.value = day.words;
    picker.value = day.iso;
    put(words, isDone ? null : day.words);
    tell(day.iso, isDone);
  }

  /** @param {string} text */
  function take(text) {
    input.value = text;
    void typed(true);
  }

  input.addEventListener('input', () => typed(false));
  input.addEventListener('change', () => typed(true));
  picker.addEventListener('change', () => take(picker.value));

  return {
    input,
    element: el('div', { class: 'days' },
      label ? el('label', { for: id }, label) : null,
      input,
      el('span', { class: 'picking' }, picker, pick),
      quick ? el('span', { class: 'quick' }, ...['Today', 'Yesterday'].map(text => el('button', { type: 'button', 'aria-label': `${text}: ${label}`, onclick: () => take(text) }, text))) : null,
      words),
    /** Shows a day of the file, unless somebody is typing there. @param {string} day @param {string | undefined} said the day in words */
    show(day, said) {
      if (document.activeElement === input) return;
      input.value = said ?? day;
      picker.value = said ? day : '';
      put(words);
    },
  };
}
