import { defineConfig } from 'tsup';
import { subpaths } from './tools/subpaths.ts';

/**
 * One entry per folder of `src`, so that each folder is one subpath export.
 * `splitting` and the package's `sideEffects: false` both carry weight: without
 * either, importing one formula pulls unrelated folders into an app's bundle.
 */
export default defineConfig({
  // Two entries of their own, though not published ones: they keep the magnetic model out of the chunk that assessments
  // import, and the document schemas out of the one that reading a table needs.
  entry: {
    ...subpaths,
    'internal/direction-conversion': 'src/magnetism/conversion.ts',
    'internal/table-reading': 'src/aircraft/interpolate-table.ts',
  },
  format: ['esm', 'cjs'],
  dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
  splitting: true,
  treeshake: false,
  clean: true,
  target: 'es2022',
  sourcemap: false,
});
