// Making something to print, with its progress, a way to stop it, and what came of it: the same under every button that makes a PDF.
import { el, put, download } from '#page/dom.js';
import { Stopped, Trouble } from '#page/engine.js';

/** @typedef {import('#page/state.js').State} State */
/** @typedef {import('#page/engine.js').Made} Made */
/** @typedef {import('#page/engine.js').Progress} Progress */

/** A bar that comes and goes within a second is only a flicker. */
const patience = 400;

export class Maker {
  /** Where it is shown. */
  element = el('section', { class: 'note', hidden: true, 'aria-label': 'The PDF' });
  #isBusy = false;

  /** @param {State} state */
  constructor(state) { this.state = state; }

  /** @param {(progress: Progress) => Promise<Made>} work */
  async make(work) {
    if (this.#isBusy) return;
    this.#isBusy = true;
    const head = el('h2', { tabindex: -1 }, 'Making it');
    const doing = el('p');
    const bar = el('progress', { max: 1, 'aria-label': 'How far it is' });
    put(this.element, head, doing, bar, el('p', { class: 'go' }, el('button', { type: 'button', onclick: () => this.state.engine.stop() }, 'Stop')));
    const shown = setTimeout(() => { this.element.hidden = false; }, patience);
    try {
      const made = await work((share, words) => {
        put(doing, `${words}.`);
        bar.value = share;
      });
      this.#done(made);
    } catch (fault) {
      if (fault instanceof Stopped) this.#say('Stopped', 'Nothing was made.');
      else if (fault instanceof Trouble) this.#say('That cannot be made', `${fault.message.charAt(0).toUpperCase()}${fault.message.slice(1)}.`);
      else this.#say('Something went wrong in this program', `Your flock is as it was. If it happens again, send this to whoever gave you the page: ${fault instanceof Error ? fault.message : fault}`);
    } finally {
      clearTimeout(shown);
      this.#isBusy = false;
      this.element.hidden = false;
      this.element.querySelector('h2')?.focus();
    }
  }

  /** @param {string} head @param {string} words */
  #say(head, words) {
    put(this.element, el('h2', { tabindex: -1 }, head), el('p', { role: 'alert' }, words));
  }

  /** @param {Made} made */
  #done(made) {
    const said = made.said.filter(line => line !== '').map(line => el('p', {}, line.charAt(0).toUpperCase() + line.slice(1)));
    if (made.nothing) {
      put(this.element, el('h2', { tabindex: -1 }, 'Nothing to print'), ...said);
      return;
    }
    put(
      this.element,
      el('h2', { tabindex: -1 }, 'Ready'),
      ...said,
      ...made.documents.flatMap(({ file, size, howTo, pdf }, i) => [
        el('p', { role: 'status' }, el('b', {}, file), `: ${size}.`),
        el('p', { class: 'go' },
          el('button', { type: 'button', class: 'main', onclick: () => download(/** @type {BlobPart} */ (pdf), file, 'application/pdf') }, i === 0 ? 'Save the PDF' : `Save ${file}`),
          el('button', { type: 'button', onclick: () => window.open(URL.createObjectURL(new Blob([/** @type {BlobPart} */ (pdf)], { type: 'application/pdf' }))) }, i === 0 ? 'Open the PDF' : `Open ${file}`)),
        el('p', {}, 'In the print window choose:'),
        el('ul', {}, ...howTo.map(line => el('li', {}, line.charAt(0).toUpperCase() + line.slice(1)))),
      ]),
      el('p', {}, 'No printer here? Save it to your memory stick: any library or print shop can print it.'));
  }
}

/** The button that makes the whole pack, for every view that has it. @param {State} state @param {Maker} maker */
export function wholePackButton(state, maker) {
  return el('button', {
    type: 'button',
    class: 'main big',
    onclick: () => maker.make(async progress => issueOf(state, await state.engine.pack(await state.current(), {}, null, progress))),
  }, 'Make the whole pack');
}

/** The newest issue of the pack, by which what changes after it is known. @param {State} state @param {Made} made @returns {Made} */
export function issueOf(state, made) {
  const [{ file, pdf } = { file: '', pdf: null }] = made.documents;
  if (pdf) state.setNewest({ name: file, bytes: pdf });
  return made;
}
