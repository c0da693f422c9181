// What the flock file says of a ewe, in words a list of changes can have.
import { at, listAt, textAt } from '#page/values.js';

/** @typedef {import('#page/engine.js').Value} Value */

/** The words a key may have. @param {import('#page/views.js').App} app @param {string} section @param {string} key @returns {string[]} */
export function choices(app, section, key) {
  return app.description.form[section].keys.find(each => each.name === key)?.form.words ?? [];
}

/** What is written down on paper about a ewe, by what it is called here. */
const written = {
  'scan': 'scan', 'scan-stage': 'stage', 'marks': 'marks', 'gone': 'gone', 'lost-lambs': 'lost her lambs', 'lambed': 'lambed', 'lambed-time': 'time',
  'lambs-alive': 'alive', 'lambs-dead': 'dead', 'lambing-help': 'help', 'lambs': 'lambs',
};

/** @param {Value} value @param {Record<string, string>} days @returns {string} */
function words(value, days) {
  if (value === null) return 'nothing';
  if (typeof value === 'string') return days[value] ?? value;
  return (Array.isArray(value) ? value : Object.values(value)).map(each => words(each, days)).join(', ');
}

/**
 * What is other than it was, each with what puts it back.
 * @param {Value | undefined} before values of a reading @param {Value | undefined} now @param {Record<string, string>} days
 */
export function changes(before, now, days) {
  const was = listAt(before, ['ewes']);
  return listAt(now, ['ewes']).flatMap((her, i) => Object.entries(written).flatMap(([key, called]) => {
    const [old, is] = [at(was[i], [key]), at(her, [key])];
    if (JSON.stringify(old) === JSON.stringify(is)) return [];
    return [{
      ewe: textAt(her, ['name']) || textAt(her, ['tag']),
      says: `${called}: ${words(old, days)}, now ${words(is, days)}`,
      back: { path: ['ewes', i, key], set: old ?? '' },
    }];
  }));
}
