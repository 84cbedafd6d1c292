import { expect } from 'vitest';
import type { ReadResult } from '../../src/documents/index.ts';
import { type AnyRequest, assessAny } from '../../src/study/any-request.ts';
import {
  greatestCrosswind,
  greatestSurfaceFactor,
  greatestTailwind,
  highestTemperature,
  performanceLimitedMass,
  type SolvedLimit,
  shortestRunway,
} from '../../src/study/index.ts';
import {
  crosswindQuestion,
  massQuestion,
  runwayLengthQuestion,
  surfaceFactorQuestion,
  tailwindQuestion,
  temperatureQuestion,
} from '../../src/study/questions.ts';

export function solvedOf(result: ReadResult<SolvedLimit>): SolvedLimit {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

export const limits = {
  mass: { solve: performanceLimitedMass, question: massQuestion },
  temperature: { solve: highestTemperature, question: temperatureQuestion },
  tailwind: { solve: greatestTailwind, question: tailwindQuestion },
  crosswind: { solve: greatestCrosswind, question: crosswindQuestion },
  'runway length': { solve: shortestRunway, question: runwayLengthQuestion },
  'surface factor': { solve: greatestSurfaceFactor, question: surfaceFactorQuestion },
} as const;
export const limitNames = Object.keys(limits) as (keyof typeof limits)[];

/** The verdict of the whole, explained assessment with the input at a value. */
export function assessedAt(request: AnyRequest, name: keyof typeof limits, value: number) {
  const assessed = assessAny(limits[name].question(request).input.at(value));
  return assessed.ok ? assessed.value.verdict : 'undetermined';
}

/** Solving, and assessing at the solution and one step beyond it, must agree. */
export function agrees(request: AnyRequest, name: keyof typeof limits): SolvedLimit {
  const limit = solvedOf(limits[name].solve(request));
  const { favourable, adverse } = limits[name].question(request);
  const towards = adverse >= favourable ? 1 : -1;
  const at = (value: number) => assessedAt(request, name, value);
  const { from, to } = limit.range;
  if (limit.answer === 'value') {
    const value = limit.value?.value as number;
    expect(at(value), `${name} at ${value}`).toBe('within');
    const beyond =
      (value + limit.tolerance * towards) * towards > to.value * towards ? to.value : value + limit.tolerance * towards;
    expect(at(Number(beyond.toPrecision(12))), `${name} beyond ${value}`).not.toBe('within');
    expect(limit.limitedBy.length).toBeGreaterThan(0);
    expect(limit.limitedBy.every(({ verdict }) => verdict !== 'within')).toBe(true);
  } else if (limit.answer === 'withinThroughoutRange') {
    for (const share of [0, 0.3, 0.7, 1]) expect(at(from.value + (to.value - from.value) * share)).toBe('within');
    expect(limit.limitedBy).toEqual([]);
  } else {
    const verdicts = [0, 0.3, 0.7, 1].map((share) => at(from.value + (to.value - from.value) * share));
    expect(verdicts).not.toContain('within');
    if (limit.answer === 'outsideThroughoutRange') expect(new Set(verdicts)).toEqual(new Set(['outside']));
    expect(limit.limitedBy.length).toBeGreaterThan(0);
  }
  expect(limit.working).toHaveLength(limit.evaluations);
  expect(limit.limitsOfUse.length).toBeGreaterThan(0);
  return limit;
}
