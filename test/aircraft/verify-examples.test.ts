import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type PerformanceData, readPerformanceData, type Table, verifyExamples } from '../../src/aircraft/index.ts';
import { performanceDocument } from './documents.ts';
import { measure } from './invented-two.ts';

type Part = Record<string, unknown>;

const json = () =>
  JSON.parse(fs.readFileSync(new URL('../../examples/performance-data/corran-four.json', import.meta.url), 'utf8'));

function read(document: unknown): { data: PerformanceData; codes: string[] } {
  const result = readPerformanceData(document);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return { data: result.value, codes: result.findings.map(({ code }) => code) };
}

describe('verifyExamples', () => {
  it('gives the printed cell back, and the wind by the manual: (375 + 465) / 2 less 10 %', () => {
    const rows = verifyExamples(read(json()).data);
    expect(rows.map(({ quantity, printed, ours, agrees }) => [quantity, printed, ours, agrees])).toEqual([
      ['ground roll', 240, 240, true],
      ['distance', 485, 485, true],
      ['distance', 378, 378, true],
    ]);
  });

  it('finds a cell that was mistyped, and reading the data says so', () => {
    const document = json();
    document.takeoff[0].distance.cells[1][1][2] = 458;
    const { data, codes } = read(document);
    expect(verifyExamples(data).filter(({ agrees }) => !agrees)).toMatchObject([{ printed: 485, ours: 458 }]);
    expect(codes).toContain('example');
  });

  it('has no figure, rather than a guess, beyond the last printed wind', () => {
    const document = json();
    document.examples[1].at.headwind.value = 16;
    expect(verifyExamples(read(document).data).at(-1)).toMatchObject({ ours: undefined, agrees: false });
  });
});

