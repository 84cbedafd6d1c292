// `npm test`: everything that must hold, in sequence, stopping at the first failure.
// The last line counts the tests from vitest's own report; vitest's exit code decides.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';

const report = '.cache/vitest.json';

/** @type {readonly (readonly [heading: string, command: string])[]} */
const steps = [
  ['Lint and format', 'biome check --config-path=tools --error-on-warnings'],
  ['Types', 'tsc -p . && tsc -p docs/worksheet-page'],
  ['Build', 'tsup --config tsup.config.ts --silent && node tools/name-files.mjs'],
  ['JSON Schemas', 'node tools/schemas.mjs'],
  ['Check values', 'node tools/check-values.mjs'],
  ['Licence notices', 'node tools/notices.mjs'],
  ['Figures of the README', 'node tools/readme.mjs --check'],
  ['Layers', 'depcruise --config tools/layers.cjs src'],
  ['Mixed units', 'node tools/mixed-tags.mjs'],
  ['Unused code and dependencies', 'knip --config tools/knip.json'],
  ['Package', 'node tools/package.mjs'],
  ['Public types', 'node tools/api.mjs'],
  ['Examples', 'node tools/examples.mjs'],
  ['Documentation', 'node tools/docs.mjs'],
  ['Notebooks', 'node tools/notebooks.mjs'],
  [
    'Tests',
    `vitest run --config tools/vitest.config.ts --coverage --reporter=default --reporter=json --outputFile.json=${report}`,
  ],
];

fs.rmSync(report, { force: true });
const path = `node_modules/.bin:${process.env.PATH}`;
const begin = performance.now();

for (const [heading, command] of steps) {
  const start = performance.now();
  console.log(`\n== ${heading}`);
  const { status } = spawnSync(command, { shell: true, stdio: 'inherit', env: { ...process.env, PATH: path } });
  console.log(`   ${((performance.now() - start) / 1000).toFixed(1)} s`);
  if (status === 0) continue;
  console.error(`\n${heading}: failed (${command})`);
  process.exitCode = status ?? 1;
  break;
}

console.log(`   ${((performance.now() - begin) / 1000).toFixed(1)} s in all`);
if (fs.existsSync(report)) {
  const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(fs.readFileSync(report, 'utf8'));
  if (numPassedTests === 0) process.exitCode ||= 1;
  if (numPendingTests > 0) console.log(`${numPendingTests} not run: they need a browser on the path`);
  console.log(`${numPassedTests} passed, ${numFailedTests} failed`);
} else {
  process.exitCode ||= 1;
  console.log('no report of tests: 0 passed');
}
