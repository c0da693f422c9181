// Sheets of the pack as pictures, drawn once somebody wants to see them: they take the engine a moment.
import { el, put } from '#page/dom.js';
import { pictureOf } from '#page/picture.js';
import { Trouble } from '#page/engine.js';

/**
 * @param {import('#page/engine.js').Engine} engine @param {import('#page/engine.js').Flock} flock
 * @param {string} sheets by kind @param {string} title of what is opened @param {boolean} open at once
 */
export function sheetPictures(engine, flock, sheets, title, open) {
  const pages = el('div', { class: 'pages' }, el('p', { role: 'status' }, 'Drawing it.'));
  const details = el('details', {}, el('summary', {}, title), pages);
  let drawn = false;
  const draw = async () => {
    if (drawn) return;
    drawn = true;
    try {
      const pictures = await engine.pictures(flock, sheets);
      put(pages, ...pictures.map(picture => page(picture)), pictures.length === 0 ? el('p', {}, 'There is no such sheet in this pack now.') : null);
    } catch (fault) {
      drawn = false;
      put(pages, el('p', { class: 'wrong' }, fault instanceof Trouble ? `${fault.message.charAt(0).toUpperCase()}${fault.message.slice(1)}.` : 'That could not be drawn. Close this and open it again.'));
    }
  };
  details.addEventListener('toggle', () => { if (details.open) void draw(); });
  details.open = open;
  return details;
}

/** @param {import('#page/engine.js').Picture} picture */
function page(picture) {
  const frame = el('div', { class: 'frame', tabindex: 0, role: 'region', 'aria-label': `${picture.title}, ${picture.label}` }, pictureOf(picture, `The sheet ${picture.label}, ${picture.title}, as it is printed. What it says stands in words on this page.`));
  const larger = el('button', { type: 'button', class: 'small', 'aria-pressed': 'false', onclick: () => larger.setAttribute('aria-pressed', String(frame.classList.toggle('large'))) }, 'Larger');
  return el('figure', {}, el('figcaption', {}, el('span', { class: 'code' }, picture.label), ` ${picture.title} `, larger), frame);
}
