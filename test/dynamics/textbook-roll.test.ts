import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  aerodynamicRollTerm,
  dragCoefficientNearGround,
  groundEffectFactor,
  groundRoll,
  groundRollShortForm,
  powerLapse,
  rollFromForceTerms,
  rotationDistance,
  standardGravity,
} from '../../src/dynamics/index.ts';
import {
  DomainError,
  ft,
  kg,
  kgPerM,
  kgPerM3,
  kilogramsFromPounds,
  kt,
  ktas,
  lb,
  m,
  m2,
  metresFromFeet,
  mps2,
  NPerM2,
  newtons,
  percent,
  ratio,
  s2PerM2,
  seconds,
} from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

/** One slug per cubic foot and one pound-force per square foot, in SI. */
const slugPerFt3 = (0.45359237 * 9.80665) / 0.3048 ** 4;
const lbfPerFt2 = (0.45359237 * 9.80665) / 0.3048 ** 2;

describe('the take-off of a textbook jet, link by link', () => {
  const groundEffect = groundEffectFactor({ wingHeight: metresFromFeet(ft(5.6)), wingSpan: metresFromFeet(ft(75)) });
  const dragCoefficient = dragCoefficientNearGround({
    zeroLiftDrag: ratio(0.015),
    gearDrag: ratio(0.0177),
    viscousDragFactor: ratio(0.02),
    spanEfficiency: ratio(0.9),
    aspectRatio: ratio(5.92),
    groundEffectFactor: groundEffect,
    liftCoefficient: ratio(0.1),
  });
  const speedTerm = aerodynamicRollTerm({
    density: kgPerM3(0.002377 * slugPerFt3),
    wingLoading: NPerM2(76.84 * lbfPerFt2),
    dragCoefficient,
    liftCoefficient: ratio(0.1),
    friction: ratio(0.04),
  });
  const liftOffSpeed = ktas((205.1 * 0.3048 * 3600) / 1852);

  it('comes to the printed 2857 ft', () => {
    const gravity = mps2(32.2 * 0.3048);
    const roll = rollFromForceTerms({ constantTerm: ratio(0.301), speedTerm, speed: liftOffSpeed, gravity });
    const rotation = rotationDistance({ speed: liftOffSpeed, time: seconds(3) });
    expect(Math.abs((roll + rotation) / 0.3048 - 2857)).toBeLessThan(0.5);
  });

  it('and its landing roll to the 1969 ft that others figured from the same data; the book was not seen to print it', () => {
    const landing = {
      zeroLiftDrag: ratio(0.015),
      gearDrag: ratio((0.0177 * 3.16) / 4.5),
      viscousDragFactor: ratio(0.02),
      spanEfficiency: ratio(0.9),
      aspectRatio: ratio(5.92),
      groundEffectFactor: ratio(0.588),
      liftCoefficient: ratio(0.1),
    };
    const takeoffTerm = aerodynamicRollTerm({
      density: kgPerM3(0.002377 * slugPerFt3),
      wingLoading: NPerM2(76.84 * lbfPerFt2),
      dragCoefficient: dragCoefficientNearGround(landing),
      liftCoefficient: ratio(0.1),
      friction: ratio(0.4),
    });
    const speed = ktas((189.2 * 0.3048 * 3600) / 1852);
    const terms = { constantTerm: ratio(0.4), speedTerm: s2PerM2(-takeoffTerm), speed, gravity: mps2(32.2 * 0.3048) };
    const roll = rollFromForceTerms(terms) + rotationDistance({ speed, time: seconds(3) });
    expect(Math.abs(roll / 0.3048 - 1969)).toBeLessThan(0.5);
  });

  it('is the roll from the forces, in a calm on the level', () => {
    const mass = kilogramsFromPounds(lb(73000));
    const weight_N = mass * standardGravity;
    const forces = groundRoll({
      mass,
      liftOffSpeed,
      staticThrust: newtons(0.341 * weight_N),
      thrustChange: kgPerM(0),
      wingArea: m2(weight_N / (76.84 * lbfPerFt2)),
      density: kgPerM3(0.002377 * slugPerFt3),
      liftCoefficient: ratio(0.1),
      dragCoefficient,
      rollingFriction: ratio(0.04),
      slope: percent(0),
      headwind: kt(0),
    });
    const terms = { constantTerm: ratio(0.301), speedTerm, speed: liftOffSpeed, gravity: standardGravity };
    expect(forces.distance).toBeCloseTo(rollFromForceTerms(terms), 8);
  });
});

describe('rollFromForceTerms', () => {
  const good = { constantTerm: ratio(0.25), speedTerm: s2PerM2(-5e-5), speed: ktas(55), gravity: standardGravity };

  it('passes without a step through the constant force', () => {
    const v_mps = (55 * 1852) / 3600;
    const uniform_m = v_mps ** 2 / (2 * 9.80665 * 0.25);
    for (const term of [0, 1e-320, 1e-14, -1e-14]) {
      expect(rollFromForceTerms({ ...good, speedTerm: s2PerM2(term) })).toBeCloseTo(uniform_m, 8);
    }
  });

  it('refuses a speed that the force does not reach', () => {
    const v_mps = (55 * 1852) / 3600;
    const least = -0.25 / v_mps ** 2;
    expect(() => rollFromForceTerms({ ...good, speedTerm: s2PerM2(least * (1 + 1e-9)) })).toThrow(
      expect.objectContaining({ detail: expect.objectContaining({ code: 'inconsistent', parameter: 'speedTerm' }) }),
    );
    expect(rollFromForceTerms({ ...good, speedTerm: s2PerM2(least * (1 - 1e-9)) })).toBeGreaterThan(1000);
  });
});

