// Open: start a flock, go on with one, open a file, look at the sample.
import { el, put, heading } from '#page/dom.js';
import { foundList } from '#page/found.js';
import { Trouble } from '#page/engine.js';
import * as store from '#page/store.js';
import { afterOpening } from '#page/views.js';

/** @type {import('#page/views.js').View} */
export const open = {
  id: 'open',
  title: 'Open',
  inParts: true,
  needsFlock: false,
  show(root, app) {
    const trouble = el('div', { role: 'alert' });
    put(
      root,
      heading('Your ewes, on paper'),
      el('p', {}, 'Type your ewes in once. Out comes paper for the wall, the feed bins, the shed and the kitchen: what to do each week, who lambs when, how much to feed, and sheets for whoever minds them while you are away.'),
      el('p', {}, el('b', {}, 'Nothing you type leaves this computer.'), ' No internet, no account, nothing to install.'),
      store.keeps ? null : el('p', { class: 'note' }, el('b', {}, 'This browser keeps nothing.'), ' It may be a private window. All else works: save the flock file before you close this page.'),
      trouble,
      el('div', { class: 'boxes' }, ...store.kept().map(kept => goOn(app, kept)), begin(), file(app, trouble), sample(app)));
  },
};

/** @param {import('#page/views.js').App} app @param {store.Kept} kept */
function goOn(app, kept) {
  const when = el('span');
  const at = new Date(kept.at);
  const day = [at.getFullYear(), at.getMonth() + 1, at.getDate()].map(part => String(part).padStart(2, '0')).join('-');
  app.state.engine.readDay(day, day).then(read => put(when, ` on ${read.day?.words} at ${String(at.getHours()).padStart(2, '0')}:${String(at.getMinutes()).padStart(2, '0')}`)).catch(() => {});
  return el('section', {},
    el('button', { type: 'button', class: 'main big', onclick: async () => opened(app, kept.text, kept.name, kept.saved) }, `Go on with ${kept.holding}`),
    el('p', {}, `${kept.name}, kept in this browser`, when, kept.saved ? '.' : ', and not in a file yet.'));
}

function begin() {
  return el('section', {},
    el('a', { class: 'button big', href: '#begin' }, 'Start a new flock'),
    el('p', {}, 'Ten minutes. Have to hand the day the tup goes in, and your tag numbers, in a list or a notebook.'),
    el('p', {}, 'Were they in here last season? Open that file, and begin the next season under ', el('b', {}, 'Save'), '.'));
}

/** @param {import('#page/views.js').App} app @param {Element} trouble */
function file(app, trouble) {
  const input = el('input', { type: 'file', id: 'file', accept: '.yaml,.yml' });
  input.addEventListener('change', async () => {
    const chosen = input.files?.[0];
    if (!chosen) return;
    put(trouble, null);
    try {
      await openFile(app, chosen, trouble);
    } catch (fault) {
      // A folder, or a file on a stick that was pulled out.
      put(trouble, el('p', { class: 'note alarm' }, fault instanceof Trouble ? `${fault.message}.` : `${chosen.name} cannot be read. Is it a file, and is the stick still in?`));
    }
    input.value = '';
  });
  return el('section', {},
    el('label', { for: 'file', class: 'big' }, 'Open a flock file'),
    el('p', {}, 'The file you saved last time, perhaps on your memory stick. Its name ends in ', el('code', {}, '.yaml'), '.'),
    input);
}

/** @param {import('#page/views.js').App} app @param {File} chosen @param {Element} trouble */
async function openFile(app, chosen, trouble) {
  // Of a larger file, a byte too many is enough to say so.
  const bytes = new Uint8Array(await chosen.slice(0, app.description.mostBytes + 1).arrayBuffer());
  const read = await app.state.engine.open(bytes, chosen.name, app.state.today);
  if (read.text === null) {
    put(trouble, el('div', { class: 'note alarm' }, el('p', {}, `${chosen.name} is no flock file to go on with:`), foundList(read.found)));
    return;
  }
  const text = read.text;
  const kept = store.look(chosen.name);
  if (!kept || kept.saved || kept.text === text) return opened(app, text, chosen.name, true);
  put(trouble, el('div', { class: 'note' },
    el('h2', {}, 'Which one?'),
    el('p', {}, `This browser has kept changes to ${chosen.name} that are in no file yet.`),
    el('p', { class: 'go' },
      el('button', { type: 'button', class: 'main', onclick: () => opened(app, kept.text, kept.name, false) }, 'Go on with what was kept'),
      el('button', { type: 'button', onclick: () => opened(app, text, chosen.name, true) }, 'Open the file, and lose those changes'))));
}

/** @param {import('#page/views.js').App} app */
function sample(app) {
  return el('section', {},
    el('button', { type: 'button', onclick: async () => {
      const { text, name, today } = await app.state.engine.sample();
      const free = store.look(name) && store.look(name)?.text !== text ? store.freeName(name) : name;
      await app.state.open(text, free, { saved: true, today });
      app.go(afterOpening);
    } }, 'Look at a sample'),
    el('p', {}, '24 ewes that do not exist. Change them, print them, throw them away.'));
}

/** @param {import('#page/views.js').App} app @param {string} text @param {string} name @param {boolean} saved */
async function opened(app, text, name, saved) {
  await app.state.open(text, name, { saved });
  app.go(app.state.reading?.values === null ? 'mend' : afterOpening);
}
