import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  aerodynamicRollTerm,
  type BrakedRollInputs,
  brakedRoll,
  rollFromForceTerms,
  standardGravity,
} from '../../src/dynamics/index.ts';
import {
  DomainError,
  kg,
  kgPerM3,
  kt,
  ktas,
  m2,
  NPerM2,
  newtons,
  percent,
  ratio,
  s2PerM2,
  seconds,
} from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const situation: fc.Arbitrary<BrakedRollInputs> = fc.record({
  mass: evenly(500, 1000).map(kg),
  speed: evenly(40, 55).map(ktas),
  thrust: evenly(-300, 300).map(newtons),
  wingArea: evenly(10, 15).map(m2),
  density: evenly(0.9, 1.3).map(kgPerM3),
  liftCoefficient: evenly(0, 0.6).map(ratio),
  dragCoefficient: evenly(0.02, 0.2).map(ratio),
  brakingFriction: evenly(0.2, 0.5).map(ratio),
  freeRollTime: evenly(0, 3).map(seconds),
  slope: evenly(-4, 4).map(percent),
  headwind: evenly(0, 20).map(kt),
});

const good: BrakedRollInputs = {
  mass: kg(900),
  speed: ktas(48),
  thrust: newtons(0),
  wingArea: m2(15),
  density: kgPerM3(1.225),
  liftCoefficient: ratio(0.4),
  dragCoefficient: ratio(0.08),
  brakingFriction: ratio(0.3),
  freeRollTime: seconds(1),
  slope: percent(0),
  headwind: kt(0),
};

/** The same roll in 20 000 steps of time, forces and all. */
function steppedRoll(x: BrakedRollInputs): number {
  const g = 9.80665;
  const theta = Math.atan(x.slope / 100);
  const wind = (x.headwind * 1852) / 3600;
  const deceleration = (v: number) => {
    const q = 0.5 * x.density * x.wingArea * v ** 2;
    const load = x.mass * g * Math.cos(theta) - q * x.liftCoefficient;
    return (x.brakingFriction * load + q * x.dragCoefficient + x.mass * g * Math.sin(theta) - x.thrust) / x.mass;
  };
  let v = (x.speed * 1852) / 3600;
  let distance = x.freeRollTime * (v - wind);
  const dv = (v - wind) / 20000;
  for (let i = 0; i < 20000; i += 1) {
    const middle = v - dv / 2;
    distance += ((middle - wind) * dv) / deceleration(middle);
    v -= dv;
  }
  return distance;
}

