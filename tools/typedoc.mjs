// Options of TypeDoc; a module because the loader of the mathematics is a function.
import fs from 'node:fs';
import { katex } from '@mdit/plugin-katex';
import { OptionDefaults } from 'typedoc';
import { entries } from './entries.mjs';

const documents = ['docs/guides', 'docs/decisions'].filter(
  (folder) => fs.existsSync(folder) && fs.readdirSync(folder).some((file) => file.endsWith('.md')),
);

/**
 * A link may name an export of another folder (`{@link DomainError}`) that its file does not import.
 * @param {import('typedoc').Application} app
 */
function linkAcrossFolders(app) {
  app.converter.addUnknownSymbolResolver(({ moduleSource, symbolReference }, reflection) => {
    const names = symbolReference?.path?.map(({ path: name }) => name) ?? [];
    if (moduleSource !== undefined || names.length !== 1) return undefined;
    const modules = reflection.project.children ?? [];
    const target = modules
      .flatMap((module) => module.children ?? [])
      .find((child) => child.name === names[0] && !child.isReference());
    return target && { target };
  });
}

/** @type {import('typedoc').TypeDocOptions & Record<string, unknown>} */
export default {
  name: 'groundroll',
  tsconfig: '../tsconfig.json',
  entryPoints: entries.map(({ source }) => `../${source}`),
  out: '../site',
  readme: fs.existsSync('README.md') ? '../README.md' : 'none',
  projectDocuments: documents.map((folder) => `../${folder}/*.md`),
  plugin: [linkAcrossFolders],
  blockTags: [...OptionDefaults.blockTags, '@record'],
  // MathML needs no style sheet and no fonts.
  markdownItLoader: (markdownIt) => markdownIt.use(katex, { output: 'mathml' }),
  excludePrivate: true,
  disableSources: true,
  hideGenerator: true,
  includeVersion: true,
  treatWarningsAsErrors: true,
  validation: { notExported: false, invalidLink: true, invalidPath: true, notDocumented: false },
};
