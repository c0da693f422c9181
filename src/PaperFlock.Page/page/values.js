// What the flock file says at a place, as written.

/** @typedef {import('#page/engine.js').Value} Value */
/** @typedef {import('#page/engine.js').Path} Path */

/** Null where nothing is written. @param {Value | undefined} values @param {Path} path @returns {Value} */
export function at(values, path) {
  /** @type {any} */
  let value = values;
  for (const step of path) value = value?.[step];
  return value ?? null;
}

/** A single value; empty where nothing is written, or a list or a section. @param {Value | undefined} values @param {Path} path */
export function textAt(values, path) {
  const value = at(values, path);
  return typeof value === 'string' ? value : '';
}

/** The items of a list; none where there is no list. @param {Value | undefined} values @param {Path} path @returns {Value[]} */
export function listAt(values, path) {
  const value = at(values, path);
  return Array.isArray(value) ? value : [];
}
