// The ewes: a table to type in, one a row, with a row to spare at its end.
import { el, put, count } from '#page/dom.js';
import { Trouble } from '#page/engine.js';
import { listAt, textAt } from '#page/values.js';
import { control } from '#page/views/flock/fields.js';
import { labelOf } from '#page/views/flock/labels.js';
import { idOf, wrongs } from '#page/views/flock/mistakes.js';
import { pasting } from '#page/views/flock/paste.js';
import { list, section } from '#page/views/flock/sections.js';

/** @typedef {import('#page/views/flock/fields.js').Context} Context */
/** @typedef {import('#page/views/flock/fields.js').Part} Part */

const inTable = ['tag', 'name', 'group', 'born', 'weight', 'condition'];

/** @param {Context} context @returns {Part} */
export function ewes(context) {
  const { app } = context;
  const { state } = app;
  const all = () => listAt(state.reading?.values, ['ewes']);
  /** @param {number} i */
  const isUnnamed = i => textAt(state.reading?.values, ['ewes', i, 'tag']).startsWith(app.description.tagLine);
  const paste = pasting(context, () => { update(); heading.focus(); });
  const heading = el('p', { tabindex: -1 });
  const first = firstWays(context, () => openPaste(''), typeIn);
  const body = el('tbody');
  const groups = el('datalist', { id: 'group-names' });
  const wrong = el('div', { id: idOf(['ewes']), tabindex: -1 });
  const wider = el('button', { type: 'button', class: 'narrow', 'aria-pressed': 'false', onclick: () => wider.setAttribute('aria-pressed', String(table.classList.toggle('all'))) }, 'Show all columns');
  const keys = app.description.form['ewes[]'].keys.filter(key => inTable.includes(key.name));
  const table = el('table', { class: 'ewes' },
    el('caption', { class: 'unseen' }, 'The ewes'),
    el('thead', {}, el('tr', {}, ...keys.map(key => el('th', { scope: 'col', id: `col-${key.name}`, class: `col-${key.name}` }, labelOf('ewes[]', key.name))), el('th', { scope: 'col' }, el('span', { class: 'unseen' }, 'More about her')))),
    body);
  const help = el('details', { class: 'rest' }, el('summary', {}, 'What goes into the columns?'), el('dl', {}, ...keys.flatMap(key => [el('dt', {}, labelOf('ewes[]', key.name)), el('dd', { id: `help-${key.name}` }, key.help)])));
  const typed = el('div', {},
    el('p', {}, 'The tag is enough; her name helps. Enter goes down to the next ewe, Tab goes across. ', el('a', { href: '#', onclick: skip }, 'Skip the table')),
    help, wider, groups, table);
  const after = el('p', { class: 'go', tabindex: -1 },
    el('button', { type: 'button', onclick: () => /** @type {HTMLElement | null} */ (body.lastElementChild?.previousElementSibling?.querySelector('input') ?? null)?.focus() }, 'Add a ewe'),
    el('button', { type: 'button', onclick: () => openPaste('') }, 'Paste from a spreadsheet'));
  const breeds = list(context, ['breeds'], 'breeds[]', labelOf('', 'breeds'), app.description.form[''].keys.find(key => key.name === 'breeds')?.help ?? '');
  /** @type {ReturnType<typeof row>[]} */
  let rows = [];
  let isTyping = false;

  /** @param {Event} event */
  function skip(event) {
    event.preventDefault();
    after.focus();
  }

  /** @param {string} text */
  function openPaste(text) {
    paste.open(text);
    update();
  }

  /** Ewes with a line for the tag make room for those that are typed in. */
  async function typeIn() {
    isTyping = true;
    await state.edit(all().map((_, i) => i).slice(1).reverse().filter(isUnnamed).map(i => ({ path: ['ewes', i], remove: true })));
    update();
    body.querySelector('input')?.focus();
  }

  /** @param {number} index */
  function row(index) {
    const cells = keys.map(key => {
      const part = control(context, ['ewes', index, key.name], key.form, idOf(['ewes', index, key.name]), key.default);
      const { input } = part;
      if (key.name === 'group') input.setAttribute('list', 'group-names');
      const wrong = el('div', { id: `${input.id}-wrong` });
      input.setAttribute('placeholder', labelOf('ewes[]', key.name));
      input.setAttribute('aria-describedby', `${input.id}-wrong help-${key.name}`);
      const cell = el('td', { class: `col-${key.name}`, 'data-is': labelOf('ewes[]', key.name) }, wrong, part.element);
      return { key, part, input, wrong, cell };
    });
    const panel = el('td', { colspan: keys.length + 1 });
    const below = el('tr', { class: 'panel', hidden: true }, panel);
    /** @type {Part | null} */
    let more = null;
    const open = el('button', { type: 'button', 'aria-expanded': 'false', onclick: () => {
      below.hidden = !below.hidden;
      open.setAttribute('aria-expanded', String(!below.hidden));
      grow();
    } }, 'More');
    const takeOut = el('button', { type: 'button', onclick: async () => {
      await state.edit([{ path: ['ewes', index], remove: true }]);
      (rows[index]?.cells[0].input ?? heading).focus();
    } }, 'Take her out of the flock');
    const line = el('tr', {}, ...cells.map(({ cell }) => cell), el('td', { class: 'col-more' }, open));
    line.addEventListener('keydown', event => {
      const at = cells.findIndex(({ input }) => input === event.target);
      if (event.key !== 'Enter' || at < 0) return;
      event.preventDefault();
      if (index === rows.length - 1 && cells.some(({ part }) => /** @type {HTMLInputElement} */ (part.input).value !== '')) append();
      rows[index + 1]?.cells[at].input.focus();
    });
    line.addEventListener('paste', event => {
      const text = event.clipboardData?.getData('text/plain') ?? '';
      if (!/[\t\n]/.test(text.trim())) return;
      event.preventDefault();
      openPaste(text);
    });
    line.addEventListener('input', () => { if (index === rows.length - 1) append(); });

    /** Most ewes are never opened. */
    function grow() {
      if (below.hidden || more) return;
      more = section(context, ['ewes', index], 'ewes[]', { first: ['breed', 'note', 'teeth', 'toes', 'teats', 'history', 'to-tup'], leave: inTable });
      put(panel, el('div', { id: idOf(['ewes', index]), tabindex: -1 }), more.element, takeOut);
      more.update();
    }

    function show() {
      const who = textAt(state.reading?.values, ['ewes', index, 'name']) || textAt(state.reading?.values, ['ewes', index, 'tag']) || `ewe ${index + 1}`;
      for (const { key, part, input, wrong } of cells) {
        part.update();
        input.setAttribute('aria-label', `${labelOf('ewes[]', key.name)}, ewe ${index + 1}`);
        if (key.name === 'tag') {
          const isLine = isUnnamed(index);
          input.setAttribute('placeholder', isLine ? 'a line to write on' : index < all().length ? '' : 'Tag');
          if (isLine && document.activeElement !== input) /** @type {HTMLInputElement} */ (input).value = '';
        }
        const found = [...context.mistakes.at(['ewes', index, key.name]), ...(key.name === 'tag' ? context.mistakes.at(['ewes', index]) : [])];
        if (found.length > 0 || wrong.hasChildNodes()) put(wrong, ...wrongs(found));
        input.setAttribute('aria-invalid', String(found.some(each => each.severity === 'error')));
      }
      open.setAttribute('aria-label', `More about ${who}`);
      open.hidden = index >= all().length;
      // What is wrong with her lies in the part that is not open.
      if (more === null && context.mistakes.at(['ewes', index], true).some(each => each.severity === 'error' && !inTable.includes(String(each.path[2])) && each.path.length > 2)) open.click();
      more?.update();
    }
    return { line, below, cells, show };
  }

  function append() {
    const next = row(rows.length);
    rows.push(next);
    body.append(next.line, next.below);
    next.show();
  }

  function update() {
    const isBare = all().length > 0 && all().every((_, i) => isUnnamed(i));
    first.element.hidden = paste.isOpen || isTyping || !isBare;
    typed.hidden = after.hidden = paste.isOpen || !first.element.hidden;
    put(heading, el('b', {}, isBare ? `${count(all().length, 'ewe')} with a line for the tag.` : count(all().length, 'ewe')), isBare ? null : ': enough for a pack. Feed, shed and people can wait.');
    heading.hidden = paste.isOpen;
    put(groups, ...listAt(state.reading?.values, ['groups']).map((_, i) => el('option', { value: textAt(state.reading?.values, ['groups', i, 'name']) })));
    table.classList.toggle('grouped', listAt(state.reading?.values, ['groups']).length > 0 || all().some((_, i) => textAt(state.reading?.values, ['ewes', i, 'group']) !== ''));
    put(wrong, ...wrongs(context.mistakes.at(['ewes'])));
    first.update();
    breeds.update();
    if (typed.hidden) return;
    const isAhead = rows.length > 0 && rows.some((_, i) => i >= all().length && inTable.some(key => state.isTyping(['ewes', i, key])));
    while (!isAhead && rows.length > all().length + 1) {
      const last = rows.pop();
      last?.line.remove();
      last?.below.remove();
    }
    while (rows.length < all().length + 1) append();
    for (const each of rows) each.show();
  }

  return { element: el('div', {}, wrong, heading, first.element, paste.element, typed, after, el('details', { class: 'rest' }, el('summary', {}, 'Breeds with figures of their own'), breeds.element)), update };
}

