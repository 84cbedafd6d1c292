import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, degrees, degTrue, kt, ktas, m } from '../../src/units/index.ts';
import {
  baseToFinalBank,
  baseToFinalBankLimit,
  baseToFinalTurn,
  baseToFinalVerdict,
  type Circuit,
  turnRadius,
  windComponents,
} from '../../src/wind/index.ts';
import { evenly } from '../evenly.ts';

const circuit = fc.constantFrom<Circuit[]>('left', 'right');
const turn = fc.record({
  trueAirspeed: evenly(45, 120).map(ktas),
  bank: evenly(10, 45).map(degrees),
  headwind: evenly(-28, 28).map(kt),
  crosswind: evenly(-28, 28).map(kt),
  circuit,
});

const knot = 1852 / 3600;
const g = 9.80665;

/**
 * The turn flown in small steps over the ground, with nothing of the algebra: runway and wind as on a map, the heading
 * changed at the rate of the bank, from the heading that keeps the base leg until the track is that of the runway.
 */
function flownInSteps(
  runway_deg: number,
  from_deg: number,
  wind_kt: number,
  v_kt: number,
  bank_deg: number,
  side: Circuit,
) {
  const radians = (angle: number) => (angle * Math.PI) / 180;
  const [v, w] = [v_kt * knot, wind_kt * knot];
  const windEast = -w * Math.sin(radians(from_deg));
  const windNorth = -w * Math.cos(radians(from_deg));
  const along = [Math.sin(radians(runway_deg)), Math.cos(radians(runway_deg))] as const;
  const sign = side === 'left' ? -1 : 1;
  // Across the centreline in the direction of the base leg, which comes from the side of the circuit.
  const across = side === 'left' ? ([along[1], -along[0]] as const) : ([-along[1], along[0]] as const);
  const rate = (sign * g * Math.tan(radians(bank_deg))) / v;
  const velocity = (heading: number) => {
    const east = v * Math.sin(heading) + windEast;
    const north = v * Math.cos(heading) + windNorth;
    return [east * along[0] + north * along[1], east * across[0] + north * across[1]] as const;
  };
  // The heading at which the aeroplane flies straight along the base leg, found by halving.
  const baseTrack = Math.atan2(across[0], across[1]);
  let [low, high] = [baseTrack - Math.PI / 2, baseTrack + Math.PI / 2];
  for (let i = 0; i < 100; i += 1) {
    const middle = (low + high) / 2;
    if (velocity(middle)[0] * sign < 0) low = middle;
    else high = middle;
  }
  let heading = low;
  let [x, y, t] = [0, 0, 0];
  const advance = (step: number) => {
    // Runge and Kutta's rule of the fourth order; the rate of turn is constant, the velocity is not.
    const k1 = velocity(heading);
    const k2 = velocity(heading + (rate * step) / 2);
    const k4 = velocity(heading + rate * step);
    x += (step / 6) * (k1[0] + 4 * k2[0] + k4[0]);
    y += (step / 6) * (k1[1] + 4 * k2[1] + k4[1]);
    heading += rate * step;
    t += step;
  };
  const step = 0.02;
  while (velocity(heading + rate * step)[1] > 0) advance(step);
  // The last part of a step, until nothing is left of the motion across the centreline.
  let [shortest, longest] = [0, step];
  for (let i = 0; i < 60; i += 1) {
    const middle = (shortest + longest) / 2;
    if (velocity(heading + rate * middle)[1] > 0) shortest = middle;
    else longest = middle;
  }
  advance(shortest);
  return { across_m: y, along_m: x, time_s: t };
}

