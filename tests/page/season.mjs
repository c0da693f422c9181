// A keeper comes back with pencil on paper: scan, marks, a loss and a lambing are written down, by keys and by touch, and what changed is printed. In a browser of Debian's.
// Usage: node season.mjs chrome|firefox PAGE.html [FOLDER FOR PICTURES]
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { downloaded, launch, named, openPage } from './browser.mjs';
import { personAt, take } from './person.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const [, , browser, html, pictures] = process.argv;
const hollinBank = readFileSync(join(root, 'flocks/hollin-bank.yaml'), 'utf8');
const scratch = mkdtempSync(join(tmpdir(), 'paperflock-season-'));

const launched = await launch(browser);
const { page, asked, complaints } = await openPage(launched, html);
page.on('dialog', dialog => dialog.accept());
const me = personAt(page, `${browser}-season`, pictures);

const setDay = async day => {
  await (await me.labelled('Today')).evaluate((input, value) => { input.value = value; input.dispatchEvent(new Event('input', { bubbles: true })); }, day);
  await page.waitForFunction(() => document.querySelector('.today .words').textContent !== '');
};
const row = name => page.waitForSelector(`::-p-xpath(//fieldset[contains(@class, "row")][.//b[normalize-space() = "${name}"]])`);
const inRow = async (name, css) => (await row(name)).waitForSelector(css);
const rowSays = (name, words) => page.waitForFunction((called, wanted) => [...document.querySelectorAll('.row')].find(each => each.querySelector('b').textContent === called)?.innerText.includes(wanted), {}, name, words);
const changedSays = words => page.waitForFunction(wanted => document.querySelector('.changed').innerText.includes(wanted), {}, words);
const changedSaysNot = words => page.waitForFunction(wanted => !document.querySelector('.changed').innerText.includes(wanted), {}, words);
const focused = () => page.evaluate(() => document.activeElement.closest('.row')?.querySelector('b').textContent);
let saves = 0;
/** What the flock file says now, saved under a name of its own. */
const file = async () => {
  const name = `saved-${++saves}.yaml`;
  await me.go('save');
  await page.$eval('#save-as', (input, value) => { input.value = value; }, name);
  await me.press('Save the flock file');
  return (await downloaded(launched, name)).toString('utf8');
};
const open = async (name, text = hollinBank) => {
  writeFileSync(join(scratch, name), text);
  await me.openFile(join(scratch, name));
};
/** Lines that are other than in the sample, and were they added or replaced. */
const other = text => {
  const [now, before] = [text.split('\n'), hollinBank.split('\n')];
  const first = now.findIndex((line, i) => line !== before[i]);
  const last = now.length - now.findLastIndex((line, i) => line !== before[before.length - now.length + i]);
  return first < 0 ? [] : now.slice(first, now.length - last + 1).map(line => line.trim());
};

