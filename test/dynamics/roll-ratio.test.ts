import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  effectiveThrust,
  type GroundRollInputs,
  groundRoll,
  type RollRatioInputs,
  rollRatio,
} from '../../src/dynamics/index.ts';
import { DomainError, kg, kgPerM, kgPerM3, kt, ktas, m, m2, newtons, percent, ratio } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const known = {
  groundRoll: m(180),
  mass: kg(900),
  liftOffSpeed: ktas(52),
  slope: percent(0),
  headwind: kt(0),
};
const same: RollRatioInputs = {
  ...known,
  leastFriction: ratio(0.03),
  greatestFriction: ratio(0.03),
  otherMass: known.mass,
  otherLeastFriction: ratio(0.03),
  otherGreatestFriction: ratio(0.03),
  otherSlope: known.slope,
  otherHeadwind: known.headwind,
};

const situation = fc.record({
  groundRoll: evenly(100, 400).map(m),
  mass: evenly(500, 1200).map(kg),
  liftOffSpeed: evenly(40, 65).map(ktas),
  rollingFriction: evenly(0.02, 0.1).map(ratio),
  slope: evenly(-3, 3).map(percent),
  headwind: evenly(-10, 20).map(kt),
});

/** An aeroplane without drag and lift: the one for which the estimate is exact. */
const bare = {
  thrustChange: kgPerM(0),
  wingArea: m2(15),
  density: kgPerM3(1.2),
  liftCoefficient: ratio(0),
  dragCoefficient: ratio(0),
};

describe('effectiveThrust', () => {
  it('gives back the roll that it was found from', () => {
    fc.assert(
      fc.property(situation, (x) => {
        const staticThrust = effectiveThrust(x);
        expect(groundRoll({ ...bare, ...x, staticThrust }).distance).toBeCloseTo(x.groundRoll, 8);
      }),
    );
  });

  it('refuses a wind that lifts the aeroplane off by itself', () => {
    const call = () =>
      effectiveThrust({ ...known, rollingFriction: ratio(0.03), liftOffSpeed: ktas(30), headwind: kt(30) });
    expect(call).toThrow(/^headwind: .*lift-off speed/);
  });
});

