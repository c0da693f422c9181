// What it comes to. It follows by itself once a flock is open, so the shortest way is here: the day, make, save.
import { el, put, heading, count } from '#page/dom.js';
import { foundList } from '#page/found.js';
import { todayField } from '#page/today.js';
import { Maker, wholePackButton } from '#page/make.js';

/** @type {import('#page/views.js').View} */
export const plan = {
  id: 'plan',
  title: 'Plan',
  inParts: true,
  needsFlock: true,
  show(root, app) {
    const { state } = app;
    const maker = new Maker(state);
    const said = el('div');
    put(
      root,
      heading('What it comes to', state.reading?.holding),
      todayField(state),
      el('p', { class: 'go' }, wholePackButton(state, maker), el('a', { class: 'button', href: '#print' }, 'Go on: print')),
      maker.element,
      said);
    let last = 0;
    const update = async () => {
      const turn = ++last;
      const { flock, reading } = state;
      if (!flock || !reading) return;
      const plan = reading.ok ? await state.engine.plan(flock).catch(() => null) : null;
      // Something has been typed meanwhile.
      if (turn !== last) return;
      put(
        said,
        plan ? el('p', {}, el('b', {}, `${plan.summary}.`), ` ${plan.lambing}`) : el('p', { class: 'wrong' }, 'There are mistakes in the flock: with them nothing can be planned.'),
        reading.found.length === 0 ? null : el('section', { class: 'note' }, el('h2', {}, `${count(reading.found.length, 'thing')} to look at`), foundList(reading.found)));
    };
    void update();
    return update;
  },
};
