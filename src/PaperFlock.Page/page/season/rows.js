// Rows of a sheet that was filled in by pencil: a ewe each, in the order of the paper. What a row writes is an edit of the flock, and what is wrong with it stands below it.
import { el, put } from '#page/dom.js';
import { foundList } from '#page/found.js';
import { listAt, textAt } from '#page/values.js';

/** @typedef {import('#page/views.js').App} App */
/** @typedef {import('#page/engine.js').Season} Season */
/** @typedef {import('#page/engine.js').Edit} Edit */
/** @typedef {import('#page/engine.js').Value} Value */

/**
 * @typedef {object} Row of one ewe
 * @property {App} app
 * @property {number} ewe her place in values.ewes
 * @property {string} id for what stands in it
 * @property {string} called her name, or her tag
 * @property {(edits: Omit<Edit, 'path'> & { path: (string | number)[] } | (Omit<Edit, 'path'> & { path: (string | number)[] })[]) => void} edit paths from the ewe on
 */

/**
 * @typedef {object} Part what a sheet puts into a row
 * @property {Element[]} content
 * @property {(values: Value, days: Record<string, string>) => void} show puts what the file says of her into it
 * @property {string[]} keys of a ewe, that it writes
 * @property {() => void} [focus]
 * @property {(key: string) => boolean} [press] a key of the keyboard that means something here
 * @property {boolean} [goesOn] after a key, the next ewe is to be written down
 */

/** @param {App} app @param {number} ewe @param {number} number in the order of the paper, from 1 @param {(row: Row) => Part} sheet @returns {{ element: HTMLElement, update: () => void, focus: () => void, press: (key: string) => boolean, goesOn: boolean }} */
export function row(app, ewe, number, sheet) {
  const { state } = app;
  const her = () => listAt(state.reading?.values, ['ewes'])[ewe] ?? null;
  const tag = textAt(her(), ['tag']);
  const called = textAt(her(), ['name']) || tag;
  const wrong = el('div', { class: 'wrong-here', role: 'status' });
  /** @type {import('#page/engine.js').Found[]} */
  let refused = [];
  const part = sheet({
    app, ewe, called, id: `row-${ewe}`,
    async edit(edits) {
      refused = await state.edit([edits].flat().map(each => ({ ...each, path: ['ewes', ewe, ...each.path] })));
      update();
    },
  });
  const element = el('fieldset', { class: 'row', 'data-ewe': ewe },
    el('legend', {}, el('span', { class: 'number' }, String(number)), ' ', el('b', {}, called), called === tag ? null : el('span', { class: 'code' }, ` ${tag}`)),
    ...part.content,
    wrong);

  function update() {
    const found = (state.reading?.found ?? []).filter(each => each.path[0] === 'ewes' && each.path[1] === ewe && (each.severity === 'error' || part.keys.includes(String(each.path[2]))));
    part.show(her(), state.reading?.days ?? {});
    const all = [...refused, ...found];
    put(wrong, all.length === 0 ? null : foundList(all));
    element.classList.toggle('has-wrong', all.some(each => each.severity === 'error'));
  }

  update();
  return { element, update, focus: () => part.focus?.(), press: key => part.press?.(key) ?? false, goesOn: part.goesOn ?? false };
}

/** Moves among rows by the keyboard: a key answers and goes on, Backspace goes back, up and down go as they say. @param {HTMLElement} list @param {ReturnType<typeof row>[]} rows */
export function movesByKeys(list, rows) {
  list.addEventListener('keydown', event => {
    const at = rows.findIndex(each => each.element.contains(/** @type {Node} */ (event.target)));
    const isTyping = event.target instanceof HTMLInputElement && event.target.type !== 'radio' && event.target.type !== 'checkbox' || event.target instanceof HTMLSelectElement;
    if (at < 0 || isTyping || event.ctrlKey || event.metaKey || event.altKey) return;
    const to = event.key === 'ArrowDown' ? at + 1 : event.key === 'ArrowUp' || event.key === 'Backspace' ? at - 1 : null;
    if (to === null && !rows[at].press(event.key)) return;
    event.preventDefault();
    rows[to ?? (rows[at].goesOn ? at + 1 : at)]?.focus();
  });
}
