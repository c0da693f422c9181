// What it comes to. It follows by itself once a flock is open, so the shortest way is here: the day, make, save.
import { el, put, heading, count } from '#page/dom.js';
import { foundList } from '#page/found.js';
import { todayField } from '#page/today.js';
import { Maker, wholePackButton } from '#page/make.js';
import { weeks } from '#page/plan/weeks.js';
import { due } from '#page/plan/due.js';
import { feed, stores } from '#page/plan/feed.js';
import { sheetPictures } from '#page/plan/sheets.js';

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
    /** @type {unknown} */
    let shown = null;
    const update = async () => {
      const { flock, reading } = state;
      // What is shown stays as it is, with what has been opened in it, until the flock or the day is another.
      if (!flock || !reading || shown === flock) return;
      shown = flock;
      const plan = reading.ok ? await state.engine.plan(flock).catch(() => null) : null;
      // Something has been typed meanwhile.
      if (shown !== flock) return;
      put(
        said,
        plan ? el('p', {}, el('b', {}, `${plan.summary}.`), ` ${plan.lambing}`) : el('p', { class: 'wrong' }, 'There are mistakes in the flock: with them nothing can be planned.'),
        reading.found.length === 0 ? null : el('section', { class: 'note' }, el('h2', {}, `${count(reading.found.length, 'thing')} to look at`), foundList(reading.found)),
        ...plan ? [
          weeks(state.engine, flock, plan),
          due(state.engine, flock, plan, sheetPictures(state.engine, flock, 'due', 'The sheet for the shed, as a picture', true)),
          feed(plan, sheetPictures(state.engine, flock, 'feed', 'The charts for the bins, as pictures', false)),
          stores(plan),
          plan.housing === '' ? null : el('section', {}, el('h2', {}, 'The shed'), el('p', {}, plan.housing)),
        ] : []);
    };
    void update();
    return update;
  },
};
