import fs from 'node:fs';
import { defineConfig } from 'tsup';
import { subpaths } from './tools/subpaths.ts';

/**
 * Every file with formulas or code as an entry of its own, though only the folders are published: what a bundler cannot
 * prove to be without effect (a bound that one file takes from another, a dependency that is not marked) is then left
 * behind with its file. Records and check values stay with the register, which alone imports them.
 */
const files = (fs.readdirSync('src', { recursive: true }) as string[])
  .filter((file) => file.endsWith('.ts') && !/(^|\/)index\.ts$|\.record\.ts$|^register\//.test(file))
  .map((file): [string, string] => [`internal/${file.replace(/\.ts$/, '')}`, `src/${file}`]);

/**
 * The bundler keeps an import for effect wherever a module might have one. Ours have none: such imports would load the
 * whole library for one formula, and an app's bundler would warn of each.
 */
const withoutImportsForEffect = {
  name: 'without-imports-for-effect',
  renderChunk: (code: string) => ({
    code: code.replace(/^(import|require\()\s*"\.{1,2}\/[^"]+"\)?;\n/gm, ''),
  }),
};

export default defineConfig({
  entry: { ...subpaths, ...Object.fromEntries(files) },
  format: ['esm', 'cjs'],
  dts: { entry: subpaths, compilerOptions: { ignoreDeprecations: '6.0' } },
  splitting: true,
  plugins: [withoutImportsForEffect],
  treeshake: false,
  clean: true,
  target: 'es2022',
  sourcemap: false,
});
