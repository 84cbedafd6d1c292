import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkValues, formulaRecords } from '../../src/register/index.ts';
import type { FormulaRecord } from '../../src/sources/index.ts';
import { DomainError } from '../../src/units/index.ts';
import { isUnitWord, type UnitWord } from '../../src/units/unit-table.ts';
import { evenly } from '../evenly.ts';

// A formula that claims to hold in any consistent set of units must follow when the base units change: with every
// input rescaled by its dimension, every result is rescaled by its own. A wrong power, a forgotten conversion or a
// hidden constant with a dimension breaks this.

/** Powers of length, time, mass, temperature and magnetic field. */
type Dimension = readonly [number, number, number, number, number];

const none: Dimension = [0, 0, 0, 0, 0];
const length: Dimension = [1, 0, 0, 0, 0];
const speed: Dimension = [1, -1, 0, 0, 0];
const temperature: Dimension = [0, 0, 0, 1, 0];
const pressure: Dimension = [-1, -2, 1, 0, 0];

/** `fixed`: counted from a zero or a standard of its own, so that rescaling means nothing. */
const dimensions: { readonly [U in UnitWord]: Dimension | 'fixed' } = {
  m: length,
  ft: length,
  km: length,
  NM: length,
  ftElevation: length,
  mElevation: length,
  ftHeight: length,
  mHeight: length,
  ftPA: 'fixed',
  mPA: 'fixed',
  ftDA: 'fixed',
  mDA: 'fixed',
  ftGeopotential: length,
  mGeopotential: length,
  ftGeometric: length,
  mGeometric: length,
  kt: speed,
  mph: speed,
  mps: speed,
  ftPerS: speed,
  kias: speed,
  kcas: speed,
  keas: speed,
  ktas: speed,
  mpsTAS: speed,
  ftPerSTAS: speed,
  ktGS: speed,
  ftPerMin: speed,
  mpsVertical: speed,
  degC: 'fixed',
  degF: 'fixed',
  K: temperature,
  degR: temperature,
  degCDifference: temperature,
  hPa: pressure,
  psi: pressure,
  inHg: pressure,
  Pa: pressure,
  psf: pressure,
  PaS: [-1, -1, 1, 0, 0],
  slugPerFtS: [-1, -1, 1, 0, 0],
  m2PerS: [2, -1, 0, 0, 0],
  ft2PerS: [2, -1, 0, 0, 0],
  inH2O: pressure,
  ftPerHPa: [2, 2, -1, 0, 0],
  kg: [0, 0, 1, 0, 0],
  lb: [0, 0, 1, 0, 0],
  deg: none,
  rad: none,
  degPerYear: [0, -1, 0, 0, 0],
  degPerS: [0, -1, 0, 0, 0],
  radPerS: [0, -1, 0, 0, 0],
  degLatitude: none,
  degLongitude: none,
  degTrue: none,
  degMagnetic: none,
  degEast: none,
  degEastPerYear: [0, -1, 0, 0, 0],
  ratio: none,
  percent: none,
  ftPerNM: none,
  kgPerM3: [-3, 0, 1, 0, 0],
  slugPerFt3: [-3, 0, 1, 0, 0],
  NPerM2: pressure,
  lbfPerFt2: pressure,
  mps2: [1, -2, 0, 0, 0],
  ftPerS2: [1, -2, 0, 0, 0],
  s2PerM2: [-2, 2, 0, 0, 0],
  s2PerFt2: [-2, 2, 0, 0, 0],
  m2: [2, 0, 0, 0, 0],
  N: [1, -2, 1, 0, 0],
  kgPerM: [-1, 0, 1, 0, 0],
  L: [3, 0, 0, 0, 0],
  USgal: [3, 0, 0, 0, 0],
  s: [0, 1, 0, 0, 0],
  min: [0, 1, 0, 0, 0],
  year: 'fixed',
  nT: [0, 0, 0, 0, 1],
  nTPerYear: [0, -1, 0, 0, 1],
};

/** The factor by which figures in a unit change when the base units do; 1 for what is no quantity. */
function factorOf(unit: string | undefined, scales: readonly number[]): number {
  if (unit === undefined || !isUnitWord(unit)) return 1;
  const dimension = dimensions[unit];
  if (dimension === 'fixed') throw new Error(`${unit} cannot be rescaled: the record must say homogeneous: false`);
  return dimension.reduce((product, power, i) => product * (scales[i] ?? 1) ** power, 1);
}

/** What the formula answers, by the name of the output; a refusal answers with its code. */
function answer(record: FormulaRecord, inputs: Record<string, unknown>): Record<string, unknown> {
  try {
    const result = record.formula(inputs);
    return typeof result === 'object' && result !== null ? (result as Record<string, unknown>) : { result };
  } catch (error) {
    if (error instanceof DomainError) return { refused: error.detail.code };
    throw error;
  }
}

