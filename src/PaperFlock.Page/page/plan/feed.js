// What each lot of ewes is fed, step by step, and what to buy.
import { el } from '#page/dom.js';
import { why } from '#page/plan/why.js';

/** @typedef {import('#page/engine.js').Plan} Plan */

/** @param {Plan} plan @param {Element} picture */
export function feed(plan, picture) {
  if (plan.feed.length === 0) return null;
  return el('section', {},
    el('h2', {}, 'Feed'),
    el('p', {}, 'What one ewe gets a day. The charts for the bins reckon it for every number of heads.'),
    el('div', { class: 'boxes' }, ...plan.feed.map(({ code, who, ewes, steps }) => el('section', {},
      el('h3', {}, who),
      el('p', {}, el('span', { class: 'code' }, code), `: ${ewes.join(', ')}`),
      steps.every(step => step.each === null) ? el('p', {}, 'Forage alone, as much as they will eat.')
        : el('table', {},
          el('thead', {}, el('tr', {}, ...['from', 'a ewe, a day'].map(head => el('th', { scope: 'col' }, head)))),
          el('tbody', {}, ...steps.filter(step => !step.past).map(step => el('tr', {}, el('th', { scope: 'row', class: 'whole' }, step.from), el('td', {}, ...step.each === null ? ['forage alone'] : [el('b', {}, step.each), `, ${step.at}`])))))))),
    picture);
}

/** @param {Plan} plan */
export function stores(plan) {
  if (plan.stores.length === 0) return null;
  return el('section', {},
    el('h2', {}, 'Stores'),
    el('table', {},
      el('thead', {}, el('tr', {}, ...['what', 'how much', 'order no later than'].map(head => el('th', { scope: 'col' }, head)))),
      el('tbody', {}, ...plan.stores.map(item => el('tr', {},
        el('th', { scope: 'row' }, item.item, ' ', ...why(item.item, async () => ({ title: item.item, lines: [{ label: 'reckoned from', text: item.basis }, { label: 'needed from', text: item.neededFrom }] }))),
        el('td', {}, item.buy ?? (item.kg === null ? '' : `${item.kg} kg`)),
        el('td', {}, item.orderBy === null ? '' : item.overdue ? el('b', {}, `${item.orderBy}: overdue`) : item.orderBy))))));
}
