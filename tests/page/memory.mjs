// A pack of 24 ewes and then packs of 300 take no more than 150 MB of memory, however often they are made. Needs no browser.
// Usage: node memory.mjs PAGE.html
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { drawFlock } from './drawn-flocks.mjs';
import { engineOf, packOf } from './engine.mjs';

const most = 150;
const today = '2026-11-25';
const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const { engine, memory } = await engineOf(process.argv[2]);

packOf(engine, readFileSync(join(root, 'flocks/hollin-bank.yaml'), 'utf8'), 'hollin-bank.yaml', today);
const small = memory();
const large = drawFlock(3, 300);
for (let times = 0; times < 3; times++) packOf(engine, large, 'large.yaml', today);
console.log(`24 ewes ${small.toFixed(0)} MB, 300 ewes ${memory().toFixed(0)} MB`);
if (memory() > most) throw new Error(`more than ${most} MB`);
