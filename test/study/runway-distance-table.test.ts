import { describe, expect, it } from 'vitest';
import { readRunwayDistanceTable } from '../../src/study/index.ts';
import { judged, landing, landingRequest, takeoff, takeoffRequest, withoutSteps } from '../assessment/scenario.ts';
import { takeoffOf } from './aeroplanes.ts';
import { degC, faults, kg, knots, tableOf } from './distance-tables.ts';

describe('masses over temperatures', () => {
  const table = tableOf(takeoffRequest('takeoff-28'), {
    masses: [
      { mass: { value: 850, unit: 'kg' } },
      { mass: { value: 940, unit: 'kg' }, loading: 'two up, full tanks' },
      ...kg(1050),
    ],
    temperatures: degC(10, 26, 40),
  });

  it('is in each cell what the assessment says there', () => {
    for (const { at, cells, speeds } of table.rows) {
      for (const cell of cells) {
        const assessment = takeoff('takeoff-28', {
          'mass.value': at.value,
          'weather.temperature.value': cell.temperature.value,
          'weather.dewPoint': undefined,
        });
        expect(cell.verdict).toBe(assessment.verdict);
        expect(judged(assessment, 'takeoff-distance')).toMatchObject({
          value: cell.required?.value,
          limit: cell.available?.value,
          margin: cell.spare?.value,
        });
        expect(withoutSteps(assessment.speeds.slice(0, 2))).toEqual(speeds);
      }
    }
    expect(table.rows[1]?.cells[1]).toMatchObject({
      required: { value: 771 },
      spare: { value: 59 },
      sentence: { text: '59 m to spare.' },
    });
  });

  it('words what is outside, and names masses by their loading', () => {
    expect(table.rows[2]?.cells[0]?.sentence.text).toBe('outside limits: the take-off distance, 32 m short.');
    expect(table.rows.map(({ words, loading }) => [words, loading])).toEqual([
      ['850 kg', undefined],
      ['940 kg', 'two up, full tanks'],
      ['1\u00a0050 kg', undefined],
    ]);
  });

  it('has the warmest temperature of each row, by the whole verdict', () => {
    const [light, middle, heavy] = table.rows.map(({ warmest }) => warmest);
    expect(light).toMatchObject({ answer: 'withinThroughoutRange', range: { from: { value: 0 }, to: { value: 40 } } });
    // Published with the scenario for 940 kg.
    expect(middle).toMatchObject({ answer: 'value', value: { value: 35, unit: 'degC' } });
    const heavyAt = (value: number) =>
      takeoff('takeoff-28', { 'mass.value': 1050, 'weather.temperature.value': value, 'weather.dewPoint': undefined })
        .verdict;
    const value = heavy?.value?.value as number;
    expect([heavyAt(value), heavyAt(value + 1)]).toEqual(['within', 'outside']);
    expect(middle?.sentence.text).toBe('940 kg: within limits up to 35 °C.');
  });

  it('says first what it is valid for, and carries notes and limits of use', () => {
    expect(table.validOnlyIf.text).toBe(
      'Valid only if the aeroplane is Corran Four (Short-field take-off, flap 15), the runway is 28 at Vesikorpi, 830 m of dry grass up to 20 cm on firm ground, the wind is 190° true at 7 kt gusting 17 kt, QNH is not below 1\u00a0006 hPa, and the factors are those of EASA performance class B (Regulation (EU) No 965/2012, Part-CAT, as seen in 2024), with its safety factor.',
    );
    expect(table.notes.map(({ code }) => code)).toEqual(['pressure-altitude', 'second-hand-factors']);
    expect(table.limitsOfUse.length).toBeGreaterThan(0);
    expect(table.notAssessed).toContain('engine failure');
    expect(table.reading.text).toContain('next warmer');
  });
});

