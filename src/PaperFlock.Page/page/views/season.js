// The season so far, a ewe a row: to be written.
import { put, heading } from '#page/dom.js';

/** @type {import('#page/views.js').View} */
export const season = {
  id: 'season',
  title: 'Season',
  inParts: true,
  needsFlock: true,
  show(root, app) {
    put(root, heading('The season so far', app.state.reading?.holding));
  },
};
