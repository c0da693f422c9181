// Save: the flock file, what this browser keeps, a calendar file.
import { el, put, heading, download } from '#page/dom.js';
import { Trouble } from '#page/engine.js';
import { forgetPacks } from '#page/kept-pack.js';
import * as store from '#page/store.js';

/** @type {import('#page/views.js').View} */
export const save = {
  id: 'save',
  title: 'Save',
  inParts: false,
  needsFlock: true,
  show(root, app) {
    const { state } = app;
    const name = el('input', { id: 'save-as', value: state.flock?.name ?? '', autocomplete: 'off' });
    const said = el('p', { role: 'status' });
    const calendar = el('p', { role: 'status' });
    const form = el('form', { class: 'note', novalidate: true },
      el('h2', {}, 'The flock file'),
      el('p', {}, 'One small file holds all you typed. Keep it on your memory stick and open it here next time, on any computer.'),
      el('div', { class: 'field' }, el('label', { for: 'save-as' }, 'File name'), el('p', { class: 'hint' }, 'Your browser puts it with its downloads, or asks you where.'), name),
      el('button', { type: 'submit', class: 'main' }, 'Save the flock file'),
      said);
    form.addEventListener('submit', async event => {
      event.preventDefault();
      const flock = await state.current();
      const file = fileName(name.value);
      name.value = file;
      download(flock.text, file, 'application/yaml');
      state.markSaved(file);
      put(said, `${file} is with your browser’s downloads, or where you put it.`);
    });
    put(
      root,
      heading('Save', state.reading?.holding),
      form,
      el('section', { class: 'note' },
        el('h2', {}, 'Kept in this browser'),
        el('p', {}, store.keeps
          ? 'What you type is kept here as you go, in case the page is closed by mistake. It is no substitute for the file.'
          : 'This browser keeps nothing: save the file before you close this page.'),
        store.keeps ? el('p', { class: 'go' }, el('button', {
          type: 'button',
          onclick: async () => {
            if (!state.isUnsaved || confirm('Some of it is in no file yet. Leave nothing of it behind?')) {
              store.kept().forEach(kept => store.forget(kept.name));
              await forgetPacks();
              location.hash = '';
              location.reload();
            }
          },
        }, 'Somebody else’s computer? Leave nothing behind')) : null),
      el('section', { class: 'note' },
        el('h2', {}, 'For a phone or another calendar'),
        el('p', {}, 'Every job on its day.'),
        el('button', {
          type: 'button',
          onclick: async () => {
            try {
              const { text, file } = await state.engine.calendar(await state.current());
              download(text, file, 'text/calendar');
              put(calendar, `${file} is with your browser’s downloads, or where you put it.`);
            } catch (fault) {
              put(calendar, fault instanceof Trouble ? `${fault.message}.` : 'That did not work.');
            }
          },
        }, 'Save a calendar file'),
        calendar),
      el('section', { class: 'note' },
        el('h2', {}, 'When the season is over'),
        el('p', {}, 'The ewes that are still here, with all that goes on being true of them, in a file of their own.'),
        el('p', {}, el('a', { class: 'button', href: '#next' }, 'Begin the next season'))));
  },
};

/** A name every disk takes, with the ending by which it is found again. @param {string} typed */
function fileName(typed) {
  const plain = typed.replace(/[\\/:*?"<>|\u0000-\u001f]/g, ' ').trim().replace(/\.ya?ml$/i, '');
  return `${plain === '' ? 'flock' : plain}.yaml`;
}