const steps = {
  async 'a scan, key after key, in the order of the paper'() {
    await open('scanned.yaml');
    await setDay('2026-11-25');
    await me.go('season/scan');
    await row('Sorrel');
    const numbers = await page.$$eval('.row legend', legends => legends.slice(0, 3).map(legend => legend.innerText.replace(/\s+/g, ' ')));
    assert.deepEqual(numbers, ['1 Bracken ZZ 0123456 00101', '2 Campion ZZ 0123456 00102', '3 Sorrel ZZ 0123456 00103']);
    await (await inRow('Bracken', ':checked')).focus();
    await page.keyboard.press('2');
    await page.keyboard.press('1');
    assert.equal(await focused(), 'Sorrel');
    await page.keyboard.press('Backspace');
    assert.equal(await focused(), 'Campion');
    await changedSays('Campion: scan: 2, now 1');
    await changedSaysNot('Bracken');
    await me.look('scan');
    // A touch does the same, and what was touched by mistake is put back.
    await (await inRow('Yarrow', 'input[value="3"]')).evaluate(input => input.click());
    await changedSays('2 changes');
    await me.press('Put back: Yarrow, scan: 2, now 3');
    await changedSays('1 change');
    assert.deepEqual(other(await file()), ['scan: 1']);
    for (let answers = 3; answers > 0; answers--) await me.press('Undo');
    await page.waitForFunction(() => document.querySelector('#undo').hidden);
    assert.equal(await file(), hollinBank);
  },

  async 'raddle marks of one day'() {
    await open('marked.yaml', hollinBank.replace('    marks: [2026-08-14]\n', ''));
    await setDay('2026-11-25');
    await me.go('season/marks');
    await me.type('The day you looked', '14 Aug');
    await page.keyboard.press('Tab');
    await page.waitForFunction(() => document.querySelector('#sheet-day').value === 'Fri 14 Aug 2026');
    await (await inRow('Bracken', 'input')).evaluate(input => input.click());
    await rowSays('Bracken', 'marked Fri 14 Aug 2026');
    await me.says('Paddock, tup Damson, Mon 17 Aug 2026 to Mon 21 Sep 2026');
    await me.look('marks');
    assert.match(await file(), /name: Bracken\n(.*\n)*?    marks: \[2026-08-14\]\n/);
  },

  async 'a loss, and what is wrong with one in the words of check'() {
    await open('lost.yaml');
    await setDay('2026-12-03');
    await me.go('season/losses');
    await (await inRow('Campion', 'select')).select('died');
    await rowSays('Campion', 'The day she went');
    await changedSays('Campion: gone: nothing, now');
    const day = await inRow('Campion', '[id$="gone-on"]');
    assert.equal(await day.evaluate(input => input.value), 'Thu 3 Dec 2026');
    await me.type(day, '9 Dec 2026');
    await page.keyboard.press('Tab');
    await page.waitForSelector('.row.has-wrong');
    await me.look('loss-mistake');
    await me.type(day, 'yesterday');
    await page.keyboard.press('Tab');
    await page.waitForFunction(() => !document.querySelector('.row.has-wrong'));
    assert.deepEqual(other(await file()), ['gone: {on: 2026-12-02, why: died}']);
    await me.go('season/losses');
    await (await inRow('Sorrel', 'input[type=checkbox]')).evaluate(input => input.click());
    await rowSays('Sorrel', 'The day she was seen to have lost them');
    await me.look('losses');
  },

  async 'a lambing: the day, the time, alive, dead, help, and the lambs for the flock book'() {
    await open('lambed.yaml');
    await setDay('2027-01-09');
    await me.go('season/lambings');
    await row('Vetch');
    const first = await page.$eval('.row b', name => name.textContent);
    assert.equal(first, 'Sorrel');
    await (await inRow('Bracken', 'summary')).click();
    await me.type(await inRow('Bracken', '[id$="-lambed"]'), '8 Jan');
    await page.keyboard.press('Tab');
    await rowSays('Bracken', 'lambed Fri 8 Jan 2027');
    await me.type(await inRow('Bracken', '[id$="-time"]'), '03:20');
    await page.keyboard.press('Tab');
    await (await inRow('Bracken', '[name$="lambs-alive"][value="2"]')).evaluate(input => input.click());
    await (await inRow('Bracken', '[name$="lambs-dead"][value="0"]')).evaluate(input => input.click());
    await (await inRow('Bracken', '[id$="-help"]')).select('hand');
    await rowSays('Bracken', 'lambed Fri 8 Jan 2027 at 03:20, 2 alive, 0 dead');
    await (await inRow('Bracken', '.book summary')).click();
    await (await inRow('Bracken', '[id$="lamb-0"]')).select('ewe');
    await me.type(await inRow('Bracken', '[id$="lamb-0-weight"]:enabled'), '4.5 kg');
    await page.keyboard.press('Tab');
    await (await inRow('Bracken', '[id$="lamb-1"]')).select('ram');
    await inRow('Bracken', '[id$="lamb-1-tag"]:enabled');
    await me.look('lambing');
    await me.press('Save a list of the lambs, for the flock book');
    const births = (await downloaded(launched, 'lambed-births.csv')).toString('utf8');
    assert.match(births, /^ZZ 0123456 00101,Bracken,Bramley,\w+,2027-01-08,03:20,2,alive,2,ewe,,4\.5,hand,[\w ]+\r$/m);
    assert.equal(births.trim().split('\n').length, 3);
    await me.go('season/lambings');
    const tom = await inRow('Bracken', 'summary');
    await tom.evaluate(summary => summary.scrollIntoView({ block: 'center' }));
    await me.press('Put back: Bracken, help: nothing, now hand');
    await changedSaysNot('help');
  },

  async 'what it comes to, with reasons and pictures'() {
    await open('plan.yaml');
    await setDay('2026-11-25');
    await me.go('plan');
    await me.says('Week from Mon 23 Nov 2026');
    assert.equal((await page.$$('#today')).length, 1);
    assert.equal((await page.$$('::-p-aria([name="Make the whole pack"][role="button"])')).length, 1);
    await page.$eval('.weeks .why', button => button.click());
    await page.waitForFunction(() => document.querySelector('.weeks dl')?.innerText.includes('any use'));
    await page.waitForSelector('main svg');
    const drawn = await page.$$eval('main svg text', texts => texts.map(text => text.textContent).join(' '));
    for (const name of ['Bracken', 'Vetch']) assert.ok(drawn.includes(name), `${name} is not in the picture`);
    await (await page.waitForSelector('::-p-xpath(//summary[contains(., "charts for the bins")])')).click();
    await page.waitForFunction(() => document.querySelectorAll('main svg').length > 2);
    await me.look('plan');
  },

  async 'one leaf, a draft, and changed leaves since an issue that is chosen'() {
    await me.go('print');
    await me.type('The code at its foot', 'card-00101');
    await me.press('Make these sheets');
    await me.says('plan-CARD-00101.pdf');
    await me.type('The code at its foot', 'CARD-00999');
    await me.press('Make these sheets');
    await me.says('There is no leaf');
    await me.press('Make a draft');
    await me.says('plan-draft.pdf');
    await me.press('Make the whole pack');
    await me.says('plan.pdf');
    await me.press('Save the PDF');
    await downloaded(launched, 'plan.pdf');
    await me.go('season/losses');
    await (await inRow('Campion', 'select')).select('sold');
    await changedSays('Campion');
    await me.press('Go on: print what changed', 'link');
    await setDay('2026-12-01');
    await (await me.labelled('The PDF you made last')).uploadFile(join(launched.downloads, 'plan.pdf'));
    await me.says('Issue 1, Wed 25 Nov 2026');
    await me.press('Make the changed sheets');
    await me.says('to put in');
    assert.match(await me.text(), /issue 2: [1-9].* to take out since issue 1 of Wed 25 Nov 2026/i);
    await me.look('print');
    assert.doesNotMatch(await me.text(), /`|--\w/);
  },

  async 'the pack made here last is what changes are counted from'() {
    await open('again.yaml');
    await setDay('2026-11-25');
    await me.go('print');
    await me.press('Make the whole pack');
    await me.says('Ready');
    await me.says('Issue 1, Wed 25 Nov 2026');
    await me.press('Make the changed sheets');
    await me.says('Nothing to print');
    // The page is closed, and another day it is opened again.
    await page.reload();
    await page.waitForSelector('html[data-ready]');
    await open('again.yaml');
    await setDay('2026-11-25');
    await me.go('print');
    await me.says('again.pdf is the newest that was made in this browser');
    await me.press('Make the changed sheets');
    await me.says('Nothing to print');
  },

  async 'the next season is begun from this one'() {
    await open('hollin-bank.yaml', hollinBank.replace('    scan: 2\n', '    scan: 2\n    gone: {on: 2026-11-20, why: sold}\n'));
    await setDay('2027-03-01');
    await me.go('save');
    await (await named(page, 'Begin the next season', 'link')).click();
    await me.type('The day the tup goes in', '1 Aug 2026');
    await me.press('Begin the next season');
    await me.says('The tup went in on Mon 10 Aug 2026 last season');
    await me.look('next-wrong');
    await me.type('The day the tup goes in', '9 Aug 2027');
    await me.press('Begin the next season');
    await me.says('hollin-bank-2027.yaml is begun');
    await me.says('23 ewes, tup in Mon 9 Aug 2027');
    await me.says('Left behind');
    await me.look('next');
    const begun = await file();
    assert.match(begun, /tup-in: 2027-08-09/);
    assert.doesNotMatch(begun, /^ {4}(marks: \[|scan: \d)/m);
  },

  async 'three hundred ewes: how far it is can be seen, and it can be stopped'() {
    const [head, ewes] = hollinBank.split('\newes:');
    const ewe = ewes.split(/(?=\n  - tag:)/)[1];
    const many = Array.from({ length: 300 }, (_, i) => ewe.replace('00101', String(101 + i).padStart(5, '0')).replace('Bracken', `Bracken ${i}`)).join('');
    await open('many.yaml', `${head}\newes:${many}\n`);
    await me.go('print');
    await me.press('Make the whole pack');
    await page.waitForFunction(() => document.querySelector('progress')?.value > 0 && /Laying out|Printing page/.test(document.querySelector('main').innerText));
    await me.press('Stop');
    await me.says('Nothing was made');
    // It begins afresh by itself, with the flock as it was.
    await me.type('The code at its foot', 'CARD-00101');
    await me.press('Make these sheets');
    await me.says('many-CARD-00101.pdf');
  },

  async 'nothing was asked of any network, and nothing went wrong unseen'() {
    assert.deepEqual(asked.filter(url => !/^file:.*\/[^/]*\.html(#.*)?$/.test(url)), []);
    assert.deepEqual(complaints, []);
  },
};

const failed = await take(steps, browser, page, me, pictures && join(pictures, `${browser}-season-failed`));
await launched.browser.close();
process.exitCode = failed > 0 ? 1 : 0;
