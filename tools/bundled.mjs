import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/**
 * A module of `src` as it stands now, without a build: `bundled('schemas', "export * from './wind/index.ts';")`.
 * @param {string} name of the file in .cache
 * @param {string} contents TypeScript, with paths from src
 */
export async function bundled(name, contents) {
  const outfile = path.resolve('.cache', `${name}.bundle.mjs`);
  await build({
    stdin: { contents, resolveDir: 'src', loader: 'ts' },
    bundle: true,
    packages: 'external',
    format: 'esm',
    outfile,
    logLevel: 'error',
  });
  return await import(pathToFileURL(outfile).href);
}
