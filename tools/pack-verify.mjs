// `npm run pack:verify`: builds and packs the last commit in two clean clones, at two places, under two time zones,
// languages and file masks, and compares the tarballs byte for byte. What is not committed takes no part. With a folder
// named, the tarball is left there.
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const parent = fs.mkdtempSync(path.join(os.tmpdir(), 'groundroll-pack-'));
process.on('exit', () => fs.rmSync(parent, { recursive: true, force: true }));

const builds = [
  { place: 'one', umask: 0o022, environment: { TZ: 'UTC', LC_ALL: 'C' } },
  { place: 'a longer/place/two', umask: 0o027, environment: { TZ: 'Pacific/Auckland', LC_ALL: 'C.UTF-8' } },
];

const tarballs = builds.map(({ place, umask, environment }) => {
  const folder = path.join(parent, place);
  const run = (command, ...words) =>
    execFileSync(command, words, { cwd: folder, encoding: 'utf8', env: { ...process.env, ...environment } });
  process.umask(umask);
  fs.mkdirSync(folder, { recursive: true });
  const start = performance.now();
  execFileSync('git', ['clone', '--quiet', '--no-hardlinks', process.cwd(), folder]);
  run('npm', 'ci', '--prefer-offline', '--no-audit', '--loglevel=error');
  const [{ filename }] = JSON.parse(run('npm', 'pack', '--foreground-scripts=false', '--json'));
  const tarball = path.join(folder, filename);
  const bytes = fs.readFileSync(tarball);
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  console.log(
    `SHA-256 ${sha256} ${filename}, ${bytes.length} bytes, ${Math.round((performance.now() - start) / 1000)} s`,
  );
  return { bytes, folder, tarball };
});

const [first, second] = tarballs;
if (first.bytes.equals(second.bytes)) {
  const commit = execFileSync('git', ['rev-parse', '--short', 'HEAD'], { encoding: 'utf8' }).trim();
  console.log(`two builds of ${commit} are byte-identical (Node ${process.versions.node})`);
  const [, , target] = process.argv;
  if (target !== undefined) fs.copyFileSync(first.tarball, path.join(target, path.basename(first.tarball)));
} else {
  const list = execFileSync('node', ['tools/tarball-contents.mjs'], { cwd: first.folder, encoding: 'utf8' });
  for (const file of list.trimEnd().split('\n')) {
    const at = (folder) => fs.readFileSync(path.join(folder, file));
    if (!fs.existsSync(path.join(second.folder, file))) console.error(`${file}: only in the first`);
    else if (!at(first.folder).equals(at(second.folder))) console.error(`${file}: differs`);
  }
  const listing = ({ tarball }) => execFileSync('tar', ['-tvzf', tarball], { encoding: 'utf8' }).split('\n');
  const others = new Set(listing(second));
  for (const line of listing(first).filter((each) => !others.has(each))) console.error(`only in the first: ${line}`);
  console.error('two builds of one commit differ');
  process.exitCode = 1;
}
