// The season so far, in the order of the sheets that come back with pencil on them. Every answer is written at once, and can be undone.
import { el, put, heading, download, count } from '#page/dom.js';
import { dayField } from '#page/day-field.js';
import { todayField } from '#page/today.js';
import { listAt, textAt } from '#page/values.js';
import { Trouble } from '#page/engine.js';
import { changes } from '#page/season/words.js';
import { movesByKeys, row } from '#page/season/rows.js';
import { scanRow } from '#page/season/scan.js';
import { marksRow } from '#page/season/marks.js';
import { lossesRow } from '#page/season/losses.js';
import { lambingsRow } from '#page/season/lambings.js';

/** @typedef {import('#page/views.js').App} App */
/** @typedef {import('#page/engine.js').Season} Season */
/** @typedef {ReturnType<typeof row>} MadeRow */

/** The sheets, by their word in the address. */
const sheets = {
  scan: 'Scan', marks: 'Raddle marks', losses: 'Losses', lambings: 'Lambings',
};

/** @type {import('#page/views.js').View} */
export const season = {
  id: 'season',
  title: 'Season',
  inParts: true,
  needsFlock: true,
  show(root, app, rest) {
    const { state } = app;
    const sheet = rest in sheets ? /** @type {keyof typeof sheets} */ (rest) : 'scan';
    const before = state.reading;
    const list = el('div', { class: 'rows' });
    const changed = el('section', { class: 'note changed', 'aria-label': 'What has changed' });
    put(
      root,
      heading('The season so far', before?.holding),
      todayField(state),
      el('nav', { 'aria-label': 'Which sheet have you written on?', class: 'sheets' },
        el('p', {}, el('b', {}, 'Which sheet have you written on?')),
        el('ul', {}, ...Object.entries(sheets).map(([word, title]) => el('li', {}, el('a', { class: 'button', href: `#season/${word}`, 'aria-current': word === sheet ? 'true' : null }, title))))),
      el('div', { class: 'beside' }, list, changed));

    /** @type {MadeRow[]} */
    let rows = [];
    let tags = '';
    const update = () => {
      // Somebody has undone more than answers: other ewes stand in the file.
      if (tags !== '' && tags !== tagsOf(app)) return void fill();
      for (const each of rows) each.update();
      list.querySelector('.births')?.toggleAttribute('hidden', !anyLambed(app));
      const all = changes(before?.values, state.reading?.values, { ...before?.days, ...state.reading?.days });
      put(changed, ...changedSince(app, all));
    };
    const fill = async () => {
      tags = tagsOf(app);
      const known = await state.engine.season(await state.current()).catch(fault => {
        if (fault instanceof Trouble) return null;
        throw fault;
      });
      rows = build(app, sheet, known, list, () => update());
      update();
    };
    void fill();
    return update;
  },
};

/** @param {App} app */
const tagsOf = app => JSON.stringify(listAt(app.state.reading?.values, ['ewes']).map(her => textAt(her, ['tag'])));