describe('rollRatio', () => {
  it('is 1 where nothing differs', () => {
    fc.assert(
      fc.property(situation, (x) => {
        const { rollingFriction: mu, ...rest } = x;
        const { low, high } = rollRatio({
          ...rest,
          leastFriction: mu,
          greatestFriction: mu,
          otherMass: x.mass,
          otherLeastFriction: mu,
          otherGreatestFriction: mu,
          otherSlope: x.slope,
          otherHeadwind: x.headwind,
        });
        expect(low).toBeCloseTo(1, 9);
        expect(high).toBeCloseTo(1, 9);
      }),
    );
  });

  it('is what the forces give for an aeroplane without drag and lift', () => {
    fc.assert(
      fc.property(situation, evenly(0.9, 1.1), evenly(0, 0.1), (x, massShare, friction) => {
        const { rollingFriction: mu, ...rest } = x;
        const otherSpeed = ktas(x.liftOffSpeed * Math.sqrt(massShare));
        const other = {
          mass: kg(x.mass * massShare),
          rollingFriction: ratio(friction),
          slope: percent(1),
          headwind: kt(3),
        };
        const staticThrust = effectiveThrust(x);
        const resistance_N = other.mass * 9.80665 * (friction + 0.01);
        fc.pre(staticThrust > resistance_N * 1.01);
        const roll = groundRoll({ ...bare, ...other, liftOffSpeed: otherSpeed, staticThrust });
        const { low, high } = rollRatio({
          ...rest,
          leastFriction: mu,
          greatestFriction: mu,
          otherMass: other.mass,
          otherLeastFriction: ratio(friction),
          otherGreatestFriction: ratio(friction),
          otherSlope: other.slope,
          otherHeadwind: other.headwind,
        });
        expect(low / (roll.distance / x.groundRoll)).toBeCloseTo(1, 8);
        expect(high).toBe(low);
      }),
    );
  });

  it('spreads with what is not known of the frictions', () => {
    fc.assert(
      fc.property(evenly(0, 0.02), evenly(0, 0.02), (ours, theirs) => {
        const { low, high = Number.NaN } = rollRatio({
          ...same,
          greatestFriction: ratio(0.03 + ours),
          otherLeastFriction: ratio(0.08 - theirs),
          otherGreatestFriction: ratio(0.08 + theirs),
        });
        const sharp = rollRatio({ ...same, otherLeastFriction: ratio(0.08), otherGreatestFriction: ratio(0.08) });
        expect(low).toBeLessThanOrEqual(sharp.low + 1e-12);
        expect(high).toBeGreaterThanOrEqual(sharp.low - 1e-12);
      }),
    );
  });

  it('grows with mass, friction, upslope and tailwind', () => {
    const worse: Partial<RollRatioInputs>[] = [
      { otherMass: kg(950) },
      { otherLeastFriction: ratio(0.04), otherGreatestFriction: ratio(0.04) },
      { otherSlope: percent(1) },
      { otherHeadwind: kt(-1) },
    ];
    for (const change of worse) expect(rollRatio({ ...same, ...change }).low).toBeGreaterThan(1.01);
  });

  // The figures that the comment of the function states, for the invented light aeroplane of the check values.
  it('errs as its description says', () => {
    const light: GroundRollInputs = {
      mass: kg(13122 / 9.80665),
      liftOffSpeed: ktas((29.843406 * 3600) / 1852),
      staticThrust: newtons(3800),
      thrustChange: kgPerM(-0.45),
      wingArea: m2(16.17),
      density: kgPerM3(1.225),
      liftCoefficient: ratio(0.4),
      dragCoefficient: ratio(0.045),
      rollingFriction: ratio(0.04),
      slope: percent(0),
      headwind: kt(0),
    };
    const roll = groundRoll(light).distance;
    const base: RollRatioInputs = {
      ...light,
      groundRoll: roll,
      leastFriction: ratio(0.04),
      greatestFriction: ratio(0.04),
      otherMass: light.mass,
      otherLeastFriction: ratio(0.04),
      otherGreatestFriction: ratio(0.04),
      otherSlope: percent(0),
      otherHeadwind: kt(0),
    };
    const rough = { otherLeastFriction: ratio(0.1), otherGreatestFriction: ratio(0.1) };
    expect(rollRatio({ ...base, ...rough }).low).toBeCloseTo(1.37, 2);
    expect(groundRoll({ ...light, rollingFriction: ratio(0.1) }).distance / roll).toBeCloseTo(1.3, 2);
    const heavy = { mass: kg(1.1 * light.mass), liftOffSpeed: ktas(Math.sqrt(1.1) * light.liftOffSpeed) };
    expect(rollRatio({ ...base, otherMass: heavy.mass }).low).toBeCloseTo(1.23, 2);
    expect(groundRoll({ ...light, ...heavy }).distance / roll).toBeCloseTo(1.248, 2);
    expect(rollRatio({ ...base, otherHeadwind: kt(10) }).low).toBeCloseTo(0.685, 3);
    expect(rollRatio({ ...base, otherHeadwind: kt(-10) }).low).toBeCloseTo(1.374, 2);
  });

  it('has no upper end where the greatest friction leaves no acceleration, and refuses where the least does not', () => {
    const thrust_N = effectiveThrust({ ...known, rollingFriction: ratio(0.03) });
    const most = thrust_N / (900 * 9.80665);
    const soft = { ...same, otherLeastFriction: ratio(0.1), otherGreatestFriction: ratio(most + 1e-9) };
    expect(rollRatio(soft).low).toBeGreaterThan(1);
    expect(rollRatio(soft).high).toBeUndefined();
    expect(rollRatio({ ...soft, otherGreatestFriction: ratio(most - 1e-9) }).high).toBeGreaterThan(1000);
    const bog = { ...soft, otherLeastFriction: ratio(most + 1e-9), otherGreatestFriction: ratio(0.4) };
    const detail = expect.objectContaining({ code: 'inconsistent', max: expect.closeTo(most, 9) });
    expect(() => rollRatio(bog)).toThrow(expect.objectContaining({ detail }));
    expect(() => rollRatio(bog)).toThrow(/^otherLeastFriction: .*accelerates/);
  });

  it('names on a slope, too, the friction from which the other roll does not accelerate', () => {
    // 180 m to 52 kt take (26.7511 m/s)²/360 m = 1.98784 m/s², 0.202704 g; with 0.03 for the friction the thrust is
    // 0.232704 m g. Up 5 % it balances μ/√1.0025 + 0.05/√1.0025: μ = 0.232704 · 1.001249 − 0.05 = 0.182994.
    const steep = { otherSlope: percent(5), otherLeastFriction: ratio(0.2), otherGreatestFriction: ratio(0.3) };
    const detail = expect.objectContaining({ parameter: 'otherLeastFriction', max: expect.closeTo(0.182994, 5) });
    expect(() => rollRatio({ ...same, ...steep })).toThrow(expect.objectContaining({ detail }));
  });

  it('refuses what is the wrong way round, and a wind above the lift-off speed', () => {
    expect(() => rollRatio({ ...same, leastFriction: ratio(0.04) })).toThrow(/^leastFriction: .*no more than/);
    expect(() => rollRatio({ ...same, otherLeastFriction: ratio(0.04) })).toThrow(
      /^otherLeastFriction: .*no more than/,
    );
    const windy = { ...same, liftOffSpeed: ktas(30) };
    expect(() => rollRatio({ ...windy, headwind: kt(30) })).toThrow(/^headwind: .*lift-off speed/);
    expect(() => rollRatio({ ...windy, otherHeadwind: kt(30) })).toThrow(/^otherHeadwind: .*lift-off speed/);
  });
});

