import type { FormulaRecord } from '../sources/index.ts';
import {
  driftByOneInSixty,
  driftByOneInSixtyDomain,
  trackErrorByOneInSixty,
  trackErrorByOneInSixtyDomain,
} from './one-in-sixty.ts';

export const trackErrorByOneInSixtyRecord = {
  id: 'rules-of-thumb.track-error-by-one-in-sixty',
  title: 'Track error by one in sixty',
  equation: '\\delta \\approx 60\\,\\frac{y}{x}',
  formula: trackErrorByOneInSixty,
  domain: trackErrorByOneInSixtyDomain,
  inputs: {
    distanceOff: { symbol: 'y', meaning: 'distance off' },
    distanceAlong: { symbol: 'x', meaning: 'distance along the track' },
  },
  outputs: { result: { symbol: '\\delta', unit: 'deg', meaning: 'track error, approximate' } },
  citations: [{ source: 'trade-practice', locator: 'one-in-sixty rule', access: 'common-practice' }],
  homogeneous: true,
  checkValues: { nonePublished: 'taught throughout the trade; no worked example was seen' },
} satisfies FormulaRecord<typeof trackErrorByOneInSixty>;

export const driftByOneInSixtyRecord = {
  id: 'rules-of-thumb.drift-by-one-in-sixty',
  title: 'Drift by one in sixty',
  equation: '\\delta \\approx 60\\,\\frac{X}{V}',
  formula: driftByOneInSixty,
  domain: driftByOneInSixtyDomain,
  inputs: {
    crosswind: { symbol: 'X', meaning: 'crosswind component' },
    trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
  },
  outputs: { result: { symbol: '\\delta', unit: 'deg', meaning: 'drift, approximate' } },
  citations: [{ source: 'trade-practice', locator: 'one-in-sixty rule', access: 'common-practice' }],
  homogeneous: true,
  checkValues: { nonePublished: 'taught throughout the trade; no worked example was seen' },
} satisfies FormulaRecord<typeof driftByOneInSixty>;
