import {
  type Domain,
  type DomainError,
  demand,
  type GroundSpeed,
  inconsistent,
  type Knots,
  type Numbers,
  type TrueAirspeed,
} from '../units/index.ts';

/** Inputs of {@link groundSpeed}. */
export interface GroundSpeedInputs {
  readonly trueAirspeed: TrueAirspeed;
  /** Component of the wind along the runway or the track: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
}

export const groundSpeedDomain = {
  trueAirspeed: { unit: 'ktas', min: 0, max: 500, source: 'library range' },
  headwind: { unit: 'kt', min: -200, max: 200, source: 'library range' },
} satisfies Domain<GroundSpeedInputs>;

/**
 * Ground speed along a runway or a track that is flown without drift to speak of.
 *
 * V_G = V − H: V the true airspeed and H the headwind component, both in kt.
 *
 * @param x - `trueAirspeed` 0 kt to 500 kt, `headwind` −200 kt to 200 kt and below the true airspeed.
 * @returns The ground speed in kt, always above zero.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the headwind
 * leaves no ground speed.
 * @record wind.ground-speed
 *
 * @example
 * groundSpeed({ trueAirspeed: ktas(75), headwind: kt(-9) }) // => 84
 */
export function groundSpeed(x: GroundSpeedInputs): GroundSpeed {
  demand('trueAirspeed', x.trueAirspeed, groundSpeedDomain.trueAirspeed);
  demand('headwind', x.headwind, groundSpeedDomain.headwind);
  const { trueAirspeed: v_kt, headwind: headwind_kt }: Numbers<GroundSpeedInputs> = x;
  const groundSpeed_kt = v_kt - headwind_kt;
  if (groundSpeed_kt <= 0) throw noGroundSpeed(v_kt, headwind_kt);
  return groundSpeed_kt as GroundSpeed;
}

function noGroundSpeed(v_kt: number, headwind_kt: number): DomainError {
  const source = 'the headwind stays below the true airspeed';
  const { unit, min } = groundSpeedDomain.headwind;
  return inconsistent('headwind', headwind_kt, unit, min, v_kt, source);
}