/** @param {App} app @param {keyof typeof sheets} sheet @param {Season | null} known null where there are mistakes in the flock @param {HTMLElement} list @param {() => void} update @returns {MadeRow[]} */
function build(app, sheet, known, list, update) {
  const { state } = app;
  let day = state.today;
  const common = dayField(state, { id: 'sheet-day', label: sheet === 'marks' ? 'The day you looked' : 'The day it happened', quick: true }, (typed, isDone) => {
    if (!isDone) return;
    day = typed;
    update();
  });
  void state.engine.readDay(day, day).then(read => common.show(day, read.day?.words));
  const all = listAt(state.reading?.values, ['ewes']).map((_, i) => i);
  const lambed = known?.lambed ?? all.map(ewe => ({ ewe, likely: '' }));
  const { lead, ewes, make } = {
    scan: { lead: [el('p', {}, 'Touch the lambs she carries. On a keyboard press 0 to 5: it goes on to the next ewe. Backspace goes back, Delete takes the answer away.')], ewes: known?.scan ?? all, make: scanRow },
    marks: { lead: [common.element, el('p', {}, 'Tick every ewe with a fresh mark that day. A mark on a wrong day: say that day above, and take the tick away.')], ewes: known ? known.marks.flatMap(group => group.ewes) : all, make: marksRow(() => day) },
    losses: { lead: [common.element, el('p', {}, 'She stays in the file, and on her card.'), known ? el('p', {}, el('b', {}, 'Lost her lambs? '), `${known.care}.`) : null], ewes: known?.losses ?? all, make: lossesRow(() => day) },
    lambings: { lead: [el('p', {}, 'In the order of the sheet, as they were due.'), births(app)], ewes: lambed.map(each => each.ewe), make: lambingsRow(new Map(lambed.map(each => [each.ewe, each.likely]))) },
  }[sheet];
  // On paper each group of the tup has a table of its own, and the numbers go on.
  const groups = new Map(sheet === 'marks' ? known?.marks.map(({ group, tup, with: days, ewes: [first] }) =>
    [first, el('h2', { class: 'group' }, [group || 'The flock', tup && `tup ${tup}`, days].filter(each => each).join(', '))]) : []);
  const rows = ewes.map((ewe, i) => row(app, ewe, i + 1, make));
  put(list,
    ...lead,
    known ? null : el('p', { class: 'wrong' }, 'There are mistakes in the flock. Until they are put right the rows stand in the order of the file, not of the paper.'),
    ...rows.flatMap((each, i) => [groups.get(ewes[i]) ?? null, each.element]),
    rows.length === 0 ? el('p', {}, el('b', {}, sheet === 'marks' ? 'No tup wears raddle in this flock: there is no such sheet.' : 'No ewe is on this sheet.')) : null);
  movesByKeys(list, rows);
  return rows;
}

/** @param {App} app */
const anyLambed = app => listAt(app.state.reading?.values, ['ewes']).some(her => textAt(her, ['lambed']) !== '');

/** @param {App} app */
function births(app) {
  const said = el('span', { role: 'status' });
  return el('p', { class: 'go births', hidden: !anyLambed(app) }, el('button', {
    type: 'button',
    onclick: async () => {
      try {
        const { text, file } = await app.state.engine.births(await app.state.current());
        download(text, file, 'text/csv');
        put(said, `${file} is with your browser’s downloads, or where you put it.`);
      } catch (fault) {
        put(said, fault instanceof Trouble ? `${fault.message.charAt(0).toUpperCase()}${fault.message.slice(1)}.` : 'That did not work.');
      }
    },
  }, 'Save a list of the lambs, for the flock book'), said);
}

/** @param {App} app @param {ReturnType<typeof changes>} all */
function changedSince(app, all) {
  return [
    el('h2', { tabindex: -1 }, all.length === 0 ? 'Nothing changed yet' : `${count(all.length, 'change')} since you came here`),
    el('p', {}, all.length === 0 ? 'What you change is written down at once, and listed here.' : 'Written down. Some sheets in your binder no longer agree: under Print you can make just those.'),
    el('ul', {}, ...all.map(({ ewe, says, back }) => el('li', {}, el('b', {}, ewe), `: ${says} `, el('button', { type: 'button', class: 'small', 'aria-label': `Put back: ${ewe}, ${says}`, onclick: () => putBack(app, back) }, 'Put back')))),
    all.length === 0 ? null : el('p', { class: 'go' }, el('a', { class: 'button', href: '#print' }, 'Go on: print what changed')),
  ].filter(each => each !== null);
}

/** @param {App} app @param {import('#page/engine.js').Edit} back */
async function putBack(app, back) {
  await app.state.edit([back]);
  // The button that was pressed is gone.
  /** @type {HTMLElement | null} */ (document.querySelector('.changed h2'))?.focus();
}
