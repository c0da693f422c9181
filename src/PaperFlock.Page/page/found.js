// What `check` says of the flock, as a list.
import { el } from '#page/dom.js';

/** @typedef {import('#page/engine.js').Found} Found */

/** @param {Found} found @param {{ lines?: boolean }} [show] lines: where in the text it stands */
export function sentence(found, show = {}) {
  const where = show.lines && found.line > 0 ? `Line ${found.line}: ` : '';
  const message = where ? found.message : found.message.charAt(0).toUpperCase() + found.message.slice(1);
  return [el('b', {}, `${where}${message}.`), ` ${found.advice.charAt(0).toUpperCase()}${found.advice.slice(1)}.`];
}

/** @param {Found[]} found @param {{ lines?: boolean }} [show] */
export function foundList(found, show) {
  return el('ul', {}, ...found.map(each => el('li', {}, ...sentence(each, show))));
}
