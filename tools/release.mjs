// `npm run release`: everything that stands between a committed version and publishing it. It looks whether the version can
// be released, tests, audits, builds twice and compares, installs, writes the bill of materials, and says what is left to be
// typed. It publishes nothing, tags nothing and sends nothing anywhere; only installing and auditing ask the registry.
//   --only-look       stops after the first of these
//   --without-audit   goes on where the registry answers no audit, and says so at the end
import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';

const git = (...words) => execFileSync('git', words, { encoding: 'utf8' }).trim();
const { name, version } = JSON.parse(fs.readFileSync('package.json', 'utf8'));
const tag = `v${version}`;

function fail(...lines) {
  for (const line of lines) console.error(line);
  process.exit(1);
}

/** What stands in the way of a release of the working tree as it is. */
function hindrances() {
  const found = [];
  if (git('status', '--porcelain') !== '') found.push('the working tree is not clean: commit first');
  const notes = fs.readdirSync('.changeset').filter((file) => file.endsWith('.md'));
  if (notes.length > 0) found.push(`${notes.length} notes are in no version yet: npm run next-version`);
  if (!/^\d+\.\d+\.\d+$/.test(version) || version === '0.0.0') found.push(`${version} is no version to release`);
  const changelog = fs.existsSync('CHANGELOG.md') ? fs.readFileSync('CHANGELOG.md', 'utf8') : '';
  if (!changelog.includes(`\n## ${version},`)) found.push(`CHANGELOG.md has nothing of ${version}`);
  const lock = JSON.parse(fs.readFileSync('package-lock.json', 'utf8'));
  if (lock.version !== version || lock.packages[''].version !== version)
    found.push('package-lock.json has another version');
  if (!fs.readFileSync('src/version.ts', 'utf8').includes(`'${version}'`))
    found.push('src/version.ts has another version');
  if (git('tag', '--list', tag) !== '' && git('rev-list', '-n', '1', tag) !== git('rev-parse', 'HEAD')) {
    found.push(`the tag ${tag} stands at another commit`);
  }
  return found;
}

function step(heading, command, ...words) {
  console.log(`\n== ${heading}: ${[command, ...words].join(' ')}`);
  const { status } = spawnSync(command, words, {
    stdio: 'inherit',
    env: { ...process.env, GROUNDROLL_BROWSER: 'required' },
  });
  if (status !== 0) fail(`\n${heading}: failed`);
}

/** Whether the registry answered; a weakness that it knows of ends the release. */
function audited(...words) {
  const { stdout } = spawnSync('npm', ['audit', '--json', ...words], { encoding: 'utf8' });
  const { metadata, vulnerabilities = {} } = JSON.parse(stdout || '{}');
  if (metadata === undefined) return false;
  const weak = Object.keys(vulnerabilities);
  if (weak.length > 0) fail(`npm audit ${words.join(' ')}: ${weak.join(', ')}`);
  return true;
}

const found = hindrances();
if (found.length > 0) fail(...found);
console.log(`${name} ${version} at ${git('rev-parse', '--short', 'HEAD')} can be released`);
if (process.argv.includes('--only-look')) process.exit(0);

step('Dependencies', 'npm', 'ci');
step('Tests', 'npm', 'test');
const isAudited = audited('--omit=dev') && audited();
console.log(isAudited ? '\nnpm audit: clean' : '\nnpm audit: the registry answers no audit');
if (!isAudited && !process.argv.includes('--without-audit')) {
  fail('run this where it does, or with --without-audit');
}
const folder = '.cache/release';
fs.rmSync(folder, { recursive: true, force: true });
fs.mkdirSync(folder, { recursive: true });
step('Two builds', 'node', 'tools/pack-verify.mjs', folder);
const tarball = path.join(folder, `${name}-${version}.tgz`);
step('Installation', 'node', 'tools/install-verify.mjs', tarball);
const bill = path.join(folder, `${name}-${version}.cdx.json`);
fs.writeFileSync(bill, execFileSync('node', ['tools/sbom.mjs']));
if (git('status', '--porcelain') !== '') fail('the tests have changed the working tree');

const integrity = createHash('sha512').update(fs.readFileSync(tarball)).digest('base64');
console.log(`
${tarball}
  integrity sha512-${integrity}
${bill}
  bill of materials${isAudited ? '' : '\nnot audited: say so, or audit elsewhere before publishing'}

What is left to be typed, by whoever may publish:
  git tag -a ${tag} -m "${name} ${version}"
  npm publish ${tarball} --access public
and afterwards, in an empty folder, the integrity is compared:
  npm view ${name}@${version} dist.integrity`);
