// Installs a tarball into an empty project, as a user would, and imports every entry of it both ways:
// `node tools/install-verify.mjs .cache/release/groundroll-0.1.0.tgz`.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { entries } from './entries.mjs';

const [, , tarball] = process.argv;
const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'groundroll-install-'));
process.on('exit', () => fs.rmSync(folder, { recursive: true, force: true }));
const run = (command, ...words) => execFileSync(command, words, { cwd: folder, encoding: 'utf8' });

fs.writeFileSync(path.join(folder, 'package.json'), '{}');
run('npm', 'install', '--prefer-offline', '--no-audit', '--no-fund', path.resolve(tarball));
const specifiers = JSON.stringify(entries.map(({ specifier }) => specifier));
const counted = (load) => `
  const counts = [];
  for (const specifier of ${specifiers}) counts.push(Object.keys(${load}).filter((name) => name !== 'default').length);
  console.log(counts.join(' '));`;
const asModule = run('node', '--input-type=module', '--eval', counted('await import(specifier)'));
const asCommonJs = run('node', '--input-type=commonjs', '--eval', counted('require(specifier)'));
if (asModule !== asCommonJs || / 0 /.test(` ${asModule.trim()} `)) {
  throw new Error(`as modules ${asModule}, as CommonJS ${asCommonJs}`);
}
const installed = fs.readdirSync(path.join(folder, 'node_modules')).filter((name) => !name.startsWith('.'));
console.log(`${entries.length} entries load both ways; installed: ${installed.join(', ')}`);
