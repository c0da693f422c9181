// Losses: who is gone, and who has lost the lambs she carried. The day goes in with it, and can be said anew.
import { el } from '#page/dom.js';
import { textAt } from '#page/values.js';
import { dayField } from '#page/day-field.js';
import { choices } from '#page/season/words.js';

/** @param {() => string} day it happened, as the file writes it @returns {(row: import('#page/season/rows.js').Row) => import('#page/season/rows.js').Part} */
export function lossesRow(day) {
  return row => {
    const { app } = row;
    let goneOn = '';
    const why = el('select', { 'aria-label': `What became of ${row.called}`, class: 'short' },
      el('option', { value: '' }, 'here'), ...choices(app, 'ewes[].gone', 'why').map(word => el('option', {}, word)));
    why.addEventListener('change', () => row.edit({ path: ['gone'], set: why.value === '' ? '' : { on: goneOn || day(), why: why.value } }));
    const lost = el('input', { type: 'checkbox', id: `${row.id}-lost` });
    lost.addEventListener('change', () => row.edit({ path: ['lost-lambs'], set: lost.checked ? day() : '' }));
    const goneDay = dayField(app.state, { id: `${row.id}-gone-on`, label: 'The day she went' }, (typed, isDone) => isDone && row.edit({ path: ['gone', 'on'], set: typed }));
    const lostDay = dayField(app.state, { id: `${row.id}-lost-on`, label: 'The day she was seen to have lost them' }, (typed, isDone) => isDone && row.edit({ path: ['lost-lambs'], set: typed }));
    return {
      content: [why, el('label', { class: 'tick', for: lost.id }, lost, el('span', {}, 'lost her lambs')), goneDay.element, lostDay.element],
      keys: ['gone', 'lost-lambs'],
      focus: () => why.focus(),
      show(her, days) {
        goneOn = textAt(her, ['gone', 'on']);
        const lostOn = textAt(her, ['lost-lambs']);
        why.value = textAt(her, ['gone', 'why']);
        lost.checked = lostOn !== '';
        goneDay.element.hidden = why.value === '' && goneOn === '';
        lostDay.element.hidden = lostOn === '';
        goneDay.show(goneOn, days[goneOn]);
        lostDay.show(lostOn, days[lostOn]);
      },
    };
  };
}
