import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { Choices } from './random.mjs';
import { targets } from './targets.mjs';

export const seed = 20260714;
/** No call may take longer; the slowest is reported, timed again so that a busy machine is not blamed on the input. */
export const longest_ms = 1000;
/** More than this kept after all inputs is a leak. */
export const mostKept_MB = 16;
/** A message repeats at most one text of a document, which holds at most 2000 characters. */
const longestMessage = 5000;

const notPlain = 'is not plain data: looking at it throws';
const prototypes = [Object.prototype, Array.prototype, String.prototype, Number.prototype, Function.prototype];
const namesOf = (object) => Reflect.ownKeys(object).length;

/** The n-th input of a target, always the same. */
export function inputOf(name, index) {
  return targets[name].input(new Choices(seed, index));
}

/**
 * Gives a reader random inputs, and looks at every answer.
 *
 * @param {string} name @param {{ inputs: number, first?: number }} options
 */
export function fuzz(name, { inputs, first = 0 }) {
  const { read, problem, valueIsNotRead } = targets[name];
  const before = prototypes.map(namesOf);
  const counts = { ok: 0, refused: 0 };
  /** @type {{ input: number, problem: string }[]} */
  const problems = [];
  let slowest = { ms: 0, input: first };
  let kept = 0;
  for (let index = first; index < first + inputs && problems.length < 5; index += 1) {
    const input = inputOf(name, index);
    try {
      const begin = performance.now();
      const result = read(input);
      const ms = performance.now() - begin;
      if (ms > slowest.ms) slowest = { ms: leastTime(read, input, ms, slowest.ms), input: index };
      const found = problemOf(result, valueIsNotRead) ?? problem?.(input, result);
      if (found !== undefined) problems.push({ input: index, problem: found });
      if (result.ok) counts.ok += 1;
      else counts.refused += 1;
    } catch (error) {
      problems.push({ input: index, problem: `throws ${error instanceof Error ? error.stack : String(error)}` });
    }
    // What is needed once is there after the first tenth.
    if (index - first === Math.floor(inputs / 10)) kept = keptMemory_MB();
  }
  const after = prototypes.map(namesOf);
  if (before.some((count, i) => count !== after[i])) problems.push({ input: first, problem: 'changes a prototype' });
  if (slowest.ms > longest_ms) problems.push({ input: slowest.input, problem: `takes ${slowest.ms.toFixed(0)} ms` });
  const grown_MB = keptMemory_MB() - kept;
  if (grown_MB > mostKept_MB) problems.push({ input: first, problem: `keeps ${grown_MB.toFixed(1)} MB` });
  return { name, inputs, ...counts, slowest_ms: slowest.ms, slowestInput: slowest.input, grown_MB, problems };
}

/** The least of a few calls, as soon as one is below what was slowest so far. */
function leastTime(read, input, first_ms, slowest_ms) {
  let least = first_ms;
  for (let i = 0; i < 3 && least > slowest_ms; i += 1) {
    const begin = performance.now();
    read(input);
    least = Math.min(least, performance.now() - begin);
  }
  return Math.max(least, slowest_ms);
}

/** What is wrong with an answer, in words. */
function problemOf(result, valueIsNotRead) {
  if (typeof result !== 'object' || result === null) return 'gives no result';
  if (result.ok === true) return valueIsNotRead ? undefined : notFinite(result, '');
  if (result.ok !== false) return 'is neither ok nor refused';
  // A reading of a chart has one reason instead of faults.
  if ('reason' in result)
    return typeof result.reason === 'string' && result.reason !== '' ? undefined : 'has no reason';
  const { faults } = result;
  if (!Array.isArray(faults) || faults.length === 0) return 'is refused without a fault';
  for (const { path, message } of faults) {
    if (typeof path !== 'string') return 'has a fault without a path';
    if (typeof message !== 'string' || message === '') return 'has a fault without a message';
    if (message.length > longestMessage) return `has a message of ${message.length} characters`;
    // No input of ours throws by itself, so this would be a mistake of the reader.
    if (message === notPlain) return 'threw inside the reader';
  }
  return undefined;
}

/** Where an accepted value holds something that is no number. */
function notFinite(value, path) {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : `gives ${value} at ${path}`;
  if (typeof value !== 'object' || value === null) return undefined;
  for (const key of Object.keys(value)) {
    const found = notFinite(value[key], `${path}.${key}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

function keptMemory_MB() {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc');
  collect();
  collect();
  return process.memoryUsage().heapUsed / 1e6;
}