/** Which inputs a call has, which of them are quantities, and the values of the others: those of the published examples. */
function callsOf(record: FormulaRecord): { quantities: string[]; rest: Record<string, unknown> }[] {
  const examples = checkValues.filter((checkValue) => checkValue.record === record.id).map(({ inputs }) => inputs);
  const all =
    examples.length > 0
      ? examples
      : [Object.fromEntries(Object.keys(record.domain).map((name) => [name, { value: 0, unit: '' }]))];
  return all.map((inputs) => {
    const isQuantity = (name: string, input: unknown) =>
      name in record.domain && typeof input === 'object' && input !== null && 'unit' in input;
    const entries = Object.entries(inputs);
    return {
      quantities: entries.filter(([name, input]) => isQuantity(name, input)).map(([name]) => name),
      rest: Object.fromEntries(entries.filter(([name, input]) => !isQuantity(name, input))),
    };
  });
}

/** Draws inputs and a change of base units such that both calls stay within the domain, and compares the answers. */
function checkHomogeneity(record: FormulaRecord): void {
  const calls = callsOf(record);
  let answered = 0;
  const scale = evenly(0.5, 2);
  // In thousandths: of two inputs that differ in their last digits alone, a difference would keep no digit.
  const share = fc.integer({ min: 0, max: 1000 }).map((part) => part / 1000);
  const draw = fc.record({
    call: fc.constantFrom(...calls),
    scales: fc.array(scale, { minLength: 5, maxLength: 5 }),
    shares: fc.array(share, { minLength: 12, maxLength: 12 }),
  });
  fc.assert(
    fc.property(draw, ({ call, scales, shares }) => {
      const before: Record<string, unknown> = { ...call.rest };
      const after: Record<string, unknown> = { ...call.rest };
      for (const [i, name] of call.quantities.entries()) {
        const bound = record.domain[name];
        if (bound === undefined) throw new Error(`${record.id}: no bounds for ${name}`);
        const factor = factorOf(bound.unit, scales);
        const least = Math.max(bound.min, bound.min / factor);
        const most = Math.min(bound.max, bound.max / factor);
        fc.pre(least <= most);
        const value = least + (shares[i] ?? 0) * (most - least);
        before[name] = value;
        after[name] = Math.min(bound.max, Math.max(bound.min, value * factor));
      }
      const first = answer(record, before);
      const second = answer(record, after);
      expect(second['refused']).toBe(first['refused']);
      if (first['refused'] !== undefined) return;
      answered += 1;
      for (const [name, { unit }] of Object.entries(record.outputs)) {
        const value = first[name];
        if (typeof value !== 'number') expect(second[name], name).toEqual(value);
        else expectClose(second[name], value * factorOf(unit, scales), name);
      }
    }),
  );
  expect(answered, 'calls that were answered, not refused').toBeGreaterThan(50);
}

function expectClose(actual: unknown, expected: number, name: string): void {
  expect(actual, name).toSatisfy(Number.isFinite);
  expect(Math.abs(Number(actual) - expected), name).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(expected)));
}

/** Whether anything of a record has a dimension; an equation between angles and ratios alone follows trivially. */
function hasDimension(record: FormulaRecord): boolean {
  const units = [...Object.values(record.domain), ...Object.values(record.outputs)].map(({ unit }) => unit);
  return units.some((unit) => isUnitWord(unit) && dimensions[unit] !== none);
}

const claimed = formulaRecords.filter((record) => record.homogeneous && hasDimension(record));

describe('a homogeneous equation follows a change of the base units', () => {
  it.each(claimed.map((record) => [record.id, record] as const))('%s', (_id, record) => checkHomogeneity(record));

  const stopping: FormulaRecord = {
    id: 'test.stopping-distance',
    title: 'distance in which a speed is lost evenly in a time',
    equation: 's = vt/2',
    formula: (x: { speed: number; time: number }) => (x.speed * x.time) / 2,
    domain: {
      speed: { unit: 'mps', min: 0, max: 100, source: 'test' },
      time: { unit: 's', min: 1, max: 60, source: 'test' },
    },
    inputs: {},
    outputs: { result: { symbol: 's', meaning: 'distance', unit: 'm' } },
    citations: [{ source: 'mathematics', locator: 'uniform deceleration', access: 'derived' }],
    homogeneous: true,
    checkValues: { nonePublished: 'test of the test' },
  };

  it('and the test would find one that does not', () => {
    checkHomogeneity(stopping);
    const wrongPower = { ...stopping, formula: (x: { speed: number; time: number }) => x.speed ** 2 * x.time };
    const hiddenConstant = {
      ...stopping,
      formula: (x: { speed: number; time: number }) => x.speed ** 2 / (2 * 9.80665) + 0 * x.time,
    };
    const wrongOutput = { ...stopping, outputs: { result: { symbol: 's', meaning: 'distance', unit: 'mps' } } };
    const fixedZero = {
      ...stopping,
      domain: { ...stopping.domain, time: { unit: 'degC', min: 1, max: 60, source: 'test' } },
    };
    for (const wrong of [wrongPower, hiddenConstant, wrongOutput, fixedZero])
      expect(() => checkHomogeneity(wrong)).toThrow();
  });
});
