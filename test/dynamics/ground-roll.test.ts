import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type GroundRollInputs, groundRoll, groundRollByIntegration } from '../../src/dynamics/index.ts';
import { DomainError, kg, kgPerM, kgPerM3, kt, ktas, m2, newtons, percent, ratio } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';
import { isInstrumented } from '../instrumented.ts';

/** Light aeroplanes with thrust to spare, into the wind or in a calm. */
const situation: fc.Arbitrary<GroundRollInputs> = fc.record({
  mass: evenly(600, 1000).map(kg),
  liftOffSpeed: evenly(40, 60).map(ktas),
  staticThrust: evenly(3300, 4500).map(newtons),
  thrustChange: evenly(-0.6, 0.2).map(kgPerM),
  wingArea: evenly(10, 18).map(m2),
  density: evenly(0.9, 1.3).map(kgPerM3),
  liftCoefficient: evenly(0, 0.45).map(ratio),
  dragCoefficient: evenly(0.02, 0.08).map(ratio),
  rollingFriction: evenly(0.01, 0.1).map(ratio),
  slope: evenly(-4, 4).map(percent),
  headwind: evenly(0, 20).map(kt),
});

const good: GroundRollInputs = {
  mass: kg(900),
  liftOffSpeed: ktas(52),
  staticThrust: newtons(2600),
  thrustChange: kgPerM(-0.9),
  wingArea: m2(15),
  density: kgPerM3(1.225),
  liftCoefficient: ratio(0.5),
  dragCoefficient: ratio(0.05),
  rollingFriction: ratio(0.03),
  slope: percent(0),
  headwind: kt(0),
};

