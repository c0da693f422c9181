// Elements made by name. What is said is always text, never markup: a flock may be called anything.

/**
 * @template {keyof HTMLElementTagNameMap} T
 * @param {T} tag
 * @param {Record<string, unknown>} properties those that begin with `on` are listeners, the others attributes; null and false leave one out
 * @param {...(Node | string | null | undefined | false)} children
 * @returns {HTMLElementTagNameMap[T]}
 */
export function el(tag, properties = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(properties)) {
    if (value === null || value === undefined || value === false) continue;
    if (typeof value === 'function') element.addEventListener(name.slice(2), /** @type {EventListener} */ (value));
    else element.setAttribute(name, value === true ? '' : String(value));
  }
  put(element, ...children);
  return element;
}

/** In place of what an element holds. @param {Element} element @param {...(Node | string | null | undefined | false)} children */
export function put(element, ...children) {
  element.replaceChildren(.../** @type {(Node | string)[]} */ (children.filter(child => child !== null && child !== undefined && child !== false && child !== '')));
}

/** The head of a view, which is where the focus goes. @param {string} title @param {string | null} [code] right, as on a sheet */
export function heading(title, code) {
  return el('div', { class: 'title' }, el('h1', { tabindex: -1 }, title), code ? el('span', { class: 'code' }, code) : null);
}

/** Gives somebody a file. @param {BlobPart} content @param {string} name @param {string} type */
export function download(content, name, type) {
  const url = URL.createObjectURL(new Blob([content], { type }));
  el('a', { href: url, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** @param {number} number @param {string} noun */
export const count = (number, noun) => `${number} ${noun}${number === 1 ? '' : 's'}`;
