// Options of TypeDoc; a module because plugins and the loader of the mathematics are functions.
import fs from 'node:fs';
import { katex } from '@mdit/plugin-katex';
import { OptionDefaults } from 'typedoc';
import { entries } from './entries.mjs';
import {
  addressesOfFiles,
  inOrderOfLinks,
  linkAcrossFolders,
  linkRecords,
  reachableCode,
  scrollBoxes,
  searchWords,
  sidebarGroups,
  worksheetPage,
} from './typedoc-plugins.mjs';

const register = '.cache/docs/register';
const topics = fs.readdirSync(register).filter((file) => file.endsWith('.md') && file !== 'index.md');
const indexes = ['index.md', 'access.md', 'sources.md'];
const documents = [
  ...inOrderOfLinks('docs/guides', 'the-job.md'),
  '.cache/docs/measured/speed-figures.md',
  ...[...new Set([...indexes, ...topics.sort()])].map((file) => `${register}/${file}`),
  'docs/decisions/*.md',
  'DEVELOPERS.md',
];

/** @type {import('typedoc').TypeDocOptions & Record<string, unknown>} */
export default {
  name: 'groundroll',
  tsconfig: '../tsconfig.json',
  entryPoints: entries.map(({ source }) => `../${source}`),
  out: '../site',
  readme: '../README.md',
  projectDocuments: documents.map((file) => `../${file}`),
  plugin: [linkAcrossFolders, addressesOfFiles, sidebarGroups, linkRecords, reachableCode, searchWords, worksheetPage],
  router: 'place',
  customCss: '../docs/site.css',
  blockTags: [...OptionDefaults.blockTags, '@record'],
  // MathML needs no style sheet and no fonts.
  markdownItLoader: (markdownIt) => markdownIt.use(katex, { output: 'mathml' }).use(scrollBoxes),
  searchInDocuments: true,
  searchInComments: true,
  navigation: { includeGroups: true },
  groupOrder: ['Guides', 'Formula register', 'API', 'Decisions', '*'],
  // The types are a step of their own in the tests.
  skipErrorChecking: true,
  // Members that the platform's own types declare would bring links to other hosts.
  excludeExternals: true,
  excludePrivate: true,
  disableSources: true,
  hideGenerator: true,
  includeVersion: true,
  treatWarningsAsErrors: true,
  validation: { notExported: false, invalidLink: true, invalidPath: true, notDocumented: false },
};
