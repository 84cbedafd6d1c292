/**
 * The layers of `src`, as rules for dependency-cruiser: a folder imports only folders printed above it.
 * @type {readonly string[]}
 */
const layers = [
  'units',
  'sources',
  'documents',
  'atmosphere',
  'airspeed',
  'magnetism',
  'wind',
  'distance',
  'flight-path',
  'dynamics',
  'rules-of-thumb',
  'weather-report',
  'aircraft',
  'assessment',
  'study',
  'columns',
  'worksheet',
  'register',
];

const upwards = layers.slice(0, -1).map((folder, i) => ({
  name: `${folder}-imports-only-what-stands-above-it`,
  severity: 'error',
  from: { path: `^src/${folder}/` },
  to: { path: `^src/(${layers.slice(i + 1).join('|')})/` },
}));

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...upwards,
    {
      name: 'every-folder-has-a-layer',
      comment: 'A new folder must be given its place in the list of layers.',
      severity: 'error',
      from: { path: `^src/(?!(?:${layers.join('|')})/)[^/]+/` },
      to: {},
    },
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'other-folders-only-through-their-index',
      comment:
        'The unit table and the schemas of documents are shared beneath the index: readers of documents need them, and the published types must not name the validator.',
      severity: 'error',
      from: { path: '^src/([^/]+)/' },
      to: {
        path: '^src/[^/]+/',
        pathNot: [
          '^src/$1/',
          '^src/[^/]+/index\\.ts$',
          '^src/units/unit-table\\.ts$',
          '^src/units/comparison-step\\.ts$',
          '^src/units/as-given\\.ts$',
          '-schema\\.ts$',
          '\\.record\\.ts$',
          '\\.check-values\\.json$',
        ],
      },
    },
    {
      name: 'records-and-check-values-only-from-the-register',
      comment: 'No record, check value or bibliography text may reach the bundle of an app that only computes.',
      severity: 'error',
      from: { pathNot: ['^src/register/'] },
      to: { path: '\\.record\\.ts$|\\.check-values\\.json$' },
    },
    {
      name: 'rules-of-thumb-enter-no-assessment',
      comment: 'They are compared with the formulas that assessments use; nothing else may call them.',
      severity: 'error',
      from: { pathNot: ['^src/rules-of-thumb/', '^src/register/'] },
      to: { path: '^src/rules-of-thumb/' },
    },
    {
      name: 'the-root-holds-no-register',
      severity: 'error',
      from: { path: '^src/index\\.ts$' },
      to: { path: '^src/(register|worksheet)/' },
    },
    {
      name: 'the-magnetic-model-only-from-magnetism',
      severity: 'error',
      from: { pathNot: '^src/magnetism/' },
      to: { path: 'geomagnetism' },
    },
    { name: 'nothing-unresolved', severity: 'error', from: {}, to: { couldNotResolve: true } },
    { name: 'no-development-tools', severity: 'error', from: {}, to: { dependencyTypes: ['npm-dev'] } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types'],
      extensions: ['.ts', '.js', '.json'],
    },
  },
};
