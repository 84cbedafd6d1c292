// `npm run platforms`: the same inputs through every formula and every example on Node 20, 22 and 24, Deno and Chromium,
// all results compared with those of the Node that runs this. `-- --quick` takes fewer inputs and no other Node, as the
// tests do; `--json` prints the comparison alone. Needs a build. A full run is recorded in docs/measurements/platforms.json.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import { chromiumFlags, chromiumPath } from './chromium.mjs';

const isQuick = process.argv.includes('--quick');
const asJson = process.argv.includes('--json');
const count = isQuick ? 60 : 2000;
const most = 1e-12;
/** Where more is expected, and why. */
const exceptions = {
  'magnetism.field': {
    most: 1e-10,
    reason: 'its changes in a year, some nT, are differences of two fields of some 50 000 nT: 1e-10 is 2e-15 of those',
  },
};
const folder = path.resolve('.cache/platforms');
const measurements = 'docs/measurements/platforms.json';

const program = await bundle();
const own = `Node ${process.versions.node}`;
const reference = run(process.execPath, program);
const ways = [
  ...(isQuick ? [] : [20, 22, 24].map((major) => [`Node ${major}`, () => otherNode(major)])),
  [
    'Deno',
    () => run(process.execPath, path.resolve('node_modules/deno/bin.cjs'), 'run', '--quiet', '--no-config', program),
  ],
  ['Chromium', inChromium],
];

const platforms = {};
for (const [name, take] of ways) {
  const outcome = await taken(take);
  if ('missing' in outcome) {
    platforms[name] = outcome;
    continue;
  }
  const { platform, results } = outcome;
  platforms[name] = { platform, ...compared(reference.results, results) };
}

const calls = Object.values(reference.results).reduce((sum, list) => sum + list.length, 0);
const answered = Object.values(reference.results)
  .flat()
  .filter(([first]) => !String(first).startsWith('refused: ')).length;
const summary = { reference: own, formulas: Object.keys(reference.results).length, calls, answered, platforms };
const unanswered = Object.entries(reference.results).filter(([, list]) =>
  list.every(([first]) => String(first).startsWith('refused: ')),
);
if (unanswered.length > 0) throw new Error(`refused throughout: ${unanswered.map(([id]) => id).join(', ')}`);

if (asJson) console.log(JSON.stringify(summary));
else print();
if (Object.values(platforms).some((each) => each.beyond?.length > 0 || each.otherTexts > 0)) process.exitCode = 1;
if (!isQuick) record();

/** One file that runs anywhere: the build, the samples and the examples. */
async function bundle() {
  const requests = fs.readdirSync('examples/requests').map((file) => {
    const request = JSON.parse(fs.readFileSync(`examples/requests/${file}`, 'utf8'));
    const data = fs.readFileSync(path.resolve('examples/requests', request.performanceData), 'utf8');
    return { name: path.basename(file, '.json'), request: { ...request, performanceData: JSON.parse(data) } };
  });
  const outfile = path.join(folder, 'samples.mjs');
  const contents = `
    import { results } from './tools/platforms/samples.mjs';
    const text = () => JSON.stringify(results(${count}, ${JSON.stringify(requests)}));
    if (typeof document === 'undefined') console.log(text());
    else globalThis.samples = text;`;
  await build({
    stdin: { contents, resolveDir: '.', loader: 'js' },
    bundle: true,
    format: 'esm',
    target: 'es2022',
    outfile,
    logLevel: 'error',
  });
  return outfile;
}