describe('what is out of range', () => {
  const cases: [string, unknown][] = [
    ['groundRoll', 9.9],
    ['groundRoll', 20000.1],
    ['mass', 99.9],
    ['mass', 100000.1],
    ['liftOffSpeed', 14.9],
    ['liftOffSpeed', 250.1],
    ['leastFriction', -0.01],
    ['leastFriction', 0.51],
    ['greatestFriction', -0.01],
    ['greatestFriction', 0.51],
    ['slope', -20.1],
    ['slope', 20.1],
    ['headwind', -50.1],
    ['headwind', 50.1],
    ['otherMass', 99.9],
    ['otherMass', 100000.1],
    ['otherMass', Number.NaN],
    ['otherMass', undefined],
    ['otherLeastFriction', -0.01],
    ['otherLeastFriction', 0.51],
    ['otherGreatestFriction', -0.01],
    ['otherGreatestFriction', 0.51],
    ['otherSlope', -20.1],
    ['otherSlope', 20.1],
    ['otherHeadwind', -50.1],
    ['otherHeadwind', 50.1],
  ];
  it.each(cases)('is refused by rollRatio and named: %s of %s', (parameter, value) => {
    const call = () => rollRatio({ ...same, [parameter]: value } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: .*library range`));
  });

  it.each([
    ['groundRoll', 9.9],
    ['groundRoll', 20000.1],
    ['mass', 99.9],
    ['mass', 100000.1],
    ['liftOffSpeed', 14.9],
    ['liftOffSpeed', 250.1],
    ['rollingFriction', -0.01],
    ['rollingFriction', 0.51],
    ['slope', -20.1],
    ['slope', 20.1],
    ['headwind', -50.1],
    ['headwind', 50.1],
    ['headwind', undefined],
  ])('is refused by effectiveThrust and named: %s of %s', (parameter, value) => {
    const call = () => effectiveThrust({ ...known, rollingFriction: ratio(0.03), [parameter]: value } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: .*library range`));
  });
});
