// The files that `npm pack` puts into the tarball, one a line, as npm itself lists them. Prints them; with --write it
// renews the committed list.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';

const [packed] = JSON.parse(
  execFileSync('npm', ['pack', '--dry-run', '--ignore-scripts', '--json'], { encoding: 'utf8' }),
);
const list = packed.files.map((file) => `${file.path}\n`).sort();
const text = list.join('');
if (process.argv.includes('--write')) fs.writeFileSync('test/package/tarball-contents.txt', text);
process.stdout.write(text);
