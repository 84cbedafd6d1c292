import { describe, expect, it } from 'vitest';
import type { AnyRequest } from '../../src/study/any-request.ts';
import {
  pressureAltitude_ft,
  printed,
  takeoff as recomputed,
  landing as recomputedLanding,
} from '../assessment/recompute.ts';
import { landingRequest, performanceData, takeoffRequest } from '../assessment/scenario.ts';
import { degC, faults, kg, knots, tableOf } from './distance-tables.ts';

const m = (value: number) => ({ value, unit: 'm' });

// With the safety factor of 1.25 on 28, downhill: the printed tables, 4.5 % for each knot of tailwind used, grass 1.20.
const required = (mass_kg: number, temperature_degC: number) =>
  Math.ceil(
    printed.takeoffDistance(mass_kg, pressureAltitude_ft, temperature_degC) *
      (1 - 0.045 * recomputed('28').used) *
      1.2 *
      1.25 -
      1e-9,
  );

describe('a table over masses', () => {
  const axes = {
    masses: [{ mass: { value: 940, unit: 'kg' }, loading: 'two up' }, ...kg(1050)],
    temperatures: degC(26, 30),
  } as const;

  it('has a head, a way of reading and rows with their loading', () => {
    const table = tableOf(takeoffRequest('takeoff-28'), axes);
    expect(table).toMatchObject({
      aeroplane: 'Corran Four',
      aerodrome: 'Vesikorpi',
      designator: '28',
      phase: 'takeoff',
    });
    expect(table.title.text).toBe('Take-off on 28 at Vesikorpi, Corran Four.');
    expect(table.rowsAlong).toBe('mass');
    expect(table.reading.text).toBe('Between two columns use the next warmer, between two rows the next heavier.');
    expect(table.rows.map(({ words }) => words)).toEqual(['940 kg', '1\u00a0050 kg']);
    expect(table.rows[0]?.loading).toBe('two up');
    expect(table.rows[1]).not.toHaveProperty('loading');
  });

  it('has in each cell the distance, what is available and what is left, in figures and words', () => {
    const [light, heavy] = tableOf(takeoffRequest('takeoff-28'), axes).rows;
    for (const [i, temperature] of [26, 30].entries()) {
      expect(light?.cells[i]).toMatchObject({
        verdict: 'within',
        required: m(required(940, temperature)),
        available: m(830),
        spare: m(830 - required(940, temperature)),
        sentence: { text: `${830 - required(940, temperature)} m to spare.` },
      });
      const short = required(1050, temperature) - 830;
      expect(heavy?.cells[i]).toMatchObject({
        verdict: 'outside',
        spare: m(-short),
        sentence: { text: `outside limits: the take-off distance, ${short} m short.` },
      });
    }
  });

  it('has the speeds of the manoeuvre without those of the climb, and without working', () => {
    const [row] = tableOf(takeoffRequest('takeoff-28'), axes).rows;
    // Printed for the flap, linear between 850 and 1050 kg, rounded up to 1 kt; the calibration is that of the manual.
    expect(row?.speeds).toEqual([
      { name: 'lift-off', speed: { value: 48, unit: 'kias' }, calibrated: { value: 50.4, unit: 'kcas' } },
      { name: 'at 50 ft', speed: { value: 57, unit: 'kias' }, calibrated: { value: 57.8, unit: 'kcas' } },
    ]);
  });

  it('has the warmest temperature of each row, whatever it is today', () => {
    const rows = tableOf(takeoffRequest('takeoff-28', { 'weather.temperature.value': 38 }), {
      ...axes,
      masses: kg(850, 940, 1050),
    }).rows;
    // 940 kg: 35 °C is published with the scenario. 850 kg fits at the last temperature printed.
    expect(required(850, 40)).toBeLessThanOrEqual(830);
    const last = Array.from({ length: 41 }, (_, i) => 40 - i).find((each) => required(1050, each) <= 830);
    expect(rows.map(({ warmest }) => warmest.sentence.text)).toEqual([
      '850 kg: within limits throughout the temperatures searched, up to 40 °C.',
      '940 kg: within limits up to 35 °C.',
      `1\u00a0050 kg: within limits up to ${last} °C.`,
    ]);
    expect(rows.map(({ warmest }) => warmest.value?.value)).toEqual([undefined, 35, last]);
    expect(rows.map(({ warmest }) => warmest.answer)).toEqual(['withinThroughoutRange', 'value', 'value']);
    expect(rows[0]?.warmest.range).toEqual({ from: degC(0)[0], to: degC(40)[0] });
  });

  it('says where no temperature is within', () => {
    const short = takeoffRequest('takeoff-10');
    // The trees stand in the way at any of them.
    const [row] = tableOf(short, { masses: kg(1050), temperatures: degC(26) }).rows;
    expect(row?.warmest.answer).not.toBe('value');
    expect(row?.warmest.sentence.text).toBe('1\u00a0050 kg: not within limits at any temperature from 0 °C to 40 °C.');
    expect(row?.warmest).not.toHaveProperty('value');
  });

  it('carries what is to be said before use, without the verdicts, each once', () => {
    const table = tableOf(takeoffRequest('takeoff-28'), axes);
    expect(table.notes.map(({ code }) => code)).toEqual(['pressure-altitude', 'second-hand-factors']);
    for (const note of table.notes) expect(note).not.toHaveProperty('steps');
    expect(table.notAssessed).toContain('engine failure');
    expect(new Set(table.notAssessed).size).toBe(table.notAssessed.length);
  });
});

