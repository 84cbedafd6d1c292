import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { densityAltitude } from '../../src/atmosphere/index.ts';
import {
  densityAltitudeColumn,
  type RefusedRows,
  variationColumn,
  variationZones,
  windComponentsColumns,
} from '../../src/columns/index.ts';
import { magneticVariation } from '../../src/magnetism/index.ts';
import {
  DomainError,
  decimalYear,
  degC,
  degLatitude,
  degLongitude,
  degMagnetic,
  degTrue,
  ftPA,
  kt,
} from '../../src/units/index.ts';
import { windComponents } from '../../src/wind/index.ts';

const some = { minLength: 1, maxLength: 30 };
/** Within the range, beyond both ends, and what is no figure. */
const around = (min: number, max: number) =>
  fc.oneof(
    { weight: 8, arbitrary: fc.double({ min, max, noNaN: true }) },
    fc.constantFrom(min, max, min - 1, max + 1, Number.NaN, Number.POSITIVE_INFINITY),
  );

function column<U extends string>(unit: U, values: readonly number[]) {
  return { unit, values: Float64Array.from(values) };
}

/** The answer of a single function, or why it refuses. */
function single<T>(answer: () => T): { value: T } | { detail: DomainError['detail'] } {
  try {
    return { value: answer() };
  } catch (error) {
    if (error instanceof DomainError) return { detail: error.detail };
    throw error;
  }
}

/** Every refused row is counted, and the first ten are those that the single function refuses, for its reason. */
function expectRefused(refused: RefusedRows, singles: readonly ReturnType<typeof single>[]): void {
  const wanted = singles.flatMap((each, row) => ('detail' in each ? [{ row, detail: each.detail }] : []));
  expect(refused).toEqual({ count: wanted.length, first: wanted.slice(0, 10) });
}

describe('windComponentsColumns', () => {
  const wind = fc.record({ from: around(0, 360), speed: around(0, 200), direction: around(0, 360) });

  it('gives what the single function gives, bit for bit, and refuses what it refuses', () => {
    fc.assert(
      fc.property(fc.array(wind, some), (all) => {
        const { headwind, crosswind, hasFigure, refused } = windComponentsColumns({
          from: column(
            'degTrue',
            all.map(({ from }) => from),
          ),
          speed: column(
            'kt',
            all.map(({ speed }) => speed),
          ),
          direction: column(
            'degTrue',
            all.map(({ direction }) => direction),
          ),
        });
        const singles = all.map((each) => single(() => windComponents(each as never)));
        const value = singles.map((each) => ('value' in each ? each.value : { headwind: 0, crosswind: 0 }));
        expect(headwind).toEqual(
          column(
            'kt',
            value.map((each) => each.headwind),
          ),
        );
        expect(crosswind).toEqual(
          column(
            'kt',
            value.map((each) => each.crosswind),
          ),
        );
        expect([...hasFigure]).toEqual(singles.map((each) => ('value' in each ? 1 : 0)));
        expectRefused(refused, singles);
      }),
    );
  });

  it('takes one quantity for all rows', () => {
    const from = column('degMagnetic', [140, 320]);
    const one = windComponentsColumns({ from, speed: kt(25), direction: degMagnetic(170) });
    const same = windComponentsColumns({
      from,
      speed: column('kt', [25, 25]),
      direction: column('degMagnetic', [170, 170]),
    });
    expect(one).toEqual(same);
  });

  it('writes to the columns given, and leaves no old figure in a refused row', () => {
    const into = {
      headwind: column('kt', [7, 7]),
      crosswind: column('kt', [7, 7]),
      hasFigure: Uint8Array.of(1, 1),
    };
    const from = column('degTrue', [90, Number.NaN]);
    const result = windComponentsColumns({ from, speed: kt(10), direction: degTrue(90), into });
    expect(result.headwind).toBe(into.headwind);
    expect(result.crosswind).toBe(into.crosswind);
    expect(into).toEqual({
      headwind: column('kt', [10, 0]),
      crosswind: column('kt', [0, 0]),
      hasFigure: Uint8Array.of(1, 0),
    });
  });

  it('refuses two norths, whatever stands in the rows', () => {
    const from = column('degTrue', []);
    const mixed = () => windComponentsColumns({ from, speed: kt(1), direction: column('degMagnetic', []) as never });
    expect(mixed).toThrow('direction.unit: "degMagnetic" is none of "degTrue"');
  });

  it.each([
    [{ speed: column('mps', [1, 2]) }, 'speed.unit: "mps" is none of "kt"'],
    [{ speed: column('kt', [1]) }, 'speed.values: 1 rows is inconsistent with 2 to 2 rows'],
    [{ speed: { unit: 'kt', values: [1, 2] } }, 'speed.values: "Array" is none of "Float64Array"'],
    [{ speed: null }, 'speed.unit: "undefined"'],
    [{ from: null }, 'from.unit: "undefined" is none of "degTrue", "degMagnetic"'],
    [{ from: column('deg', [1, 2]), direction: column('degTrue', [1, 2]) }, 'from.unit: "deg"'],
    [{ from: degTrue(1) }, 'from, speed, direction: no column'],
    [
      { into: { headwind: column('kt', [1]), crosswind: column('kt', [1, 2]), hasFigure: new Uint8Array(2) } },
      'into.headwind.values: 1 rows',
    ],
    [
      { into: { headwind: column('kt', [1, 2]), crosswind: column('mps', [1, 2]), hasFigure: new Uint8Array(2) } },
      'into.crosswind.unit: "mps"',
    ],
    [
      { into: { headwind: column('kt', [1, 2]), crosswind: column('kt', [1, 2]), hasFigure: new Uint8Array(3) } },
      'into.hasFigure: 3 rows',
    ],
  ])('refuses columns that do not belong together: %o', (change, message) => {
    const whole = { from: column('degTrue', [1, 2]), speed: kt(3), direction: degTrue(4) };
    expect(() => windComponentsColumns({ ...whole, ...change } as never)).toThrow(message);
    expect(single(() => windComponentsColumns({ ...whole, ...change } as never))).toHaveProperty('detail');
  });

  it('passes on what is no refusal', () => {
    const values = new Proxy(new Float64Array(1), {
      get: (target, key) => {
        if (key === '0') throw new TypeError('no memory');
        return Reflect.get(target, key, target);
      },
    });
    const from = { unit: 'degTrue' as const, values };
    expect(() => windComponentsColumns({ from, speed: kt(3), direction: degTrue(4) })).toThrow('no memory');
  });
});

