import { readFileSync } from 'node:fs';
import {
  assessLanding,
  assessTakeoff,
  type Criterion,
  type LandingAssessment,
  type LandingRequest,
  type TakeoffAssessment,
  type TakeoffRequest,
} from '../../src/assessment/index.ts';

const examples = new URL('../../examples/', import.meta.url);

const texts = new Map<string, string>();

/** Fresh at every call, but read from the disk once. */
function readJson(url: URL): Record<string, unknown> {
  const text = texts.get(url.href) ?? readFileSync(url, 'utf8');
  texts.set(url.href, text);
  return JSON.parse(text) as Record<string, unknown>;
}

/** Changes to a document by path, keys separated by points; undefined takes the key away. */
export type Changes = Readonly<Record<string, unknown>>;

/** An example request as a fresh plain document, its performance data in place, with changes. */
export function example(name: string, changes: Changes = {}): unknown {
  const requests = new URL('requests/', examples);
  const request = readJson(new URL(`${name}.json`, requests));
  request['performanceData'] = readJson(new URL(request['performanceData'] as string, requests));
  for (const [path, value] of Object.entries(changes)) put(request, path, value);
  return request;
}

/** Performance data of the examples as a fresh plain document. */
export const performanceData = (name: string) => readJson(new URL(`performance-data/${name}.json`, examples));

function put(document: unknown, path: string, value: unknown): void {
  const keys = path.split('.');
  const last = keys.pop() as string;
  let part = document as Record<string, unknown>;
  for (const key of keys) {
    const next = part[key];
    if (typeof next !== 'object' || next === null) throw new Error(`no ${key} of ${path} in the example`);
    part = next as Record<string, unknown>;
  }
  if (value === undefined) delete part[last];
  else part[last] = structuredClone(value);
}

export const takeoffRequest = (name: string, changes?: Changes) => example(name, changes) as TakeoffRequest;
export const landingRequest = (name: string, changes?: Changes) => example(name, changes) as LandingRequest;

/** The assessment of an example with changes; a fault fails the test with all of them. */
export function takeoff(name: string, changes?: Changes): TakeoffAssessment {
  const result = assessTakeoff(takeoffRequest(name, changes));
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

/** The same for a landing. */
export function landing(name: string, changes?: Changes): LandingAssessment {
  const result = assessLanding(landingRequest(name, changes));
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

/** The only criterion with this id. */
export function criterion(assessment: { criteria: readonly Criterion[] }, id: string): Criterion {
  const found = assessment.criteria.filter((each) => each.id === id);
  if (found.length !== 1) throw new Error(`${found.length} criteria with the id ${id}`);
  return found[0] as Criterion;
}

/** Its verdict, with value, limit and margin where it is decided. */
export function judged(assessment: { criteria: readonly Criterion[] }, id: string) {
  const found = criterion(assessment, id);
  if (found.verdict === 'undetermined') return { verdict: found.verdict };
  const { verdict, value, limit, margin } = found;
  return { verdict, value: value.value, limit: limit.value, margin: margin.value };
}

/** The totals of the stairs by step, in metres. */
export function totals(assessment: TakeoffAssessment | LandingAssessment): Record<string, number> {
  return Object.fromEntries((assessment.stairs?.steps ?? []).map(({ step, total }) => [step, total.value]));
}

/** The break-evens by quantity: the value, or the answer where there is none. */
export function turning(assessment: TakeoffAssessment | LandingAssessment): Record<string, number | string> {
  return Object.fromEntries(
    assessment.breakEvens.map(({ quantity, value, answer }) => [quantity, value?.value ?? answer]),
  );
}

/** The codes of the sentences in one of the lists of an assessment. */
export const codes = (sentences: readonly { code: string }[]) => sentences.map(({ code }) => code);

/** Results without their places in a trace, for two that come to the same by different steps. */
export const withoutSteps = <T extends { steps: readonly number[] }>(results: readonly T[]) =>
  results.map(({ steps: _, ...figures }) => figures);
