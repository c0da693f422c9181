// Sections of the form and lists of them, made from what the engine says a flock file may hold.
import { el, put } from '#page/dom.js';
import { at, listAt, textAt } from '#page/values.js';
import { field, isOneField } from '#page/views/flock/fields.js';
import { itemOf, labelOf } from '#page/views/flock/labels.js';
import { idOf, wrongs } from '#page/views/flock/mistakes.js';
import { placeField } from '#page/views/flock/place.js';
import { shownFirst } from '#page/views/flock/steps.js';
import { startField } from '#page/views/flock/start.js';

/** @typedef {import('#page/views/flock/fields.js').Context} Context */
/** @typedef {import('#page/views/flock/fields.js').Part} Part */
/** @typedef {import('#page/engine.js').Form} Form */
/** @typedef {import('#page/engine.js').Key} Key */
/** @typedef {import('#page/engine.js').Path} Path */

/** Fields that stand for more than one key, by the section they are in. @type {Record<string, Record<string, { keys: string[], make: (context: Context) => Part }>>} */
const together = {
  holding: { place: { keys: [], make: placeField } },
  season: { start: { keys: ['tup-in', 'lambing-from'], make: startField } },
};

/**
 * The keys of a section: some at once, the rest to be opened.
 * @param {Context} context @param {Path} path @param {string} section as in the description
 * @param {{ first?: string[], leave?: string[] }} which first: shown at once; leave: shown elsewhere
 * @returns {Part}
 */
export function section(context, path, section, { first, leave = [] } = {}) {
  const { keys } = context.app.description.form[section];
  const special = together[section] ?? {};
  const shown = first ?? shownFirst[section] ?? keys.map(key => key.name);
  const covered = shown.flatMap(name => special[name]?.keys ?? [name]);
  const rest = keys.filter(key => !covered.includes(key.name) && !leave.includes(key.name) && key.form.kind !== 'version' && (section !== '' || covered.includes(key.name)));
  /** @param {string} name */
  const make = name => special[name]?.make(context) ?? one(context, [...path, name], section, /** @type {Key} */ (keys.find(key => key.name === name)));
  const parts = shown.map(make);
  const more = rest.map(key => make(key.name));
  const details = more.length === 0 ? null : el('details', { class: 'rest' }, el('summary', {}, 'More, where it is needed'), ...more.map(part => part.element));
  return {
    element: el('div', {}, ...parts.map(part => part.element), details),
    update() {
      for (const part of [...parts, ...more]) part.update();
      // A mistake is never hidden.
      if (details?.querySelector('.wrong')) details.open = true;
    },
  };
}

/** @param {Context} context @param {Path} path @param {string} section @param {Key} key @returns {Part} */
function one(context, path, section, key) {
  const { form } = key;
  const label = labelOf(section, key.name);
  if (isOneField(form)) return field(context, path, key, label);
  if (form.kind === 'list') return list(context, path, form.item?.path ?? '', label, key.help);
  const inner = form.kind === 'section' ? form : /** @type {Form} */ ([form.one, form.other].find(each => each?.kind === 'section'));
  return group(context, path, inner.path ?? '', label, key.help, form.kind === 'either' && form.one?.words ? form.one.words[0] : null);
}

/**
 * A section within a section. Where one word may stand in its place, there is a box to tick for it.
 * @param {Context} context @param {Path} path @param {string} name @param {string} label @param {string} help @param {string | null} word
 * @returns {Part}
 */
function group(context, path, name, label, help, word) {
  const { state } = context.app;
  const inside = section(context, path, name);
  const wrong = el('div', { id: idOf(path), tabindex: -1 });
  const box = word === null ? null : el('input', { type: 'checkbox', id: `${idOf(path)}-none` });
  box?.addEventListener('change', () => state.type(path, box.checked ? word : ''));
  return {
    element: el('fieldset', { class: 'group' },
      el('legend', {}, label),
      el('p', { class: 'hint' }, help),
      box === null ? null : el('div', { class: 'ticks' }, el('label', {}, box, `${word}`)),
      wrong,
      inside.element),
    update() {
      const value = at(state.reading?.values, path);
      if (box && !state.isTyping(path)) box.checked = value === word;
      inside.element.hidden = word !== null && value === word;
      put(wrong, ...wrongs(context.mistakes.at(path)));
      inside.update();
    },
  };
}

/**
 * A list of sections, each to be filled in, added to and taken out.
 * @param {Context} context @param {Path} path @param {string} name of the section @param {string} label @param {string} help
 * @returns {Part}
 */
export function list(context, path, name, label, help) {
  const { state } = context.app;
  const called = context.app.description.form[name].keys[0].name;
  /** @type {{ element: HTMLElement, legend: HTMLElement, part: Part }[]} */
  let items = [];
  let isAdding = false;
  const wrong = el('div', { id: idOf(path), tabindex: -1 });
  const holder = el('div');
  const count = () => listAt(state.reading?.values, path).length;
  const add = el('button', { type: 'button', onclick: async () => {
    // What was typed into the one before is in the file first, so that this is one more.
    await state.settle();
    isAdding = true;
    show();
    /** @type {HTMLElement | null | undefined} */ (items.at(-1)?.element.querySelector('input, select'))?.focus();
  } }, `Add ${itemOf(name)[0]}`);

  /** @param {number} index */
  function item(index) {
    const part = section(context, [...path, index], name);
    const legend = el('legend', {});
    const takeOut = el('button', { type: 'button', onclick: async () => {
      if (index < count()) await state.edit([{ path: [...path, index], remove: true }]);
      isAdding = false;
      show();
      (/** @type {HTMLElement | null | undefined} */ (items[index]?.element.querySelector('input, select')) ?? add).focus();
    } }, 'Take this one out');
    const element = el('fieldset', { class: 'item' }, legend, el('div', { id: idOf([...path, index]), tabindex: -1 }), part.element, takeOut);
    return { element, legend, part };
  }

  function show() {
    const wanted = count() + (isAdding ? 1 : 0);
    while (items.length > wanted) items.pop()?.element.remove();
    while (items.length < wanted) {
      items.push(item(items.length));
      holder.append(items[items.length - 1].element);
    }
    for (const [i, { element, legend, part }] of items.entries()) {
      const says = textAt(state.reading?.values, [...path, i, called]);
      legend.textContent = `${itemOf(name)[1]} ${i + 1}${says === '' ? '' : `: ${says}`}`;
      put(/** @type {HTMLElement} */ (element.children[1]), ...wrongs(context.mistakes.at([...path, i])));
      part.update();
    }
  }

  let before = count();
  return {
    element: el('fieldset', { class: 'group' }, el('legend', {}, label), el('p', { class: 'hint' }, help), wrong, holder, el('p', { class: 'go' }, add)),
    update() {
      // What was being added is in the file now.
      if (count() > before) isAdding = false;
      before = count();
      put(wrong, ...wrongs(context.mistakes.at(path)));
      show();
    },
  };
}
