import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

const manifest = JSON.parse(fs.readFileSync(path.join(root, 'package.json'), 'utf8')) as {
  exports: Record<string, unknown>;
  dependencies: Record<string, string>;
};

/** `groundroll`, `groundroll/units`, ...: every entry with code. */
export const specifiers = Object.entries(manifest.exports)
  .filter(([, target]) => typeof target === 'object')
  .map(([subpath]) => `groundroll${subpath.slice(1)}`);

/**
 * An empty project with the packed tarball in its node_modules, as an installation leaves it. The dependencies, and what
 * the project needs beside, are linked from ours, so that no network is needed.
 */
export function consumer(
  files: Readonly<Record<string, string>>,
  beside: readonly string[] = [],
): { folder: string; remove: () => void } {
  if (!fs.existsSync(path.join(root, 'dist/index.d.cts'))) throw new Error('run `npm run build` first');
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'groundroll-consumer-'));
  const modules = path.join(folder, 'node_modules');
  fs.mkdirSync(path.join(modules, 'groundroll'), { recursive: true });
  const pack = ['pack', '--ignore-scripts', '--json', '--pack-destination', folder];
  const [packed] = JSON.parse(execFileSync('npm', pack, { cwd: root, encoding: 'utf8' })) as [{ filename: string }];
  execFileSync('tar', [
    '-xzf',
    path.join(folder, packed.filename),
    '--strip-components=1',
    '-C',
    path.join(modules, 'groundroll'),
  ]);
  for (const dependency of [...Object.keys(manifest.dependencies), ...beside]) {
    fs.symlinkSync(path.join(root, 'node_modules', dependency), path.join(modules, dependency));
  }
  for (const [name, text] of Object.entries(files)) fs.writeFileSync(path.join(folder, name), text);
  return { folder, remove: () => fs.rmSync(folder, { recursive: true }) };
}

/** Runs Node in a folder; what it prints. A failure throws with the output. */
export function node(folder: string, ...options: string[]): string {
  return execFileSync(process.execPath, options, { cwd: folder, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
}
