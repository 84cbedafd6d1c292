import { describe, expect, it } from 'vitest';
import { type Chart, readPerformanceData } from '../../src/aircraft/index.ts';
import { performanceDocument } from './documents.ts';
import { type Document, degrees, document, faultsOf, findingsOf, measure, onTwoAxes, spoil } from './invented-two.ts';

describe('readPerformanceData', () => {
  it('returns a document without fault as it was given, with nothing to remark', () => {
    expect(readPerformanceData(document())).toEqual({ ok: true, value: document(), findings: [] });
  });

  it('accepts blank cells', () => {
    expect(faultsOf(spoil('takeoff.0.distance.cells.1.2', null))).toEqual([]);
  });

  const rows: readonly [name: string, path: string, value: unknown, faultPath: string, message: RegExp][] = [
    ['NaN in a quantity', 'masses.maximumTakeoff.value', Number.NaN, 'masses.maximumTakeoff.value', /NaN/],
    ['NaN in a cell', 'takeoff.0.distance.cells.0.1', Number.NaN, 'takeoff[0].distance.cells', /numbers or null/],
    [
      'NaN on an axis',
      'takeoff.0.distance.axes.1.values.1',
      Number.NaN,
      'takeoff[0].distance.axes[1].values[1]',
      /NaN/,
    ],
    [
      'an infinity on an axis',
      'takeoff.0.distance.axes.1.values.2',
      Number.POSITIVE_INFINITY,
      'takeoff[0].distance.axes[1].values[2]',
      /finite/,
    ],
    [
      'a text for a figure',
      'masses.maximumTakeoff.value',
      '900',
      'masses.maximumTakeoff.value',
      /"900" is not a number/,
    ],
    [
      'a mass out of bounds',
      'masses.maximumTakeoff.value',
      20,
      'masses.maximumTakeoff.value',
      /20 kg is not within 50 to 10000 kg/,
    ],
    ['an unknown key', 'masses.maximumRamp', measure(905, 'kg'), 'masses.maximumRamp', /not a key of this document/],
    ['a missing key', 'identity.name', undefined, 'identity.name', /missing/],
    [
      'a unit word of another kind',
      'masses.maximumTakeoff.unit',
      'm',
      'masses.maximumTakeoff.unit',
      /^"m" is none of "kg", "lb"$/,
    ],
    [
      'a unit word that does not exist',
      'takeoff.0.groundRoll.unit',
      'metres',
      'takeoff[0].groundRoll.unit',
      /^"metres" is none of "m", "ft"$/,
    ],
    [
      'a unit of another axis',
      'takeoff.0.distance.axes.0.unit',
      'degC',
      'takeoff[0].distance.axes[0]',
      /degC is not a unit of pressureAltitude/,
    ],
    [
      'an axis that does not rise',
      'takeoff.0.distance.axes.1.values',
      [0, 40, 20],
      'takeoff[0].distance.axes[1]',
      /must rise: 20 follows 40/,
    ],
    [
      'a value twice on an axis',
      'takeoff.0.distance.axes.1.values',
      [0, 20, 20],
      'takeoff[0].distance.axes[1]',
      /must rise: 20 follows 20/,
    ],
    [
      'an axis of one value',
      'takeoff.0.distance.axes.0.values',
      [0],
      'takeoff[0].distance.axes[0].values',
      /at least 2/,
    ],
    [
      'a table without cells',
      'takeoff.0.distance.cells',
      [],
      'takeoff[0].distance',
      /cells has 0 entries for 2 values/,
    ],
    [
      'a table with blank cells only',
      'takeoff.0.distance.cells',
      [
        [null, null, null],
        [null, null, null],
      ],
      'takeoff[0].distance',
      /every cell is blank/,
    ],
    [
      'a row too short',
      'takeoff.0.distance.cells.1',
      [530, 610],
      'takeoff[0].distance',
      /cells\[1\] has 2 entries for 3 values of temperature/,
    ],
    [
      'a cell nested too deep',
      'takeoff.0.distance.cells.1.1',
      [610],
      'takeoff[0].distance',
      /cells\[1\]\[1\] is nested deeper/,
    ],
    [
      'two axes along one quantity',
      'takeoff.0.distance.axes.1',
      { quantity: 'pressureAltitude', unit: 'ftPA', values: degrees },
      'takeoff[0].distance',
      /two axes run along pressureAltitude/,
    ],
    [
      'a cell out of bounds',
      'takeoff.0.distance.cells.1.1',
      0.5,
      'takeoff[0].distance',
      /cells\[1\]\[1\]: 0\.5 m is not within 1 to 20000 m/,
    ],
    [
      'a screen of 35 ft',
      'takeoff.0.screenHeight.value',
      35,
      'takeoff[0].screenHeight.value',
      /35 ftHeight is not within 49 to 50/,
    ],
    [
      'a headwind law without its last printed wind',
      'takeoff.0.corrections.headwind',
      { change: measure(-1, 'percent'), per: measure(1, 'kt') },
      'takeoff[0].corrections.headwind.upTo',
      /missing/,
    ],
    [
      'a headwind law that lengthens',
      'takeoff.0.corrections.headwind.change.value',
      1,
      'takeoff[0].corrections.headwind.change',
      /does not lengthen/,
    ],
    [
      'a headwind law that leaves nothing',
      'takeoff.0.corrections.headwind.change.value',
      -6,
      'takeoff[0].corrections.headwind',
      /less than 20 %/,
    ],
    [
      'a tailwind law that shortens',
      'takeoff.0.corrections.tailwind.change.value',
      -5,
      'takeoff[0].corrections.tailwind.change',
      /does not shorten/,
    ],
    [
      'a roll longer than the distance',
      'takeoff.0.groundRoll.cells.1.2',
      700,
      'takeoff[0].distance.cells[1][2]',
      /690 m is not longer than the ground roll, 700 m/,
    ],
    [
      'a roll as long as the distance',
      'landing.0.distance.cells.0.0',
      160,
      'landing[0].distance.cells[0][0]',
      /160 m is not longer/,
    ],
    [
      'a table without axis or mass',
      'takeoff.0.associatedConditions.mass',
      undefined,
      'takeoff[0].associatedConditions.mass',
      /mass it holds for/,
    ],
    [
      'a table of the other phase',
      'takeoff.0.configuration',
      'ldg',
      'takeoff[0].configuration',
      /"ldg" is not a takeoff configuration/,
    ],
    [
      'a climb of no configuration',
      'climb.0.configuration',
      'none',
      'climb[0].configuration',
      /not a configuration of these data/,
    ],
    ['two configurations of one id', 'configurations.1.id', 'to', 'configurations', /two configurations have one id/],
    [
      'a lift-off above the screen speed',
      'takeoff.0.liftOffSpeed.cells',
      60,
      'takeoff[0].liftOffSpeed.cells',
      /60 kias is not below the speed at the screen height, 57/,
    ],
    ['a lift-off at the stall', 'takeoff.0.liftOffSpeed.cells', 40, 'takeoff[0].liftOffSpeed.cells', /not above V_S0/],
    [
      'a clean stall below the other',
      'stallSpeeds.1.speed.value',
      39,
      'stallSpeeds',
      /V_S0 40 kias is not below V_S1 39/,
    ],
    ['a calibration that falls', 'calibrations.0.calibrated.values', [44, 43, 61], 'calibrations[0]', /must rise/],
    [
      'a calibration of unequal lengths',
      'calibrations.0.calibrated.values',
      [44, 52],
      'calibrations[0]',
      /3 indicated against 2/,
    ],
    ['a date in another form', 'provenance.transcribedOn', '14.7.2026', 'provenance.transcribedOn', /not a date/],
    ['another schema', 'schema', 'groundroll/takeoff-request/1', 'schema', /is not/],
    ['a newer version', 'schema', 'groundroll/performance-data/2', 'schema', /version 2 is newer than version 1/],
    ['an older version', 'schema', 'groundroll/performance-data/0', 'schema', /version 0 is older than version 1/],
  ];

  it.each(rows)('refuses %s, with its path', (_name, path, value, faultPath, message) => {
    const faults = faultsOf(spoil(path, value));
    expect(faults.map((fault) => fault.path)).toContain(faultPath);
    expect(
      faults
        .filter((fault) => fault.path === faultPath)
        .map((fault) => fault.message)
        .join('\n'),
    ).toMatch(message);
  });

  it.each([null, undefined, 7, 'text', []])('refuses figures that are neither a table nor a chart: %j', (figures) => {
    const faults = faultsOf({ ...document(), climb: [{ ...document().climb[0], rateOfClimb: figures }] });
    expect(faults.length).toBeGreaterThan(0);
    expect(faults.every(({ path }) => path.startsWith('climb[0].rateOfClimb'))).toBe(true);
  });

  it('reports all faults of one kind at once', () => {
    const spoilt = document() as Document & { extra?: number };
    spoilt.extra = 1;
    spoilt.masses.maximumLanding.value = -1;
    spoilt.identity.name = '';
    expect(
      faultsOf(spoilt)
        .map(({ path }) => path)
        .sort(),
    ).toEqual(['extra', 'identity.name', 'masses.maximumLanding.value']);
  });

  it('refuses a second table for one configuration', () => {
    const spoilt = document();
    spoilt.landing.push(structuredClone(spoilt.landing[0] as Document['landing'][number]));
    expect(faultsOf(spoilt)).toEqual([{ path: 'landing[1].configuration', message: 'a second table for "ldg"' }]);
  });

  it.each([null, undefined, 7, 'text', [], {}])('answers %j with faults, never a throw', (json) => {
    expect(faultsOf(json).length).toBeGreaterThan(0);
  });
});