/**
 * Three ways to begin, while no tag is known.
 * @param {Context} context @param {() => void} onPaste @param {() => void} onType
 * @returns {Part}
 */
function firstWays(context, onPaste, onType) {
  const { state } = context.app;
  const number = el('input', { id: 'how-many', inputmode: 'numeric', autocomplete: 'off', 'aria-describedby': 'how-many-said' });
  const said = el('div', { id: 'how-many-said', role: 'status' });
  const form = el('form', { novalidate: true }, el('h3', {}, 'Only how many there are, for now'), el('p', {}, 'Each card then has a line to write her tag on.'),
    el('div', { class: 'field' }, el('label', { for: 'how-many' }, 'How many ewes?'), said, number), el('button', { type: 'submit' }, 'That many'));
  form.addEventListener('submit', async event => {
    event.preventDefault();
    try {
      const { text } = await state.engine.number(await state.current(), number.value);
      await state.setText(text);
      put(said, el('p', {}, `${count(listAt(state.reading?.values, ['ewes']).length, 'ewe')} now.`));
    } catch (fault) {
      put(said, el('p', { class: 'wrong' }, fault instanceof Trouble ? `${fault.message}.` : 'That did not work.'));
    }
  });
  return {
    element: el('div', {}, el('p', {}, 'Which is easiest?'), el('div', { class: 'boxes' },
      el('section', {}, el('h3', {}, 'They are in a spreadsheet'), el('p', {}, 'Copy the rows there, paste them here, and point at the column with the tags.'), el('button', { type: 'button', class: 'main', onclick: onPaste }, 'Paste from a spreadsheet')),
      el('section', {}, el('h3', {}, 'They are in a notebook'), el('p', {}, 'Type them in, one ewe a line. The tag is enough; her name helps.'), el('button', { type: 'button', onclick: onType }, 'Type them in')),
      el('section', {}, form))),
    update() {},
  };
}
