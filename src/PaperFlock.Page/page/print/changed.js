// Only what changed: the PDF in which the newest issue came knows all that were made, and somebody says which of them is in the binder.
import { el, put } from '#page/dom.js';
import { Trouble } from '#page/engine.js';
import { issueOf } from '#page/make.js';

/** @typedef {import('#page/views.js').App} App */
/** @typedef {import('#page/make.js').Maker} Maker */
/** @typedef {import('#page/engine.js').Earlier} Earlier */
/** @typedef {import('#page/engine.js').Issue} Issue */

/** @param {App} app @param {Maker} maker */
export function changed(app, maker) {
  const input = el('input', { type: 'file', id: 'earlier', accept: '.pdf', 'aria-describedby': 'earlier-hint' });
  const which = el('div', { role: 'status' });
  /** The file that was chosen, once it has been read, or the pack made here last; null where there is none to go by. @type {Promise<Earlier | null>} */
  let earlier = Promise.resolve(null);
  input.addEventListener('change', () => { earlier = read(input.files?.[0]); });
  /** @type {Earlier | null} */
  let shown = null;

  /** @param {File | undefined} chosen */
  async function read(chosen) {
    put(which);
    if (!chosen) return null;
    try {
      // Of a larger file, a byte too many is enough to say so.
      return await known({ name: chosen.name, bytes: new Uint8Array(await chosen.slice(0, app.description.mostPdfBytes + 1).arrayBuffer()) });
    } catch (fault) {
      put(which, el('p', { class: 'wrong' }, fault instanceof Trouble ? `${fault.message.charAt(0).toUpperCase()}${fault.message.slice(1)}.` : `${chosen.name} cannot be read. Is it a file, and is the stick still in?`));
      return null;
    }
  }

  /** @param {Earlier} file */
  async function known(file) {
    const { issues } = await app.state.engine.issues(await app.state.current(), file);
    put(which, ask(issues));
    return file;
  }

  /** Until somebody chooses a file, the pack made here last is the newest there is. */
  function update() {
    const { newest } = app.state;
    if (newest === null || newest === shown || input.files?.length) return;
    shown = newest;
    earlier = known(newest).then(file => (which.prepend(madeHere(file)), file), () => null);
  }

  /** @param {boolean} onlyChanged */
  const make = onlyChanged => maker.make(async progress => {
    const file = await earlier;
    const since = /** @type {HTMLInputElement | null} */ (which.querySelector(':checked'))?.value;
    if (!onlyChanged && !file) throw new Trouble('choose the PDF of the newest issue first: its number is followed by the next');
    return issueOf(app.state, await app.state.engine.pack(await app.state.current(), { changed: onlyChanged, since: since ? Number(since) : null }, file, progress));
  });
  update();
  const element = el('section', {},
    el('h3', {}, 'Only what changed'),
    el('div', { class: 'field' },
      el('label', { for: 'earlier' }, 'The PDF you made last'),
      el('p', { class: 'hint', id: 'earlier-hint' }, 'It knows every issue there has been. The number of an issue stands at the foot of each sheet.'),
      input),
    which,
    el('p', { class: 'go' },
      el('button', { type: 'button', onclick: () => make(true) }, 'Make the changed sheets'),
      el('button', { type: 'button', onclick: () => make(false) }, 'Make all of them anew, as the next issue')));
  return { element, update };
}

/** @param {Earlier} file */
const madeHere = file => el('p', {}, el('b', {}, file.name), ' is the newest that was made in this browser. If a later one was made elsewhere, choose that one above.');

/** @param {Issue[]} issues */
function ask(issues) {
  const usual = (issues.find(issue => issue.filed) ?? issues[0]).number;
  return el('fieldset', {}, el('legend', {}, 'Which issue is in your binder?'), ...issues.map(({ number, day, what, known }) => el('div', { class: 'ticks' }, el('label', {},
    el('input', { type: 'radio', name: 'since', value: number, checked: number === usual, disabled: !known }),
    el('span', {}, el('b', {}, `Issue ${number}, ${day}`), ` ${what}${known ? '' : ' Choose the PDF of that issue above, to compare with it.'}`)))));
}
