import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessLanding, assessTakeoff } from '../../src/assessment/index.ts';
import { evenly } from '../evenly.ts';
import { example, landingRequest, takeoffRequest } from './scenario.ts';

/** Every place of a document, as keys. */
function placesOf(value: unknown, at: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [at];
  return [at, ...Object.entries(value).flatMap(([key, part]) => placesOf(part, [...at, key]))].filter(
    ({ length }) => length > 0,
  );
}

const odd = fc.oneof(
  fc.constantFrom<unknown>(undefined, null, '', '28', [], {}, true, 0, -1, 1e9, 1e-320, -0),
  fc.constantFrom<unknown>(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY),
  fc.constantFrom<unknown>('degTrue', 'degMagnetic', 'ft', 'mElevation', 'variable', 'not reported', '__proto__'),
  fc.constantFrom<unknown>({ value: 0, unit: 'kt' }, { value: 360, unit: 'degTrue' }, { value: 1, unit: 'ratio' }),
  evenly(-500, 5000),
  fc.integer({ min: -50, max: 1100 }),
  fc.jsonValue({ maxDepth: 2 }),
);

const names = { 'takeoff-10': assessTakeoff, 'takeoff-28': assessTakeoff, 'landing-10': assessLanding } as const;
const places = placesOf(example('takeoff-10')).map((keys) => keys.join('.'));

/** What went wrong in a result, or nothing: each fault has a place and a sentence, each answer only finite figures. */
function wrongWith(result: ReturnType<typeof assessTakeoff> | ReturnType<typeof assessLanding>): string | undefined {
  if (!result.ok) {
    const dumb = result.faults.find(({ path, message }) => typeof path !== 'string' || message.length < 3);
    return result.faults.length === 0 || dumb !== undefined ? JSON.stringify(result) : undefined;
  }
  return JSON.stringify(result.value, (_key, value: unknown) =>
    typeof value === 'number' && !Number.isFinite(value) ? 'not finite' : value,
  ).includes('"not finite"')
    ? 'a figure that is not finite'
    : undefined;
}

describe('a request changed anywhere', () => {
  it('is answered or gets its faults, and never throws', () => {
    const changes = fc.uniqueArray(fc.tuple(fc.constantFrom(...places), odd), {
      minLength: 1,
      maxLength: 2,
      selector: ([place]) => place,
    });
    const name = fc.constantFrom(...(Object.keys(names) as (keyof typeof names)[]));
    fc.assert(
      fc.property(name, changes, (which, list) => {
        const request = example(which);
        for (const [place, value] of list) setIfThere(request, place, value);
        expect(wrongWith(names[which](request as never))).toBeUndefined();
      }),
      { numRuns: 2000 },
    );
  });

  it('is answered for every measure moved within a few times its size', () => {
    const measures = places.filter((place) => place.endsWith('.value'));
    fc.assert(
      fc.property(fc.constantFrom(...measures), evenly(-1, 4), (place, factor) => {
        for (const request of [takeoffRequest('takeoff-10'), landingRequest('landing-10')]) {
          scaleIfThere(request, place, factor);
          const assess = request.schema === 'groundroll/takeoff-request/1' ? assessTakeoff : assessLanding;
          expect(wrongWith(assess(request as never))).toBeUndefined();
        }
      }),
      { numRuns: 1000 },
    );
  });
});

function partOf(document: unknown, keys: readonly string[]): Record<string, unknown> | undefined {
  let part = document;
  for (const key of keys) {
    if (typeof part !== 'object' || part === null) return undefined;
    part = (part as Record<string, unknown>)[key];
  }
  return typeof part === 'object' && part !== null ? (part as Record<string, unknown>) : undefined;
}

function setIfThere(document: unknown, place: string, value: unknown): void {
  const keys = place.split('.');
  const part = partOf(document, keys.slice(0, -1));
  if (part === undefined) return;
  const last = keys[keys.length - 1] as string;
  if (value === undefined) delete part[last];
  else part[last] = value;
}

function scaleIfThere(document: unknown, place: string, factor: number): void {
  const keys = place.split('.');
  const part = partOf(document, keys.slice(0, -1));
  if (part !== undefined && typeof part['value'] === 'number') part['value'] *= factor;
}
