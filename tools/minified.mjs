// What an app gets of an import: bundled for no platform in particular, minified, with what each file adds to it.
import path from 'node:path';
import { build } from 'esbuild';
import { entries } from './entries.mjs';

/** The package by its own name, as it was built here. */
const itself = {
  name: 'itself',
  setup(build) {
    build.onResolve({ filter: /^groundroll(\/|$)/ }, ({ path: specifier }) => {
      const entry = entries.find((each) => each.specifier === specifier);
      return { path: path.resolve('dist', `${entry?.name}.js`), sideEffects: false };
    });
  },
};

/**
 * @param {string} contents of the module that imports
 * @param {string} [project] the folder of an app that has the package installed; else the build of this one is meant
 */
export async function minified(contents, project) {
  const { outputFiles, metafile } = await build({
    stdin: { contents, resolveDir: project ?? '.' },
    plugins: project === undefined ? [itself] : [],
    bundle: true,
    minify: true,
    charset: 'utf8',
    format: 'esm',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    metafile: true,
    write: false,
    logLevel: 'error',
  });
  const [{ inputs }] = Object.values(metafile.outputs);
  const added = Object.entries(inputs).map(([file, { bytesInOutput }]) => ({ file, bytes: bytesInOutput }));
  return { bytes: outputFiles[0].contents, text: outputFiles[0].text, files: added.filter(({ bytes }) => bytes > 0) };
}
