import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { absoluteCeiling, rateAtDensityAltitude, serviceCeiling, timeToClimb } from '../../src/flight-path/index.ts';
import { DomainError, ftDA, ftPerMin } from '../../src/units/index.ts';

const evenly = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((part) => min + ((max - min) * part) / 1_000_000);

describe('serviceCeiling and absoluteCeiling', () => {
  it('undo each other, and leave 100 ft/min and nil', () => {
    fc.assert(
      fc.property(evenly(150, 2500).map(ftPerMin), evenly(5000, 30000).map(ftDA), (rateAtZero, ceiling) => {
        const service = serviceCeiling({ rateAtZero, absoluteCeiling: ceiling });
        expect(absoluteCeiling({ rateAtZero, serviceCeiling: service })).toBeCloseTo(ceiling, 6);
        const rateAt = (densityAltitude: typeof service): number =>
          rateAtDensityAltitude({ rateAtZero, absoluteCeiling: ceiling, densityAltitude });
        expect(rateAt(service)).toBeCloseTo(100, 8);
        expect(rateAt(ceiling)).toBe(0);
        expect(rateAt(ftDA(0))).toBe(rateAtZero);
        expect(rateAt(ftDA(-1000))).toBeGreaterThan(rateAtZero);
      }),
    );
  });

  it.each([
    ['rateAtZero', { rateAtZero: 100.9 }],
    ['rateAtZero', { rateAtZero: 10000.1 }],
    ['serviceCeiling', { serviceCeiling: -0.1 }],
    ['serviceCeiling', { serviceCeiling: 60000.1 }],
    ['serviceCeiling', { serviceCeiling: undefined }],
  ])('refuse a bad %s and name it', (parameter, inputs) => {
    const call = () => absoluteCeiling({ rateAtZero: 700, serviceCeiling: 14000, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });

  it.each([
    ['rateAtZero', { rateAtZero: 99.9 }],
    ['rateAtZero', { rateAtZero: 10000.1 }],
    ['absoluteCeiling', { absoluteCeiling: 99.9 }],
    ['absoluteCeiling', { absoluteCeiling: 60000.1 }],
    ['absoluteCeiling', { absoluteCeiling: Number.NaN }],
  ])('refuse a bad %s and name it (service ceiling)', (parameter, inputs) => {
    const call = () => serviceCeiling({ rateAtZero: 700, absoluteCeiling: 16000, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('rateAtDensityAltitude', () => {
  it.each([
    ['rateAtZero', { rateAtZero: 0.9 }],
    ['rateAtZero', { rateAtZero: 10000.1 }],
    ['absoluteCeiling', { absoluteCeiling: 99.9 }],
    ['absoluteCeiling', { absoluteCeiling: 60000.1 }],
    ['densityAltitude', { densityAltitude: -5000.1 }],
    ['densityAltitude', { densityAltitude: 60000.1 }],
    ['densityAltitude', { densityAltitude: 16000.1 }],
    ['densityAltitude', { densityAltitude: undefined }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const good = { rateAtZero: 700, absoluteCeiling: 16000, densityAltitude: 5000 };
    const call = () => rateAtDensityAltitude({ ...good, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('timeToClimb', () => {
  const climb = fc.record({
    rate: evenly(200, 2000),
    top: evenly(10000, 25000),
    start: evenly(-1000, 4000),
    first: evenly(0, 3000),
    second: evenly(0, 2500),
  });

  it('adds up over an altitude on the way', () => {
    fc.assert(
      fc.property(climb, ({ rate, top, start, first, second }) => {
        const model = { rateAtZero: ftPerMin(rate), absoluteCeiling: ftDA(top) };
        const time = (from: number, to: number): number => timeToClimb({ ...model, from: ftDA(from), to: ftDA(to) });
        const middle = start + first;
        const end = middle + second;
        expect(time(start, middle) + time(middle, end)).toBeCloseTo(time(start, end), 9);
      }),
    );
  });

  it('agrees with climbing in small steps at the rate of the middle of each', () => {
    const model = { rateAtZero: ftPerMin(650), absoluteCeiling: ftDA(15500) };
    let stepped_min = 0;
    for (let h = 1000; h < 9000; h += 10) {
      stepped_min += 10 / rateAtDensityAltitude({ ...model, densityAltitude: ftDA(h + 5) });
    }
    expect(timeToClimb({ ...model, from: ftDA(1000), to: ftDA(9000) })).toBeCloseTo(stepped_min, 4);
  });

  it('is nil for no climb, and refused downwards and at the ceiling', () => {
    const x = { rateAtZero: ftPerMin(600), absoluteCeiling: ftDA(15000), from: ftDA(3000) };
    expect(timeToClimb({ ...x, to: ftDA(3000) })).toBe(0);
    expect(() => timeToClimb({ ...x, to: ftDA(2999.9) })).toThrow(
      /^to: 2999\.9 ftDA is inconsistent with 3000 to 14999/,
    );
    expect(timeToClimb({ ...x, to: ftDA(14999) })).toSatisfy(Number.isFinite);
    expect(() => timeToClimb({ ...x, to: ftDA(14999.5) })).toThrow(/^to: /);
    expect(() => timeToClimb({ ...x, from: ftDA(20000), to: ftDA(21000) })).toThrow(/^to: /);
  });

  it.each([
    ['rateAtZero', { rateAtZero: 0.9 }],
    ['rateAtZero', { rateAtZero: 10000.1 }],
    ['absoluteCeiling', { absoluteCeiling: 99.9 }],
    ['absoluteCeiling', { absoluteCeiling: 60000.1 }],
    ['from', { from: -5000.1 }],
    ['from', { from: 60000.1 }],
    ['to', { to: -5000.1 }],
    ['to', { to: 60000.1 }],
    ['to', { to: Number.NaN }],
    ['from', { from: undefined }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () =>
      timeToClimb({ rateAtZero: 700, absoluteCeiling: 16000, from: 1000, to: 6000, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
