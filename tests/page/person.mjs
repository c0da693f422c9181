// What somebody does with the page, by the words they see: presses, types, reads. And what axe says of what is shown.
import assert from 'node:assert/strict';
import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { named } from './browser.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** @param page @param {string} prefix of the pictures' names @param {string} [pictures] folder */
export function personAt(page, prefix, pictures) {
  let shots = 0;
  if (pictures) mkdirSync(pictures, { recursive: true });
  const person = {
    text: () => page.$eval('main', main => main.innerText),
    says: words => page.waitForFunction(wanted => document.querySelector('main').innerText.includes(wanted), {}, words),
    saysNot: words => page.waitForFunction(wanted => !document.querySelector('main').innerText.includes(wanted), {}, words),
    labelled: words => page.waitForSelector(`::-p-xpath(//*[@id = //label[normalize-space() = "${words}"]/@for])`),
    async press(name, role = 'button') {
      const button = await named(page, name, role);
      await button.evaluate(element => element.addEventListener('click', () => { window.pressed = element; }, { once: true, capture: true }));
      // A line that comes late moves what is below it, and a press that went beside it is pressed again, as anybody would.
      for (let tries = 0; tries < 5; tries++) {
        // In the middle of the screen, where the foot of the page does not cover it.
        await button.evaluate(element => { window.pressed = null; element.scrollIntoView({ block: 'center' }); });
        await button.click();
        if (await page.evaluate(() => window.pressed !== null)) return;
      }
      throw new Error(`"${name}" could not be pressed`);
    },
    /** In place of what stands there. */
    async type(field, words) {
      const input = typeof field === 'string' ? await person.labelled(field) : field;
      await input.evaluate(element => { element.scrollIntoView({ block: 'center' }); element.focus(); element.select(); });
      await page.keyboard.press('Backspace');
      if (words !== '') await page.keyboard.type(words);
    },
    /** As the clipboard brings it: at once. */
    async paste(words, text) {
      await (await person.labelled(words)).evaluate((box, value) => {
        box.value = value;
        box.dispatchEvent(new Event('input', { bubbles: true }));
      }, text);
    },
    async go(id) {
      await page.evaluate(hash => { location.hash = hash; }, id);
      await page.waitForFunction(hash => location.hash === `#${hash}` && document.querySelector('main h1'), {}, id);
    },
    async openFile(path) {
      await person.go('open');
      await (await person.labelled('Open a flock file')).uploadFile(path);
      await person.says('What it comes to');
    },
    /** axe finds nothing, and nothing is scrolled sideways to, at either width. @param {string} name @param {boolean} [footSticks] as on the screen */
    async look(name, footSticks = false) {
      for (const width of [1280, 360]) {
        await page.setViewport({ width, height: 900 });
        await page.evaluate(axe);
        // The foot that sticks to the screen half covers what lies below it, which axe then takes for small.
        if (!footSticks) await page.evaluate(() => { document.querySelector('footer').style.position = 'static'; });
        const { violations } = await page.evaluate(() => axe.run(document, { resultTypes: ['violations'] }));
        assert.deepEqual(violations.map(v => `${v.id}: ${v.nodes.slice(0, 5).map(n => n.target).join(' ')}`), [], `axe at ${name}, ${width} px`);
        assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `${name} is wider than ${width} px`);
        if (pictures) await page.screenshot({ path: join(pictures, `${prefix}-${String(++shots).padStart(2, '0')}-${name}-${width}.png`), fullPage: true });
        await page.evaluate(() => { document.querySelector('footer').style.position = ''; });
      }
      await page.setViewport({ width: 1280, height: 900 });
    },
  };
  return person;
}

/**
 * Takes the steps one after another and says how each went; at one that fails, what the page says.
 * @param {Record<string, () => Promise<void>>} steps by what they show @param {string} browser @param page
 * @param {{ text(): Promise<string> }} person @param {string} picture what a picture of a failure is called, without its number; empty for none
 * @returns {Promise<number>} how many failed
 */
export async function take(steps, browser, page, person, picture) {
  let failed = 0;
  for (const [name, step] of Object.entries(steps)) {
    if (process.env.ONLY && !new RegExp(process.env.ONLY).test(name)) continue;
    const began = Date.now();
    try {
      await step();
      console.log(`ok    ${browser}: ${name} (${((Date.now() - began) / 1000).toFixed(1)} s)`);
    } catch (fault) {
      failed++;
      console.log(`FAIL  ${browser}: ${name}\n${fault.stack}\nThe page says: ${await person.text().catch(() => '?')}`);
      if (picture) await page.screenshot({ path: `${picture}-${failed}.png` }).catch(() => {});
    }
  }
  return failed;
}