describe('baseToFinalTurn', () => {
  it('agrees with the same turn flown in small steps, to 0.01 mm', () => {
    const direction = evenly(0, 360);
    const drawn = [direction, direction, evenly(0, 35), evenly(45, 120), evenly(10, 45), circuit] as const;
    fc.assert(
      fc.property(...drawn, (runway, from, wind, v_kt, bank_deg, side) => {
        const flown = flownInSteps(runway, from, wind, v_kt, bank_deg, side);
        const components = windComponents({ from: degTrue(from), speed: kt(wind), direction: degTrue(runway) });
        const formula = baseToFinalTurn({
          trueAirspeed: ktas(v_kt),
          bank: degrees(bank_deg),
          ...components,
          circuit: side,
        });
        expect(Math.abs(flown.across_m - formula.lateralDistance)).toBeLessThan(1e-5);
        expect(Math.abs(flown.along_m - formula.distanceAlongRunway)).toBeLessThan(1e-5);
        expect(Math.abs(flown.time_s - formula.time)).toBeLessThan(1e-5);
      }),
    );
  });

  it('is a quarter of the circle in calm', () => {
    fc.assert(
      fc.property(turn, (x) => {
        const calm = baseToFinalTurn({ ...x, headwind: kt(0), crosswind: kt(0) });
        const radius = turnRadius(x);
        expect(calm.headingChange).toBe(90);
        expect(calm.lateralDistance).toBeCloseTo(radius, 8);
        expect(calm.distanceAlongRunway).toBeCloseTo(radius, 8);
        expect(calm.distanceInCalm).toBe(radius);
        expect(calm.overshoot).toBeCloseTo(0, 8);
      }),
    );
  });

  it('overshoots the more, the stronger the wind from behind on the base leg', () => {
    fc.assert(
      fc.property(turn, evenly(1, 10), (x, more_kt) => {
        const stronger = x.crosswind + (x.circuit === 'left' ? -more_kt : more_kt);
        const here = baseToFinalTurn(x).overshoot;
        expect(baseToFinalTurn({ ...x, crosswind: kt(stronger) }).overshoot).toBeGreaterThan(here);
      }),
    );
  });

  it('is the mirror image in a circuit to the other side', () => {
    fc.assert(
      fc.property(turn, (x) => {
        const other = {
          ...x,
          circuit: x.circuit === 'left' ? 'right' : 'left',
          crosswind: kt(0 - x.crosswind),
        } as const;
        expect(baseToFinalTurn(other)).toEqual(baseToFinalTurn(x));
      }),
    );
  });

  it('takes a distance across that grows with the square of the speed for the same share of wind', () => {
    fc.assert(
      fc.property(turn, (x) => {
        const half = {
          ...x,
          trueAirspeed: ktas(x.trueAirspeed / 2),
          headwind: kt(x.headwind / 2),
          crosswind: kt(x.crosswind / 2),
        };
        expect(baseToFinalTurn(x).lateralDistance / baseToFinalTurn(half).lateralDistance).toBeCloseTo(4, 9);
      }),
    );
  });
});

describe('baseToFinalBank', () => {
  it('begun where the turn at that bank takes it to the centreline, is that bank', () => {
    fc.assert(
      fc.property(turn, (x) => {
        const startDistance = baseToFinalTurn(x).lateralDistance;
        expect(baseToFinalBank({ ...x, startDistance })).toBeCloseTo(x.bank, 9);
      }),
    );
  });

  it('is steeper than planned exactly where the turn would overshoot', () => {
    fc.assert(
      fc.property(turn, (x) => {
        const { overshoot, distanceInCalm } = baseToFinalTurn(x);
        const needed = baseToFinalBank({ ...x, startDistance: distanceInCalm });
        if (Math.abs(overshoot) > 1e-6) expect(needed > x.bank).toBe(overshoot > 0);
        expect(needed).toBeLessThan(90);
      }),
    );
  });

  it('is not far from the rule that the wind carries the aeroplane through a quarter turn', () => {
    // First order: the overshoot is the wind from behind times the time of a turn through 90°.
    const x = { trueAirspeed: ktas(70), bank: degrees(20), headwind: kt(0), circuit: 'left' } as const;
    const { overshoot, time } = baseToFinalTurn({ ...x, crosswind: kt(-0.01) });
    expect(overshoot / (0.01 * knot * time)).toBeCloseTo(1, 3);
  });
});

describe('baseToFinalVerdict', () => {
  const x = { trueAirspeed: ktas(70), headwind: kt(0), circuit: 'left', startDistance: m(360) } as const;
  const greatestBank = baseToFinalBankLimit.bank;

  it('gives the bank where it is within the limit, and never a bank beyond it', () => {
    fc.assert(
      fc.property(turn, evenly(5, 60), evenly(50, 2000), ({ bank: _bank, ...wind }, limit, start) => {
        const needed = baseToFinalBank({ ...wind, startDistance: m(start) });
        const answer = baseToFinalVerdict({ ...wind, startDistance: m(start), greatestBank: degrees(limit) });
        if (answer.verdict === 'within') {
          expect(answer.bank).toBe(needed);
          expect(needed).toBeLessThanOrEqual(limit + 1e-9);
        } else {
          expect(needed).toBeGreaterThan(limit);
          expect(answer.advice.code).toBe('go-around');
          expect(answer).not.toHaveProperty('bank');
        }
      }),
    );
  });

  it('takes equality with the limit as within', () => {
    const needed = baseToFinalBank({ ...x, crosswind: kt(-10) });
    expect(baseToFinalVerdict({ ...x, crosswind: kt(-10), greatestBank: needed }).verdict).toBe('within');
    expect(baseToFinalVerdict({ ...x, crosswind: kt(-10), greatestBank: degrees(needed - 1e-8) }).verdict).toBe(
      'outside',
    );
  });

  it('is within in calm at any speed where the turn is planned at the limit itself', () => {
    fc.assert(
      fc.property(evenly(45, 120), evenly(10, 45), (speed, limit) => {
        const planned = { trueAirspeed: ktas(speed), bank: degrees(limit) };
        const calm = { ...planned, headwind: kt(0), crosswind: kt(0), circuit: 'left' } as const;
        const verdict = baseToFinalVerdict({ ...calm, startDistance: turnRadius(planned), greatestBank: planned.bank });
        expect(verdict.verdict).toBe('within');
      }),
    );
  });

  it('advises to go around in words, with the bank that it would take', () => {
    const answer = baseToFinalVerdict({ ...x, startDistance: m(229.04), crosswind: kt(-15), greatestBank });
    expect(answer).toEqual({
      verdict: 'outside',
      advice: {
        code: 'go-around',
        // 38.132 degrees in the table of computed turns: 70 kt, 30 degrees planned, 15 kt from behind on the base leg.
        text: 'Go around: rolling out on the centreline would take 38.2° of bank, and 30.0° is the most set for this turn.',
      },
    });
  });

  it("holds the handbook's limit, with its source", () => {
    expect(baseToFinalBankLimit.bank).toBe(30);
    expect(baseToFinalBankLimit.citation).toMatchObject({ source: 'faa-afh', access: 'read' });
  });

  it.each([4.9, 60.1, Number.NaN, undefined])('refuses a limit of %s', (limit) => {
    expect(() => baseToFinalVerdict({ ...x, crosswind: kt(0), greatestBank: limit } as never)).toThrow(
      /^greatestBank: /,
    );
  });
});

