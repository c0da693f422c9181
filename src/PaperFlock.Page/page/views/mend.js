// A file that is no YAML cannot be shown as a form. Here it is as text, with what is wrong and where.
import { el, put, heading } from '#page/dom.js';
import { foundList } from '#page/found.js';
import { afterOpening } from '#page/views.js';

/** @type {import('#page/views.js').View} */
export const mend = {
  id: 'mend',
  title: 'Mend the file',
  inParts: false,
  needsFlock: true,
  show(root, app) {
    const { state } = app;
    const text = el('textarea', { id: 'text', spellcheck: false, wrap: 'off' });
    text.value = state.flock?.text ?? '';
    const found = el('div', { role: 'status' });
    put(
      root,
      heading('Mend the file', state.flock?.name),
      el('p', {}, 'There is a slip in the file itself, so it cannot be shown in fields yet. It often is one mark: a quote, a bracket, a space too few.'),
      found,
      el('div', { class: 'field' }, el('label', { for: 'text' }, 'The file, line by line'), text),
      el('p', { class: 'go' }, el('button', {
        type: 'button',
        class: 'main',
        onclick: async () => {
          await state.setText(text.value);
          if (state.reading?.values !== null) app.go(afterOpening);
        },
      }, 'Look again')));
    const update = () => put(found, foundList(state.reading?.found ?? [], { lines: true }));
    update();
    return update;
  },
};
