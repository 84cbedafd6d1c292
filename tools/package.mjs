// What a package manager and a resolver will find: publint on the folder, attw on the packed tarball.
import { execFileSync, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';

const folder = '.cache/pack';
fs.rmSync(folder, { recursive: true, force: true });
fs.mkdirSync(folder, { recursive: true });

const packed = execFileSync('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', folder], {
  encoding: 'utf8',
});
const [{ filename }] = JSON.parse(packed);

/** @param {string} command @param {string[]} options */
function run(command, ...options) {
  const { status, stdout, stderr } = spawnSync(`node_modules/.bin/${command}`, options, { encoding: 'utf8' });
  console.log(`${command}: ${status === 0 ? 'nothing to complain of' : `\n${stdout}${stderr}`}`);
  if (status !== 0) process.exitCode = 1;
}

run('publint', '--strict', '--pack', 'false');
// node16: the resolutions that understand an exports map. Older ones see the root entry only.
run('attw', path.join(folder, filename), '--profile', 'node16', '--format', 'ascii', '--no-emoji');