describe('a table over winds', () => {
  it('names winds without a sign, and reads towards less headwind', () => {
    const table = tableOf(landingRequest('landing-10'), { headwinds: knots(6, 0, -2), temperatures: degC(26) });
    expect(table.rows.map(({ words }) => words)).toEqual(['6 kt headwind', 'calm', '2 kt tailwind']);
    expect(table.rows.map(({ warmest }) => warmest.sentence.text.split(':')[0])).toEqual([
      '6 kt headwind',
      'Calm',
      '2 kt tailwind',
    ]);
    expect(table.title.text).toBe('Landing on 10 at Vesikorpi, Corran Four.');
    expect(table).toMatchObject({ phase: 'landing', rowsAlong: 'headwind' });
    expect(table.reading.text).toBe(
      'Between two columns use the next warmer, between two rows the one with less headwind or more tailwind.',
    );
    // Half of 6 kt gives 0.9 % each, 150 % of 2 kt takes 4 % each. Without gusts the approach is flown at 57 KIAS, the
    // speed of the table; grass 1.15, within 70 %; uphill, for which no credit is taken.
    const manual = recomputedLanding('10').stairs.manual;
    const wanted = [1 - 0.009 * 3, 1, 1 + 0.04 * 3].map((factor) => Math.ceil((manual * factor * 1.15) / 0.7));
    expect(table.rows.map(({ cells }) => cells[0]?.required?.value)).toEqual(wanted);
    expect(table.rows[0]?.speeds.map(({ name }) => name)).toEqual(['approach']);
  });
});

