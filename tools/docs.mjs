// Builds the documentation into site/ and looks for equations that did not parse: they leave a mark on the page, not an error.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';

const { status } = spawnSync('node_modules/.bin/typedoc', ['--options', 'tools/typedoc.mjs', '--logLevel', 'Warn'], {
  stdio: 'inherit',
});
const pages = status === 0 ? fs.readdirSync('site', { recursive: true }).filter((file) => file.endsWith('.html')) : [];
const broken = pages.filter((file) => fs.readFileSync(path.join('site', file), 'utf8').includes('katex-error'));

for (const file of broken) console.error(`site/${file}: an equation does not parse`);
if (status !== 0 || pages.length === 0 || broken.length > 0) process.exitCode = 1;
else console.log(`${pages.length} pages`);
