// The date that stands for today: picked or typed, and said back with its weekday.
import { el, put } from '#page/dom.js';

/** @typedef {import('#page/state.js').State} State */

/** @param {State} state @returns {HTMLElement} */
export function todayField(state) {
  const words = el('output', { for: 'today', class: 'words' });
  const input = el('input', { type: 'date', id: 'today', min: '1950-01-01', max: '2100-12-31', 'aria-describedby': 'today-wrong' });
  const wrong = el('span', { id: 'today-wrong' });
  input.value = state.today;
  say(state.today);

  /** @param {string} day */
  async function say(day) {
    const read = await state.engine.readDay(day, state.today).catch(() => null);
    put(words, read?.day?.words);
  }

  input.addEventListener('input', async () => {
    const day = input.value;
    const isDay = day !== '' && input.validity.valid;
    input.setAttribute('aria-invalid', String(!isDay));
    put(wrong, isDay ? null : 'Which day is it today?');
    // Whoever types a year passes through years that are none.
    if (!isDay) return;
    await Promise.all([say(day), day === state.today ? null : state.setToday(day)]);
  });
  return el('div', { class: 'today' }, el('label', { for: 'today' }, 'Today'), input, words, wrong);
}
