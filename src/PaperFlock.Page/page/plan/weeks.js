// What is to be done, week by week; the next four weeks stand open.
import { el, count } from '#page/dom.js';
import { why } from '#page/plan/why.js';

/** @typedef {import('#page/engine.js').Plan} Plan */
/** @typedef {import('#page/engine.js').Flock} Flock */

const near = 4;

/** @param {import('#page/engine.js').Engine} engine @param {Flock} flock @param {Plan} plan */
export function weeks(engine, flock, plan) {
  /** @param {number} index */
  const job = index => {
    const { day, title, group, trouble, past } = plan.jobs[index];
    return el('li', {},
      el('b', {}, `${day}: ${title}.`), group ? ` ${group}. ` : ' ', past ? 'Its day is past. ' : null,
      trouble ? el('span', { class: 'wrong' }, `${trouble}. `) : null,
      why(`${title}, ${day}`, () => engine.whyJob(flock, index)));
  };
  /** @param {Plan['weeks']} some */
  const table = some => el('table', { class: 'weeks' },
    el('thead', {}, el('tr', {}, ...['week from', 'what to do', 'rounds a day, at most'].map(head => el('th', { scope: 'col' }, head)))),
    el('tbody', {}, ...some.map(({ from, jobs, rounds }) => el('tr', {},
      el('th', { scope: 'row' }, from),
      el('td', {}, el('ul', {}, ...jobs.map(job))),
      el('td', {}, rounds === null ? '' : String(rounds))))));
  const past = plan.jobs.map((_, i) => i).filter(i => plan.jobs[i].past && !plan.weeks.some(week => week.jobs.includes(i)));
  return el('section', {},
    el('h2', {}, 'The next four weeks'),
    plan.weeks.length === 0 ? el('p', {}, 'Nothing more is to be done this season.') : table(plan.weeks.slice(0, near)),
    plan.weeks.length > near ? el('details', {}, el('summary', {}, `All weeks after that (${count(plan.weeks.slice(near).flatMap(week => week.jobs).length, 'job')})`), table(plan.weeks.slice(near))) : null,
    past.length > 0 ? el('details', {}, el('summary', {}, `What is past (${count(past.length, 'job')})`), el('ul', { class: 'jobs' }, ...past.map(job))) : null,
    plan.gatherings.length > 0 ? el('details', {}, el('summary', {}, `The ewes are gathered on ${count(plan.gatherings.length, 'day')}`),
      el('ul', {}, ...plan.gatherings.map(({ day, jobs }) => el('li', {}, el('b', {}, day), `: ${jobs}`)))) : null);
}
