import type { FactorKind, FactorOrigin } from '../../distance/index.ts';
import type { Reason } from '../result/reason.ts';
import type { Recorder } from './step.ts';

/** One tread of the stairs in metres, from the manual's figure up to the distance required. */
export interface Stair {
  readonly step:
    | 'manual'
    | 'technique'
    | 'mass'
    | 'elevation'
    | 'temperature'
    | 'wind'
    | 'surface'
    | 'slope'
    | 'speed addition'
    | 'excess height'
    | 'safety factor';
  readonly factor: number;
  readonly total_m: number;
}

/** A distance corrected for the day, with the ground roll in it, before any safety factor. */
export interface Chain {
  /** For whoever reads the working. Where something is missing: the treads before the first that has no figure. */
  readonly stairs: readonly Stair[];
  readonly distance_m: number;
  readonly roll_m: number;
  /** In calm air on a level, dry, hard runway: what first principles take for the manual's. */
  readonly calmRoll_m: number;
  readonly calmDistance_m: number;
  /** After the wind alone. */
  readonly windRoll_m: number;
  readonly kind: FactorKind | 'no bound';
  readonly used: readonly FactorOrigin[];
  /** Why there is no figure; empty where there is one. */
  readonly missing: readonly Reason[];
}

/**
 * The chain with one more tread at its end. Field by field, because the engine makes a new layout for each spread of an
 * object whose fields are decimal numbers.
 */
export function lengthened(
  r: Recorder,
  { stairs, distance_m: before_m, calmRoll_m, calmDistance_m, windRoll_m, kind, used, missing }: Chain,
  step: Stair['step'],
  { factor, distance_m, roll_m }: { factor?: number } & Pick<Chain, 'distance_m' | 'roll_m'>,
): Chain {
  return {
    stairs: r.explains ? [...stairs, { step, factor: factor ?? distance_m / before_m, total_m: distance_m }] : stairs,
    distance_m,
    roll_m,
    calmRoll_m,
    calmDistance_m,
    windRoll_m,
    kind,
    used,
    missing,
  };
}

/** The chain for which something is not known after all. */
export function withoutFigure(chain: Chain, reason: Reason): Chain {
  return { ...chain, missing: [reason] };
}
