// The views of the page, in the order of the work. One is shown at a time; the address says which (#print).
import { open } from '#page/views/open.js';
import { begin } from '#page/views/begin.js';
import { flock } from '#page/views/flock.js';
import { season } from '#page/views/season.js';
import { plan } from '#page/views/plan.js';
import { print } from '#page/views/print.js';
import { save } from '#page/views/save.js';
import { next } from '#page/views/next.js';
import { mend } from '#page/views/mend.js';

/**
 * @typedef {object} App what a view may use
 * @property {import('#page/state.js').State} state
 * @property {import('#page/engine.js').Description} description
 * @property {(id: string) => void} go shows another view
 */

/**
 * @typedef {object} View
 * @property {string} id in the address
 * @property {string} title in the list of parts
 * @property {boolean} inParts stands in that list
 * @property {boolean} needsFlock shown only when a flock is open
 * @property {(root: HTMLElement, app: App, rest: string) => void | (() => void)} show builds it, once, when somebody comes to it; what it returns is called whenever the flock or the day has changed.
 * rest: what follows the id in the address, as in #flock/ewes
 */

/** @type {View[]} */
export const views = [open, begin, flock, season, plan, print, save, next, mend];

/** The view that follows by itself once a flock is open. */
export const afterOpening = 'plan';
