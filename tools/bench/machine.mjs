// The machine, program and commit to which a measurement belongs.
import { execFileSync } from 'node:child_process';
import os from 'node:os';

export function machineOf() {
  const git = (...words) => execFileSync('git', words, { encoding: 'utf8' }).trim();
  const changed = git('status', '--porcelain', '--', 'src', 'package-lock.json') === '' ? '' : ', with changes';
  return {
    cpu: os.cpus()[0]?.model ?? 'not known',
    cores: os.cpus().length,
    node: process.version,
    commit: `${git('rev-parse', '--short=10', 'HEAD')}${changed}`,
    date: new Date().toISOString().slice(0, 10),
  };
}
