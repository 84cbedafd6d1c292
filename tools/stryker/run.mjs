// `npm run stryker -- wind`: breaks the code of a folder in every way the mutation tool knows and counts what the
// tests of that folder notice. Without a folder: all of them; about a quarter of a second for a mutant. Writes the
// counts to docs/measurements/mutants.json, prints the survivors, and fails when one has no reason in survivors.json.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import { Stryker } from '@stryker-mutator/core';

const measurements = 'docs/measurements/mutants.json';
const reasonsFile = 'tools/stryker/survivors.json';

/**
 * Of the many tests of an assessment, those that take a moment and look at the part: what is left out can only lower the
 * count. @param {string[]} names
 */
const ofAssessment = (...names) => names.map((name) => `test/assessment/${name}.test.ts`);

/** Folders of `src` in the order of their layers, with the folders or files of `test` that answer for them. */
const folders = {
  units: ['test/units', 'test/sources'],
  sources: ['test/sources'],
  documents: ['test/documents'],
  atmosphere: ['test/atmosphere'],
  airspeed: ['test/airspeed'],
  magnetism: ['test/magnetism'],
  wind: ['test/wind'],
  distance: ['test/distance'],
  'flight-path': ['test/flight-path'],
  dynamics: ['test/dynamics'],
  'weather-report': ['test/weather-report'],
  'rules-of-thumb': ['test/rules-of-thumb'],
  aircraft: ['test/aircraft'],
  'assessment/criteria': ofAssessment('criterion', 'shared-criteria', 'safety', 'quarry', 'factor-guards'),
  'assessment/kernel': ofAssessment(
    ...['approach-and-wheels', 'approach-path', 'break-even', 'changes', 'chart', 'climb-out', 'decisions', 'demo'],
    ...['distance-chain', 'factors-used', 'first-reason', 'landing-distance', 'mass-criterion', 'more-adverse'],
    ...['no-reading', 'no-table', 'nothing-silent', 'off-calibration', 'printed-laws', 'quarry', 'roll-start'],
    ...['slope-credit', 'stairs-known', 'surface-estimate', 'table-axes', 'takeoff-marks', 'variants'],
  ),
  'assessment/request': ofAssessment(
    'request-faults',
    'situation',
    'unconfirmed-factors',
    'weather-from-metar',
    'north',
    'faults',
  ),
  'assessment/result': ofAssessment('present', 'sentences', 'working', 'finished', 'steps-behind', 'wind-on-runway'),
  study: ['test/study'],
  columns: ['test/columns'],
};

/** Where the verdict of each criterion is made. */
const criteria = ['criterion', 'shared-criteria', 'safety'].map((name) => `src/assessment/kernel/${name}.ts`);

/** What is no folder by itself: the criteria, and the kernel without them. */
const parts = {
  'assessment/criteria': criteria,
  'assessment/kernel': ['src/assessment/kernel/**/*.ts', ...criteria.map((file) => `!${file}`)],
};

const wanted = process.argv.slice(2);
for (const folder of wanted) {
  if (!(folder in folders)) throw new Error(`${folder} is not one of ${Object.keys(folders).join(', ')}`);
}
const reasons = JSON.parse(fs.readFileSync(reasonsFile, 'utf8')).groups;
let unexplained = 0;

for (const folder of wanted.length > 0 ? wanted : Object.keys(folders)) {
  process.env.GROUNDROLL_FOLDER = folder;
  process.env.GROUNDROLL_TESTS = folders[folder].join(' ');
  const mutants = await mutantsOf(folder);
  record(folder, mutants);
  report(mutants);
}
if (unexplained > 0) {
  console.log(`\n${unexplained} survivors without a reason in ${reasonsFile}`);
  process.exitCode = 1;
}

/** @param {string} folder */
async function mutantsOf(folder) {
  const { $schema: _, ...options } = JSON.parse(fs.readFileSync('tools/stryker/stryker.config.json', 'utf8'));
  const stryker = new Stryker({
    ...options,
    mutate: [
      ...(parts[folder] ?? [`src/${folder}/**/*.ts`]),
      '!src/**/*.record.ts',
      '!src/**/index.ts',
      '!src/sources/bibliography.ts',
    ],
    incrementalFile: `.cache/stryker/${folder.replace('/', '-')}.json`,
    jsonReporter: { fileName: `.cache/stryker/${folder.replace('/', '-')}.report.json` },
  });
  const results = await stryker.runMutationTest();
  return results.filter(({ status }) => status !== 'Ignored' && status !== 'CompileError');
}

/** @param {string} folder @param {import('@stryker-mutator/core').MutantResult[]} mutants */
function record(folder, mutants) {
  const of = (status) => mutants.filter((mutant) => mutant.status === status).length;
  const noticed = of('Killed') + of('Timeout') + of('RuntimeError');
  const counts = {
    mutants: mutants.length,
    killed: of('Killed') + of('RuntimeError'),
    timeouts: of('Timeout'),
    survived: of('Survived'),
    notReached: of('NoCoverage'),
    score_percent: Math.floor((1000 * noticed) / mutants.length) / 10,
    date: new Date().toISOString().slice(0, 10),
    commit: execFileSync('git', ['rev-parse', '--short=7', 'HEAD'], { encoding: 'utf8' }).trim(),
  };
  const all = fs.existsSync(measurements) ? JSON.parse(fs.readFileSync(measurements, 'utf8')) : {};
  all[folder] = counts;
  const inOrder = Object.keys(folders).filter((name) => name in all);
  const lines = inOrder.map((name) => `  ${JSON.stringify(name)}: ${JSON.stringify(all[name])}`);
  fs.mkdirSync('docs/measurements', { recursive: true });
  fs.writeFileSync(measurements, `{\n${lines.join(',\n')}\n}\n`);
  console.log(`\n${folder}: ${JSON.stringify(counts)}`);
}

/** @param {import('@stryker-mutator/core').MutantResult[]} mutants */
function report(mutants) {
  const survivors = mutants.filter(({ status }) => status === 'Survived' || status === 'NoCoverage');
  for (const mutant of survivors.sort((a, b) => order(a).localeCompare(order(b), 'en'))) {
    // Lines and columns are counted from 1, the end column is behind the last character.
    const { start, end } = mutant.location;
    const lines = fs
      .readFileSync(mutant.fileName, 'utf8')
      .split('\n')
      .slice(start.line - 1, end.line);
    const line = lines[0].trim();
    lines[lines.length - 1] = lines[lines.length - 1].slice(0, end.column - 1);
    const was = lines.join('\n').slice(start.column - 1);
    const file = mutant.fileName.slice(mutant.fileName.lastIndexOf('/src/') + 1);
    if (reasons.some(({ mutants: known }) => known.some((one) => isSame(one, file, line, mutant.replacement))))
      continue;
    unexplained += 1;
    const reached = mutant.status === 'NoCoverage' ? ' (not reached)' : '';
    console.log(`${file}:${start.line}${reached}  ${line}\n    ${was}\n    becomes ${mutant.replacement}`);
  }
}

/** The line itself names the place, so that lines may be added above it. */
function isSame(known, file, line, replacement) {
  return known.file === file && known.line === line && known.becomes === replacement;
}

/** @param {import('@stryker-mutator/core').MutantResult} mutant */
function order({ fileName, location }) {
  return `${fileName}:${String(location.start.line).padStart(6, '0')}`;
}
