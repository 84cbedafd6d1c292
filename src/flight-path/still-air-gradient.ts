import {
  type Domain,
  demand,
  type FeetPerMinute,
  inconsistent,
  type Numbers,
  type Ratio,
  type TrueAirspeed,
} from '../units/index.ts';

/** Inputs of {@link stillAirGradient}. */
export interface StillAirGradientInputs {
  /** Rate of climb. */
  readonly rateOfClimb: FeetPerMinute;
  /** True airspeed: along the path, not along the ground. */
  readonly trueAirspeed: TrueAirspeed;
}

export const stillAirGradientDomain = {
  rateOfClimb: { unit: 'ftPerMin', min: -2000, max: 6000, source: 'library range' },
  trueAirspeed: { unit: 'ktas', min: 25, max: 300, source: 'library range' },
} satisfies Domain<StillAirGradientInputs>;

/** A path steeper than this, as the sine of its angle, is no climb of a light aeroplane. */
const steepest = 0.9;

/**
 * Still-air gradient of a climb: height gained for each length travelled level through the air. Over the ground the
 * wind changes the gradient and not the rate of climb: see `climbGradient`.
 *
 * γ = tan(arcsin(ROC / V)), both in m/s: ROC the rate of climb given in ft/min (1 ft/min = 0.3048/60 m/s), V the true
 * airspeed, along the path, given in kt (1 kt = 1852/3600 m/s). The shorter ROC / V is less by under 1 % up to 8°.
 *
 * @param x - `rateOfClimb` −2000 ft/min to 6000 ft/min and at most 0.9 of the airspeed, `trueAirspeed` 25 kt to 300 kt.
 * @returns The still-air gradient as a ratio; negative in a descent.
 * @throws {@link DomainError} when a parameter is not within its range, or the rate of climb nears the airspeed.
 * @record flight-path.still-air-gradient
 *
 * @example
 * stillAirGradient({ rateOfClimb: ftPerMin(700), trueAirspeed: ktas(70) }) // ≈ 0.09923 ± 0.00001
 */
export function stillAirGradient(x: StillAirGradientInputs): Ratio {
  demand('rateOfClimb', x.rateOfClimb, stillAirGradientDomain.rateOfClimb);
  demand('trueAirspeed', x.trueAirspeed, stillAirGradientDomain.trueAirspeed);
  const { rateOfClimb: roc_ftPerMin, trueAirspeed: v_kt }: Numbers<StillAirGradientInputs> = x;
  const roc_mps = (roc_ftPerMin * 0.3048) / 60;
  const v_mps = (v_kt * 1852) / 3600;
  const sine = roc_mps / v_mps;
  if (Math.abs(sine) > steepest) refuseSteepPath(roc_ftPerMin, v_mps);
  return Math.tan(Math.asin(sine)) as Ratio;
}

function refuseSteepPath(received: number, v_mps: number): never {
  const { unit } = stillAirGradientDomain.rateOfClimb;
  const max = (steepest * v_mps * 60) / 0.3048;
  const source = 'the rate of climb stays well below the airspeed';
  throw inconsistent('rateOfClimb', received, unit, -max, max, source);
}
