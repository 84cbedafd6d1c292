import type { Citation } from '../sources/index.ts';
import { type FeetPerMinute, ftHeight, ftPerMin, type Height } from '../units/index.ts';

/** A greatest rate of descent on the approach, with where it stands. */
export interface ApproachDescentLimit {
  /** Counted downwards. */
  readonly rateOfDescent: FeetPerMinute;
  /** Holds below this height above the ground. */
  readonly below: Height;
  readonly citation: Citation;
}

/** The rate of descent that the Instrument Procedures Handbook says not to exceed near the ground. */
export const approachDescentLimit: ApproachDescentLimit = {
  rateOfDescent: ftPerMin(1000),
  below: ftHeight(1000),
  citation: { source: 'faa-iph', locator: 'ch. 4, rate of descent on the approach', access: 'read' },
};
