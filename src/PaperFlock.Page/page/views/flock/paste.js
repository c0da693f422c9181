// Ewes out of a spreadsheet: pasted, one question at a time, looked at, and only then taken in.
import { el, put, count } from '#page/dom.js';
import { foundList } from '#page/found.js';
import { Trouble } from '#page/engine.js';
import { labelOf } from '#page/views/flock/labels.js';

/** @typedef {import('#page/views/flock/fields.js').Context} Context */
/** @typedef {import('#page/engine.js').Pasted} Pasted */

/** More is no list of ewes. */
const mostCharacters = 2_000_000;

/** @param {Context} context @param {() => void} onDone ewes were taken in, or nothing is to be pasted */
export function pasting(context, onDone) {
  const { state } = context.app;
  const head = el('h3', { tabindex: -1 }, 'Paste from a spreadsheet');
  const box = el('textarea', { id: 'pasted', rows: 6, spellcheck: false, wrap: 'off' });
  const file = el('input', { type: 'file', id: 'list-file', accept: '.csv,.tsv,.txt' });
  const trouble = el('div', { role: 'alert' });
  const asking = el('div');
  const paste = el('div', {},
    el('ol', {}, el('li', {}, 'In the spreadsheet, drag over the rows with ewes, the headings too.'), el('li', {}, 'Press ', el('b', {}, 'Ctrl'), ' and ', el('b', {}, 'C'), ' together.'), el('li', {}, 'Click into the box here and press ', el('b', {}, 'Ctrl'), ' and ', el('b', {}, 'V'), '. On a phone: hold a finger on the box, then Paste.')),
    el('div', {}, el('label', { for: 'pasted' }, 'Paste here'), box),
    el('details', {}, el('summary', {}, 'Or choose a list that was saved as CSV'), el('div', {}, el('label', { for: 'list-file' }, 'A list of ewes'), file)),
    el('p', { class: 'go' }, el('button', { type: 'button', onclick: close }, 'Not now')));
  const element = el('section', { class: 'note', hidden: true, 'aria-label': 'Paste from a spreadsheet' }, head, trouble, paste, asking);
  let pasted = '';
  let turn = 0;
  /** Columns somebody pointed at; -1 for none, -2 for no names in the list. */
  let [tag, name] = [-1, -1];

  box.addEventListener('paste', event => {
    // A field with megabytes in it would hold the page up.
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (text.length <= mostCharacters) return;
    event.preventDefault();
    void look(text);
  });
  box.addEventListener('input', () => { if (box.value.trim() !== '') void look(box.value); });
  file.addEventListener('change', async () => {
    const chosen = file.files?.[0];
    if (!chosen) return;
    try {
      const bytes = new Uint8Array(await chosen.slice(0, mostCharacters + 1).arrayBuffer());
      await look((await state.engine.openList(bytes, chosen.name)).text);
    } catch (fault) {
      say(fault instanceof Trouble ? fault.message : `the file ${chosen.name} cannot be read: is it a file, and is the stick still in?`);
    }
    file.value = '';
  });

  /** @param {string} words */
  function say(words) { put(trouble, el('p', { class: 'wrong' }, `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.?]$/.test(words) ? '' : '.'}`)); }

  function again() {
    [tag, name] = [-1, -1];
    box.value = '';
    put(asking);
    put(trouble);
    paste.hidden = false;
    box.focus();
  }

  function close() {
    element.hidden = true;
    onDone();
  }

  /** @param {string} text */
  async function look(text) {
    pasted = text;
    put(trouble);
    if (text.length > mostCharacters) {
      box.value = '';
      return say('that is far too much for a list of ewes: copy only the rows with ewes');
    }
    const mine = ++turn;
    try {
      const read = await state.engine.paste(await state.current(), text, tag, Math.max(name, -1));
      if (mine === turn) ask(read);
    } catch (fault) {
      say(fault instanceof Trouble ? fault.message : 'that could not be read');
    }
  }

  /** @param {Pasted} read */
  function ask(read) {
    if (read.columns === 0) return say('there is nothing in it: copy the rows in the spreadsheet first');
    const free = read.keys.flatMap((key, i) => key === null ? [i] : []);
    const asked = read.ask ? 'tag' : name === -1 && !read.keys.includes('name') && free.length > 0 ? 'name' : null;
    const question = el('h4', { tabindex: -1 }, asked === 'tag' ? 'Which column is the tag?' : asked === 'name' ? 'Which column is her name?' : `${count(read.taken, 'ewe')} to take in`);
    /** @param {number} column */
    const point = column => {
      if (asked === 'tag') tag = column;
      else name = column;
      void look(pasted);
    };
    /** @param {number} column */
    const canPoint = column => asked !== null && (asked === 'tag' || read.keys[column] === null);
    const columns = Array.from({ length: read.columns }, (_, i) => i);
    const more = read.of - read.rows.length;
    paste.hidden = true;
    put(
      asking,
      question,
      asked === null ? null : el('p', {}, 'Point at it: press the button above it, or any cell of it.'),
      el('div', { class: 'scroll', role: 'region', 'aria-label': 'What you pasted', tabindex: 0 }, el('table', { class: 'point' },
        el('caption', { class: 'unseen' }, 'The first rows of what you pasted'),
        el('thead', {}, el('tr', {}, ...columns.map(i => {
          const key = asked === 'tag' ? null : read.keys[i] ?? null;
          return el('th', { scope: 'col', class: key === null ? null : 'chosen' }, canPoint(i)
            ? el('button', { type: 'button', 'aria-label': `This one: ${read.rows[0][i] ?? ''}, column ${i + 1}`, onclick: () => point(i) }, 'This one')
            : el('span', {}, key === null ? 'left out' : labelOf('ewes[]', key)));
        }))),
        el('tbody', {}, ...read.rows.map((row, r) => el('tr', {}, ...columns.map(i => el(r === 0 && read.hasHeading ? 'th' : 'td', { onclick: canPoint(i) ? () => point(i) : null, class: canPoint(i) ? 'pointed' : null }, row[i] ?? ''))))))),
      el('p', {}, [more > 0 ? `And ${count(more, 'more row')}.` : '', read.hasHeading ? 'The first row is the headings.' : ''].join(' ')),
      ...asked === null ? outcome(read) : [el('p', { class: 'go' }, asked === 'name' ? el('button', { type: 'button', onclick: () => { name = -2; ask(read); } }, 'None of them') : null, el('button', { type: 'button', onclick: again }, 'Start again'), el('button', { type: 'button', onclick: close }, 'Not now'))]);
    question.focus();
  }

  /** What would be taken in, and what not. @param {Pasted} read */
  function outcome(read) {
    return [
      el('p', { role: 'status' }, el('b', {}, `${count(read.taken, 'ewe')} will be taken in`), read.refused > 0 ? `, ${count(read.refused, 'row')} left out.` : '.'),
      read.found.length === 0 ? null : el('div', {}, el('h4', {}, 'Left out, or to look at'), foundList(read.found.slice(0, 40), { rows: true }), read.found.length > 40 ? el('p', {}, `And ${read.found.length - 40} more.`) : null),
      el('p', { class: 'go' },
        read.text === null ? null : el('button', { type: 'button', class: 'main', onclick: async () => { await state.setText(read.text ?? ''); close(); } }, `Take in ${count(read.taken, 'ewe')}`),
        el('button', { type: 'button', onclick: again }, 'Start again'),
        el('button', { type: 'button', onclick: close }, 'Not now')),
    ];
  }

  return {
    element,
    get isOpen() { return !element.hidden; },
    /** @param {string} text what was pasted elsewhere; empty to ask for it */
    open(text) {
      element.hidden = false;
      again();
      if (text === '') return;
      box.value = text;
      void look(text);
    },
  };
}