describe('a fault of figures between printed ones', () => {
  it('gives both in their unit, to one decimal', () => {
    const { takeoff, ...others } = structuredClone(performanceDocument('skerry-two'));
    const [first, ...rest] = takeoff;
    const { distance } = first as (typeof takeoff)[number];
    const [panel] = (distance as Chart).panels;
    const lastPoint = panel.curves.at(-1)?.points.at(-1) as [number, number];
    lastPoint[1] *= 0.3123456;
    const read = readPerformanceData({ ...others, takeoff: [first, ...rest] });
    const messages = read.ok ? [] : read.faults.map(({ message }) => message);
    const rolls = messages.filter((message) => message.includes('is not longer than the ground roll'));
    expect(rolls.length).toBeGreaterThan(0);
    for (const message of rolls) {
      expect(message).toMatch(/^\d+(?:\.\d)? m is not longer than the ground roll, \d+(?:\.\d)? m$/);
    }
    expect(rolls.some((message) => /\.\d/.test(message))).toBe(true);
  });
});

describe('a document that is too large', () => {
  it.each([
    [
      'a list of 200 000',
      spoil('takeoff.0.distance.cells', new Array(200_000).fill(500)),
      'takeoff[0].distance.cells',
      /200000 entries/,
    ],
    ['a long text', spoil('identity.name', 'x'.repeat(2001)), 'identity.name', /2001 characters/],
    [
      'many keys',
      spoil('masses', Object.fromEntries(Array.from({ length: 50_000 }, (_, i) => [`k${i}`, i]))),
      '',
      /more than 40000 values/,
    ],
  ])('is refused at once: %s', (_name, json, path, message) => {
    const faults = faultsOf(json);
    expect(faults).toHaveLength(1);
    if (path !== '') expect(faults[0]?.path).toBe(path);
    expect(faults[0]?.message).toMatch(message);
  });

  it('is refused when nested without end', () => {
    const endless: unknown[] = [];
    endless.push(endless);
    expect(faultsOf(spoil('takeoff', endless))).toHaveLength(1);
    expect(faultsOf(spoil('takeoff', endless))[0]?.message).toMatch(/nested deeper than 14 levels/);
  });
});

describe('plausibility findings', () => {
  it('point at a roll typed in feet for metres, and refuse nothing', () => {
    const spoilt = document();
    const [table] = spoilt.takeoff as [Document['takeoff'][number]];
    table.groundRoll = onTwoAxes('ft', [
      [200, 230, 260],
      [280, 320, 360],
    ]);
    const codes = findingsOf(spoilt).map(({ code, path }) => `${code} ${path}`);
    expect(codes).toContain('acceleration takeoff[0].groundRoll.cells[0][0]');
    expect(codes).toContain('distance-to-roll takeoff[0].distance.cells[0][0]');
  });

  it('point at a cell that is better than its neighbour', () => {
    const monotonic = findingsOf(spoil('takeoff.0.distance.cells.0.1', 370)).filter(({ code }) => code === 'monotonic');
    expect(monotonic.map(({ path }) => path)).toEqual(['takeoff[0].distance.cells[0][1]']);
    const climb = findingsOf(spoil('climb.0.rateOfClimb.cells.1.2', 450));
    expect(climb).toEqual([
      {
        code: 'monotonic',
        path: 'climb[0].rateOfClimb.cells[1][2]',
        message: '450 ftPerMin is better than 430 one step down in temperature',
      },
    ]);
  });
});
