import { expectTypeOf, test } from 'vitest';
import {
  type Degrees,
  degMagnetic,
  degTrue,
  kt,
  ktas,
  type MagneticDirection,
  m,
  ratio,
  type TrueDirection,
} from '../../src/units/index.ts';
import {
  type BaseToFinalVerdict,
  circuitLeg,
  type LargestWind,
  runwayOrder,
  usabilityFactor,
  windTriangle,
} from '../../src/wind/index.ts';

const flown = { speed: kt(10), trueAirspeed: ktas(70) };

test('a heading stands against the north of its wind and track', () => {
  expectTypeOf(
    windTriangle({ ...flown, from: degTrue(180), track: degTrue(90) }).heading,
  ).toEqualTypeOf<TrueDirection>();
  expectTypeOf(
    windTriangle({ ...flown, from: degMagnetic(180), track: degMagnetic(90) }).heading,
  ).toEqualTypeOf<MagneticDirection>();
  // @ts-expect-error a true wind on a magnetic track
  windTriangle({ ...flown, from: degTrue(180), track: degMagnetic(90) });
});

test('a circuit is flown against one north', () => {
  const leg = { ...flown, leg: 'base', circuit: 'left', length: m(900) } as const;
  expectTypeOf(
    circuitLeg({ ...leg, from: degMagnetic(180), direction: degMagnetic(90) }).track,
  ).toEqualTypeOf<MagneticDirection>();
  // @ts-expect-error a true wind on a magnetic runway
  circuitLeg({ ...leg, from: degTrue(180), direction: degMagnetic(90) });
});

test('an order and a series take runways against the north of their wind', () => {
  const shares = { headwindShare: ratio(0.5), tailwindShare: ratio(1.5) };
  const wind = { from: degTrue(180), speed: kt(10), gust: kt(10) };
  runwayOrder({ wind, runways: [{ name: '18', direction: degTrue(180) }], by: 'along', ...shares });
  // @ts-expect-error a true wind on a magnetic runway
  runwayOrder({ wind, runways: [{ name: '18', direction: degMagnetic(180) }], by: 'along', ...shares });

  const columns = {
    directions: { unit: 'degTrue', values: [180] },
    speeds: { unit: 'kt', values: new Float64Array([10]) },
  } as const;
  const limits = { crosswindLimit: kt(10), tailwindLimit: kt(5), tailwindShare: ratio(1.5) };
  usabilityFactor({ ...columns, runways: [{ name: '18', direction: degTrue(180) }], ...limits });
  // @ts-expect-error true winds on a magnetic runway
  usabilityFactor({ ...columns, runways: [{ name: '18', direction: degMagnetic(180) }], ...limits });
});

test('a figure is read only after its verdict', () => {
  const verdict = {} as BaseToFinalVerdict;
  // @ts-expect-error there is no bank to fly where the verdict is outside
  verdict.bank;
  if (verdict.verdict === 'within') expectTypeOf(verdict.bank).toEqualTypeOf<Degrees>();
  const largest = {} as LargestWind;
  // @ts-expect-error there is no speed where no limit is reached
  largest.speed;
});
