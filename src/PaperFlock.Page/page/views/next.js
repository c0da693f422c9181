// The next season, begun from the flock that is open: last season's file stays as it is.
import { el, put, heading } from '#page/dom.js';
import { dayField } from '#page/day-field.js';
import { Trouble } from '#page/engine.js';
import { coded } from '#page/found.js';
import * as store from '#page/store.js';

/** @type {import('#page/views.js').View} */
export const next = {
  id: 'next',
  title: 'The next season',
  inParts: false,
  needsFlock: true,
  show(root, app) {
    const { state } = app;
    let typed = '';
    const day = dayField(state, { id: 'next-day' }, said => { typed = said; });
    const wrong = el('div', { id: 'next-day-wrong' });
    const outcome = el('div', { role: 'status' });
    day.input.setAttribute('aria-describedby', 'next-day-wrong next-day-hint next-day-words');
    const form = el('form', { class: 'form', novalidate: true },
      el('div', { class: 'field' },
        el('label', { for: 'next-day' }, 'The day the tup goes in'),
        el('p', { class: 'hint', id: 'next-day-hint' }, 'Left blank, it is the same day of the week a year on.'),
        wrong,
        day.element),
      el('p', { class: 'go' }, el('button', { type: 'submit', class: 'main' }, 'Begin the next season'), el('a', { class: 'button', href: '#save' }, 'Back')));
    form.addEventListener('submit', async event => {
      event.preventDefault();
      put(wrong);
      try {
        const begun = await state.engine.nextSeason(await state.current(), typed);
        if (!begun.text || !begun.name) return complain(begun.wrong ?? '');
        await state.open(begun.text, store.look(begun.name) ? store.freeName(begun.name) : begun.name, { saved: false });
        form.hidden = true;
        put(outcome, ...told(begun));
        outcome.querySelector('h2')?.focus();
      } catch (fault) {
        if (!(fault instanceof Trouble)) throw fault;
        complain(fault.message);
      }
    });
    /** @param {string} message */
    function complain(message) {
      put(wrong, el('p', { class: 'wrong', role: 'alert' }, el('b', {}, `${message.charAt(0).toUpperCase()}${message.slice(1)}.`)));
      day.input.focus();
    }
    put(
      root,
      heading('The next season', state.reading?.holding),
      el('p', {}, 'The people, the place, the shed, the feeds and the ewes that are still here go on. Marks, scans and lambings stay behind in this season’s file, which is not changed; save it first, if you have not.'),
      form,
      outcome);
  },
};

/** @param {import('#page/engine.js').Next} begun */
function told(begun) {
  return [
    el('h2', { tabindex: -1 }, `${begun.name} is begun`),
    el('p', {}, begun.summary ?? ''),
    ...(begun.said ?? []).flatMap(({ heading: head, lines }) => [el('h3', {}, head.replace(/:$/, '')), el('ul', {}, ...lines.map(line => el('li', {}, ...coded(line))))]),
    el('p', { class: 'go' }, el('a', { class: 'button main', href: '#flock' }, 'Look the flock over'), el('a', { class: 'button', href: '#save' }, 'Save the flock file')),
  ];
}