it('states what it holds for as it was put in, never rounded to the unsafe side', () => {
  const table = tableOf(
    takeoffRequest('takeoff-28', {
      'weather.qnh.value': 1006.4,
      'runway.length.value': 829.6,
      'weather.wind.speed.value': 7.4,
    }),
    { masses: kg(899.6), temperatures: degC(19.6) },
  );
  expect(table.validOnlyIf.text).toContain('QNH is not below 1\u00a0006.4 hPa');
  expect(table.validOnlyIf.text).toContain('829.6 m of dry grass');
  expect(table.validOnlyIf.text).toContain('at 7.4 kt gusting 17 kt');
  expect(table.rows[0]?.words).toBe('899.6 kg');
  const winds = tableOf(landingRequest('landing-10', { 'mass.value': 899.6 }), {
    headwinds: knots(4.96),
    temperatures: degC(20),
  });
  expect(winds.rows[0]?.words).toBe('4.96 kt headwind');
  expect(winds.validOnlyIf.text).toContain('its mass is not above 899.6 kg');
});

describe('a criterion beside the distance', () => {
  it('decides a cell: the trees on 10', () => {
    const table = tableOf(takeoffRequest('takeoff-10'), { masses: kg(850, 940), temperatures: degC(0, 26) });
    expect(table.rows[1]?.cells[1]).toMatchObject({
      verdict: 'outside',
      spare: { value: 108 },
      sentence: { text: 'outside limits: the gradient over pines, 11.7 percentage points short.' },
    });
  });

  it('may leave a cell without a figure', () => {
    const table = tableOf(takeoffRequest('takeoff-28'), { masses: kg(940), temperatures: degC(26, 45) });
    const [, hot] = table.rows[0]?.cells ?? [];
    expect(hot).toEqual({
      temperature: { value: 45, unit: 'degC' },
      verdict: 'undetermined',
      sentence: expect.objectContaining({ text: 'undetermined: the take-off run.' }),
    });
  });
});

describe('winds along the runway over temperatures', () => {
  const table = tableOf(landingRequest('landing-10'), { headwinds: knots(12, 0, -3), temperatures: degC(20, 30) });

  it('replaces the reported wind by a steady one', () => {
    for (const { at, cells } of table.rows) {
      const from = { value: at.value >= 0 ? 112 : 292, unit: 'degTrue' };
      const wind = { source: 'METAR', from, speed: { value: Math.abs(at.value), unit: 'kt' } };
      const assessment = landing('landing-10', {
        'weather.wind': wind,
        'weather.temperature.value': 30,
        'weather.dewPoint': undefined,
      });
      expect(judged(assessment, 'landing-distance')).toMatchObject({ value: cells[1]?.required?.value });
    }
  });

  it('names winds without a sign, and holds for the mass', () => {
    expect(table.rows.map(({ words }) => words)).toEqual(['12 kt headwind', 'calm', '3 kt tailwind']);
    expect(table.validOnlyIf.text).toContain('its mass is not above 940 kg');
    expect(table.validOnlyIf.text).toContain('the wind is steady along the runway');
    expect(table).toMatchObject({ phase: 'landing', rowsAlong: 'headwind' });
  });
});

describe('units and choices of the request', () => {
  it('takes masses in pounds, temperatures of the request in Fahrenheit, and QFE', () => {
    const request = takeoffRequest('takeoff-28', {
      'weather.temperature': { value: 78.8, unit: 'degF' },
      'weather.qnh': undefined,
      'weather.qfe': { value: 990, unit: 'hPa' },
      safetyFactor: 'none',
    });
    const table = tableOf(request, { masses: [{ mass: { value: 2000, unit: 'lb' } }], temperatures: degC(10, 30) });
    expect(table.rows[0]?.warmest.range.to).toEqual({ value: 40, unit: 'degC' });
    expect(table.validOnlyIf.text).toContain('QFE is not below 990 hPa');
    expect(table.validOnlyIf.text).toContain('without a safety factor');
    expect(table.notes.map(({ code }) => code)).toContain('safety-factor-none');
  });

  it('reads moist air at the virtual temperature, not below the dew point', () => {
    const humid = takeoffRequest('takeoff-28', { 'policies.humidity': 'virtual temperature' });
    expect(tableOf(humid, { masses: kg(900), temperatures: degC(20, 30) }).rows).toHaveLength(1);
    expect(faults({ masses: kg(900), temperatures: degC(10, 20) }, humid)[0]).toContain('axes.temperatures[0]: ');
  });

  it('serves other aeroplanes, and winds without a direction', () => {
    const request = takeoffOf('plover-two', { 'weather.wind.from': 'variable', factorSet: 'part-nco' });
    const table = tableOf(request, { masses: [{ mass: { value: 1400, unit: 'lb' } }], temperatures: degC(15) });
    expect(table.validOnlyIf.text).toContain('the wind is variable at 7 kt');
    expect(table.validOnlyIf.text).toContain('which asks for no safety factor');
  });
});

