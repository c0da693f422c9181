// Why the plan says so: asked of the engine when somebody opens it.
import { el, put } from '#page/dom.js';

let last = 0;

/** A button, and what it opens. @param {string} about for whoever hears the word alone @param {() => Promise<import('#page/engine.js').Why>} ask @returns {Element[]} */
export function why(about, ask) {
  const said = el('div', { id: `why-${++last}`, hidden: true });
  const button = el('button', { type: 'button', class: 'why', 'aria-expanded': 'false', 'aria-controls': said.id }, 'why?', el('span', { class: 'unseen' }, ` ${about}`));
  button.addEventListener('click', async () => {
    said.hidden = !said.hidden;
    button.setAttribute('aria-expanded', String(!said.hidden));
    if (said.hidden || said.hasChildNodes()) return;
    const answer = await ask().catch(() => null);
    put(said, answer === null ? 'The flock has changed meanwhile: open this view again.'
      : el('dl', {}, ...answer.lines.flatMap(({ label, text }) => [label === '' ? null : el('dt', {}, label), el('dd', {}, text)]).filter(each => each !== null)));
  });
  return [button, said];
}
