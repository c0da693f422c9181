// Somebody with a list of twenty ewes in a spreadsheet and no flock file: from nothing to a pack, with mistakes on the way, in a browser of Debian's.
// Usage: node flock.mjs chrome|firefox PAGE.html [FOLDER FOR PICTURES]
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { downloaded, launch, named, openPage } from './browser.mjs';
import { personAt, take } from './person.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const [, , browser, html, pictures] = process.argv;
const scratch = mkdtempSync(join(tmpdir(), 'paperflock-flock-'));
const hollinBank = join(root, 'flocks/hollin-bank.yaml');
const names = 'Bracken Campion Sorrel Teasel Yarrow Bryony Clover Tansy Fescue Mallow Comfrey Vetch Burdock Heather Rowan Juniper Marigold Hazel Willow Betony'.split(' ');
const twenty = names.map((name, i) => `ZZ 0123456 ${String(101 + i).padStart(5, '0')}\t${name}\tRyeland\t${2018 + i % 6}\t${62 + i}`);

const launched = await launch(browser);
const { page, asked, complaints } = await openPage(launched, html);
page.on('dialog', dialog => dialog.accept());
const me = personAt(page, `${browser}-flock`, pictures);
const saved = async name => {
  await me.go('save');
  await (await me.labelled('File name')).evaluate((input, value) => { input.value = value; }, name);
  await me.press('Save the flock file');
  return (await downloaded(launched, name)).toString('utf8');
};
const file = (name, content) => {
  writeFileSync(join(scratch, name), content);
  return join(scratch, name);
};
const value = words => me.labelled(words).then(input => input.evaluate(element => element.value));

