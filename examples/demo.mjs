// Without an argument: the four worksheets of the invented aeroplane at the invented field.
// With a file: the worksheet of the request in it. Faults go to the error output, with exit code 2.

import { readFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { assessLanding, assessTakeoff } from 'groundroll';
import { worksheetText } from 'groundroll/worksheet';

const assessmentOf = {
  'groundroll/takeoff-request/1': assessTakeoff,
  'groundroll/landing-request/1': assessLanding,
};

/** The parsed file, or the fault that kept it from being read. */
async function readJson(file, path) {
  try {
    return { ok: true, value: JSON.parse(await readFile(file, 'utf8')) };
  } catch (error) {
    const what = error instanceof SyntaxError ? 'is not JSON' : 'cannot be read';
    return { ok: false, faults: [{ path, message: `${what}: ${error.message}` }] };
  }
}

/** Assesses the request in a file; performance data named by a string are read from beside the request. */
async function assessFile(file) {
  const read = await readJson(file, file);
  if (!read.ok) return read;
  let request = read.value;
  if (typeof request !== 'object' || request === null || Array.isArray(request)) {
    return { ok: false, faults: [{ path: file, message: 'is not a request' }] };
  }
  const { schema, performanceData } = request;
  if (typeof schema !== 'string' || !Object.hasOwn(assessmentOf, schema)) {
    const message =
      schema === undefined
        ? 'is missing'
        : `${JSON.stringify(schema)} is not one of ${Object.keys(assessmentOf).join(', ')}`;
    return { ok: false, faults: [{ path: 'schema', message }] };
  }
  if (typeof performanceData === 'string') {
    const data = await readJson(resolve(dirname(file), performanceData), 'performanceData');
    if (!data.ok) return data;
    request = { ...request, performanceData: data.value };
  }
  const assessed = assessmentOf[schema](request);
  if (assessed.ok) return assessed;
  return { ok: false, faults: assessed.faults.map((fault) => ({ ...fault, path: fault.path || file })) };
}

/** Prints what came of one file. */
async function show(file) {
  const assessed = await assessFile(file);
  if (assessed.ok) {
    console.log(worksheetText(assessed.value));
    return;
  }
  for (const { path, message } of assessed.faults) console.error(`${path}: ${message}`);
  process.exitCode = 2;
}

const [file] = process.argv.slice(2);
if (file !== undefined) {
  await show(file);
} else {
  for (const name of ['takeoff-28', 'takeoff-10', 'landing-10', 'landing-28']) {
    console.log(`${'_'.repeat(88)}\n`);
    await show(fileURLToPath(new URL(`requests/${name}.json`, import.meta.url)));
  }
}
