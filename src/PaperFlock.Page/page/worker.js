// The engine's own thread, so that the page never waits for it. The first message brings the engine's parts, each of the others a call.
// Listening with addEventListener: the runtime sets onmessage for itself while it is imported.

/** @param {string} base64 of what gzip has packed */
async function unpack(base64) {
  const packed = atob(base64);
  const bytes = new Uint8Array(packed.length);
  for (let i = 0; i < packed.length; i++) bytes[i] = packed.charCodeAt(i);
  return new Uint8Array(await new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))).arrayBuffer());
}

/** @param {Blob} blob the engine's parts by file name, as JSON */
async function start(blob) {
  /** @type {Record<string, string>} */
  const parts = JSON.parse(await blob.text());
  /** @type {Record<string, string>} */
  const modules = {};
  for (const name of Object.keys(parts).filter(name => name.endsWith('.js'))) {
    modules[name] = URL.createObjectURL(new Blob([await unpack(parts[name])], { type: 'text/javascript' }));
  }
  const { dotnet } = await import(modules['dotnet.js']);
  const runtime = await dotnet
    .withResourceLoader((/** @type {string} */ _, /** @type {string} */ name) =>
      modules[name] ?? unpack(parts[name]).then(bytes => new Response(bytes, { headers: { 'Content-Type': 'application/wasm' } })))
    .create();
  const exports = await runtime.getAssemblyExports('PaperFlock.Page.dll');
  return exports.PaperFlock.Page.Engine;
}

/** @type {Promise<any>} */
let engine;

/** The call that is being answered: progress is told of it. @type {number | undefined} */
let current;

Object.assign(globalThis, { progress: (/** @type {number} */ done, /** @type {number} */ of, /** @type {string} */ sheet) => postMessage({ id: current, progress: [done, of, sheet] }) });

addEventListener('message', async ({ data }) => {
  try {
    if (data.parts) engine = start(data.parts);
    const calls = await engine;
    current = data.id;
    const answer = data.call ? calls[data.call](...data.with) : null;
    if (answer === null || typeof answer === 'string') {
      postMessage({ id: data.id, answer });
    } else {
      const bytes = answer.slice();
      answer.dispose();
      postMessage({ id: data.id, answer: bytes }, /** @type {any} */ ([bytes.buffer]));
    }
  } catch (fault) {
    postMessage({ id: data.id, fault: fault instanceof Error ? `${fault.message}\n${fault.stack}` : String(fault) });
  }
});
