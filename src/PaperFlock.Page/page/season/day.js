// A day typed as people write it, and said back with its weekday.
import { el, put } from '#page/dom.js';

/**
 * @param {import('#page/state.js').State} state
 * @param {{ id: string, label: string, quick?: boolean }} how quick: with buttons for today and yesterday
 * @param {(day: string) => void} write called with the day as the file writes it; with what was typed where it is no day, for `check` to speak of; empty where nothing is
 */
export function dayField(state, { id, label, quick }, write) {
  const input = el('input', { id, autocomplete: 'off', 'aria-describedby': `${id}-words` });
  const words = el('span', { id: `${id}-words`, class: 'words', role: 'status' });
  let last = 0;

  /** What is typed means. @returns {Promise<import('#page/engine.js').DayRead>} */
  const read = async () => input.value.trim() === '' ? {} : state.engine.readDay(input.value, state.today);

  input.addEventListener('input', async () => {
    const turn = ++last;
    const { day, either } = await read();
    if (turn === last) put(words, day?.words ?? (either ? either.map(each => each.words).join(' or ') : null));
  });
  input.addEventListener('change', async () => {
    const turn = ++last;
    const { day, either } = await read();
    if (turn !== last) return;
    if (!either) return done(day?.iso ?? input.value.trim(), day?.words);
    put(words, 'Which? ', ...either.map(each => el('button', { type: 'button', onclick: () => done(each.iso, each.words) }, each.words)));
  });

  /** @param {string} day @param {string} [said] */
  function done(day, said) {
    put(words);
    if (said) input.value = said;
    write(day);
  }

  /** @param {string} typed */
  const take = async typed => {
    const { day } = await state.engine.readDay(typed, state.today);
    if (day) done(day.iso, day.words);
  };
  return {
    element: el('div', { class: 'day' },
      el('label', { for: id }, label),
      input,
      quick ? el('span', { class: 'quick' }, ...['Today', 'Yesterday'].map(typed => el('button', { type: 'button', 'aria-label': `${typed}: ${label}`, onclick: () => take(typed) }, typed))) : null,
      words),
    /** Shows what the file says, unless somebody is typing there. @param {string} day @param {Record<string, string>} days in words */
    show(day, days) { if (document.activeElement !== input) input.value = days[day] ?? day; },
  };
}