describe('densityAltitudeColumn', () => {
  const air = fc.record({ pressureAltitude: around(-5000, 20_000), temperature: around(-50, 60) });

  it('gives what the single function gives, bit for bit, and refuses what it refuses', () => {
    fc.assert(
      fc.property(fc.array(air, some), (all) => {
        const result = densityAltitudeColumn({
          pressureAltitude: column(
            'ftPA',
            all.map((each) => each.pressureAltitude),
          ),
          temperature: column(
            'degC',
            all.map((each) => each.temperature),
          ),
        });
        const singles = all.map((each) => single(() => densityAltitude(each as never)));
        expect(result.densityAltitude).toEqual(
          column(
            'ftDA',
            singles.map((each) => ('value' in each ? each.value : 0)),
          ),
        );
        expect([...result.hasFigure]).toEqual(singles.map((each) => ('value' in each ? 1 : 0)));
        expectRefused(result.refused, singles);
      }),
    );
  });

  it('writes to shared memory', () => {
    const values = new Float64Array(new SharedArrayBuffer(16));
    const into = { densityAltitude: { unit: 'ftDA' as const, values }, hasFigure: new Uint8Array(2) };
    const temperature = { unit: 'degC' as const, values: new Float64Array(new SharedArrayBuffer(16)) };
    temperature.values.set([15, 30]);
    densityAltitudeColumn({ pressureAltitude: ftPA(0), temperature, into });
    expect([...values]).toEqual(
      [15, 30].map((t) => densityAltitude({ pressureAltitude: ftPA(0), temperature: degC(t) })),
    );
  });

  it('leaves no old figure in a refused row', () => {
    const into = { densityAltitude: column('ftDA', [7, 7]), hasFigure: Uint8Array.of(1, 1) };
    const { refused } = densityAltitudeColumn({
      pressureAltitude: ftPA(0),
      temperature: column('degC', [61, 15]),
      into,
    });
    expect(refused.count).toBe(1);
    expect(into.densityAltitude.values[0]).toBe(0);
    expect([...into.hasFigure]).toEqual([0, 1]);
  });

  it('has nothing to say of no rows', () => {
    const { refused, hasFigure } = densityAltitudeColumn({
      pressureAltitude: column('ftPA', []),
      temperature: degC(15),
    });
    expect({ refused, rows: hasFigure.length }).toEqual({ refused: { count: 0, first: [] }, rows: 0 });
  });
});