describe('groundRollShortForm', () => {
  const good = {
    mass: kg(900),
    liftOffSpeed: ktas(52),
    thrust: newtons(2280),
    drag: newtons(161),
    lift: newtons(1613),
    rollingFriction: ratio(0.03),
    gravity: standardGravity,
  };

  it('is exact where the acceleration is uniform', () => {
    fc.assert(
      fc.property(evenly(500, 1000), evenly(40, 60), evenly(1500, 3000), (mass, speed, thrust) => {
        const plain = { mass: kg(mass), liftOffSpeed: ktas(speed), rollingFriction: ratio(0.05) };
        const none = { wingArea: m2(15), density: kgPerM3(1.2), liftCoefficient: ratio(0), dragCoefficient: ratio(0) };
        const exact = groundRoll({
          ...plain,
          ...none,
          staticThrust: newtons(thrust),
          thrustChange: kgPerM(0),
          slope: percent(0),
          headwind: kt(0),
        });
        const calm = { thrust: newtons(thrust), drag: newtons(0), lift: newtons(0), gravity: standardGravity };
        expect(groundRollShortForm({ ...plain, ...calm })).toBeCloseTo(exact.distance, 8);
      }),
    );
  });

  it('reproduces its own printed form in C_Lmax', () => {
    const weight_N = 900 * standardGravity;
    const stall_mps = (52 * 1852) / 3600 / 1.2;
    const rhoSC = (2 * weight_N) / stall_mps ** 2;
    const force_N = 2280 - (161 + 0.03 * (weight_N - 1613));
    const printed_m = (1.44 * weight_N ** 2) / (standardGravity * rhoSC * force_N);
    expect(groundRollShortForm(good)).toBeCloseTo(printed_m, 9);
  });

  it('refuses a lift above the weight and a thrust that gains no speed', () => {
    const weight_N = 900 * standardGravity;
    expect(() => groundRollShortForm({ ...good, lift: newtons(weight_N + 0.1) })).toThrow(/^lift: .*carry a load/);
    const resistance_N = 161 + 0.03 * (weight_N - 1613);
    expect(() => groundRollShortForm({ ...good, thrust: newtons(resistance_N - 1e-9) })).toThrow(
      /^thrust: .*gains speed/,
    );
    expect(groundRollShortForm({ ...good, thrust: newtons(resistance_N + 1) })).toBeGreaterThan(100000);
  });
});

describe('groundEffectFactor', () => {
  it('leaves less induced drag the closer the wing is to the surface', () => {
    fc.assert(
      fc.property(evenly(0.1, 50), evenly(0.1, 50), evenly(2, 100), (a, b, span) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const nearer = groundEffectFactor({ wingHeight: m(low), wingSpan: m(span) });
        expect(nearer).toBeLessThanOrEqual(groundEffectFactor({ wingHeight: m(high), wingSpan: m(span) }));
        expect(nearer).toBeLessThan(1);
      }),
    );
  });
});

describe('powerLapse', () => {
  it('is nothing lost at sea level, and the same in its other two forms as far as they are written out', () => {
    for (const sigma of [1, 0.9, 0.7, 0.5]) {
      const lapse = powerLapse({ densityRatio: ratio(sigma) });
      expect(Math.abs(lapse - (1.1325 * sigma - 0.1325))).toBeLessThan(0.0001);
      expect(Math.abs(lapse - (sigma - 0.117) / 0.883)).toBeLessThan(0.0005);
    }
    expect(powerLapse({ densityRatio: ratio(1) })).toBe(1);
  });
});