describe('an example of a climb', () => {
  const linnet = () => structuredClone(performanceDocument('linnet-two')) as never as Part;
  const rowsOf = (change: (example: Part, document: Part) => void, i: number) => {
    const document = linnet();
    const example = (document['examples'] as Part[])[i] as Part;
    change(example, document);
    return verifyExamples({ ...(document as never as PerformanceData), examples: [example as never] });
  };
  const put = (part: Part, path: string, value: unknown) => {
    const keys = path.split('.');
    const last = keys.pop() as string;
    const parent = keys.reduce<Part>((inner, key) => inner[key] as Part, part);
    if (value === undefined) delete parent[last];
    else parent[last] = value;
  };
  const none = (example: Part) => example;

  it('is read at its density altitude: half way from 720 to 520 ft/min', () => {
    expect(rowsOf(none, 2)).toEqual([
      {
        locator: 'invented, climb at a density altitude',
        quantity: 'rate of climb',
        printed: 620,
        ours: 620,
        unit: 'ftPerMin',
        tolerance: 5,
        agrees: true,
      },
    ]);
  });

  it.each([
    ['of a configuration without climb figures', 'configuration', 'up'],
    ['beyond the table', 'at.densityAltitude.value', 8001],
  ])('has no figure %s', (_name, path, value) => {
    expect(rowsOf((example) => put(example, path, value), 2)).toMatchObject([{ ours: undefined, agrees: false }]);
  });

  it('has one row for each figure printed: 8 min, 3 L and 10 NM, each 10 % more in warm air', () => {
    // From 2000 ft to 6000 ft: 11 - 3 min, 4.2 - 1.2 L and 14 - 4 NM, with 10 % for 10 °C.
    const rows = rowsOf(none, 3);
    expect(rows.map(({ quantity, printed, unit, agrees }) => [quantity, printed, unit, agrees])).toEqual([
      ['time', 8.8, 'min', true],
      ['fuel', 3.3, 'L', true],
      ['distance flown', 11, 'NM', true],
    ]);
    expect(rows.map(({ ours }) => ours?.toFixed(9))).toEqual(['8.800000000', '3.300000000', '11.000000000']);
    expect(rowsOf((example) => put(example, 'printed', { fuel: measure(3.3, 'L') }), 3)).toHaveLength(1);
    // A gallon is 3.785411784 L.
    const gallons = rowsOf((example) => put(example, 'printed', { fuel: measure(0.87, 'USgal') }), 3);
    expect(gallons[0]?.ours).toBeCloseTo(3.3 / 3.785411784, 9);
    expect(gallons[0]?.unit).toBe('USgal');
  });

  it('is in standard air where nothing is stated', () => {
    const rows = rowsOf((example) => put(example, 'at.isaDeviation', undefined), 3);
    expect(rows.map(({ ours }) => ours)).toEqual([8, 3, 10]);
  });

  it.each([
    ['of a name that no table has', 'configuration', 'cruise climb'],
    ['without a mass', 'at.mass', undefined],
    ['without the altitude from which it begins', 'at.from', undefined],
    ['without the altitude to which it leads', 'at.pressureAltitude', undefined],
    ['that leads downwards', 'at.from.value', 7000],
    ['beyond the tables', 'at.pressureAltitude.value', 8001],
  ])('has no figures %s', (_name, path, value) => {
    const rows = rowsOf((example) => put(example, path, value), 3);
    expect(rows).toHaveLength(3);
    expect(rows.every(({ ours, agrees }) => ours === undefined && !agrees)).toBe(true);
    expect(rows.map(({ printed }) => printed)).toEqual([8.8, 3.3, 11]);
  });

  it('has no figures where the data have no tables of it', () => {
    const rows = rowsOf((_example, document) => put(document, 'climbProgress', undefined), 3);
    expect(rows.map(({ ours }) => ours)).toEqual([undefined, undefined, undefined]);
  });

  it('passes on what is no refusal', () => {
    expect(() => rowsOf((_example, document) => put(document, 'climbProgress.0.time', undefined), 3)).toThrow(
      TypeError,
    );
  });

  describe('or of a landing', () => {
    const landing = (headwind: number, corrections?: unknown) =>
      rowsOf((example, document) => {
        put(example, 'at.headwind.value', headwind);
        if (corrections !== undefined) put(document, 'landing.0.corrections', corrections);
      }, 1).map(({ ours }) => ours);

    it('has the law of the manual for the wind: 150 m and 340 m', () => {
      expect(landing(0)).toEqual([150, 340]);
      // 10 % less for each 9 kt of headwind, 10 % more for each 2 kt of tailwind.
      expect(landing(18).map((ours) => ours?.toFixed(9))).toEqual(['120.000000000', '272.000000000']);
      expect(landing(-2).map((ours) => ours?.toFixed(9))).toEqual(['165.000000000', '374.000000000']);
      expect(landing(-6).map((ours) => ours?.toFixed(9))).toEqual(['195.000000000', '442.000000000']);
    });

    it('has no figure beyond the wind that a law is printed for, or without a law', () => {
      expect(landing(18.1)).toEqual([undefined, undefined]);
      expect(landing(-6.1)).toEqual([undefined, undefined]);
      expect(landing(5, {})).toEqual([undefined, undefined]);
      expect(landing(0, {})).toEqual([150, 340]);
    });

    it('has no figure beyond the tables, in any wind or unit', () => {
      const beyond = (printed: string) =>
        rowsOf((example) => {
          put(example, 'at.pressureAltitude', measure(6001, 'ftPA'));
          put(example, 'at.headwind', measure(5, 'kt'));
          put(example, 'printed', { distance: measure(400, printed) });
        }, 0)[0]?.ours;
      expect([beyond('m'), beyond('ft')]).toEqual([undefined, undefined]);
    });

    it('has no figure of a configuration that has no table', () => {
      expect(rowsOf((example) => put(example, 'configuration', 'up'), 1)).toMatchObject([
        { quantity: 'ground roll', ours: undefined },
        { quantity: 'distance', ours: undefined },
      ]);
    });
  });

  it('agrees to the last of its tolerance, and no further', () => {
    const off = (printed: number) =>
      rowsOf((example) => put(example, 'printed', { rateOfClimb: measure(printed, 'ftPerMin') }), 2)[0]?.agrees;
    expect([off(625), off(615)]).toEqual([true, true]);
    // The tolerance of 5 ft/min is widened by the last bits of a conversion alone.
    expect([off(625.000000001), off(625.00001), off(614.99999)]).toEqual([true, false, false]);
  });
});

describe('an example on axes of wind and slope', () => {
  it('is read there, in the wind whole, calm and level where nothing is stated', () => {
    const data = structuredClone(performanceDocument('plover-two'));
    const [first] = data.examples ?? [];
    const { headwind: _calm, slope: _level, ...conditions } = first?.at ?? {};
    const ours = (at: object) =>
      verifyExamples({ ...data, examples: [{ ...first, at: { ...conditions, ...at } } as never] }).map(
        (row) => row.ours,
      );
    expect(ours({})).toEqual([735, 1450]);
    const roll = data.takeoff[0]?.groundRoll as Table;
    // Masses, density altitudes, headwinds and slopes as printed: 1500 lb, 2500 ft, 10 kt, 2 %.
    const cell = (roll.cells as number[][][][])[1]?.[1]?.[2]?.[1];
    expect(ours({ headwind: measure(10, 'kt'), slope: measure(2, 'percent') })[0]).toBe(cell);
  });
});

describe('a value out of line with its neighbours', () => {
  it('is found, with the path of the cell', () => {
    const document = json();
    document.takeoff[0].distance.cells[1][1][2] = 585;
    const result = readPerformanceData(document);
    const found = result.ok ? result.findings.filter(({ code }) => code === 'neighbours') : [];
    expect(found.map(({ path }) => path)).toContain('takeoff[0].distance.cells[1][1][2]');
  });

  it('is not found where all is well', () => expect(read(json()).codes).toEqual([]));
});
