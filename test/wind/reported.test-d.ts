import { expectTypeOf, test } from 'vitest';
import { degMagnetic, degTrue, kt } from '../../src/units/index.ts';
import { type ReportedWindComponents, reportedWindComponents } from '../../src/wind/index.ts';

const wind = { speed: kt(10), gust: kt(15) };
const trueRange = { from: degTrue(150), to: degTrue(210) };

test('every direction of one report stands against the same north', () => {
  expectTypeOf(
    reportedWindComponents({ ...wind, from: degTrue(180), range: trueRange, direction: degTrue(112) }),
  ).toEqualTypeOf<ReportedWindComponents>();
  // @ts-expect-error a true wind on a magnetic runway
  reportedWindComponents({ ...wind, from: degTrue(180), direction: degMagnetic(112) });
  // @ts-expect-error a true range of a magnetic wind
  reportedWindComponents({ ...wind, from: degMagnetic(180), range: trueRange, direction: degMagnetic(112) });
});

test('a variable wind goes with a runway against either north', () => {
  reportedWindComponents({ ...wind, from: 'variable', direction: degMagnetic(112) });
  reportedWindComponents({ ...wind, from: 'variable', direction: degTrue(112) });
});
