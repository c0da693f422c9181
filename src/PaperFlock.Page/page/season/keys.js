// A row of large keys, one of them chosen: a radio group for the thumb, and for the keyboard one stop.
import { el } from '#page/dom.js';

/**
 * @param {string} name of the group in the page
 * @param {{ value: string, label: string, says: string }[]} keys says: for whoever does not see the label
 * @param {(value: string) => void} chosen
 */
export function keys(name, keys, chosen) {
  const inputs = keys.map(({ value, says }) => el('input', { type: 'radio', name, value, 'aria-label': says, onchange: () => chosen(value) }));
  return {
    element: el('span', { class: 'keys' }, ...keys.map(({ label }, i) => el('label', {}, inputs[i], el('span', { 'aria-hidden': 'true' }, label)))),
    /** @param {string} value */
    show(value) { for (const input of inputs) input.checked = input.value === value; },
    /** Whether there is such a key: it is chosen, as by a touch. @param {string} value */
    press(value) {
      const input = inputs.find(each => each.value === value);
      if (!input) return false;
      if (!input.checked) input.click();
      return true;
    },
    focus() { (inputs.find(input => input.checked) ?? inputs[0]).focus(); },
  };
}

/** Keys for a number of lambs, the first of them for nothing said. @param {number} most @param {string} none @param {(n: number) => string} says such as "2 alive" */
export const countKeys = (most, none, says) => [
  { value: '', label: '–', says: none },
  ...Array.from({ length: most + 1 }, (_, n) => ({ value: String(n), label: String(n), says: says(n) })),
];