describe('brakedRoll', () => {
  it('is the roll that the forces, summed step by step, give', () => {
    fc.assert(
      fc.property(situation, (x) => {
        expect(Math.abs(brakedRoll(x).distance / steppedRoll(x) - 1)).toBeLessThan(1e-6);
      }),
      { numRuns: 30 },
    );
  });

  it('is, in a calm on the level without thrust, the textbook roll from the two force terms', () => {
    fc.assert(
      fc.property(situation, (x) => {
        const plain = { ...x, thrust: newtons(0), slope: percent(0), headwind: kt(0), freeRollTime: seconds(0) };
        const takeoffTerm = aerodynamicRollTerm({
          ...x,
          wingLoading: NPerM2((x.mass * standardGravity) / x.wingArea),
          friction: x.brakingFriction,
        });
        const textbook = rollFromForceTerms({
          constantTerm: x.brakingFriction,
          speedTerm: s2PerM2(-takeoffTerm),
          speed: x.speed,
          gravity: standardGravity,
        });
        expect(brakedRoll(plain).distance).toBeCloseTo(textbook, 8);
      }),
    );
  });

  it('rolls on at the speed of touchdown until the brakes are on', () => {
    const later = brakedRoll({ ...good, headwind: kt(8), freeRollTime: seconds(3) });
    const sooner = brakedRoll({ ...good, headwind: kt(8), freeRollTime: seconds(1) });
    expect(later.distance - sooner.distance).toBeCloseTo((2 * 40 * 1852) / 3600, 9);
    expect(later.time - sooner.time).toBeCloseTo(2, 9);
  });

  it('grows with speed, downslope, tailwind and thrust, and falls with braking', () => {
    fc.assert(
      fc.property(situation, evenly(0.01, 1), (x, share) => {
        const roll = brakedRoll(x).distance;
        const worse: Partial<BrakedRollInputs>[] = [
          { speed: ktas(x.speed + share) },
          { slope: percent(x.slope - share) },
          { headwind: kt(x.headwind - 10 * share) },
          { thrust: newtons(x.thrust + 50 * share) },
          { brakingFriction: ratio(x.brakingFriction - 0.05 * share) },
        ];
        for (const change of worse) expect(brakedRoll({ ...x, ...change }).distance).toBeGreaterThan(roll);
      }),
    );
  });

  it('refuses brakes that do not stop the aeroplane, at the lower speed or at the higher', () => {
    const downhill = { ...good, slope: percent(-10) };
    expect(() => brakedRoll({ ...downhill, brakingFriction: ratio(0.1) })).toThrow(/^brakingFriction: .*stop/);
    expect(brakedRoll({ ...downhill, brakingFriction: ratio(0.101) }).distance).toBeGreaterThan(1000);
    // At touchdown the wing carries most of the weight, so that the brakes do least there.
    const light = { ...good, liftCoefficient: ratio(1.5), dragCoefficient: ratio(0), thrust: newtons(200) };
    const q_N = 0.5 * 1.225 * 15 * ((48 * 1852) / 3600) ** 2;
    const least = 200 / (900 * 9.80665 - 1.5 * q_N);
    expect(() => brakedRoll({ ...light, brakingFriction: ratio(least) })).toThrow(/^brakingFriction: .*stop/);
    expect(brakedRoll({ ...light, brakingFriction: ratio(least + 1e-6) }).distance).toBeGreaterThan(200);
  });

  it('refuses a wind above the speed, and wheels without a load', () => {
    expect(() => brakedRoll({ ...good, speed: ktas(30), headwind: kt(30) })).toThrow(
      /^headwind: .*less than the speed/,
    );
    expect(() => brakedRoll({ ...good, liftCoefficient: ratio(2) })).toThrow(/^liftCoefficient: .*carry a load/);
  });

  it('refuses a tailwind that takes the load off the wheels though the speed would not', () => {
    // The wing lifts 2 · ½ · 1.225 · 15 · V²: 486 N at 10 kt and 11 204 N at 48 kt, of a weight of 8826 N.
    const slow = { ...good, speed: ktas(10), liftCoefficient: ratio(2) };
    expect(brakedRoll(slow).distance).toBeGreaterThan(5);
    expect(() => brakedRoll({ ...slow, headwind: kt(-48) })).toThrow(/^liftCoefficient: .*carry a load/);
  });

  it.each([
    ['mass', 99.9],
    ['mass', 100000.1],
    ['speed', 4.9],
    ['speed', 250.1],
    ['thrust', -1000000.1],
    ['thrust', 1000000.1],
    ['wingArea', 0.9],
    ['wingArea', 500.1],
    ['density', 0.29],
    ['density', 1.61],
    ['liftCoefficient', -0.01],
    ['liftCoefficient', 4.01],
    ['dragCoefficient', -0.01],
    ['dragCoefficient', 1.01],
    ['brakingFriction', -0.01],
    ['brakingFriction', 1.01],
    ['freeRollTime', -0.1],
    ['freeRollTime', 30.1],
    ['slope', -20.1],
    ['slope', 20.1],
    ['headwind', -50.1],
    ['headwind', 50.1],
    ['headwind', Number.NaN],
    ['headwind', undefined],
  ])('refuses a %s of %s and names it', (parameter, value) => {
    const call = () => brakedRoll({ ...good, [parameter]: value } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: .*library range`));
  });
});
