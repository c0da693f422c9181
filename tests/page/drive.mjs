// Somebody with a mouse and a memory stick, in a browser of Debian's: opens the page from a file, makes packs, breaks things. Every view is looked at by axe, at two widths.
// Usage: node drive.mjs chrome|firefox PAGE.html [FOLDER FOR PICTURES]
import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { downloaded, launch, named, openPage } from './browser.mjs';
import { personAt, take } from './person.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
// While sheets are being changed, packs made by the command line of the same day stand in for those in packs/.
const packs = process.env.PACKS ?? join(root, 'packs');
const [, , browser, html, pictures] = process.argv;
const scratch = mkdtempSync(join(tmpdir(), 'paperflock-drive-'));
const hollinBank = readFileSync(join(root, 'flocks/hollin-bank.yaml'), 'utf8');

const launched = await launch(browser);
const { page, asked, complaints, seconds } = await openPage(launched, html);
const me = personAt(page, browser, pictures);
const { labelled, says, press, go, text } = me;
const look = name => me.look(name, true);

const file = (name, content) => {
  writeFileSync(join(scratch, name), content);
  return join(scratch, name);
};
const setDay = async (label, day) => (await labelled(label)).evaluate((input, value) => { input.value = value; input.dispatchEvent(new Event('input', { bubbles: true })); }, day);
/** Whatever comes of it. */
const openFile = async path => {
  await go('open');
  await (await labelled('Open a flock file')).uploadFile(path);
};
const made = () => page.waitForFunction(() => ['Ready', 'Nothing to print', 'That cannot be made'].includes(document.querySelector('main section.note h2')?.textContent ?? ''));

const steps = {
  async 'it is ready, and asked for nothing but itself'() {
    assert.ok(seconds < 20, `ready after ${seconds} s`);
    await look('open');
  },

  async 'open, say the day, make, save: the pack of the command line'() {
    await openFile(join(root, 'flocks/hollin-bank.yaml'));
    await says('What it comes to');
    assert.equal((await page.$$('#today')).length, 1);
    await setDay('Today', '2026-11-25');
    await says('Wed 25 Nov 2026');
    await press('Make the whole pack');
    await made();
    await press('Save the PDF');
    assert.ok((await downloaded(launched, 'hollin-bank.pdf')).equals(readFileSync(join(packs, 'hollin-bank.pdf'))), 'not the same bytes');
    await look('plan');
  },

  async 'only what changed since the PDF in the binder'() {
    await openFile(file('scanned-again.yaml', hollinBank.replace('scan: 2', 'scan: 1')));
    await says('What it comes to');
    await go('print');
    await setDay('Today', '2026-12-01');
    await says('Tue 1 Dec 2026');
    await press('Make the changed sheets');
    await says('That cannot be made');
    await (await page.waitForSelector('#earlier')).uploadFile(join(packs, 'hollin-bank.pdf'));
    await press('Make the changed sheets');
    await says('Ready');
    assert.match(await text(), /to put in, .* to take out since issue 1/);
    await look('print');
    await press('Save the PDF');
    assert.ok((await downloaded(launched, 'scanned-again-issue-2.pdf')).length > 1000);
  },

  async 'the days of the sitter'() {
    await press('Make the pack for Tom Birkett, Sun 27 Dec 2026 to Sat 2 Jan 2027');
    await says('scanned-again-27DEC-02JAN.pdf');
  },

  async 'what is no flock file is refused in a sentence, and the flock that is open stays'() {
    await openFile(join(packs, 'hollin-bank.pdf'));
    await says('This is a PDF, and a flock file is plain text');
    await openFile(file('photo.yaml', Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16, 74, 70, 73, 70])));
    await says('is no flock file to go on with');
    await openFile(file('utf16.yaml', Buffer.from(`\ufeff${hollinBank}`, 'utf16le')));
    await says('UTF-16');
    await openFile(file('large.yaml', Buffer.alloc(50_000_000, '# many words\n')));
    await says('a flock file has at most');
    await look('refused');
    await go('save');
    await says('Hollin Bank');
    await look('save');
  },

  async 'a broken file is opened, shown and mended'() {
    await openFile(file('broken.yaml', hollinBank.replace('name: Hollin Bank', 'name: "Hollin Bank')));
    await says('Mend the file');
    await says('this quote is not closed');
    await look('mend');
    await page.$eval('#text', (area, good) => { area.value = good; }, hollinBank);
    await press('Look again');
    await says('What it comes to');
  },

  async 'a flock may be called anything'() {
    const odd = '<img src=x onerror=document.title=1>';
    await openFile(file('odd.yaml', hollinBank.replace('name: Hollin Bank', `name: "${odd}"`)));
    await says(odd);
    assert.equal((await page.$$('main img')).length, 0);
  },

  async 'a reload in mid-work loses nothing'() {
    page.on('dialog', dialog => dialog.accept());
    await go('open');
    await (await named(page, 'Start a new flock', 'link')).click();
    await (await labelled('What is the holding called?')).type('Cold Knap');
    await (await labelled('Where is it?')).type('NY 480 046');
    // What it is taken for comes a moment later, and moves what stands below it.
    await says('clocks of Europe/London');
    await press('Go on: the ewes');
    await says('20 ewes with a line for the tag');
    await page.reload();
    await page.waitForSelector('html[data-ready]');
    await go('open');
    await press('Go on with Cold Knap');
    await says('What it comes to');
    await says('20 ewes');
  },

  async 'the flock file is saved as it is'() {
    await openFile(join(root, 'flocks/kanuka-flat.yaml'));
    await says('What it comes to');
    await setDay('Today', '2027-06-20');
    await says('Sun 20 Jun 2027');
    await go('save');
    await press('Save the flock file');
    assert.equal((await downloaded(launched, 'kanuka-flat.yaml')).toString('utf8'), readFileSync(join(root, 'flocks/kanuka-flat.yaml'), 'utf8'));
    await press('Save a calendar file');
    assert.match((await downloaded(launched, 'kanuka-flat.ics')).toString('utf8'), /^BEGIN:VCALENDAR\r\n/);
  },

  async 'nothing was asked of any network, and nothing went wrong unseen'() {
    assert.deepEqual(asked.filter(url => !/^file:.*\/paperflock\.html(#.*)?$/.test(url)), []);
    assert.deepEqual(complaints, []);
    const refused = await page.evaluate(() => new Promise(done => {
      document.addEventListener('securitypolicyviolation', event => done(event.effectiveDirective));
      fetch('http://127.0.0.1:9/').catch(() => {});
    }));
    assert.equal(refused, 'connect-src');
  },
};

const failed = await take(steps, browser, page, me, pictures && join(pictures, `${browser}-failed`));
console.log(`ready after ${seconds.toFixed(1)} s`);
await launched.browser.close();
process.exitCode = failed > 0 ? 1 : 0;
