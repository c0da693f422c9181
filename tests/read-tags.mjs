// Reads the structure tree of a PDF with pdf.js, as a browser's reader does for somebody who listens: every page has one, each piece of
// marked content it points to is on that page, none is pointed to twice, and what is read aloud holds the words of the page.
// Usage: node read-tags.mjs FILE.pdf, with pdfjs-dist where Node finds it.
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const require = createRequire(`${process.cwd()}/`);
const { getDocument } = await import(pathToFileURL(require.resolve("pdfjs-dist/legacy/build/pdf.mjs")).href);
const pdf = await getDocument({ data: new Uint8Array(await readFile(process.argv[2])), verbosity: 0, disableFontFace: true }).promise;

const ids = (node) => (node.type === "content" ? [node.id] : (node.children ?? []).flatMap(ids));
const roles = new Map();
const count = (node) => {
  if (node.role) roles.set(node.role, (roles.get(node.role) ?? 0) + 1);
  (node.children ?? []).forEach(count);
};

let said = 0;
for (let number = 1; number <= pdf.numPages; number++) {
  const page = await pdf.getPage(number);
  const tree = await page.getStructTree();
  if (!tree) throw new Error(`page ${number} has no structure`);
  count(tree);
  const pointed = ids(tree);
  if (new Set(pointed).size !== pointed.length) throw new Error(`page ${number}: a piece is read twice`);
  const { items } = await page.getTextContent({ includeMarkedContent: true });
  const marked = new Set(items.filter((item) => item.type === "beginMarkedContentProps").map((item) => item.id));
  const lost = pointed.filter((id) => !marked.has(id));
  const open = [];
  let words = 0;
  for (const item of items) {
    if (item.type?.startsWith("beginMarkedContent")) open.push(item.id);
    else if (item.type === "endMarkedContent") open.pop();
    else if (item.str?.trim() && open.some((id) => pointed.includes(id))) words++;
  }
  if (lost.length > 0) throw new Error(`page ${number}: ${lost.length} pieces that are pointed to are not there`);
  if (words === 0 && pointed.length > 0) throw new Error(`page ${number}: nothing is read aloud`);
  said += words;
}

for (const role of ["Document", "Sect", "H1", "P"]) {
  if (!roles.has(role)) throw new Error(`no ${role} in the whole file`);
}
console.log(`${pdf.numPages} pages, ${said} pieces of text read aloud: ${[...roles].map(([role, n]) => `${role} ${n}`).join(", ")}`);
