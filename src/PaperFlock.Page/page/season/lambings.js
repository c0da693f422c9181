// Who lambs when, as it went: the day and the time, lambs alive and dead, help, and each lamb for the flock book. A row opens when she has lambed.
import { el, put } from '#page/dom.js';
import { listAt, textAt } from '#page/values.js';
import { dayField } from '#page/day-field.js';
import { countKeys, keys } from '#page/season/keys.js';
import { choices } from '#page/season/words.js';

/** @typedef {import('#page/season/rows.js').Row} Row */
/** @typedef {import('#page/season/rows.js').Part} Part */

/** More are looked for nowhere on paper. */
const mostAlive = 4;
const mostDead = 3;

/** @param {Map<number, string>} likely when each was, or is, to lamb @returns {(row: Row) => Part} */
export function lambingsRow(likely) {
  return row => {
    const known = el('span', { class: 'known' });
    const inside = el('div', { class: 'lambing' });
    const details = el('details', {}, el('summary', {}, known), inside);
    /** @type {Part['show'][]} */
    let shows = [];
    // Most rows stay closed: three hundred of them open at once would be slow.
    details.addEventListener('toggle', () => {
      if (shows.length > 0) return;
      const parts = [dayAndTime(row), counts(row), lambs(row)];
      put(inside, ...parts.flatMap(part => part.content));
      shows = parts.map(part => part.show);
      shows.forEach(show => show(last.her, last.days));
    });
    /** @type {{ her: import('#page/engine.js').Value, days: Record<string, string> }} */
    let last = { her: null, days: {} };
    return {
      content: [details],
      keys: ['lambed', 'lambed-time', 'lambs-alive', 'lambs-dead', 'lambing-help', 'lambs'],
      focus: () => details.querySelector('summary')?.focus(),
      show(her, days) {
        last = { her, days };
        put(known, said(her, days) || `due ${likely.get(row.ewe) ?? ''}`);
        shows.forEach(show => show(her, days));
      },
    };
  };
}

/** In one line, what is written down of her lambing. @param {import('#page/engine.js').Value} her @param {Record<string, string>} days */
function said(her, days) {
  const [day, time, alive, dead] = ['lambed', 'lambed-time', 'lambs-alive', 'lambs-dead'].map(key => textAt(her, [key]));
  return day === '' ? '' : [`lambed ${days[day] ?? day}${time ? ` at ${time}` : ''}`, alive && `${alive} alive`, dead && `${dead} dead`].filter(part => part !== '').join(', ');
}

/** @param {Row} row @returns {Pick<Part, 'content' | 'show'>} */
function dayAndTime(row) {
  const day = dayField(row.app.state, { id: `${row.id}-lambed`, label: 'The day she lambed', quick: true }, (typed, isDone) => isDone && row.edit({ path: ['lambed'], set: typed }));
  const time = el('input', { id: `${row.id}-time`, class: 'short', placeholder: '03:20', autocomplete: 'off', onchange: () => row.edit({ path: ['lambed-time'], set: time.value.trim() }) });
  return {
    content: [day.element, el('div', {}, el('label', { for: time.id }, 'Time, if you know it'), time)],
    show(her, days) {
      const lambed = textAt(her, ['lambed']);
      day.show(lambed, days[lambed]);
      if (document.activeElement !== time) time.value = textAt(her, ['lambed-time']);
    },
  };
}

/** @param {Row} row @returns {Pick<Part, 'content' | 'show'>} */
function counts(row) {
  const [alive, dead] = [['lambs-alive', 'alive', mostAlive], ['lambs-dead', 'dead', mostDead]].map(([key, what, most]) =>
    keys(`${row.id}-${key}`, countKeys(Number(most), 'not said', n => `${n} ${what}`), value => row.edit({ path: [String(key)], set: value })));
  const help = el('select', { id: `${row.id}-help`, class: 'short', onchange: () => row.edit({ path: ['lambing-help'], set: help.value }) },
    el('option', { value: '' }, 'not said'), ...choices(row.app, 'ewes[]', 'lambing-help').map(word => el('option', {}, word)));
  return {
    content: [
      el('fieldset', {}, el('legend', {}, 'Born alive'), alive.element),
      el('fieldset', {}, el('legend', {}, 'Born dead'), dead.element),
      el('div', {}, el('label', { for: help.id }, 'Help'), help),
    ],
    show(her) {
      alive.show(textAt(her, ['lambs-alive']));
      dead.show(textAt(her, ['lambs-dead']));
      help.value = textAt(her, ['lambing-help']);
    },
  };
}

/** A line for each lamb born alive, and the next one opens when the one before has its sex. @param {Row} row @returns {Pick<Part, 'content' | 'show'>} */
function lambs(row) {
  const lines = el('div');
  let shown = -1;
  return {
    content: [el('details', { class: 'book' }, el('summary', {}, 'Each lamb, for the flock book'), lines)],
    show(her) {
      const written = listAt(her, ['lambs']);
      const many = Math.max(written.length, Math.min(Number(textAt(her, ['lambs-alive'])) || 0, written.length + 1));
      if (many !== shown) {
        shown = many;
        put(lines, ...Array.from({ length: many }, (_, i) => lamb(row, i)), many === 0 ? el('p', {}, 'First say above how many were born alive.') : null);
      }
      for (const [i, line] of [...lines.querySelectorAll('fieldset')].entries()) {
        for (const field of /** @type {NodeListOf<HTMLInputElement>} */ (line.querySelectorAll('[name]'))) {
          const value = textAt(written[i] ?? null, [field.name]);
          if (document.activeElement !== field) field.value = value;
          field.disabled = i >= written.length && field.name !== 'sex';
          field.dataset.written = i < written.length ? 'true' : '';
        }
      }
    },
  };
}

/** @param {Row} row @param {number} i */
function lamb(row, i) {
  const id = `${row.id}-lamb-${i}`;
  const sex = el('select', { id, name: 'sex', class: 'short' }, el('option', { value: '' }, 'not said'), ...choices(row.app, 'ewes[].lambs[]', 'sex').map(word => el('option', {}, word)));
  const others = [['tag', 'Tag'], ['weight', 'Weight at birth']].map(([name, label]) => {
    const field = el('input', { id: `${id}-${name}`, name, autocomplete: 'off', placeholder: name === 'weight' ? '4.5 kg' : null });
    field.addEventListener('change', () => row.edit({ path: ['lambs', i, name], set: field.value.trim() }));
    return el('div', {}, el('label', { for: field.id }, label), field);
  });
  sex.addEventListener('change', () => row.edit(
    sex.value === '' ? { path: ['lambs', i], remove: true }
      : sex.dataset.written ? { path: ['lambs', i, 'sex'], set: sex.value }
      : { path: ['lambs'], add: [{ sex: sex.value }] }));
  return el('fieldset', {}, el('legend', {}, `Lamb ${i + 1}`), el('div', {}, el('label', { for: id }, 'Sex'), sex), ...others);
}
