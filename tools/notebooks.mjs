// `npm run notebooks`: the lessons are type-checked and executed, and every output compared with the committed one.
// Where Jupyter is on the machine, they run in it, as a reader runs them; where it is not, the same cells run in Deno
// alone and are compared all the same. With `--write` the outputs of Deno alone are written into the notebooks instead.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';

/** @typedef {{ output_type: string, execution_count?: number | null, data?: Record<string, unknown>, text?: unknown }} Output */
/** @typedef {{ cell_type: string, source: string[] | string, outputs: Output[], execution_count?: number | null }} Cell */

const folder = 'examples/notebooks';
const cache = '.cache/notebooks';
const kernel = path.resolve(cache, 'kernel');
const deno = path.resolve('node_modules/.bin/deno');
const env = {
  ...process.env,
  // The kernel's description names the program as it is found here, so the folder must be absolute.
  PATH: `${path.dirname(deno)}${path.delimiter}${process.env.PATH}`,
  NO_COLOR: '1',
  DENO_NO_UPDATE_CHECK: '1',
  // The kernel is installed where only this run finds it.
  XDG_DATA_HOME: kernel,
  JUPYTER_PATH: `${kernel}/jupyter`,
};

const names = fs.readdirSync(folder).filter((name) => name.endsWith('.ipynb'));
if (names.length === 0) stop(`no notebooks in ${folder}`);
if (!fs.existsSync('dist/index.d.ts')) stop('run `npm run build` first: the lessons use the built package');

fs.rmSync(cache, { recursive: true, force: true });
for (const each of ['cells', 'executed']) fs.mkdirSync(`${cache}/${each}`, { recursive: true });

for (const name of names) fs.writeFileSync(moduleOf(name), moduleText(cellsOf(`${folder}/${name}`)));
run('a cell does not compile', 'node_modules/.bin/tsc', '-p', folder);

const hasJupyter = spawnSync('jupyter-nbconvert', ['--version']).status === 0;
if (process.argv.includes('--write')) {
  executeInDeno();
  for (const name of names) writeOutputs(name);
} else if (hasJupyter) {
  executeInJupyter();
  compareOutputs('Jupyter');
} else {
  console.log(`Jupyter is not on this machine. To run the lessons in it, as CI does, on Debian:
  apt-get install -y --no-install-recommends jupyter-nbconvert python3-nbclient jupyter-client`);
  executeInDeno();
  compareOutputs('Deno alone');
}

/** All cells in sequence; each first says which it is. @param {Cell[]} cells */
function moduleText(cells) {
  const marked = cells.map(({ source }, i) => `Object.assign(globalThis, { cell: ${i} });\n${textOf(source)}\n`);
  return marked.join('\n').replaceAll(/from '\.\//g, `from '../../../${folder}/`);
}

function executeInJupyter() {
  run('the kernel cannot be installed', deno, 'jupyter', '--install', '--force');
  const options = ['--to', 'notebook', '--execute', '--ExecutePreprocessor.record_timing=False', '--log-level=WARN'];
  // The kernel may send an output after it has said that the cell is done, and then nbconvert drops it. An output that is
  // missing is asked for again; one that differs is not.
  for (let rest = names, attempt = 1; rest.length > 0 && attempt <= 3; rest = names.filter(lacksOutput), attempt++) {
    const files = rest.map((name) => `${folder}/${name}`);
    run(
      'a lesson did not run to its end',
      'jupyter-nbconvert',
      ...options,
      '--output-dir',
      `${cache}/executed`,
      ...files,
    );
  }
}

/** @param {string} name */
function lacksOutput(name) {
  const executed = cellsOf(`${cache}/executed/${name}`);
  return cellsOf(`${folder}/${name}`).some(({ outputs }, i) => outputs.length > (executed[i]?.outputs.length ?? 0));
}

/** What the kernel would have been asked to show is kept by cell. */
function executeInDeno() {
  for (const name of names) {
    const executed = path.resolve(cache, 'executed', name);
    const runner = `${cache}/cells/run-${name}.mjs`;
    fs.writeFileSync(
      runner,
      `const cells = Array.from({ length: ${cellsOf(`${folder}/${name}`).length} }, () => ({ cell_type: 'code', source: '', outputs: [] }));
globalThis.keep = (data) => cells[globalThis.cell].outputs.push({ data, metadata: {}, output_type: 'display_data' });
await import('./${path.basename(moduleOf(name))}');
Deno.writeTextFileSync(${JSON.stringify(executed)}, JSON.stringify({ cells }));\n`,
    );
    run(`${name} did not run to its end`, deno, 'run', '--no-check', '--allow-all', runner);
  }
}

/** @param {string} where */
function compareOutputs(where) {
  let cells = 0;
  let different = 0;
  for (const name of names) {
    const executed = cellsOf(`${cache}/executed/${name}`);
    for (const [i, cell] of cellsOf(`${folder}/${name}`).entries()) {
      const [committed, now] = [cell, executed[i]].map((each) => JSON.stringify(outputsOf(each), null, 1));
      cells++;
      if (committed === now) continue;
      different++;
      console.error(`${folder}/${name}, code cell ${i + 1}: not the committed output\n- ${committed}\n+ ${now}`);
    }
  }
  if (different > 0) stop('if the change is meant: `npm run notebooks -- --write`, and look at the difference');
  console.log(`${names.length} notebooks, ${cells} cells run in ${where}: every output as committed`);
}

/** @param {string} name */
function writeOutputs(name) {
  const executed = cellsOf(`${cache}/executed/${name}`);
  const notebook = JSON.parse(fs.readFileSync(`${folder}/${name}`, 'utf8'));
  for (const [i, cell] of notebook.cells.filter(isCode).entries()) {
    cell.execution_count = i + 1;
    cell.outputs = outputsOf(executed[i]);
  }
  fs.writeFileSync(`${folder}/${name}`, `${JSON.stringify(notebook, null, 1)}\n`);
  console.log(`${folder}/${name}: written`);
}

/** What a reader sees of a cell: no counters, each text in one piece. @param {Cell | undefined} cell */
function outputsOf(cell) {
  return (cell?.outputs ?? []).map(({ output_type, data, text, ...rest }) => ({
    output_type,
    ...rest,
    ...('execution_count' in rest ? { execution_count: null } : {}),
    ...(text === undefined ? {} : { text: textOf(text) }),
    ...(data && {
      data: Object.fromEntries(
        Object.entries(data)
          .sort()
          .map(([type, value]) => [type, textOf(value)]),
      ),
    }),
  }));
}

/** @param {string} file */
function cellsOf(file) {
  return /** @type {Cell[]} */ (JSON.parse(fs.readFileSync(file, 'utf8')).cells).filter(isCode);
}

/** @param {Cell} cell */
function isCode(cell) {
  return cell.cell_type === 'code';
}

/** @param {string} name */
function moduleOf(name) {
  return `${cache}/cells/${name.replace('.ipynb', '.ts')}`;
}

/** Notebooks keep a text as one string or as its lines. @param {unknown} text */
function textOf(text) {
  return Array.isArray(text) ? text.join('') : text;
}

/** @param {string} trouble @param {string} command @param {string[]} options */
function run(trouble, command, ...options) {
  const { status, stdout, stderr } = spawnSync(command, options, { env, encoding: 'utf8' });
  if (status !== 0) stop(`${trouble}\n${stdout}${stderr}`);
}

/** @param {string} message @returns {never} */
function stop(message) {
  console.error(`Notebooks: ${message}`);
  process.exit(1);
}
