// The engine out of the finished page, run under Node: the very parts the page unpacks in a browser, without one.
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gunzipSync } from 'node:zlib';

/** @param {string} html the page @returns the engine, and the memory it has taken, in MB */
export async function engineOf(html) {
  const parts = JSON.parse(/<script type="application\/json" id="engine">([^<]*)<\/script>/.exec(readFileSync(html, 'utf8'))[1]);
  const folder = mkdtempSync(join(tmpdir(), 'paperflock-engine-'));
  for (const [name, packed] of Object.entries(parts)) {
    const bytes = gunzipSync(Buffer.from(packed, 'base64'));
    // Here the parts do lie in a folder, and may ask which.
    writeFileSync(join(folder, name), name.endsWith('.js') ? bytes.toString('utf8').replaceAll('"https://paperflock.invalid/"', 'import.meta.url') : bytes);
  }
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
  const { dotnet } = await import(pathToFileURL(join(folder, 'dotnet.js')).href);
  // Nobody looks at the bar here.
  Object.assign(globalThis, { progress() {} });
  const runtime = await dotnet.create();
  const exports = await runtime.getAssemblyExports('PaperFlock.Page.dll');
  return { engine: exports.PaperFlock.Page.Engine, memory: () => runtime.Module.HEAPU8.length / 2 ** 20 };
}

/** The PDFs of a pack by name. */
export function packOf(engine, text, name, today, options = {}) {
  const said = JSON.parse(engine.Pack(text, name, today, JSON.stringify(options), new Uint8Array(), ''));
  if (said.trouble) throw new Error(`${name}: ${said.trouble}`);
  return Object.fromEntries(said.documents.map(({ file }, i) => {
    const pdf = engine.Pdf(i);
    const bytes = Buffer.from(pdf.slice());
    pdf.dispose();
    return [file, bytes];
  }));
}
