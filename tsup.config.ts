import { defineConfig } from 'tsup';
import { subpaths } from './tools/subpaths.ts';

/**
 * One entry per folder of `src`, so that each folder is one subpath export.
 * `splitting` and the package's `sideEffects: false` both carry weight: without
 * either, importing one formula pulls unrelated folders into an app's bundle.
 */
export default defineConfig({
  // The conversion of directions is an entry of its own, though not a published one: it keeps the magnetic model out
  // of the chunk that assessments import.
  entry: { ...subpaths, 'internal/direction-conversion': 'src/magnetism/conversion.ts' },
  format: ['esm', 'cjs'],
  dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
  splitting: true,
  treeshake: false,
  clean: true,
  target: 'es2022',
  sourcemap: false,
});