describe('what is out of range', () => {
  const term = {
    density: 1.2,
    wingLoading: 600,
    dragCoefficient: 0.05,
    liftCoefficient: 0.4,
    friction: 0.04,
  };
  const drag = {
    zeroLiftDrag: 0.03,
    gearDrag: 0,
    viscousDragFactor: 0,
    spanEfficiency: 0.8,
    aspectRatio: 7,
    groundEffectFactor: 0.6,
    liftCoefficient: 0.5,
  };
  const terms = { constantTerm: 0.25, speedTerm: 0, speed: 55, gravity: 9.8 };
  const short = {
    mass: 900,
    liftOffSpeed: 52,
    thrust: 2280,
    drag: 161,
    lift: 1613,
    rollingFriction: 0.03,
    gravity: 9.8,
  };
  const cases: [string, (x: never) => unknown, object, string, unknown][] = [
    ['groundEffectFactor', groundEffectFactor, { wingHeight: 1, wingSpan: 10 }, 'wingHeight', 0.09],
    ['groundEffectFactor', groundEffectFactor, { wingHeight: 1, wingSpan: 10 }, 'wingHeight', 100.1],
    ['groundEffectFactor', groundEffectFactor, { wingHeight: 1, wingSpan: 10 }, 'wingSpan', 1.9],
    ['groundEffectFactor', groundEffectFactor, { wingHeight: 1, wingSpan: 10 }, 'wingSpan', 100.1],
    ['powerLapse', powerLapse, {}, 'densityRatio', 0.29],
    ['powerLapse', powerLapse, {}, 'densityRatio', 1.31],
    ['powerLapse', powerLapse, {}, 'densityRatio', undefined],
    ['rotationDistance', rotationDistance, { speed: 52, time: 1 }, 'speed', 0.9],
    ['rotationDistance', rotationDistance, { speed: 52, time: 1 }, 'speed', 300.1],
    ['rotationDistance', rotationDistance, { speed: 52, time: 1 }, 'time', -0.1],
    ['rotationDistance', rotationDistance, { speed: 52, time: 1 }, 'time', 10.1],
    ['aerodynamicRollTerm', aerodynamicRollTerm, term, 'density', 0.29],
    ['aerodynamicRollTerm', aerodynamicRollTerm, term, 'density', 1.61],
    ['aerodynamicRollTerm', aerodynamicRollTerm, term, 'wingLoading', 49.9],
    ['aerodynamicRollTerm', aerodynamicRollTerm, term, 'wingLoading', 10000.1],
    ['aerodynamicRollTerm', aerodynamicRollTerm, term, 'dragCoefficient', -0.01],
    ['aerodynamicRollTerm', aerodynamicRollTerm, term, 'dragCoefficient', 1.01],
    ['aerodynamicRollTerm', aerodynamicRollTerm, term, 'liftCoefficient', -0.01],
    ['aerodynamicRollTerm', aerodynamicRollTerm, term, 'liftCoefficient', 4.01],
    ['aerodynamicRollTerm', aerodynamicRollTerm, term, 'friction', -0.01],
    ['aerodynamicRollTerm', aerodynamicRollTerm, term, 'friction', 1.01],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'zeroLiftDrag', -0.01],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'zeroLiftDrag', 0.51],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'gearDrag', -0.01],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'gearDrag', 0.51],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'viscousDragFactor', -0.01],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'viscousDragFactor', 0.21],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'spanEfficiency', 0.39],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'spanEfficiency', 1.21],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'aspectRatio', 0.9],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'aspectRatio', 40.1],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'groundEffectFactor', -0.01],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'groundEffectFactor', 1.01],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'liftCoefficient', -0.01],
    ['dragCoefficientNearGround', dragCoefficientNearGround, drag, 'liftCoefficient', 4.01],
    ['rollFromForceTerms', rollFromForceTerms, terms, 'constantTerm', 0.009],
    ['rollFromForceTerms', rollFromForceTerms, terms, 'constantTerm', 2.01],
    ['rollFromForceTerms', rollFromForceTerms, terms, 'speedTerm', -0.0021],
    ['rollFromForceTerms', rollFromForceTerms, terms, 'speedTerm', 0.0021],
    ['rollFromForceTerms', rollFromForceTerms, terms, 'speed', 0.9],
    ['rollFromForceTerms', rollFromForceTerms, terms, 'speed', 300.1],
    ['rollFromForceTerms', rollFromForceTerms, terms, 'gravity', 8.9],
    ['rollFromForceTerms', rollFromForceTerms, terms, 'gravity', 32.2],
    ['groundRollShortForm', groundRollShortForm, short, 'mass', 99.9],
    ['groundRollShortForm', groundRollShortForm, short, 'mass', 100000.1],
    ['groundRollShortForm', groundRollShortForm, short, 'liftOffSpeed', 14.9],
    ['groundRollShortForm', groundRollShortForm, short, 'liftOffSpeed', 250.1],
    ['groundRollShortForm', groundRollShortForm, short, 'thrust', -0.1],
    ['groundRollShortForm', groundRollShortForm, short, 'thrust', 1000000.1],
    ['groundRollShortForm', groundRollShortForm, short, 'drag', -0.1],
    ['groundRollShortForm', groundRollShortForm, short, 'drag', 1000000.1],
    ['groundRollShortForm', groundRollShortForm, short, 'lift', -0.1],
    ['groundRollShortForm', groundRollShortForm, short, 'lift', 1000000.1],
    ['groundRollShortForm', groundRollShortForm, short, 'rollingFriction', -0.01],
    ['groundRollShortForm', groundRollShortForm, short, 'rollingFriction', 0.51],
    ['groundRollShortForm', groundRollShortForm, short, 'gravity', 8.9],
    ['groundRollShortForm', groundRollShortForm, short, 'gravity', 10.6],
    ['groundRollShortForm', groundRollShortForm, short, 'gravity', Number.NaN],
  ];

  it.each(cases)('is refused by %s and named', (_name, formula, good, parameter, value) => {
    const call = () => formula({ ...good, [parameter]: value } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: .*(is not within)`));
  });
});
