// The fields of the form: one for each kind of value a key may have. Each shows what the file says, and puts into it what is typed.
import { el, put } from '#page/dom.js';
import { dayField } from '#page/day-field.js';
import { at } from '#page/values.js';
import { idOf, wrongs } from '#page/views/flock/mistakes.js';

/** @typedef {import('#page/engine.js').Form} Form */
/** @typedef {import('#page/engine.js').Key} Key */
/** @typedef {import('#page/engine.js').Path} Path */
/** @typedef {import('#page/engine.js').Value} Value */
/** @typedef {import('#page/views/flock/mistakes.js').Mistakes} Mistakes */

/** @typedef {{ app: import('#page/views.js').App, mistakes: Mistakes }} Context of the form; `mistakes` are those of now */
/** @typedef {{ element: HTMLElement, update: () => void }} Part of the form: an element, and how it is brought up to the file */
/** @typedef {HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement} Control */

/** Longer texts have room for two lines and more. */
const longLine = 80;

/** @param {Value | undefined} value @returns {string} a single value, or those of a list with commas between */
export function written(value) {
  return Array.isArray(value) ? value.filter(item => typeof item === 'string').join(', ') : typeof value === 'string' ? value : '';
}

/** @param {Form | undefined} form */
const isListOfValues = form => form?.kind === 'list' && form.item?.kind !== 'section';

/** Whether it is typed into one field. @param {Form | undefined} form @returns {boolean} */
export const isOneField = form => form?.kind === 'either' ? isOneField(form.one) && isOneField(form.other) : form?.kind !== 'section' && (form?.kind !== 'list' || isListOfValues(form));

/** What was typed, as the file has it: a list where there may be one, unless it is a single value where that may be. @param {Form} form @param {string} text @returns {Value} */
function meant(form, text) {
  const mayBeList = isListOfValues(form) || isListOfValues(form.one) || isListOfValues(form.other);
  const words = text.split(/[,;]/).map(word => word.trim()).filter(word => word !== '');
  const isSingle = form.kind === 'either' && words.length === 1 && (form.one?.kind !== 'none' || /^(false|no|none)$/i.test(words[0]));
  return !mayBeList || isSingle ? (isSingle && form.one?.kind === 'none' ? 'false' : text.trim()) : words.length === 0 ? '' : words;
}

/**
 * A bare control, as a cell of a table has it.
 * @param {Context} context @param {Path} path @param {Form} form @param {string} id @param {string | null} [usual] what holds where nothing is said
 * @returns {Part & { input: HTMLElement }}
 */
export function control(context, path, form, id, usual) {
  const { state } = context.app;
  /** @param {Value} value */
  const type = value => state.type(path, value);
  const value = () => at(state.reading?.values, path);

  if (form.kind === 'date') {
    const field = dayField(state, { id }, type);
    return {
      element: field.element,
      input: field.input,
      update() {
        const day = written(value());
        if (!isBusy(field.input)) field.show(day, state.reading?.days[day]);
      },
    };
  }

  if (form.kind === 'choice' || form.kind === 'flag') {
    const words = form.kind === 'flag' ? ['true', 'false'] : form.words ?? [];
    const select = el('select', { id, onchange: () => type(select.value) });
    return {
      element: select,
      input: select,
      update() {
        const text = written(value());
        const same = words.find(word => word.toLowerCase() === (form.kind === 'flag' ? flagOf(text) : text.toLowerCase()));
        put(select, el('option', { value: '' }, usual ? `as usual: ${form.kind === 'flag' ? (usual === 'true' ? 'yes' : 'no') : usual.replaceAll('-', ' ')}` : 'not said'), ...words.map(word => el('option', { value: word }, form.kind === 'flag' ? (word === 'true' ? 'yes' : 'no') : word.replaceAll('-', ' '))), text !== '' && same === undefined ? el('option', { value: text }, text) : null);
        select.value = same ?? text;
      },
    };
  }

  if (form.kind === 'list' && form.item?.kind === 'choice') return ticks(context, path, form.item.words ?? [], id);

  /** @type {HTMLInputElement | HTMLTextAreaElement} */
  const input = (form.longest ?? 0) > longLine ? el('textarea', { id, rows: 2, class: 'lines' }) : el('input', { id, autocomplete: 'off', inputmode: form.kind === 'number' && !form.least?.startsWith('-') ? (form.whole ? 'numeric' : 'decimal') : null });
  // A text of the file is one line, whatever is pasted.
  input.addEventListener('input', () => type(meant(form, input.value.replace(/\s*\n\s*/g, ' '))));
  return {
    element: input,
    input,
    update() { if (!isBusy(input)) input.value = written(value()); },
  };

  /** Somebody is in it, or what was typed is not in the file yet or could not be put there. @param {Control} input */
  function isBusy(input) { return document.activeElement === input || state.isTyping(path) || state.refused.has(JSON.stringify(path)); }
}

/** @param {string} text as YAML has it */
const flagOf = text => ['true', 'yes', 'on'].includes(text.toLowerCase()) ? 'true' : ['false', 'no', 'off'].includes(text.toLowerCase()) ? 'false' : text;

/** Words of which any may be ticked. @param {Context} context @param {Path} path @param {string[]} words @param {string} id */
function ticks(context, path, words, id) {
  const { state } = context.app;
  const boxes = words.map((word, i) => el('input', { type: 'checkbox', value: word, id: i === 0 ? id : `${id}-${i}` }));
  const element = el('div', { class: 'ticks' }, ...boxes.map(box => el('label', {}, box, box.value)));
  element.addEventListener('change', () => state.type(path, boxes.filter(box => box.checked).map(box => box.value)));
  return {
    element,
    input: element,
    update() {
      const value = at(state.reading?.values, path);
      const ticked = (Array.isArray(value) ? value : [value]).map(word => String(word).toLowerCase());
      if (!state.isTyping(path)) boxes.forEach(box => { box.checked = ticked.includes(box.value.toLowerCase()); });
    },
  };
}

/**
 * A field with its label, help and mistakes.
 * @param {Context} context @param {Path} path @param {Key} key @param {string} label
 * @returns {Part}
 */
export function field(context, path, key, label) {
  const id = idOf(path);
  const inner = control(context, path, key.form, id, key.default);
  const isGroup = inner.input.classList.contains('ticks');
  const hint = el('p', { class: 'hint', id: `${id}-hint` }, key.help, key.example && !key.default && !key.help.includes('uch as') ? ` Such as ${key.example}.` : null);
  const wrong = el('div', { id: `${id}-wrong` });
  const head = isGroup ? el('legend', {}, label) : el('label', { for: id }, label);
  const element = el(isGroup ? 'fieldset' : 'div', { class: 'field' }, head, hint, wrong, inner.element);
  const described = isGroup ? element : inner.input;
  described.setAttribute('aria-describedby', `${id}-wrong ${id}-hint${key.form.kind === 'date' ? ` ${id}-words` : ''}`);
  if (key.required && !isGroup) inner.input.setAttribute('aria-required', 'true');
  return {
    element,
    update() {
      inner.update();
      const found = context.mistakes.at(path, true);
      put(wrong, ...wrongs(found));
      if (!isGroup) inner.input.setAttribute('aria-invalid', String(found.some(each => each.severity === 'error')));
    },
  };
}
