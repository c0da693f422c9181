// Tup and raddle: which ewes had a fresh mark on the day somebody looked.
import { el, put } from '#page/dom.js';
import { listAt } from '#page/values.js';

/** @param {() => string} day the day somebody looked, as the file writes it @returns {(row: import('#page/season/rows.js').Row) => import('#page/season/rows.js').Part} */
export function marksRow(day) {
  return row => {
    /** @type {string[]} */
    let marks = [];
    const box = el('input', { type: 'checkbox', id: `${row.id}-mark` });
    const seen = el('span', { class: 'known' });
    box.addEventListener('change', () => row.edit({ path: ['marks'], set: box.checked ? [...marks, day()].sort() : marks.filter(each => each !== day()) }));
    return {
      content: [el('label', { class: 'tick', for: box.id }, box, el('span', {}, 'fresh mark', el('span', { class: 'unseen' }, ` on ${row.called}`))), seen],
      keys: ['marks'],
      focus: () => box.focus(),
      show(her, days) {
        marks = listAt(her, ['marks']).filter(each => typeof each === 'string');
        box.checked = marks.includes(day());
        put(seen, marks.length > 0 ? `marked ${marks.map(each => days[each] ?? each).join(', ')}` : null);
      },
    };
  };
}
