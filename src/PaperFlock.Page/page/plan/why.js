// Why the plan says so: asked of the engine when somebody opens it.
import { el, put } from '#page/dom.js';

/** @param {string} about for whoever hears the word alone @param {() => Promise<import('#page/engine.js').Why>} ask */
export function why(about, ask) {
  const said = el('div');
  const details = el('details', { class: 'why' }, el('summary', {}, 'why?', el('span', { class: 'unseen' }, ` ${about}`)), said);
  details.addEventListener('toggle', async () => {
    if (!details.open || said.hasChildNodes()) return;
    const answer = await ask().catch(() => null);
    put(said, answer === null ? 'The flock has changed meanwhile: open this view again.'
      : el('dl', {}, ...answer.lines.flatMap(({ label, text }) => [label === '' ? null : el('dt', {}, label), el('dd', {}, text)]).filter(each => each !== null)));
  });
  return details;
}