describe('variationColumn', () => {
  const place = fc.record({
    latitude: around(-89, 89),
    longitude: around(-180, 360),
    elevation: around(-1000, 20_000),
    dates: fc.array(around(2025, 2029.9), { minLength: 1, maxLength: 3 }),
  });

  it('gives what the single function gives, bit for bit, at each place and date', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 6 }), (places) => {
        const all = places.flatMap(({ dates, ...site }) => dates.map((date) => ({ ...site, date })));
        const result = variationColumn({
          latitude: column(
            'degLatitude',
            all.map((each) => each.latitude),
          ),
          longitude: column(
            'degLongitude',
            all.map((each) => each.longitude),
          ),
          elevation: column(
            'mElevation',
            all.map((each) => each.elevation),
          ),
          date: column(
            'year',
            all.map((each) => each.date),
          ),
        });
        all.forEach((each, row) => {
          const answer = single(() => magneticVariation(each as never));
          const found = 'value' in answer ? answer.value : undefined;
          const usable = found === undefined || found.zone === 'blackout' ? undefined : found;
          expect({
            variation: result.variation.values[row],
            uncertainty: result.uncertainty.values[row],
            zone: variationZones[result.zone[row] as number],
            hasFigure: result.hasFigure[row],
          }).toEqual({
            variation: usable?.variation ?? 0,
            uncertainty: usable?.uncertainty ?? 0,
            zone: found?.zone ?? 'none',
            hasFigure: usable === undefined ? 0 : 1,
          });
        });
        expect(result.refused.count).toBe(
          all.filter((each) => 'detail' in single(() => magneticVariation(each as never))).length,
        );
      }),
      { numRuns: 100 },
    );
  });

  it('gives no variation near a magnetic pole, and says that it is near one', () => {
    const latitude = column('degLatitude', [86, 54]);
    const result = variationColumn({ latitude, longitude: degLongitude(140), date: decimalYear(2026) });
    expect([...result.zone].map((code) => variationZones[code])).toEqual(['blackout', 'normal']);
    expect([...result.hasFigure]).toEqual([0, 1]);
    expect(result.variation.values[0]).toBe(0);
    expect(result.refused.count).toBe(0);
  });

  it('leaves no old figure in a refused row', () => {
    const into = {
      variation: column('degEast', [7, 7]),
      uncertainty: column('deg', [7, 7]),
      zone: Uint8Array.of(1, 1),
      hasFigure: Uint8Array.of(1, 1),
    };
    const latitude = column('degLatitude', [Number.NaN, 54]);
    variationColumn({ latitude, longitude: degLongitude(-120), date: decimalYear(2026), into });
    expect([into.variation, into.uncertainty].map(({ values }) => values[0])).toEqual([0, 0]);
    expect([...into.zone].map((code) => variationZones[code])).toEqual(['none', 'normal']);
    expect([...into.hasFigure]).toEqual([0, 1]);
  });

  it.each([
    [{ latitude: column('deg', [1, 2]) }, 'latitude.unit: "deg" is none of "degLatitude"'],
    [{ longitude: column('deg', [1, 2]) }, 'longitude.unit: "deg" is none of "degLongitude"'],
    [{ elevation: column('ftElevation', [1, 2]) }, 'elevation.unit: "ftElevation" is none of "mElevation"'],
    [{ date: column('day', [1, 2]) }, 'date.unit: "day" is none of "year"'],
  ])('refuses columns in another unit: %o', (change, message) => {
    const whole = { latitude: column('degLatitude', [1, 2]), longitude: degLongitude(4), date: decimalYear(2026) };
    expect(() => variationColumn({ ...whole, ...change } as never)).toThrow(message);
  });

  it('keeps apart places that differ in one thing only', () => {
    const site = { latitude: degLatitude(54), longitude: degLongitude(-120), date: decimalYear(2026) };
    const heights = variationColumn({ ...site, elevation: column('mElevation', [0, 9000, 0]) });
    const meridians = variationColumn({ ...site, longitude: column('degLongitude', [-120, -60, -120]) });
    for (const { variation } of [heights, meridians]) {
      expect(variation.values[1]).not.toBe(variation.values[0]);
      expect(variation.values[2]).toBe(variation.values[0]);
    }
    expect(heights.variation.values[0]).toBe(
      variationColumn({ ...site, latitude: column('degLatitude', [54]) }).variation.values[0],
    );
  });
});
