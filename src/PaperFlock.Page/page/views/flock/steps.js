// The steps of the form, in the order of the work, and which keys of the flock file belong to each.

/** @typedef {import('#page/engine.js').Path} Path */

/**
 * @typedef {object} Part of a step: keys of one section
 * @property {string[]} path of the section in the file
 * @property {string[]} keys shown at once, in this order; the others stand below, to be opened
 * @property {string[]} [leave] keys that belong to another step
 * @property {string} [head]
 * @property {string} [says]
 */

/**
 * @typedef {object} Step
 * @property {string} id in the address
 * @property {string} title in the list of steps
 * @property {string} head
 * @property {string} [says]
 * @property {Part[]} parts
 */

/** @type {Step[]} */
export const steps = [
  { id: 'place', title: 'Place', head: 'The place', parts: [{ path: ['holding'], keys: ['name', 'place', 'postcode', 'find', 'signal', 'sick-pen'], leave: ['keeper', 'contacts'] }] },
  {
    id: 'tup', title: 'Tup', head: 'The tup', parts: [
      { path: ['season'], keys: ['start', 'tup-out'] },
      { path: [], keys: ['groups'], says: 'Only where there is more than one tup, or he is to be named on the paper.' },
    ],
  },
  { id: 'ewes', title: 'Ewes', head: 'The ewes', parts: [] },
  { id: 'feed', title: 'Feed', head: 'Feed', parts: [{ path: ['feeds'], keys: ['forage', 'concentrate', 'method'] }, { path: ['fields'], head: 'Fields', says: 'Where they run by the lambs they carry, once they are scanned.', keys: ['singles', 'twins', 'triplets', 'not-in-lamb', 'with-lambs'] }] },
  { id: 'shed', title: 'Shed', head: 'The shed', parts: [{ path: ['housing'], keys: ['lambing', 'pens', 'lambing-pens'] }] },
  { id: 'people', title: 'People', head: 'People', parts: [{ path: ['holding'], keys: ['keeper', 'contacts'], leave: ['name', 'location', 'time-zone', 'grid-reference', 'postcode', 'find', 'signal', 'sick-pen'] }, { path: ['keeper-days'], head: 'Your days', keys: ['free', 'away'] }] },
  { id: 'jobs', title: 'Jobs', head: 'Jobs', parts: [{ path: [], keys: ['jobs'] }, { path: ['practice'], head: 'How it is done here', says: 'Only what is done differently here: what is left blank is as usual.', keys: ['shear', 'dag'] }] },
  { id: 'paper', title: 'Paper', head: 'Paper', parts: [{ path: ['print'], keys: ['paper', 'duplex', 'binding', 'units'] }] },
];

/** Of sections within sections, the keys shown at once; all where none are named here. @type {Record<string, string[]>} */
export const shownFirst = {
  'groups[]': ['name', 'tup', 'tup-in', 'tup-out', 'raddle', 'field'],
  'feeds.forage': ['kind', 'bale'],
  'feeds.concentrate': ['name', 'scoop', 'bag'],
  'housing.pens[]': ['name', 'length', 'width', 'trough'],
  'jobs[]': ['title', 'on', 'before', 'after', 'days', 'minutes-per-ewe'],
};

/** @param {Path} path of something in the file @returns {string} the step in which it is typed */
export function stepOf([top, next]) {
  if (top === 'holding') return next === 'keeper' || next === 'contacts' ? 'people' : 'place';
  if (top === 'season' || top === 'groups') return 'tup';
  if (top === 'feeds' || top === 'fields') return 'feed';
  if (top === 'housing') return 'shed';
  if (top === 'keeper-days') return 'people';
  if (top === 'practice' || top === 'jobs') return 'jobs';
  if (top === 'print') return 'paper';
  return top === 'ewes' || top === 'breeds' ? 'ewes' : 'place';
}
