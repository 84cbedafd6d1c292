// Builds the documentation into site/: first the pages of the formula register and of the measured speed, then TypeDoc,
// then the figures of the guides and the worksheet page, then a look through the result for equations that did not
// parse, dead links and links to other hosts.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import { transformSync } from 'esbuild';
import { withFigures } from './guide-figures.mjs';
import { writeRegisterPages } from './register-pages.mjs';
import { siteFaults } from './site-links.mjs';
import { writeSpeedPage } from './speed-page.mjs';
import { buildWorksheetPage } from './worksheet-page.mjs';

await writeRegisterPages();
writeSpeedPage();
const { status } = spawnSync('node_modules/.bin/typedoc', ['--options', 'tools/typedoc.mjs', '--logLevel', 'Warn'], {
  stdio: 'inherit',
});
if (status === 0) {
  for (const guide of fs.readdirSync('site/guides')) {
    const file = `site/guides/${guide}`;
    fs.writeFileSync(file, await withFigures(fs.readFileSync(file, 'utf8')));
  }
  // Every page asks for them; their comments and line ends are for who changes them.
  for (const style of ['site/assets/style.css', 'site/assets/custom.css'])
    fs.writeFileSync(style, transformSync(fs.readFileSync(style, 'utf8'), { loader: 'css', minify: true }).code);
  await buildWorksheetPage('site');
  const faults = siteFaults('site');
  for (const fault of faults) console.error(`site/${fault}`);
  const pages = fs.readdirSync('site', { recursive: true }).filter((file) => file.endsWith('.html'));
  console.log(`${pages.length} pages`);
  if (faults.length > 0 || pages.length === 0) process.exitCode = 1;
} else process.exitCode = 1;
