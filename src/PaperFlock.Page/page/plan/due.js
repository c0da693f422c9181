// Who lambs when, ewe by ewe.
import { el } from '#page/dom.js';
import { why } from '#page/plan/why.js';

/** @param {import('#page/engine.js').Engine} engine @param {import('#page/engine.js').Flock} flock @param {import('#page/engine.js').Plan} plan @param {Element} picture */
export function due(engine, flock, plan, picture) {
  if (plan.due.length === 0) return null;
  return el('section', {},
    el('h2', {}, 'Who lambs when'),
    picture,
    el('details', {}, el('summary', {}, 'The same as a list, with the reason for each'),
      el('ol', { class: 'jobs' }, ...plan.due.map(ewe => el('li', {},
        el('b', {}, ewe.called),
        ewe.likely ? ` ${'●'.repeat(ewe.lambs)} likely ${ewe.likely}; nine times in ten ${ewe.between}. ` : ` ${ewe.standing.replace('-', ' ')}. `,
        ...why(ewe.called, () => engine.whyEwe(flock, ewe.ewe)))))));
}
