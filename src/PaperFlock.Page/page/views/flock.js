// The flock, as a form: to be written.
import { put, heading } from '#page/dom.js';

/** @type {import('#page/views.js').View} */
export const flock = {
  id: 'flock',
  title: 'Flock',
  inParts: true,
  needsFlock: true,
  show(root, app) {
    put(root, heading('The flock', app.state.reading?.holding));
  },
};
