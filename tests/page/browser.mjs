// A browser of Debian's, the page opened in it from a file, and what every drive needs.
import { mkdtempSync, readdirSync, readFileSync, existsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import puppeteer from 'puppeteer-core';

const patience = Number(process.env.PATIENCE ?? 120) * 1000;

/** @param {'chrome' | 'firefox'} browser */
export async function launch(browser) {
  const downloads = mkdtempSync(join(tmpdir(), 'paperflock-'));
  const launched = await puppeteer.launch(browser === 'chrome'
    ? { browser, executablePath: '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'], protocolTimeout: patience }
    : {
      browser, executablePath: '/usr/bin/firefox-esr', protocolTimeout: patience,
      extraPrefsFirefox: { 'browser.download.folderList': 2, 'browser.download.dir': downloads, 'browser.download.useDownloadDir': true, 'browser.download.always_ask_before_handling_new_types': false, 'browser.download.alwaysOpenPanel': false, 'pdfjs.disabled': true, 'browser.helperApps.neverAsk.saveToDisk': 'application/pdf,application/yaml,text/calendar' },
    });
  return { browser: launched, downloads };
}

/** Opens the page and waits until it is ready. @returns the page, what it asked for, what it complained of, and the seconds it took. */
export async function openPage(launched, html, viewport = { width: 1280, height: 900 }) {
  const page = await launched.browser.newPage();
  page.setDefaultTimeout(patience);
  await page.setViewport(viewport);
  const asked = [], complaints = [];
  page.on('request', request => { if (!/^(data|blob):/.test(request.url())) asked.push(request.url()); });
  page.on('pageerror', error => complaints.push(error.message));
  page.on('console', message => { if (['error', 'warn', 'warning'].includes(message.type())) complaints.push(message.text()); });
  if (launched.browser.process()?.spawnfile.includes('chromium')) {
    const session = await page.createCDPSession();
    await session.send('Browser.setDownloadBehavior', { behavior: 'allow', downloadPath: launched.downloads });
  }
  const began = Date.now();
  await page.goto(pathToFileURL(html).href);
  await page.waitForSelector('html[data-ready]');
  return { page, asked, complaints, seconds: (Date.now() - began) / 1000 };
}

/** A control by its accessible name. */
export const named = (page, name, role) => page.waitForSelector(`::-p-aria([name="${name}"]${role ? `[role="${role}"]` : ''})`);

/** Waits for a file among the downloads. @returns {Promise<Buffer>} */
export async function downloaded(launched, name) {
  for (let tries = 0; tries < 600; tries++) {
    const file = join(launched.downloads, name);
    if (existsSync(file) && !readdirSync(launched.downloads).some(other => /\.(part|crdownload)$/.test(other))) {
      const bytes = readFileSync(file);
      if (bytes.length > 0) return bytes;
    }
    await new Promise(done => setTimeout(done, 100));
  }
  throw new Error(`${name} never came; there are ${readdirSync(launched.downloads).join(', ') || 'no files'}`);
}