describe('the axes', () => {
  it('are refused with their paths', () => {
    expect(faults(undefined)).toEqual(['axes: is not an object']);
    expect(faults({ temperatures: degC(0) })).toEqual(['axes: one of masses and headwinds is needed']);
    expect(faults({ masses: kg(900), headwinds: knots(0), temperatures: degC(0) })).toHaveLength(1);
    expect(faults({ masses: [], temperatures: 3 })).toEqual([
      'axes.masses: a list of 1 to 20 entries is needed',
      'axes.temperatures: a list of 1 to 20 entries is needed',
    ]);
    expect(faults({ masses: kg(900, 850), temperatures: degC(10, 10) })).toEqual([
      'axes.masses[1]: is not in ascending order',
      'axes.temperatures[1]: is not in ascending order',
    ]);
    expect(faults({ headwinds: knots(0, 5), temperatures: degC(10) })).toEqual([
      'axes.headwinds[1]: is not in descending order',
    ]);
    expect(
      faults({ masses: [...kg(900), { mass: { value: 2100, unit: 'lb' } }, null], temperatures: degC(10) }),
    ).toEqual(['axes.masses[1]: lb is not kg or lb throughout', 'axes.masses[2]: a value with its unit is needed']);
    expect(
      faults({ masses: [{ ...kg(900)[0], laoding: 'solo' }], temperature: degC(9), temperatures: degC(9) }),
    ).toEqual([
      'axes.temperature: is none of masses, headwinds, temperatures',
      'axes.masses[0].laoding: is none of mass, loading',
    ]);
    expect(faults({ masses: [{ ...kg(900)[0], loading: 2 }], temperatures: degC(9) })).toEqual([
      'axes.masses[0].loading: 2 is not a text',
    ]);
    expect(faults({ masses: kg(20, 900), temperatures: degC(10) })[0]).toContain('axes.masses[0]: ');
    expect(faults({ headwinds: knots(120), temperatures: degC(10) })[0]).toContain('axes.headwinds[0]: ');
    expect(faults({ masses: kg(900), temperatures: degC(60) })[0]).toContain('axes.temperatures[0]: ');
    // A temperature is as bad in every row; a wind is one wind.
    expect(faults({ masses: kg(850, 900), temperatures: degC(10, 60) })).toHaveLength(1);
    expect(faults({ headwinds: knots(5, 3), temperatures: degC(60) })).toEqual([
      expect.stringContaining('axes.temperatures[0]: '),
    ]);
    expect(faults({ headwinds: knots(120), temperatures: degC(10, 15) })).toHaveLength(1);
  });

  it('are read together with the request', () => {
    const broken = takeoffRequest('takeoff-28', { 'mass.value': -1 });
    expect(faults({ masses: kg(900, 800), temperatures: degC(10) }, broken)).toHaveLength(2);
  });
});

describe('a stored table', () => {
  const table = tableOf(takeoffRequest('takeoff-10'), { masses: kg(850, 940), temperatures: degC(0, 26, 45) });

  it('is read back as it was written', () => {
    expect(readRunwayDistanceTable(JSON.parse(JSON.stringify(table)))).toEqual({ ok: true, value: table });
  });

  it('is refused with all its faults', () => {
    const broken = structuredClone(table) as unknown as { rows: { cells: unknown[] }[]; limitsOfUse: unknown[] };
    broken.rows[0]?.cells.pop();
    expect(readRunwayDistanceTable(broken)).toEqual({
      ok: false,
      faults: [{ path: 'rows[0].cells', message: '2 cells for 3 temperatures' }],
    });
    broken.limitsOfUse = [];
    expect(readRunwayDistanceTable({ ...broken, colour: 'red' })).toMatchObject({
      ok: false,
      faults: [{ path: 'limitsOfUse' }, { path: 'colour' }],
    });
  });
});