const steps = {
  async 'a new flock: each mistake by its field, and mended'() {
    await me.go('open');
    await me.press('Start a new flock', 'link');
    await me.says('A new flock');
    await me.type('What is the holding called?', 'Cold Knap');
    await me.type('Where is it?', 'Cumbria');
    await me.says('‘Cumbria’ is no place'.replaceAll(/[‘’]/g, '\''));
    await me.type('The day he goes in, or went in', '31 September');
    await me.says('\'31 September\' is no date');
    await me.look('begin-mistakes');
    await me.press('Go on: the ewes');
    await page.waitForFunction(() => document.activeElement.id === 'begin-place');
    await me.type('Where is it?', 'NY 480 046');
    await me.says('north, 2.');
    await me.type('The day he goes in, or went in', '5 Nov 2026');
    await me.says('Thu 5 Nov 2026');
    await me.look('begin');
    await me.press('Go on: the ewes');
    await me.says('20 ewes with a line for the tag');
    await me.look('ewes-none');
  },

  async 'a spreadsheet pasted: which column is the tag is asked, bad cells are left out and listed'() {
    await me.press('Paste from a spreadsheet');
    const rows = ['Official no\tAnimal\tBreed\tBorn\tWeight kg', ...twenty];
    rows[3] = rows[3].replace(/\d+$/, 'heavy');
    await me.paste('Paste here', [...rows, twenty[0]].join('\n'));
    await me.says('Which column is the tag?');
    await me.look('paste-tag');
    await me.press('This one: Official no, column 1');
    await me.says('Which column is her name?');
    await me.press('This one: Animal, column 2');
    await me.says('20 ewes will be taken in, 1 row left out');
    await me.says('Row 4:');
    await me.says('Row 22:');
    await me.look('paste-taken');
    await me.press('Take in 20 ewes');
    await me.says('20 ewes: enough for a pack');
    assert.equal(await page.$eval('#f-ewes-2-name', input => input.value), 'Sorrel');
    assert.equal(await page.$eval('#f-ewes-2-weight', input => input.value), '');
    assert.equal(await page.$eval('#f-ewes-3-weight', input => input.value), '65 kg');
    await me.look('ewes');
  },

  async 'and a pack of it'() {
    await me.press('See what it comes to', 'link');
    await me.says('What it comes to');
    await me.press('Make the whole pack');
    await me.says('Ready');
    await me.press('Save the PDF');
    assert.equal((await downloaded(launched, 'cold-knap.pdf')).subarray(0, 5).toString('latin1'), '%PDF-');
  },

  async 'ewes typed in, by the keyboard alone'() {
    await me.go('flock/ewes');
    await page.waitForSelector('#f-ewes-20-tag');
    await page.focus('#f-ewes-20-tag');
    await page.keyboard.type('ZZ 0123456 00121');
    await page.keyboard.press('Tab');
    await page.keyboard.type('Lovage');
    await page.keyboard.press('Enter');
    assert.equal(await page.evaluate(() => document.activeElement.id), 'f-ewes-21-name');
    await page.keyboard.down('Shift');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.up('Shift');
    await page.focus('#f-ewes-21-tag');
    await page.keyboard.type('ZZ 0123456 00101');
    await me.says('1 thing to put right');
    await page.waitForFunction(() => document.querySelector('#f-ewes-21-tag').getAttribute('aria-invalid') === 'true');
    await me.look('ewes-mistake');
    await me.type(await page.$('#f-ewes-21-tag'), 'ZZ 0123456 00122');
    await me.saysNot('to put right');
    await me.says('22 ewes');
    await me.press('More about ZZ 0123456 00122');
    await me.type(await page.waitForSelector('#f-ewes-21-note'), 'First time');
    await me.look('ewes-more');
    await me.press('Take her out of the flock');
    await me.says('21 ewes');
    const text = await saved('cold-knap-2.yaml');
    assert.match(text, /tag: ZZ 0123456 00121\n {4}name: Lovage\n/);
    assert.doesNotMatch(text, /00122|____/);
  },

  async 'a mistake by its field in the words of check, mended, undone; comments stay'() {
    await me.openFile(hollinBank);
    const before = readFileSync(hollinBank, 'utf8');
    await me.go('flock/tup');
    assert.equal(await value('The day he goes in, or went in'), 'Mon 10 Aug 2026');
    await me.type('The day he goes in, or went in', 'fish');
    await me.says('1 thing to put right');
    const wrong = await page.$eval('#f-season-tup-in-wrong', element => element.innerText);
    assert.match(wrong, /tup-in needs a date written year first, not fish/);
    await me.look('tup-mistake');
    await me.type('The day he goes in, or went in', '9 August 2026');
    await me.says('Sun 9 Aug 2026');
    await me.saysNot('to put right');
    await me.go('flock/place');
    await me.type('What is the place called?', 'Cold Knap');
    await page.waitForFunction(() => document.querySelector('#foot').textContent.startsWith('Cold Knap'));
    const changed = await saved('hollin-bank-2.yaml');
    assert.equal(changed, before.replace('name: Hollin Bank', 'name: Cold Knap').replace('tup-in: 2026-08-10  ', 'tup-in: 2026-08-09  '));
    await me.go('flock/place');
    await me.press('Undo');
    await page.waitForFunction(() => document.querySelector('#f-holding-name').value === 'Hollin Bank');
    await me.press('Undo');
    await page.waitForFunction(() => document.querySelector('#undo').hidden);
    assert.equal(await saved('hollin-bank-3.yaml'), before);
  },

  async 'groups, and one tup that took over from another'() {
    await me.go('flock/tup');
    assert.equal(await value('What is the group called?'), 'Orchard');
    await me.press('Add a group');
    await page.keyboard.type('Croft');
    await page.waitForFunction(() => document.querySelector('#f-groups-2-name') && !document.querySelector('#undo').hidden);
    await page.$eval('#f-groups-2-name', input => input.closest('.item').querySelector('details').setAttribute('open', ''));
    for (const [i, [name, from, to]] of [['Bramley', '10 Aug 2026', '27 Aug 2026'], ['Damson', '27 Aug 2026', '20 Sep 2026']].entries()) {
      await (await page.$$('::-p-xpath(//button[normalize-space() = "Add a tup"])')).at(-1).evaluate(button => button.click());
      for (const [key, words] of [['name', name], ['in', from], ['out', to]]) await me.type(await page.waitForSelector(`#f-groups-2-tups-${i}-${key}`), words);
      await me.says(i === 0 ? 'Thu 27 Aug 2026' : 'Sun 20 Sep 2026');
    }
    const text = await saved('hollin-bank-4.yaml');
    assert.match(text, /- name: Croft\n {4}tups: \[\{name: Bramley, in: 2026-08-10, out: 2026-08-27}/);
    assert.match(text, /name: Damson\W+in: 2026-08-27\W+out: 2026-09-20/);
    await me.go('flock/tup');
    await me.look('tup');
  },

  async 'every step'() {
    for (const step of ['place', 'ewes', 'feed', 'shed', 'people', 'jobs', 'paper']) {
      await me.go(`flock/${step}`);
      await page.waitForSelector('main form.form');
      await page.$$eval('main details', all => all.forEach(details => { details.open = true; }));
      await me.look(`step-${step}`);
    }
  },

  async 'no list is too bad for a clear sentence'() {
    await me.go('flock/ewes');
    await me.press('Paste from a spreadsheet');
    await me.paste('Paste here', Array.from({ length: 6000 }, (_, i) => `ZZ 0123456 ${10000 + i}`).join('\n'));
    await me.says('6000 rows, and a flock has at most 5000 ewes');
    await me.paste('Paste here', 'many words, '.repeat(4_000_000));
    await me.says('far too much for a list of ewes');
    const list = await me.labelled('A list of ewes');
    await list.uploadFile(file('list.xlsx', 'PK\u0003\u0004 xl/'));
    await me.says('own file (.xlsx)');
    await list.uploadFile(file('photo.csv', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 74, 70, 73, 70])));
    await me.says('This is a picture');
    await list.uploadFile(file('utf16.csv', Buffer.from('\ufefftag;name;group\nZZ 0123456 00901;Wŷn;Orchard\n', 'utf16le')));
    await me.says('1 ewe will be taken in');
    await me.says('Wŷn');
    await me.press('Not now');
    await me.says('24 ewes');
  },

  async 'a name is text, whatever it says'() {
    const odd = '<img src=x onerror=document.title=1>';
    await me.go('flock/place');
    await me.type('What is the place called?', odd);
    await page.waitForFunction(name => document.querySelector('#foot').textContent.startsWith(name), {}, odd);
    assert.equal((await page.$$('img')).length, 0);
  },

  async 'two windows on one flock do not overwrite each other'() {
    await me.openFile(file('windows.yaml', readFileSync(hollinBank)));
    await me.go('flock/place');
    await me.type('What is the place called?', 'First');
    // The foot said so of what was kept before, too.
    await page.waitForFunction(() => Object.values(localStorage).some(text => JSON.parse(text).holding === 'First'));
    const second = await openPage(launched, html);
    const other = personAt(second.page, 'other');
    await other.press('Go on with First');
    await other.says('What it comes to');
    await other.go('flock/place');
    await other.type('What is the place called?', 'Second');
    await second.page.waitForFunction(() => document.querySelector('#foot').textContent.startsWith('Second'));
    await page.bringToFront();
    await me.type('What is the place called?', 'Third');
    await page.waitForFunction(() => document.querySelector('#foot').textContent.includes('another window has this flock open too'));
    await me.press('Keep this one apart');
    await page.waitForFunction(() => document.querySelector('#foot').textContent.includes('kept in this browser'));
    const kept = await page.evaluate(() => Object.values(localStorage).map(text => JSON.parse(text).holding).filter(name => ['Second', 'Third'].includes(name)).sort());
    assert.deepEqual(kept, ['Second', 'Third']);
    await second.page.close({ runBeforeUnload: false });
  },

  async 'where storage is forbidden it says so, and all else works'() {
    const bare = await launched.browser.newPage();
    bare.setDefaultTimeout(120_000);
    bare.on('dialog', dialog => dialog.accept());
    await bare.evaluateOnNewDocument(() => Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('forbidden', 'SecurityError'); } }));
    await bare.goto(page.url().replace(/#.*/, ''));
    await bare.waitForSelector('html[data-ready]');
    const guest = personAt(bare, `${browser}-bare`, pictures);
    await guest.says('This browser keeps nothing');
    await guest.look('open-no-storage');
    await guest.press('Look at a sample');
    await guest.says('What it comes to');
    await guest.go('flock/place');
    await guest.type('What is the place called?', 'Cold Knap');
    await bare.waitForFunction(() => document.querySelector('#foot').textContent.includes('not kept by this browser'));
    await bare.close({ runBeforeUnload: false });
  },

  async 'nothing was asked of any network, and nothing went wrong unseen'() {
    assert.deepEqual(asked.filter(url => !/^file:.*\/paperflock\.html(#.*)?$/.test(url)), []);
    assert.deepEqual(complaints, []);
  },
};

const failed = await take(steps, browser, page, me, pictures && join(pictures, `${browser}-flock-failed`));
await launched.browser.close();
process.exitCode = failed > 0 ? 1 : 0;
