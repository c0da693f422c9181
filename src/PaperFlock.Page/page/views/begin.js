// A new flock: what is needed for a file to go on with, and no more.
import { el, put, heading } from '#page/dom.js';
import * as store from '#page/store.js';
import { whereField } from '#page/views/flock/place.js';
import { startQuestion } from '#page/views/flock/start.js';

/** @type {import('#page/views.js').View} */
export const begin = {
  id: 'begin',
  title: 'A new flock',
  inParts: false,
  needsFlock: false,
  show(root, app) {
    const { state } = app;
    /** @type {import('#page/engine.js').Answers} */
    const answers = {};
    /** Where each answer is complained of, and the control it is about. @type {Record<string, { wrong: HTMLElement, input: HTMLElement }>} */
    const places = {};
    let asked = 0;

    /** @param {boolean} isAll whether somebody wants to go on */
    async function ask(isAll) {
      const turn = ++asked;
      const begun = await state.engine.begin(answers, state.today);
      if (turn !== asked && !isAll) return null;
      for (const [name, { wrong, input }] of Object.entries(places)) {
        const messages = (begun.wrong ?? []).filter(each => (each.field === 'lambingFrom' ? 'tupIn' : each.field) === name);
        put(wrong, ...messages.map(each => el('p', { class: 'wrong' }, el('b', {}, `${each.message.charAt(0).toUpperCase()}${each.message.slice(1)}.`))));
        input.setAttribute('aria-invalid', String(messages.length > 0));
      }
      const isWrong = Object.values(places).some(({ input }) => input.getAttribute('aria-invalid') === 'true');
      if (isAll && isWrong) (Object.values(places).find(({ input }) => input.getAttribute('aria-invalid') === 'true')?.input ?? form).focus();
      return isWrong ? null : begun;
    }

    /** @param {'name' | 'keeper'} name @param {string} label @param {string} hint */
    function text(name, label, hint) {
      const input = el('input', { id: `begin-${name}`, autocomplete: 'off', 'aria-describedby': `begin-${name}-wrong begin-${name}-hint` });
      const wrong = el('div', { id: `begin-${name}-wrong` });
      places[name] = { wrong, input };
      input.addEventListener('input', () => { answers[name] = input.value; void ask(false); });
      return el('div', { class: 'field' }, el('label', { for: input.id }, label), el('p', { class: 'hint', id: `begin-${name}-hint` }, hint), wrong, input);
    }

    const name = text('name', 'What is the holding called?', 'Printed at the head of the wall planner and at the foot of every sheet.');
    const keeper = text('keeper', 'Your name', 'So that the sheet for a sitter can say who to ring. May be left blank.');
    const where = whereField(app, 'begin-place', (_, typed) => { answers.place = typed; void ask(false); });
    places.place = where;
    const start = startQuestion(state, 'begin-day', (way, day) => {
      answers.tupIn = way === 'tup-in' ? day : '';
      answers.lambingFrom = way === 'tup-in' ? '' : day;
      void ask(false);
    });
    places.tupIn = { wrong: start.wrong, input: start.day.input };
    const form = el('form', { class: 'form', novalidate: true, tabindex: -1 }, name, where.element, start.element, keeper,
      el('p', { class: 'go' }, el('button', { type: 'submit', class: 'main' }, 'Go on: the ewes'), el('a', { class: 'button', href: '#open' }, 'Back')));
    form.addEventListener('submit', async event => {
      event.preventDefault();
      const begun = await ask(true);
      if (!begun?.text || !begun.name) return;
      await state.open(begun.text, store.look(begun.name) ? store.freeName(begun.name) : begun.name, { saved: false });
      app.go('flock/ewes');
    });
    put(root, heading('A new flock', null), el('p', {}, 'Four answers, then the ewes. Everything can be changed later, and what you do not know yet may be left blank.'), form);
  },
};
