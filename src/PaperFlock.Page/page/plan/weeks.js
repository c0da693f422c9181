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
      trouble ? el('b', {}, `${trouble}. `) : null,
      ...why(`${title}, ${day}`, () => engine.whyJob(flock, index)));
  };
  /** @param {Plan['weeks']} some */
  const list = some => el('ol', { class: 'weeks' }, ...some.map(({ from, jobs, rounds }) => el('li', {},
    el('h3', {}, 'Week from ', el('span', { class: 'whole' }, from)),
    el('ul', { class: 'jobs' }, ...jobs.map(job)),
    rounds === null ? null : el('p', {}, el('b', {}, String(rounds)), ` round${rounds === 1 ? '' : 's'} a day`))));
  const past = plan.jobs.map((_, i) => i).filter(i => plan.jobs[i].past && !plan.weeks.some(week => week.jobs.includes(i)));
  const later = plan.weeks.slice(near);
  return el('section', {},
    el('h2', {}, 'The next four weeks'),
    plan.weeks.length === 0 ? el('p', {}, 'Nothing more is to be done this season.') : list(plan.weeks.slice(0, near)),
    later.length > 0 ? el('details', {}, el('summary', {}, `All weeks after that (${count(later.flatMap(week => week.jobs).length, 'job')})`), list(later)) : null,
    past.length > 0 ? el('details', {}, el('summary', {}, `What is past (${count(past.length, 'job')})`), el('ul', { class: 'jobs' }, ...past.map(job))) : null,
    plan.gatherings.length > 0 ? el('details', {}, el('summary', {}, `The ewes are gathered on ${count(plan.gatherings.length, 'day')}`),
      el('ul', {}, ...plan.gatherings.map(({ day, jobs }) => el('li', {}, el('b', {}, day), `: ${jobs}`)))) : null);
}
