// The engine of the page makes the packs in packs/, and those of drawn flocks as the command line makes them, byte for byte. Needs no browser.
// Usage: node same-bytes.mjs PAGE.html [HOW MANY FLOCKS]
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { drawFlock } from './drawn-flocks.mjs';
import { engineOf, packOf } from './engine.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
// While sheets are being changed, packs made by the command line of the same day stand in for those in packs/.
const packs = process.env.PACKS ?? join(root, 'packs');
const [, , html, many = '24'] = process.argv;
const today = '2026-11-25';

const drawn = mkdtempSync(join(tmpdir(), 'paperflock-drawn-'));
const texts = Object.fromEntries(Array.from({ length: Number(many) }, (_, i) => [`drawn-${i + 1}.yaml`, drawFlock(i + 1)]));
for (const [name, text] of Object.entries(texts)) writeFileSync(join(drawn, name), text);
mkdirSync(join(drawn, 'packs'));
const run = spawnSync('dotnet', [join(root, 'src/PaperFlock.Cli/bin/Release/net10.0/paperflock.dll'), 'pack', drawn, '--as-of', today, '--out', join(drawn, 'packs')], { encoding: 'utf8' });
if (run.status !== 0) throw new Error(`the command line refuses a drawn flock:\n${run.stdout}${run.stderr}`);

const { engine } = await engineOf(html);
let compared = 0;
const compare = (pdfs, folder) => {
  for (const [file, bytes] of Object.entries(pdfs)) {
    if (!bytes.equals(readFileSync(join(folder, file)))) throw new Error(`${file} is not the same`);
    compared++;
  }
};
for (const [name, day] of [['hollin-bank', today], ['kanuka-flat', '2027-06-20']]) {
  compare(packOf(engine, readFileSync(join(root, 'flocks', `${name}.yaml`), 'utf8'), `${name}.yaml`, day), packs);
}
for (const [name, text] of Object.entries(texts)) compare(packOf(engine, text, name, today), join(drawn, 'packs'));
const made = readdirSync(join(drawn, 'packs')).filter(file => file.endsWith('.pdf')).length;
if (compared < made + 4) throw new Error(`${compared} compared, and the command line made ${made} and 4 samples`);
console.log(`${compared} PDFs, the same bytes`);
