import { describe, expect, it } from 'vitest';
import { formulaRecords } from '../../src/register/index.ts';
import { DomainError } from '../../src/units/index.ts';

/** Inputs that go together, as bare numbers in the units of the domain, for each formula that has more than one. */
const ordinary: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  'atmosphere.qnh-from-qfe': { qfe: 1000, elevation: 500 },
  'atmosphere.qnh-from-station-pressure': { stationPressure: 1000, stationElevation: 500 },
  'atmosphere.qfe-from-station-pressure': { stationPressure: 1000, stationElevation: 500, elevation: 480 },
  'atmosphere.station-pressure-from-qfe': { qfe: 1000, elevation: 480, stationElevation: 500 },
  'atmosphere.qnh-from-pressure-altitude': { pressureAltitude: 800, elevation: 500 },
  'atmosphere.altimeter-setting-smithsonian': { stationPressure: 1000, stationElevation: 100 },
  'atmosphere.altimeter-setting-noaa': { stationPressure: 1000, stationElevation: 100 },
  'atmosphere.altimeter-setting-madis': { stationPressure: 1000, stationElevation: 100 },
  'atmosphere.altimeter-setting-iom-19': { stationPressure: 29.5, stationElevation: 100 },
  'atmosphere.altimeter-setting-asos': { stationPressure: 29.5, stationElevation: 300 },
  'atmosphere.altimeter-setting-awos': { stationPressure: 29.5, stationElevation: 300 },
  'atmosphere.relative-humidity': { temperature: 20, dewPoint: 10 },
  'atmosphere.humid-air-density': { pressure: 1000, temperature: 20, dewPoint: 10 },
  'atmosphere.virtual-temperature': { pressureAltitude: 1000, temperature: 20, dewPoint: 10 },
  'atmosphere.humid-density-altitude': { pressureAltitude: 1000, temperature: 20, dewPoint: 10 },
  'atmosphere.relative-humidity-wmo': { temperature: 20, pressure: 1000, mixingRatio: 0.005 },
  'atmosphere.cold-temperature-correction': { height: 1000, aerodromeTemperature: -10, aerodromeElevation: 500 },
  'atmosphere.cold-temperature-correction-hydrostatic': {
    height: 1000,
    aerodromeTemperature: -10,
    aerodromeElevation: 500,
  },
};

const records = formulaRecords.filter(({ id }) => id.startsWith('atmosphere.'));

const cases = records.flatMap((record) =>
  Object.entries(record.domain).map(([name, bound]) => {
    const middle = Object.entries(record.domain).map(([key, { min, max }]) => [key, (min + max) / 2] as const);
    return [record.id, name, { record, bound, inputs: ordinary[record.id] ?? Object.fromEntries(middle) }] as const;
  }),
);

function detailOf(call: () => unknown) {
  try {
    return { answer: call() };
  } catch (error) {
    if (error instanceof DomainError) return error.detail;
    throw error;
  }
}

describe.each(cases)('%s, %s', (_id, name, { record, bound, inputs }) => {
  it('is answered with finite numbers where the inputs are ordinary', () => {
    const answer = record.formula(inputs);
    const numbers = typeof answer === 'object' && answer !== null ? Object.values(answer) : [answer];
    expect(numbers.length).toBeGreaterThan(0);
    for (const number of numbers) expect(number).toSatisfy(Number.isFinite);
  });

  it('is accepted at both ends, unless another input speaks against it', () => {
    for (const value of [bound.min, bound.max]) {
      const found = detailOf(() => record.formula({ ...inputs, [name]: value }));
      if ('answer' in found) expect(JSON.stringify(found.answer)).not.toContain('null');
      else expect(found.code).toBe('inconsistent');
    }
  });

  it.each([
    ['below its range', bound.min - Math.max(1e-9, Math.abs(bound.min) * 1e-9), 'out-of-range'],
    ['above its range', bound.max + Math.max(1e-9, Math.abs(bound.max) * 1e-9), 'out-of-range'],
    ['that is not a number', Number.NaN, 'not-finite'],
    ['that is infinite', Number.POSITIVE_INFINITY, 'not-finite'],
    ['that is a text', '12', 'not-a-number'],
    ['that is missing', undefined, 'not-a-number'],
  ])('is refused by name and bounds when given a value %s', (_what, value, code) => {
    const { unit, min, max, source } = bound;
    const found = detailOf(() => record.formula({ ...inputs, [name]: value }));
    expect(found).toMatchObject({ code, parameter: name, unit, min, max, source });
  });
});
