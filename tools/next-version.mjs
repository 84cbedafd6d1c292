// `npm run next-version`: turns the notes in .changeset into the next version and its part of the changelog, and writes the
// version wherever it stands. It commits nothing; read the changelog before you do.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';

const read = (file) => fs.readFileSync(file, 'utf8');
const manifest = read('package.json');
const older = JSON.parse(manifest).version;
const [head] = read('CHANGELOG.md').split(/^## /m);
const [title, ...paragraphs] = head.trimEnd().split('\n');
const introduction = paragraphs.join('\n').trim();

execFileSync('node_modules/.bin/changeset', ['version'], { stdio: 'inherit' });
const { version } = JSON.parse(read('package.json'));
if (version === older) {
  console.error('no note, so no next version');
  process.exit(1);
}

// The tool writes below the title; the introduction belongs above the versions.
const written = read('CHANGELOG.md');
if (!written.startsWith(`${title}\n`) || !written.includes(introduction)) {
  throw new Error('the introduction of CHANGELOG.md has been changed on the way');
}
const [date] = new Date().toISOString().split('T');
const versions = written
  .slice(title.length)
  .replace(introduction, '')
  .trim()
  .replace(`## ${version}\n`, `## ${version}, ${date}\n`)
  .replaceAll('### Major Changes', '### Breaking')
  .replaceAll('### Minor Changes', '### New and changed')
  .replaceAll('### Patch Changes', '### Mended')
  .replace(/\n{3,}/g, '\n\n');
fs.writeFileSync('CHANGELOG.md', `${title}\n\n${introduction}\n\n${versions}\n`);

// The tool would lay the file out anew.
fs.writeFileSync('package.json', manifest.replace(`"version": "${older}"`, `"version": "${version}"`));
const source = read('src/version.ts').replace(`'${older}'`, `'${version}'`);
fs.writeFileSync('src/version.ts', source);
const lock = JSON.parse(read('package-lock.json'));
lock.version = version;
lock.packages[''].version = version;
fs.writeFileSync('package-lock.json', `${JSON.stringify(lock, null, 2)}\n`);
console.log(`${older} is now ${version}: read CHANGELOG.md, run \`npm test\`, commit, and \`npm run release\``);
