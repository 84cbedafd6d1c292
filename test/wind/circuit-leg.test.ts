import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, degTrue, kt, ktas, m } from '../../src/units/index.ts';
import { type Circuit, type CircuitLegName, circuitLeg, circuitLegs, windTriangle } from '../../src/wind/index.ts';
import { evenly } from '../evenly.ts';

const direction = evenly(0, 360);
const wind = evenly(0, 35);

const legs = {
  upwind: { length: m(900), trueAirspeed: ktas(65) },
  crosswind: { length: m(850), trueAirspeed: ktas(70) },
  downwind: { length: m(2600), trueAirspeed: ktas(85) },
  base: { length: m(850), trueAirspeed: ktas(70) },
  final: { length: m(1100), trueAirspeed: ktas(65) },
};

function flown(circuit: Circuit, runway: number, from: number, speed: number) {
  return circuitLegs({ circuit, direction: degTrue(runway), from: degTrue(from), speed: kt(speed), legs });
}

describe('circuitLegs', () => {
  it('flies the legs in order, on the tracks of the side', () => {
    const tracks = (circuit: Circuit) => flown(circuit, 280, 0, 0).map(({ leg, track }) => [leg, track]);
    expect(tracks('left')).toEqual([
      ['upwind', 280],
      ['crosswind', 190],
      ['downwind', 100],
      ['base', 10],
      ['final', 280],
    ]);
    expect(tracks('right')).toEqual([
      ['upwind', 280],
      ['crosswind', 10],
      ['downwind', 100],
      ['base', 190],
      ['final', 280],
    ]);
  });

  it('takes length over speed in calm', () => {
    for (const leg of flown('left', 40, 0, 0)) {
      const { length, trueAirspeed } = legs[leg.leg];
      expect(leg.time).toBeCloseTo((length / trueAirspeed) * (3600 / 1852), 9);
      expect(leg.heading).toBe(leg.track);
      expect(leg.drift).toBe(0);
    }
  });

  it('keeps every track by its wind triangle, and covers its length in its time', () => {
    fc.assert(
      fc.property(fc.constantFrom('left', 'right'), direction, direction, wind, (circuit, runway, from, speed) => {
        for (const flownLeg of flown(circuit, runway, from, speed)) {
          const { leg, track, time, ...rest } = flownLeg;
          const { trueAirspeed, length } = legs[leg];
          expect(rest).toEqual(windTriangle({ from: degTrue(from), speed: kt(speed), track, trueAirspeed }));
          expect(time * rest.groundSpeed * (1852 / 3600)).toBeCloseTo(length, 8);
        }
      }),
    );
  });

  it('is the mirror image on the other side in the mirror image of the wind', () => {
    fc.assert(
      fc.property(direction, direction, wind, (runway, off, speed) => {
        const from = (angle: number) => (((runway + angle) % 360) + 360) % 360;
        const left = flown('left', runway, from(off), speed);
        const right = flown('right', runway, from(-off), speed);
        for (const [i, leg] of left.entries()) {
          expect(right[i]?.time).toBeCloseTo(leg.time, 8);
          expect(right[i]?.drift).toBeCloseTo(-leg.drift, 8);
        }
      }),
    );
  });

  it('takes longer in any wind on opposite legs of the same length and speed', () => {
    const same = { length: m(1000), trueAirspeed: ktas(70) };
    const all = { upwind: same, crosswind: same, downwind: same, base: same, final: same };
    fc.assert(
      fc.property(direction, evenly(1, 35), (from, speed) => {
        const time = (knots: number) =>
          circuitLegs({ circuit: 'left', direction: degTrue(90), from: degTrue(from), speed: kt(knots), legs: all })
            .slice(0, 4)
            .reduce((sum, leg) => sum + leg.time, 0);
        expect(time(speed)).toBeGreaterThan(time(0));
      }),
    );
  });

  it.each(['upwind', 'crosswind', 'downwind', 'base', 'final'] as const)('names a bad figure of the %s leg', (leg) => {
    const call = (figures: object) => () =>
      circuitLegs({
        circuit: 'left',
        direction: degTrue(90),
        from: degTrue(90),
        speed: kt(5),
        legs: { ...legs, [leg]: figures },
      } as never);
    expect(call({ length: 20001, trueAirspeed: 70 })).toThrow(new RegExp(`^legs.${leg}.length: `));
    expect(call({ length: -1, trueAirspeed: 70 })).toThrow(new RegExp(`^legs.${leg}.length: `));
    expect(call({ length: 900, trueAirspeed: 9 })).toThrow(new RegExp(`^legs.${leg}.trueAirspeed: `));
    expect(call({ length: 900 })).toThrow(new RegExp(`^legs.${leg}.trueAirspeed: `));
    expect(call({})).toThrow(DomainError);
  });

  it('refuses a circuit without legs', () => {
    const call = () => circuitLegs({ circuit: 'left', direction: 90, from: 90, speed: 5 } as never);
    expect(call).toThrow(/^legs.upwind.length: /);
  });
});

describe('circuitLeg', () => {
  const good = { leg: 'base', circuit: 'left', direction: 280, from: 230, speed: 15, trueAirspeed: 70, length: 900 };

  it('refuses a wind that leaves no ground speed on the leg', () => {
    const leg = (name: CircuitLegName) => () =>
      circuitLeg({ ...good, leg: name, from: 280, speed: 45, trueAirspeed: 40 } as never);
    expect(leg('final')).toThrow(/leaves a ground speed/);
    expect(leg('base')).toThrow(/across the track/);
    expect(() =>
      circuitLeg({ ...good, leg: 'downwind', from: 280, speed: 45, trueAirspeed: 40 } as never),
    ).not.toThrow();
  });

  it.each([
    ['leg', { leg: 'sideways' }],
    ['leg', { leg: undefined }],
    ['circuit', { circuit: 'up' }],
    ['circuit', { circuit: undefined }],
    ['direction', { direction: -1 }],
    ['direction', { direction: 361 }],
    ['from', { from: 361 }],
    ['from', { from: Number.NaN }],
    ['speed', { speed: -1 }],
    ['speed', { speed: 201 }],
    ['trueAirspeed', { trueAirspeed: 9 }],
    ['trueAirspeed', { trueAirspeed: 501 }],
    ['length', { length: -1 }],
    ['length', { length: 20001 }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => circuitLeg({ ...good, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });

  it('says which words it knows', () => {
    const call = () => circuitLeg({ ...good, circuit: 'up' } as never);
    expect(call).toThrow('circuit: "up" is none of "left", "right" (the side of the turns)');
  });
});
