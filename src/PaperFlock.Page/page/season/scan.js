// Scan day: lambs counted, early or late.
import { el } from '#page/dom.js';
import { textAt } from '#page/values.js';
import { countKeys, keys } from '#page/season/keys.js';
import { choices } from '#page/season/words.js';

/** The scan sheet has as many. */
const most = 5;

/** @param {import('#page/season/rows.js').Row} row @returns {import('#page/season/rows.js').Part} */
export function scanRow(row) {
  const lambs = keys(`${row.id}-scan`, countKeys(most, 'not scanned', n => `${n} lamb${n === 1 ? '' : 's'}`), value => row.edit({ path: ['scan'], set: value }));
  const stage = el('select', { 'aria-label': `What the scanner said, ${row.called}`, class: 'short', onchange: () => row.edit({ path: ['scan-stage'], set: stage.value }) },
    el('option', { value: '' }, 'stage not said'), ...choices(row.app, 'ewes[]', 'scan-stage').map(word => el('option', {}, word)));
  return {
    content: [lambs.element, stage],
    keys: ['scan', 'scan-stage'],
    goesOn: true,
    focus: lambs.focus,
    press: key => lambs.press(key === 'Delete' || key === '-' ? '' : /^[0-9]$/.test(key) ? key : 'none'),
    show(her) {
      lambs.show(textAt(her, ['scan']));
      stage.value = textAt(her, ['scan-stage']);
    },
  };
}
