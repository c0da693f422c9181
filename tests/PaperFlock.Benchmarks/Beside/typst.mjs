// node typst.mjs FOLDER-WITH-node_modules SOURCE FONTS OUTPUT
// Compiles SOURCE once, writes the PDF to OUTPUT and says how many milliseconds that took, start of node and loading of fonts left out.
import { createRequire } from 'node:module';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const [tools, source, fonts, output] = process.argv.slice(2);
const { NodeCompiler } = createRequire(join(tools, 'package.json'))('@myriaddreamin/typst-ts-node-compiler');
const compiler = NodeCompiler.create({ fontArgs: [{ fontPaths: [fonts] }] });
compiler.pdf({ mainFileContent: 'fonts are read' });
const mainFileContent = readFileSync(source, 'utf8');
const start = process.hrtime.bigint();
const pdf = compiler.pdf({ mainFileContent });
const end = process.hrtime.bigint();
writeFileSync(output, pdf);
console.log(Number(end - start) / 1e6);