describe('the base-to-final turn refuses', () => {
  const good = {
    trueAirspeed: 70,
    bank: 20,
    startDistance: 360,
    headwind: 5,
    crosswind: -10,
    circuit: 'left',
    greatestBank: 30,
  };

  it.each([
    ['trueAirspeed', { trueAirspeed: 19.9 }],
    ['trueAirspeed', { trueAirspeed: 301 }],
    ['trueAirspeed', { trueAirspeed: Number.NaN }],
    ['headwind', { headwind: -201 }],
    ['headwind', { headwind: 201 }],
    ['headwind', { headwind: undefined }],
    ['crosswind', { crosswind: -201 }],
    ['crosswind', { crosswind: 201 }],
    ['circuit', { circuit: 'straight' }],
    ['circuit', { circuit: undefined }],
  ])('a bad %s, by name', (parameter, inputs) => {
    for (const formula of [baseToFinalTurn, baseToFinalBank, baseToFinalVerdict]) {
      const call = () => formula({ ...good, ...inputs } as never);
      expect(call).toThrow(DomainError);
      expect(call).toThrow(new RegExp(`^${parameter}: `));
    }
  });

  it.each([0.9, 75.1, Number.NaN, undefined])('a bank of %s', (bank) => {
    expect(() => baseToFinalTurn({ ...good, bank } as never)).toThrow(/^bank: /);
  });

  it.each([0.9, 20001, Number.NaN, undefined])('a start at %s m', (startDistance) => {
    expect(() => baseToFinalBank({ ...good, startDistance } as never)).toThrow(/^startDistance: /);
  });

  it.each([
    ['headwind', 70, 0, 'left'],
    ['headwind', 200, 0, 'left'],
    ['headwind', -70, 0, 'left'],
    ['headwind', 60, 40, 'left'],
    ['crosswind', 0, -70, 'left'],
    ['crosswind', 0, 70, 'left'],
    ['crosswind', -60, 40, 'left'],
    ['crosswind', -60, -40, 'right'],
  ])(
    'a %s that leaves no ground speed on one of the tracks: %i kt and %i kt, %s',
    (parameter, headwind, crosswind, side) => {
      const call = () => baseToFinalTurn({ ...good, headwind, crosswind, circuit: side } as never);
      expect(call).toThrow(new RegExp(`^${parameter}: `));
      expect(call).toThrow(expect.objectContaining({ detail: expect.objectContaining({ code: 'inconsistent' }) }));
    },
  );

  it.each([
    [60, 35, 'left'],
    [-60, 35, 'left'],
    [-60, -60, 'left'],
    [-60, 60, 'right'],
    // As strong as the airspeed, 42² + 56² = 70², and from behind on both tracks.
    [-42, -56, 'left'],
    [-42, 56, 'right'],
  ])('no wind that leaves one: %i kt and %i kt, %s', (headwind, crosswind, side) => {
    const flown = baseToFinalTurn({ ...good, headwind, crosswind, circuit: side } as never);
    for (const figure of Object.values(flown)) expect(figure).toSatisfy(Number.isFinite);
    expect(flown.lateralDistance).toBeGreaterThan(0);
    expect(flown.distanceAlongRunway).toBeGreaterThan(0);
  });
});
