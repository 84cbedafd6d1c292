// `npm run moved -- groundroll-0.1.0.tgz`: which results have moved since an older version, in Markdown for the note on a
// change. Both versions compute every check value's inputs and assess the example requests; what differs by more than the
// promised 1e-12 is listed by size. Build first; the dependencies are today's for both.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const promised = 1e-12;
const [tarball] = process.argv.slice(2);
if (tarball === undefined) {
  console.error('name the tarball of the older version: npm run moved -- groundroll-0.1.0.tgz');
  process.exit(2);
}

// Within this folder, so that the older version finds the dependencies.
fs.mkdirSync('.cache', { recursive: true });
const folder = fs.mkdtempSync(path.resolve('.cache/moved-'));
process.on('exit', () => fs.rmSync(folder, { recursive: true, force: true }));
execFileSync('tar', ['-xzf', path.resolve(tarball), '--strip-components=1', '-C', folder]);

async function version(place) {
  const entry = (name) => import(pathToFileURL(path.join(place, 'dist', `${name}.js`)).href);
  const { version } = JSON.parse(fs.readFileSync(path.join(place, 'package.json'), 'utf8'));
  return { version, ...(await entry('register')), ...(await entry('index')) };
}
const before = await version(folder);
const now = await version(process.cwd());

/** Every output of a formula for the inputs of a check value, or that it refuses them. */
function outputsOf({ compareCheckValues }, record, checkValue) {
  const names = Object.keys(record.outputs);
  return names.flatMap((name) => {
    const { unit } = record.outputs[name];
    const printed = Object.values(checkValue.expected).find((each) => typeof each === 'object')?.unit;
    const expected = unit === 'text' ? '' : { value: 0, unit: unit === 'data' ? printed : unit, tolerance: 1 };
    try {
      const [row] = compareCheckValues([record], [{ ...checkValue, expected: { [name]: expected } }]);
      return [{ name, ours: row.ours, unit: row.unit === 'text' ? '' : row.unit }];
    } catch (error) {
      return error.name === 'DomainError' ? [{ name, ours: 'refused', unit: '' }] : [];
    }
  });
}

/** How far apart two results are, relative to the larger; words that differ are infinitely far apart. */
function apart(a, b) {
  if (a === b) return 0;
  if (typeof a !== 'number' || typeof b !== 'number') return Number.POSITIVE_INFINITY;
  return Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
}

function formulasMoved() {
  const old = new Map(before.formulaRecords.map((record) => [record.id, record]));
  return now.formulaRecords.flatMap((record) => {
    const earlier = old.get(record.id);
    if (earlier === undefined) return [];
    const all = now.checkValues
      .filter((checkValue) => checkValue.record === record.id)
      .flatMap((checkValue) => {
        const olds = new Map(outputsOf(before, earlier, checkValue).map((each) => [each.name, each]));
        return outputsOf(now, record, checkValue).flatMap(({ name, ours, unit }) => {
          const was = olds.get(name);
          // What one of them does not give is a change of the types, which their reports show.
          if (was === undefined || was.unit !== unit) return [];
          return [{ where: checkValue.id, was: was.ours, is: ours, unit, size: apart(was.ours, ours) }];
        });
      });
    const moved = all.filter(({ size }) => size > promised).sort((a, b) => b.size - a.size);
    return moved.length === 0 ? [] : [{ name: `\`${record.id}\``, moved, of: all.length }];
  });
}

/** Every figure and word of a result by its place; sentences and working repeat them. */
function leaves(part, place = '') {
  if (typeof part !== 'object' || part === null) return [[place, part]];
  return Object.entries(part).flatMap(([key, inner]) => {
    if (['version', 'trace', 'steps', 'text', 'request', 'performanceData'].includes(key)) return [];
    const step = Array.isArray(part) ? `[${nameWithin(part, Number(key))}]` : `.${key}`;
    return leaves(inner, `${place}${step}`);
  });
}

/** An entry of a list by its id, counted where several have the same: a crosswind has a limit of each status. */
function nameWithin(list, i) {
  const id = list[i]?.id;
  if (id === undefined) return String(i);
  const before = list.slice(0, i).filter((each) => each.id === id).length;
  return before === 0 ? id : `${id} ${before + 1}`;
}

function assess({ assessTakeoff, assessLanding }, request) {
  const result = (request.schema.includes('takeoff') ? assessTakeoff : assessLanding)(request);
  return result.ok ? result.value : undefined;
}

function requestsMoved() {
  const parent = 'examples/requests';
  return fs
    .readdirSync(parent)
    .sort()
    .flatMap((file) => {
      const request = JSON.parse(fs.readFileSync(path.join(parent, file), 'utf8'));
      request.performanceData = JSON.parse(fs.readFileSync(path.join(parent, request.performanceData), 'utf8'));
      const [old, fresh] = [assess(before, request), assess(now, request)];
      const name = `${parent}/${file}`;
      if (old === undefined || fresh === undefined) {
        if (old === fresh) return [];
        const answer = (result) => (result === undefined ? 'faults' : result.verdict);
        const change = {
          where: 'answer',
          was: answer(old),
          is: answer(fresh),
          unit: '',
          size: Number.POSITIVE_INFINITY,
        };
        return [{ name, moved: [change], of: 1 }];
      }
      const olds = new Map(leaves(old));
      const all = leaves(fresh).filter(([place]) => olds.has(place));
      const moved = all
        .map(([place, is]) => ({
          where: place.slice(1),
          was: olds.get(place),
          is,
          unit: '',
          size: apart(olds.get(place), is),
        }))
        .filter(({ size }) => size > promised)
        .sort((a, b) => b.size - a.size || Number(b.where === 'verdict') - Number(a.where === 'verdict'));
      return moved.length === 0 ? [] : [{ name, moved, of: all.length }];
    });
}

function shown(size) {
  if (size === Number.POSITIVE_INFINITY) return 'another answer';
  return size >= 1e-5 ? `${Number((size * 100).toPrecision(2))} %` : size.toExponential(0);
}

function table(kind, rows) {
  if (rows.length === 0) return [`No ${kind} has moved.`, ''];
  const figure = (value) => (typeof value === 'number' ? Number(value.toPrecision(9)) : value);
  const lines = [...rows]
    .sort((a, b) => b.moved[0].size - a.moved[0].size || a.name.localeCompare(b.name, 'en'))
    .map(({ name, moved, of }) => {
      const [{ where, was, is, unit, size }] = moved;
      const example = `${where}: ${figure(was)} is now ${figure(is)}${unit && ` ${unit}`}`;
      return `| ${name} | ${shown(size)} | ${moved.length} of ${of} | ${example} |`;
    });
  return [`| ${kind} | largest change | figures moved | the largest |`, '|---|---|---|---|', ...lines, ''];
}

const ids = ({ formulaRecords }) => new Set(formulaRecords.map(({ id }) => id));
const [old, fresh] = [ids(before), ids(now)];
const listed = (words, list) =>
  list.length === 0 ? [] : [`${words}: ${list.map((id) => `\`${id}\``).join(', ')}.`, ''];
console.log(
  [
    `Results that have moved since ${before.version}, relative to themselves:`,
    '',
    ...table('formula', formulasMoved()),
    ...table('example', requestsMoved()),
    ...listed(
      'Gone',
      [...old].filter((id) => !fresh.has(id)),
    ),
    ...listed(
      'New',
      [...fresh].filter((id) => !old.has(id)),
    ),
  ]
    .join('\n')
    .trimEnd(),
);
