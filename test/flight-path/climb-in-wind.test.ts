import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bestAngleSpeed,
  bestAngleSpeedInWind,
  bestRateSpeed,
  crossoverWind,
  heightAtDistance,
  rateFromThrust,
} from '../../src/flight-path/index.ts';
import {
  DomainError,
  ftPerMin,
  kg,
  kgPerM,
  kgPerM3,
  kt,
  ktas,
  ktGS,
  m,
  m2,
  newtons,
  ratio,
} from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

describe('crossoverWind', () => {
  const pair = fc.record({
    vx: evenly(45, 90),
    faster: evenly(3, 40),
    rx: evenly(200, 1500),
    better: evenly(10, 400),
  });

  it('is the wind in which both speeds gain the same height to an obstacle', () => {
    fc.assert(
      fc.property(pair, ({ vx, faster, rx, better }) => {
        const [vy, ry] = [vx + faster, rx + better];
        const w: number = crossoverWind({
          speedX: ktas(vx),
          rateX: ftPerMin(rx),
          speedY: ktas(vy),
          rateY: ftPerMin(ry),
        });
        expect(rx * (vy - w)).toBeCloseTo(ry * (vx - w), 5);
      }),
    );
  });

  it('parts the winds: V_X gains more in a stronger headwind, V_Y in a stronger tailwind', () => {
    const [vx, rx, vy, ry] = [60, 600, 75, 700];
    const w: number = crossoverWind({ speedX: ktas(vx), rateX: ftPerMin(rx), speedY: ktas(vy), rateY: ftPerMin(ry) });
    const height = (roc: number, tas: number, wind: number): number =>
      heightAtDistance({ rateOfClimb: ftPerMin(roc), groundSpeed: ktGS(tas - wind), distance: m(1000) });
    expect(height(rx, vx, w + 1)).toBeGreaterThan(height(ry, vy, w + 1));
    expect(height(rx, vx, w - 1)).toBeLessThan(height(ry, vy, w - 1));
  });

  it('refuses a V_Y that is not the faster and better climbing speed', () => {
    const x = { speedX: ktas(62), rateX: ftPerMin(650), speedY: ktas(76), rateY: ftPerMin(720) };
    expect(() => crossoverWind({ ...x, speedY: ktas(62) })).toThrow(/^speedY: 62 ktas is inconsistent with 62\.0/);
    expect(() => crossoverWind({ ...x, speedY: ktas(60) })).toThrow(/^speedY: 60 ktas/);
    expect(() => crossoverWind({ ...x, rateY: ftPerMin(650) })).toThrow(/^rateY: 650 ftPerMin is inconsistent with/);
    expect(() => crossoverWind({ ...x, rateY: ftPerMin(600) })).toThrow(DomainError);
  });

  it.each([
    ['speedX', { speedX: 9.9 }],
    ['speedX', { speedX: 300.1 }],
    ['rateX', { rateX: 0.9 }],
    ['rateX', { rateX: 6000.1 }],
    ['rateX', { rateX: Number.NaN }],
    ['speedY', { speedY: 14.9 }],
    ['speedY', { speedY: 300.1 }],
    ['speedY', { speedY: undefined }],
    ['rateY', { rateY: 9.9 }],
    ['rateY', { rateY: 6000.1 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => crossoverWind({ speedX: 62, rateX: 650, speedY: 76, rateY: 720, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

const aeroplane = fc.record({
  mass: evenly(400, 1500).map(kg),
  staticThrust: evenly(1800, 5000).map(newtons),
  thrustChange: evenly(-0.8, 0).map(kgPerM),
  wingArea: evenly(9, 18).map(m2),
  density: evenly(0.9, 1.3).map(kgPerM3),
  zeroLiftDrag: evenly(0.02, 0.05).map(ratio),
  inducedDragFactor: evenly(0.04, 0.08).map(ratio),
  stallSpeed: evenly(20, 35).map(ktas),
});
const sample = {
  mass: kg(900),
  staticThrust: newtons(2600),
  thrustChange: kgPerM(-0.4),
  wingArea: m2(15),
  density: kgPerM3(1.225),
  zeroLiftDrag: ratio(0.03),
  inducedDragFactor: ratio(0.055),
  stallSpeed: ktas(45),
};
type Aeroplane = typeof sample;

/** Rate of climb from the forces as a textbook writes them: C_L from weight, C_D from the polar. */
function rateFromForces(x: Aeroplane, tas: number): number {
  const v = (tas * 1852) / 3600;
  const weight = x.mass * 9.80665;
  const pressureTimesArea = 0.5 * x.density * v ** 2 * x.wingArea;
  const liftCoefficient = weight / pressureTimesArea;
  const drag = (x.zeroLiftDrag + x.inducedDragFactor * liftCoefficient ** 2) * pressureTimesArea;
  const thrust = x.staticThrust + x.thrustChange * v ** 2;
  return ((((thrust - drag) * v) / weight) * 60) / 0.3048;
}

/** The call's result; undefined where the aeroplane drawn cannot climb or would stall. */
function unlessRefused<T>(call: () => T): T | undefined {
  try {
    return call();
  } catch (error) {
    if (error instanceof DomainError && error.detail.code === 'inconsistent') return undefined;
    throw error;
  }
}

describe('rateFromThrust', () => {
  it('is the excess power of the forces over the weight', () => {
    fc.assert(
      fc.property(aeroplane, evenly(35, 150), (x, tas) => {
        const rate: number = rateFromThrust({ ...x, trueAirspeed: ktas(tas) });
        expect(rate).toBeCloseTo(rateFromForces(x, tas), 6);
      }),
    );
  });

  it('refuses a speed below the stall, and answers at it', () => {
    expect(rateFromThrust({ ...sample, trueAirspeed: ktas(45) })).toSatisfy(Number.isFinite);
    expect(() => rateFromThrust({ ...sample, trueAirspeed: ktas(44.9) })).toThrow(
      /^trueAirspeed: 44\.9 ktas is inconsistent with 45 to 300 ktas/,
    );
  });

  it.each([
    ['trueAirspeed', { trueAirspeed: 9.9 }],
    ['trueAirspeed', { trueAirspeed: 300.1 }],
    ['trueAirspeed', { trueAirspeed: Number.NaN }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => rateFromThrust({ ...sample, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('bestAngleSpeed and bestRateSpeed', () => {
  it('are where no other speed climbs more steeply, or faster', () => {
    let climbed = 0;
    fc.assert(
      fc.property(aeroplane, evenly(0.8, 1.2), (x, share) => {
        const vx: number | undefined = unlessRefused(() => bestAngleSpeed(x));
        const vy: number | undefined = unlessRefused(() => bestRateSpeed(x));
        if (vx === undefined || vy === undefined) return;
        climbed += 1;
        expect(vy).toBeGreaterThan(vx);
        expect(rateFromForces(x, vx * share) / (vx * share)).toBeLessThanOrEqual(rateFromForces(x, vx) / vx + 1e-9);
        expect(rateFromForces(x, vy * share)).toBeLessThanOrEqual(rateFromForces(x, vy) + 1e-9);
      }),
    );
    expect(climbed).toBeGreaterThan(100);
  });

  it('are refused below the stall, never replaced by it', () => {
    const vx: number = bestAngleSpeed(sample);
    const vy: number = bestRateSpeed(sample);
    expect(bestAngleSpeed({ ...sample, stallSpeed: ktas(vx - 0.01) })).toBe(vx);
    expect(() => bestAngleSpeed({ ...sample, stallSpeed: ktas(vx + 0.01) })).toThrow(/^stallSpeed: 56\.\d+ ktas is/);
    expect(bestRateSpeed({ ...sample, stallSpeed: ktas(vy - 0.01) })).toBe(vy);
    expect(() => bestRateSpeed({ ...sample, stallSpeed: ktas(vy + 0.01) })).toThrow(/^stallSpeed: 73\.\d+ ktas is/);
  });

  it('are refused where the thrust exceeds the drag at no speed', () => {
    // At V_X thrust and drag are then equal: the least thrust that holds height.
    const least = (x: Aeroplane) => {
      const call = () => bestAngleSpeed({ ...x, staticThrust: newtons(100) });
      expect(call).toThrow(/^staticThrust: 100 N is inconsistent with /);
      return Number(unlessThrown(call).detail.min);
    };
    const enough = least(sample);
    const barely = { ...sample, staticThrust: newtons(enough * 1.000001) };
    const tooLittle = { ...sample, staticThrust: newtons(enough * 0.999999) };
    expect(rateFromForces(barely, bestAngleSpeed(barely))).toBeCloseTo(0, 1);
    for (const call of [bestAngleSpeed, bestRateSpeed]) expect(() => call(tooLittle)).toThrow(/^staticThrust: /);
    expect(() => bestAngleSpeedInWind({ ...tooLittle, headwind: kt(0) })).toThrow(/^staticThrust: /);
  });

  it.each([
    ['mass', { mass: 99 }],
    ['mass', { mass: 10001 }],
    ['staticThrust', { staticThrust: 99 }],
    ['staticThrust', { staticThrust: 100001 }],
    ['thrustChange', { thrustChange: -50.1 }],
    ['thrustChange', { thrustChange: 0.1 }],
    ['wingArea', { wingArea: 0.9 }],
    ['wingArea', { wingArea: 201 }],
    ['density', { density: 0.29 }],
    ['density', { density: 1.61 }],
    ['zeroLiftDrag', { zeroLiftDrag: 0.0049 }],
    ['zeroLiftDrag', { zeroLiftDrag: 0.31 }],
    ['inducedDragFactor', { inducedDragFactor: 0.009 }],
    ['inducedDragFactor', { inducedDragFactor: 0.51 }],
    ['stallSpeed', { stallSpeed: 9.9 }],
    ['stallSpeed', { stallSpeed: 200.1 }],
    ['stallSpeed', { stallSpeed: undefined }],
    ['mass', { mass: Number.NaN }],
  ])('refuse a bad %s and name it', (parameter, inputs) => {
    const x = { ...sample, headwind: kt(0), trueAirspeed: ktas(60), ...inputs };
    for (const formula of [bestAngleSpeed, bestRateSpeed, bestAngleSpeedInWind, rateFromThrust]) {
      expect(() => formula(x as never)).toThrow(DomainError);
      expect(() => formula(x as never)).toThrow(new RegExp(`^${parameter}: `));
    }
  });
});

function unlessThrown(call: () => unknown): DomainError {
  try {
    call();
  } catch (error) {
    if (error instanceof DomainError) return error;
  }
  throw new Error('nothing was refused');
}

describe('bestAngleSpeedInWind', () => {
  it('is where no other speed above the stall climbs more steeply over the ground', () => {
    let climbed = 0;
    fc.assert(
      fc.property(aeroplane, evenly(-40, 25), evenly(0.7, 1.4), (x, wind, share) => {
        const speed: number | undefined = unlessRefused(() => bestAngleSpeedInWind({ ...x, headwind: kt(wind) }));
        if (speed === undefined) return;
        climbed += 1;
        expect(speed).toBeGreaterThanOrEqual(x.stallSpeed * (1 - 1e-12));
        const other = Math.max(x.stallSpeed, speed * share);
        const gradient = (tas: number): number => rateFromForces(x, tas) / (tas - wind);
        expect(gradient(other)).toBeLessThanOrEqual(gradient(speed) + 1e-9);
      }),
    );
    expect(climbed).toBeGreaterThan(100);
  });

  it('is V_X in still air, less in a headwind, more in a tailwind and always below V_Y', () => {
    const at = (wind: number): number => bestAngleSpeedInWind({ ...sample, headwind: kt(wind) });
    expect(at(0)).toBeCloseTo(bestAngleSpeed(sample), 9);
    expect(at(10)).toBeLessThan(at(0));
    expect(at(-10)).toBeGreaterThan(at(0));
    expect(at(-100)).toBeGreaterThan(at(-50));
    expect(at(-100)).toBeLessThan(bestRateSpeed(sample));
  });

  // Optima of an optimiser for the textbook aeroplane of the check values, whose stall speed is 57.8 kt: 55.4724 kt in
  // 20 kt and 39.9464 kt in 30 kt of headwind lie below the stall.
  const textbook = {
    mass: kg(13122 / 9.80665),
    staticThrust: newtons(3800),
    thrustChange: kgPerM(-0.45),
    wingArea: m2(16.17),
    density: kgPerM3(1.225),
    zeroLiftDrag: ratio(0.025),
    inducedDragFactor: ratio(16.17 / (Math.PI * 0.8 * 10.91 ** 2)),
  };

  it.each([
    [20, 55.4724],
    [30, 39.9464],
  ])('refuses a headwind of %d kt in which the speed would be %d kt, below the stall', (wind, optimum) => {
    const call = (stall: number) => () =>
      bestAngleSpeedInWind({ ...textbook, stallSpeed: ktas(stall), headwind: kt(wind) });
    expect(call(57.8)).toThrow(new RegExp(`^headwind: ${wind} kt is inconsistent with -100 to 1\\d\\.`));
    expect(Math.abs(call(optimum - 1)() - optimum)).toBeLessThanOrEqual(0.00005);
    expect(call(optimum + 0.001)).toThrow(/^headwind: /);
  });

  it('takes the strongest headwind that it names, and flies it at the stall speed', () => {
    const refused = unlessThrown(() => bestAngleSpeedInWind({ ...textbook, stallSpeed: ktas(57.8), headwind: kt(30) }));
    const most = Number(refused.detail.max);
    const x = { ...textbook, stallSpeed: ktas(57.8) };
    expect(bestAngleSpeedInWind({ ...x, headwind: kt(most - 1e-9) })).toBeCloseTo(57.8, 6);
    expect(() => bestAngleSpeedInWind({ ...x, headwind: kt(most + 1e-6) })).toThrow(/^headwind: /);
  });

  it('refuses still air where V_X is below the stall, and all winds where V_Y is', () => {
    const slowStall = { ...sample, stallSpeed: ktas(60) };
    expect(() => bestAngleSpeedInWind({ ...slowStall, headwind: kt(0) })).toThrow(/^headwind: 0 kt is inconsistent/);
    expect(bestAngleSpeedInWind({ ...slowStall, headwind: kt(-60) })).toBeGreaterThan(60);
    expect(() => bestAngleSpeedInWind({ ...sample, stallSpeed: ktas(80), headwind: kt(-100) })).toThrow(
      /^stallSpeed: 80(\.0+\d*)? ktas is inconsistent/,
    );
  });

  it('stays above the slowest level flight of an aeroplane that cannot climb at the stall', () => {
    const weak = { ...sample, staticThrust: newtons(1900), stallSpeed: ktas(30) };
    expect(rateFromForces(weak, 30)).toBeLessThan(0);
    const speed: number = bestAngleSpeedInWind({ ...weak, headwind: kt(29.9) });
    expect(rateFromForces(weak, speed)).toBeGreaterThan(0);
    expect(() => bestAngleSpeedInWind({ ...weak, headwind: kt(30.1) })).toThrow(/^headwind: 30\.1 kt/);
  });

  it.each([
    ['headwind', { headwind: -100.1 }],
    ['headwind', { headwind: 100.1 }],
    ['headwind', { headwind: Number.NaN }],
    ['headwind', {}],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => bestAngleSpeedInWind({ ...sample, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('climbing random aeroplanes', () => {
  it('never answer with NaN', () => {
    fc.assert(
      fc.property(aeroplane, evenly(-100, 100), (x, wind) => {
        const speed: number | undefined = unlessRefused(() => bestAngleSpeedInWind({ ...x, headwind: kt(wind) }));
        if (speed !== undefined) expect(speed).toSatisfy(Number.isFinite);
      }),
    );
  });
});