describe('groundRoll', () => {
  it('is the roll that the forces, summed step by step, give', () => {
    fc.assert(
      fc.property(situation, (x) => {
        const exact = groundRoll(x);
        const summed = groundRollByIntegration(x);
        expect(Math.abs(summed.distance / exact.distance - 1)).toBeLessThan(1e-6);
        expect(Math.abs(summed.time / exact.time - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  it('agrees with the sum where the force grows with speed, and where it is nearly spent', () => {
    const growing = { ...good, thrustChange: kgPerM(3) };
    const nearlySpent = { ...good, staticThrust: newtons(1175) };
    for (const x of [growing, nearlySpent]) {
      expect(groundRollByIntegration(x).distance / groundRoll(x).distance).toBeCloseTo(1, 6);
      expect(groundRollByIntegration(x).time / groundRoll(x).time).toBeCloseTo(1, 6);
    }
  });

  it('passes without a step through the uniform acceleration that the printed form cannot divide by', () => {
    const uniform = { ...good, liftCoefficient: ratio(0), dragCoefficient: ratio(0), thrustChange: kgPerM(0) };
    const a_mps2 = 2600 / 900 - 9.80665 * 0.03;
    const v_mps = (52 * 1852) / 3600;
    expect(groundRoll(uniform).distance).toBeCloseTo(v_mps ** 2 / (2 * a_mps2), 9);
    expect(groundRoll(uniform).time).toBeCloseTo(v_mps / a_mps2, 9);
    for (const change of [1e-13, -1e-13, 1e-9, -1e-9, 1e-300, -1e-300]) {
      const near = groundRoll({ ...uniform, thrustChange: kgPerM(change) });
      expect(near.distance).toBeCloseTo(groundRoll(uniform).distance, 5);
      expect(near.time).toBeCloseTo(groundRoll(uniform).time, 5);
    }
  });

  it('grows with mass, friction, slope, drag and tailwind, and falls with thrust', () => {
    fc.assert(
      fc.property(situation, evenly(0.01, 1), (x, share) => {
        const roll = groundRoll(x).distance;
        const worse: Partial<GroundRollInputs>[] = [
          { mass: kg(x.mass + 50 * share) },
          { rollingFriction: ratio(x.rollingFriction + 0.01 * share) },
          { slope: percent(x.slope + share) },
          { dragCoefficient: ratio(x.dragCoefficient + 0.01 * share) },
          { headwind: kt(x.headwind - 10 * share) },
          { staticThrust: newtons(x.staticThrust - 100 * share) },
        ];
        for (const change of worse) expect(groundRoll({ ...x, ...change }).distance).toBeGreaterThan(roll);
      }),
    );
  });

  it('counts the drag against the motion while a tailwind overtakes the aeroplane, which is worth millimetres', () => {
    const behind = { ...good, headwind: kt(-10) };
    const longer = groundRoll(behind).distance - groundRollByIntegration(behind).distance;
    expect(longer).toBeGreaterThan(0.001);
    expect(longer).toBeLessThan(0.01);
  });

  it('lifts off in a tailwind above the lift-off speed', () => {
    const blown = { ...good, liftOffSpeed: ktas(30), headwind: kt(-40) };
    const longer = groundRoll(blown).distance / groundRollByIntegration(blown).distance;
    expect(longer).toBeGreaterThan(1);
    expect(longer).toBeLessThan(1.02);
    // Enough against the drag at 30 kt, but not against the drag at 40 kt.
    expect(() => groundRoll({ ...blown, staticThrust: newtons(700) })).toThrow(/^staticThrust: .*can be reached/);
    expect(groundRoll({ ...blown, staticThrust: newtons(700), headwind: kt(-30) }).distance).toBeGreaterThan(300);
  });
});

describe.each([
  ['groundRoll', groundRoll],
  ['groundRollByIntegration', groundRollByIntegration],
])('%s', (_name, roll) => {
  it('refuses what cannot start to roll, and says what it would take', () => {
    const uphill = { ...good, rollingFriction: ratio(0.2), slope: percent(10) };
    const theta = Math.atan(0.1);
    const least = 900 * 9.80665 * (0.2 * Math.cos(theta) + Math.sin(theta));
    const refused = () => roll({ ...uphill, staticThrust: newtons(least - 1e-6) });
    expect(refused).toThrow(/^staticThrust: .*start to roll/);
    const detail = expect.objectContaining({ code: 'inconsistent', min: expect.closeTo(least, 6) });
    expect(refused).toThrow(expect.objectContaining({ detail }));
  });

  it('refuses what cannot reach lift-off speed, and takes a little more thrust', () => {
    const v2 = ((52 * 1852) / 3600) ** 2;
    const q_N = 0.5 * 1.225 * 15 * v2;
    const least = 900 * 9.80665 * 0.03 + q_N * (0.05 - 0.03 * 0.5) + 0.9 * v2;
    expect(() => roll({ ...good, staticThrust: newtons(least - 1e-6) })).toThrow(/^staticThrust: .*can be reached/);
    expect(roll({ ...good, staticThrust: newtons(least + 1) }).distance).toBeGreaterThan(400);
  });

  it('refuses a wind that lifts the aeroplane off by itself, and wheels without a load', () => {
    expect(() => roll({ ...good, liftOffSpeed: ktas(40), headwind: kt(40) })).toThrow(/^headwind: .*lift-off speed/);
    const most = (900 * 9.80665) / (0.5 * 1.225 * 15 * ((52 * 1852) / 3600) ** 2);
    expect(() => roll({ ...good, liftCoefficient: ratio(most + 1e-9) })).toThrow(/^liftCoefficient: .*carry a load/);
    expect(roll({ ...good, liftCoefficient: ratio(most - 1e-9) }).distance).toBeGreaterThan(100);
  });

  it('loads the wheels on a slope with the part of the weight that is square to it', () => {
    // A slope of 20 % has the cosine 5/√26.
    const load_N = (900 * 9.80665 * 5) / Math.sqrt(26);
    const most = load_N / (0.5 * 1.225 * 15 * ((52 * 1852) / 3600) ** 2);
    const steep = { ...good, slope: percent(20), staticThrust: newtons(5000) };
    expect(() => roll({ ...steep, liftCoefficient: ratio(most + 1e-9) })).toThrow(/^liftCoefficient: .*carry a load/);
    expect(roll({ ...steep, liftCoefficient: ratio(most - 1e-9) }).distance).toBeGreaterThan(100);
  });

  it.each([
    ['mass', 99.9],
    ['mass', 100000.1],
    ['mass', undefined],
    ['liftOffSpeed', 14.9],
    ['liftOffSpeed', 250.1],
    ['staticThrust', -0.1],
    ['staticThrust', 1000000.1],
    ['thrustChange', -100.1],
    ['thrustChange', 100.1],
    ['wingArea', 0.9],
    ['wingArea', 500.1],
    ['density', 0.29],
    ['density', 1.61],
    ['liftCoefficient', -0.01],
    ['liftCoefficient', 4.01],
    ['dragCoefficient', -0.01],
    ['dragCoefficient', 1.01],
    ['rollingFriction', -0.01],
    ['rollingFriction', 0.51],
    ['slope', -20.1],
    ['slope', 20.1],
    ['headwind', -50.1],
    ['headwind', 50.1],
    ['headwind', Number.NaN],
  ])('refuses a %s of %s and names it', (parameter, value) => {
    const call = () => roll({ ...good, [parameter]: value } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: .*library range`));
  });
});

describe('groundRollByIntegration', () => {
  it.skipIf(isInstrumented)('refuses a force so nearly spent that no number of steps sums it', () => {
    const v2 = ((52 * 1852) / 3600) ** 2;
    const least = 900 * 9.80665 * 0.03 + 0.5 * 1.225 * 15 * v2 * (0.05 - 0.03 * 0.5) + 0.9 * v2;
    const spent = { ...good, staticThrust: newtons(least + 0.05) };
    expect(groundRoll(spent).distance).toBeGreaterThan(1000);
    expect(() => groundRollByIntegration(spent)).toThrow(/^staticThrust: .*either end of the roll/);
    expect(groundRollByIntegration({ ...good, staticThrust: newtons(least + 0.2) }).distance).toBeGreaterThan(1000);
  });
});