/** Runs a program that prints the results. */
function run(command, ...options) {
  const env = { ...process.env, NO_COLOR: '1', DENO_NO_UPDATE_CHECK: '1' };
  const printed = execFileSync(command, options, {
    encoding: 'utf8',
    maxBuffer: 2 ** 30,
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  return { results: JSON.parse(printed) };
}

function otherNode(major) {
  const npx = (command) => ['-y', '-p', `node@${major}`, '-c', command];
  const version = execFileSync('npx', npx('node -p process.version'), {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  return { platform: `Node ${version.trim().slice(1)}`, ...run('npx', ...npx(`node ${program}`)) };
}

async function inChromium() {
  const executablePath = chromiumPath();
  if (executablePath === undefined) throw new Error('no chromium on the path');
  const browser = await chromium.launch({ executablePath, args: chromiumFlags, headless: true });
  try {
    const page = await browser.newPage();
    await page.addScriptTag({ content: fs.readFileSync(program, 'utf8'), type: 'module' });
    await page.waitForFunction(() => 'samples' in globalThis);
    const printed = await page.evaluate(() => globalThis.samples());
    return { platform: `Chromium ${browser.version()}`, results: JSON.parse(printed) };
  } finally {
    await browser.close();
  }
}

/** The results of a platform, or why it was not run: it is then not counted as the same. */
async function taken(take) {
  try {
    return await take();
  } catch (error) {
    return { missing: error instanceof Error ? error.message.split('\n')[0] : String(error) };
  }
}

/** The greatest difference of all numbers, and the formulas that differ at all. */
function compared(expected, found) {
  let [otherTexts, numbers] = [0, 0];
  const differing = {};
  for (const [id, lists] of Object.entries(expected)) {
    for (const [i, list] of lists.entries()) {
      const other = found[id]?.[i] ?? [];
      if (other.length !== list.length) otherTexts += 1;
      for (const [k, value] of list.entries()) {
        if (typeof value !== 'number') {
          if (value !== other[k]) otherTexts += 1;
          continue;
        }
        numbers += 1;
        if (Object.is(value, other[k])) continue;
        differing[id] = Math.max(differing[id] ?? 0, differenceOf(value, other[k]));
      }
    }
  }
  const beyond = Object.keys(differing).filter((id) => differing[id] > (exceptions[id]?.most ?? most));
  const excepted = Object.keys(exceptions).map((id) => [id, { greatest: differing[id] ?? 0, ...exceptions[id] }]);
  const others = Object.entries(differing).filter(([id]) => !(id in exceptions));
  const greatest = Math.max(0, ...others.map(([, difference]) => difference));
  return { numbers, greatest, otherTexts, beyond, excepted: Object.fromEntries(excepted), differing };
}

/** Relative to the larger of the two; below 1, where a zero may be a cancelled rounding, as it stands. */
function differenceOf(a, b) {
  const size = Math.max(1, Math.abs(a), Math.abs(b));
  return Number.isFinite(b) ? Math.abs(a - b) / size : Number.POSITIVE_INFINITY;
}

function print() {
  console.log(
    `${summary.formulas} formulas and examples, ${calls} calls of which ${answered} have an answer, against ${own}:`,
  );
  for (const [name, each] of Object.entries(platforms)) {
    if ('missing' in each) {
      console.log(`  ${name}: not run, ${each.missing}`);
      continue;
    }
    const formulas = Object.keys(each.differing).length;
    const differences = `greatest difference ${each.greatest.toExponential(1)}, in ${formulas} formulas; ${each.otherTexts} texts differ`;
    console.log(`  ${each.platform ?? name}: ${each.numbers} numbers, ${differences}`);
    for (const [id, { greatest, reason }] of Object.entries(each.excepted)) {
      console.log(`    but ${id}: ${greatest.toExponential(1)}, ${reason}`);
    }
    for (const id of each.beyond) console.log(`    too much: ${id}, ${each.differing[id].toExponential(1)}`);
  }
}

function record() {
  const date = new Date().toISOString().slice(0, 10);
  const commit = execFileSync('git', ['rev-parse', '--short=7', 'HEAD'], { encoding: 'utf8' }).trim();
  fs.mkdirSync('docs/measurements', { recursive: true });
  fs.writeFileSync(measurements, `${JSON.stringify({ ...summary, date, commit }, null, 2)}\n`);
}