describe('what a table holds for', () => {
  const validOnlyIf = (request: AnyRequest, along: 'masses' | 'headwinds' = 'masses') =>
    tableOf(request, {
      ...(along === 'masses' ? { masses: kg(900) } : { headwinds: knots(0) }),
      temperatures: degC(20),
    }).validOnlyIf.text;

  const easa = 'EASA performance class B (Regulation (EU) No 965/2012, Part-CAT, as seen in 2024)';
  const runway = 'the runway is 28 at Vesikorpi, 830 m of dry grass up to 20 cm on firm ground';

  it('is one list: over masses with the wind and without the mass', () => {
    expect(validOnlyIf(takeoffRequest('takeoff-28', { 'weather.wind.gust': undefined }))).toBe(
      `Valid only if the aeroplane is Corran Four (Short-field take-off, flap 15), ${runway}, the wind is 190° true at 7 kt, QNH is not below 1\u00a0006 hPa, and the factors are those of ${easa}, with its safety factor.`,
    );
  });

  it('and over winds with the mass and without the wind', () => {
    expect(validOnlyIf(takeoffRequest('takeoff-28', { safetyFactor: 'none' }), 'headwinds')).toBe(
      `Valid only if the aeroplane is Corran Four (Short-field take-off, flap 15), its mass is not above 940 kg, ${runway}, the wind is steady along the runway, QNH is not below 1\u00a0006 hPa, and the factors are those of ${easa}, without a safety factor.`,
    );
  });

  it('words QFE, gusts, and winds of no reported direction or of all', () => {
    const byQfe = { 'weather.qnh': undefined, 'weather.qfe': { value: 990, unit: 'hPa' } };
    expect(validOnlyIf(takeoffRequest('takeoff-28', byQfe))).toContain('gusting 17 kt, QFE is not below 990 hPa, and');
    expect(validOnlyIf(takeoffRequest('takeoff-28', { 'weather.wind.from': 'not reported' }))).toContain(
      'the wind is of no reported direction at 7 kt gusting 17 kt',
    );
    expect(validOnlyIf(takeoffRequest('takeoff-28', { 'weather.wind.from': 'variable' }))).toContain(
      'the wind is variable at 7 kt gusting 17 kt',
    );
  });

  it('says of a set without a safety factor that it asks for none', () => {
    expect(validOnlyIf(takeoffRequest('takeoff-28', { factorSet: 'part-nco' }))).toMatch(
      /, which asks for no safety factor\.$/,
    );
  });

  it('names the only configuration of the phase where the request names none', () => {
    const data = performanceData('corran-four') as { configurations: { id: string }[] };
    data.configurations = data.configurations.filter(({ id }) => id !== 'flap-0');
    const request = takeoffRequest('takeoff-28', { performanceData: data, configuration: undefined });
    expect(validOnlyIf(request)).toContain('Corran Four (Short-field take-off, flap 15),');
  });
});

describe('the lists of rows and columns', () => {
  it('have 1 to 20 entries', () => {
    const twenty = degC(...Array.from({ length: 20 }, (_, i) => i));
    expect(faults({ masses: kg(900), temperatures: twenty })).toEqual([]);
    const tooMany = faults({ masses: kg(900), temperatures: [...twenty, ...degC(20)] });
    expect(tooMany).toEqual(['axes.temperatures: a list of 1 to 20 entries is needed']);
    expect(faults({ masses: 5, temperatures: [] })).toEqual([
      'axes.masses: a list of 1 to 20 entries is needed',
      'axes.temperatures: a list of 1 to 20 entries is needed',
    ]);
  });

  it('have values with units, all in one', () => {
    const needed = (path: string) => `${path}: a value with its unit is needed`;
    expect(faults({ masses: [null, ...kg(900)], temperatures: degC(10) })).toContain(needed('axes.masses[0]'));
    expect(
      faults({ masses: kg(900), temperatures: [...degC(10, Number.NaN), 3, { value: '12', unit: 'degC' }] }),
    ).toEqual([needed('axes.temperatures[1]'), needed('axes.temperatures[2]'), needed('axes.temperatures[3]')]);
    expect(faults({ headwinds: [{ value: 3, unit: 'mps' }], temperatures: degC(10) })).toEqual([
      'axes.headwinds[0]: mps is not kt throughout',
    ]);
  });

  it('need one kind of row', () => {
    expect(faults({ masses: kg(900), headwinds: knots(3), temperatures: degC(10) })).toEqual([
      'axes: one of masses and headwinds is needed',
    ]);
  });

  it('are named where a cell cannot be read: the column for its temperature, the row for the rest', () => {
    const at = (axes: unknown) => [...new Set(faults(axes).map((line) => line.split(':')[0]))];
    expect(at({ masses: kg(900, 950), temperatures: degC(10, 60) })).toEqual(['axes.temperatures[1]']);
    expect(at({ masses: kg(20, 900), temperatures: degC(10) })).toEqual(['axes.masses[0]']);
    expect(at({ headwinds: knots(120, 3), temperatures: degC(10) })).toEqual(['axes.headwinds[0]']);
  });
});
