// What `check` says of the flock, as a list.
import { el } from '#page/dom.js';

/** @typedef {import('#page/engine.js').Found} Found */

/** @param {Found} found @param {{ lines?: boolean, rows?: boolean }} [show] lines: where in the text it stands; rows: in a table */
export function sentence(found, show = {}) {
  const where = (show.lines || show.rows) && found.line > 0 ? `${show.rows ? 'Row' : 'Line'} ${found.line}: ` : '';
  const message = where ? found.message : found.message.charAt(0).toUpperCase() + found.message.slice(1);
  return [el('b', {}, ...coded(`${where}${message}.`)), ' ', ...coded(`${found.advice.charAt(0).toUpperCase()}${found.advice.slice(1)}${/[.?!]$/.test(found.advice) ? '' : '.'}`)];
}

/** What stands between backticks is to be typed as it is. @param {string} words */
export function coded(words) {
  return words.split('`').map((part, i) => i % 2 === 1 ? el('code', {}, part) : part);
}

/** @param {Found[]} found @param {{ lines?: boolean, rows?: boolean }} [show] */
export function foundList(found, show) {
  return el('ul', {}, ...found.map(each => el('li', {}, ...sentence(each, show))));
}
