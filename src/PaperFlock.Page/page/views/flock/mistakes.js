// What was found in the flock, by the field it belongs to.
import { el } from '#page/dom.js';
import { sentence } from '#page/found.js';

/** @typedef {import('#page/engine.js').Found} Found */
/** @typedef {import('#page/engine.js').Path} Path */

/** The id of the field for a place in the file. @param {Path} path */
export const idOf = path => `f-${path.join('-')}`;

/** What was found since the last edit; a field takes what is its own. */
export class Mistakes {
  /** @type {Map<string, Found[]>} */
  #byPath = new Map();

  /** @param {Found[]} found @param {Map<string, Found[]>} refused edits that could not be made */
  constructor(found, refused) {
    for (const each of found) {
      const key = JSON.stringify(each.path);
      this.#byPath.set(key, [...this.#byPath.get(key) ?? [], each]);
    }
    for (const [key, each] of refused) this.#byPath.set(key, each);
  }

  /** @param {Path} path @param {boolean} below whether a field holds what lies below that place too @returns {Found[]} */
  at(path, below = false) {
    const key = JSON.stringify(path);
    if (!below) return this.#byPath.get(key) ?? [];
    const start = key.slice(0, -1);
    return [...this.#byPath.entries()].filter(([other]) => other === key || other.startsWith(`${start},`)).flatMap(([, found]) => found);
  }
}

/** As it stands by its field. @param {Found[]} found */
export function wrongs(found) {
  return found.map(each => el('p', { class: each.severity === 'error' ? 'wrong' : 'odd' }, ...sentence(each)));
}
