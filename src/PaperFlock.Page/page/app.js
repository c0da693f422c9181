// The page itself: starts the engine, shows one view at a time, and keeps head and foot true.
import { el, put } from '#page/dom.js';
import { Engine } from '#page/engine.js';
import { State } from '#page/state.js';
import { views } from '#page/views.js';

/** @param {string} id */
const find = id => /** @type {HTMLElement} */ (document.getElementById(id));
const main = find('main');

async function start() {
  const engine = new Engine(new Blob([find('engine').textContent ?? '']), find('worker').textContent ?? '');
  find('engine').remove();
  const state = new State(engine);
  const description = await engine.describe();
  /** @type {import('#page/views.js').App} */
  const app = { state, description, go: id => { if (location.hash === `#${id}`) show(); else location.hash = id; } };
  /** @type {void | (() => void)} */
  let update;

  function show() {
    const [id, ...rest] = location.hash.slice(1).split('/');
    const wanted = views.find(view => view.id === id) ?? views[0];
    const view = wanted.needsFlock && !state.flock ? views[0] : wanted;
    main.replaceChildren();
    update = view.show(main, app, rest.join('/'));
    put(find('parts'), ...views.filter(each => each.inParts).map(each => el('li', {}, el('a', { href: `#${each.id}`, 'aria-current': each === view ? 'page' : null }, each.title))));
    document.title = `${view.title} · PaperFlock`;
    scrollTo(0, 0);
    main.querySelector('h1')?.focus({ preventScroll: true });
    foot();
  }

  function foot() {
    const { flock, reading } = state;
    find('undo').hidden = !state.canUndo;
    find('to-save').hidden = !flock;
    find('to-save').classList.toggle('main', state.isUnsaved);
    const kept = state.keeping === 'elsewhere' ? 'not kept: another window has this flock open too'
      : state.keeping === 'kept' ? 'kept in this browser'
      : 'not kept by this browser';
    put(find('foot'),
      flock ? `${reading?.holding ?? flock.name} · ${state.isUnsaved ? `not in a file yet, ${kept}` : 'saved'}` : 'No flock open',
      state.keeping === 'elsewhere' ? el('button', { type: 'button', onclick: () => state.keepApart() }, 'Keep this one apart') : null);
  }

  state.listen(() => { foot(); update?.(); });
  find('undo').addEventListener('click', async () => {
    await state.undo();
    if (!state.canUndo) main.focus();
  });
  document.querySelector('.skip')?.addEventListener('click', event => {
    // The address says which view is shown.
    event.preventDefault();
    main.focus();
  });
  addEventListener('hashchange', show);
  addEventListener('keydown', event => {
    if ((event.ctrlKey || event.metaKey) && event.key === 's' && state.flock) {
      event.preventDefault();
      app.go('save');
    }
  });
  addEventListener('beforeunload', event => { if (state.isUnsaved) event.preventDefault(); });
  show();
  document.documentElement.dataset.ready = 'true';
  void warm(engine, state);
}

/** The first packs take longest, so some are made until somebody asks for something. @param {Engine} engine @param {State} state */
async function warm(engine, state) {
  try {
    const sample = await engine.sample();
    for (let packs = 0; packs < 3 && engine.isIdle && !state.flock; packs++) await engine.pack(sample, {}, null, () => {});
  } catch {
    // Stopped, by somebody who wants something else.
  }
}

start().catch(fault => {
  put(main, el('h1', {}, 'This browser is too old, or too careful'),
    el('p', { role: 'alert' }, 'PaperFlock needs Firefox 115, Chrome 110, Edge 110, Safari 16.4, or a later one, with WebAssembly allowed.'),
    el('p', {}, fault instanceof Error ? fault.message : String(fault)));
});
