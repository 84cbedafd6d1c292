import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prepareTakeoff } from '../../src/assessment/index.ts';
import { codes, criterion, judged, takeoff, takeoffRequest, turning } from './scenario.ts';

const grass = (condition: string, length: string, ground: string) => ({
  'runway.surface': { kind: 'grass', condition, length, ground },
});
const soft = grass('dry', 'up to 20 cm', 'soft');
const byChoice = { policies: { firstPrinciples: 'more adverse' } };
const estimate = (changes: Record<string, unknown>) =>
  takeoff('takeoff-28', changes).estimates.find(({ code }) => code.startsWith('estimate-surface'));

/** The constant thrust that gives back a roll from rest to a speed, and the roll it gives with another friction. */
function ratioByHand(roll_m: number, liftOff_mps: number, known: number, other: number): number {
  const g = 9.80665;
  const net = liftOff_mps ** 2 / (2 * roll_m);
  const thrustPerMass = net + known * g;
  return net / (thrustPerMass - other * g);
}

describe('what friction costs by first principles', () => {
  it('stands beside the break-even of a soft field, as a band that the reader can compare', () => {
    const field = takeoff('takeoff-28', soft);
    expect(criterion(field, 'takeoff-distance').verdict).toBe('undetermined');
    expect(turning(field)['surface factor']).toBe(1.293);
    const found = field.estimates[0];
    expect(found?.code).toBe('estimate-surface-open');
    expect(found?.parameters).toMatchObject({ leastFriction: 0.1, greatestFriction: 0.3 });
    expect(codes(field.estimates)).toContain('estimate-assumes');
  });

  it('is the ratio of two rolls under the thrust that gives back the manual, put onto the distance', () => {
    const long = takeoff('takeoff-28', {
      ...grass('dry', 'over 20 cm', 'firm'),
      'weather.wind': {
        source: 'METAR',
        from: { value: 190, unit: 'degTrue' },
        speed: { value: 0, unit: 'kt' },
      },
    });
    const step = (record: string) => long.trace.find((each) => each.kind === 'step' && each.record === record);
    const rolled = step('dynamics.roll-ratio') as {
      inputs: Record<string, number>;
      output: { low: number; high: number };
    };
    const { groundRoll = 0, liftOffSpeed = 0, headwind } = rolled.inputs;
    expect(headwind).toBe(0);
    const speed_mps = (liftOffSpeed * 1852) / 3600;
    expect(rolled.output.low).toBeCloseTo(ratioByHand(groundRoll, speed_mps, 0.05, 0.1), 9);
    expect(rolled.output.high).toBeCloseTo(ratioByHand(groundRoll, speed_mps, 0.02, 0.1), 9);
    const { low, high } = (long.estimates[0] as { parameters: object }).parameters as { low: number; high: number };
    const { distance = 1 } = (step('dynamics.factor-from-roll-ratio') as { inputs: Record<string, number> }).inputs;
    expect(low).toBeCloseTo(1 + ((rolled.output.low - 1) * groundRoll) / distance, 9);
    expect(high).toBeCloseTo(1 + ((rolled.output.high - 1) * groundRoll) / distance, 9);
  });

  it('is not made for a paved runway or snow, and says where a figure is recalled', () => {
    expect(estimate({ 'runway.surface': { kind: 'paved', condition: 'dry' } })).toBeUndefined();
    expect(estimate({ 'runway.surface': { kind: 'snow' } })).toBeUndefined();
    expect(codes(takeoff('takeoff-28', grass('wet', 'up to 20 cm', 'firm')).estimates)).toContain('estimate-recalled');
    expect(codes(takeoff('takeoff-28').estimates)).not.toContain('estimate-recalled');
  });

  it('informs unless chosen otherwise, and then only takes a verdict away', () => {
    const long = { ...grass('dry', 'over 20 cm', 'firm'), factorSet: 'uk-light-aeroplane-leaflet' };
    expect(judged(takeoff('takeoff-28', long), 'takeoff-distance').verdict).toBe('undetermined');
    expect(judged(takeoff('takeoff-28', { ...long, ...byChoice }), 'takeoff-distance').verdict).not.toBe('within');
    const ownBook = {
      'performanceData.takeoff.0.corrections.surfaces': [
        { surface: 'grass', condition: 'dry', increase: { value: 1, unit: 'percent' }, percentOf: 'distance' },
      ],
    };
    const tight = { ...ownBook, 'runway.length': { value: 700, unit: 'm' } };
    const plain = takeoff('takeoff-28', {
      ...tight,
      'runway.ends.0.declaredDistances': undefined,
      'runway.ends.1.declaredDistances': undefined,
    });
    const chosen = takeoff('takeoff-28', {
      ...tight,
      ...byChoice,
      'runway.ends.0.declaredDistances': undefined,
      'runway.ends.1.declaredDistances': undefined,
    });
    expect(judged(plain, 'takeoff-distance').verdict).toBe('within');
    expect(judged(chosen, 'takeoff-distance').verdict).toBe('undetermined');
    expect(codes(chosen.reasons)).toContain('estimate-more-adverse');
  });

  it('never turns anything into within', () => {
    const conditions = ['dry', 'wet'].flatMap((condition) =>
      ['very short', 'up to 20 cm', 'over 20 cm'].flatMap((length) =>
        ['firm', 'soft'].map((ground) => grass(condition, length, ground)),
      ),
    );
    const prepared = conditions.map((changes) =>
      [{}, byChoice].map((choice) => {
        const read = prepareTakeoff(takeoffRequest('takeoff-10', { ...changes, ...choice }));
        if (!read.ok) throw new Error(JSON.stringify(read.faults));
        return read.value;
      }),
    );
    fc.assert(
      fc.property(
        fc.nat(conditions.length - 1),
        fc.integer({ min: 0, max: 25 }),
        fc.integer({ min: 1, max: 360 }),
        fc.integer({ min: 0, max: 36 }),
        (which, speed_kt, from_deg, temperature_degC) => {
          const weather = {
            from_deg,
            speed_kt,
            gust_kt: speed_kt,
            gustReported: false,
            range_deg: undefined,
            temperature_degC,
            dewPoint_degC: undefined,
            pressure: { qnh_hPa: 1006 },
          };
          const [plain, chosen] = (prepared[which] as (typeof prepared)[number]).map((each) =>
            each.compare(weather as never),
          );
          for (const [i, { verdict }] of (plain?.criteria ?? []).entries()) {
            const then = chosen?.criteria[i]?.verdict;
            if (then === 'within') expect(verdict).toBe('within');
            if (verdict === 'outside') expect(then).toBe('outside');
          }
          expect(plain?.criteria.length).toBe(chosen?.criteria.length);
        },
      ),
    );
  });
});
