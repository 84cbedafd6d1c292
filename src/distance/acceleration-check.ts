import {
  type Domain,
  demand,
  type IndicatedAirspeed,
  inconsistent,
  type Knots,
  type Metres,
  type Numbers,
} from '../units/index.ts';

/** Inputs of {@link accelerationCheckSpeed}. */
export interface AccelerationCheckSpeedInputs {
  /** Speed at which the aeroplane lifts off. */
  readonly liftOffSpeed: IndicatedAirspeed;
  /** Mean wind component along the runway: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
  /** Distance rolled to the mark. */
  readonly distance: Metres;
  /** Longest ground roll that is still acceptable. */
  readonly roll: Metres;
}

export const accelerationCheckSpeedDomain = {
  liftOffSpeed: { unit: 'kias', min: 20, max: 200, source: 'library range' },
  headwind: { unit: 'kt', min: -50, max: 50, source: 'library range' },
  distance: { unit: 'm', min: 0, max: 20000, source: 'library range' },
  roll: { unit: 'm', min: 1, max: 20000, source: 'library range' },
} satisfies Domain<AccelerationCheckSpeedInputs>;

/**
 * Indicated airspeed due at a mark beside the runway for the longest acceptable ground roll; not rounded.
 *
 * V = w + (V_LOF − w) √(x / R), but never less than 0.70 V_LOF: V_LOF the lift-off speed in KIAS, w the headwind in
 * kt, x the distance rolled and R the longest acceptable roll in m. Acceleration is taken as uniform, position error
 * as nil and indicated as true airspeed. Less at the mark means stop; as much proves nothing.
 *
 * @param x - `liftOffSpeed` 20 KIAS to 200 KIAS, `headwind` −50 kt to 50 kt and below the lift-off speed, `distance`
 * 0 m to 20 000 m, `roll` 1 m to 20 000 m and no shorter than the distance.
 * @returns The speed due in KIAS.
 * @throws {@link DomainError} when a parameter is not within its range or at odds with another.
 * @record distance.acceleration-check-speed
 *
 * @example
 * accelerationCheckSpeed({ liftOffSpeed: kias(52), headwind: kt(6), distance: m(200), roll: m(400) }) // ≈ 38.53 ± 0.01
 */
export function accelerationCheckSpeed(x: AccelerationCheckSpeedInputs): IndicatedAirspeed {
  demand('liftOffSpeed', x.liftOffSpeed, accelerationCheckSpeedDomain.liftOffSpeed);
  demand('headwind', x.headwind, accelerationCheckSpeedDomain.headwind);
  demand('distance', x.distance, accelerationCheckSpeedDomain.distance);
  demand('roll', x.roll, accelerationCheckSpeedDomain.roll);
  const {
    liftOffSpeed: vlof_kt,
    headwind: w_kt,
    distance: x_m,
    roll: roll_m,
  }: Numbers<AccelerationCheckSpeedInputs> = x;
  if (x_m > roll_m) refuseMarkAfterLiftOff(x_m, roll_m);
  if (w_kt >= vlof_kt) refuseWindAboveLiftOff(w_kt, vlof_kt);
  const v_kt = w_kt + (vlof_kt - w_kt) * Math.sqrt(x_m / roll_m);
  return Math.max(0.7 * vlof_kt, v_kt) as IndicatedAirspeed;
}

function refuseMarkAfterLiftOff(received: number, max: number): never {
  const source = 'the mark lies before lift-off';
  throw inconsistent('distance', received, 'm', 0, max, source);
}

function refuseWindAboveLiftOff(received: number, max: number): never {
  const { unit, min } = accelerationCheckSpeedDomain.headwind;
  const source = 'the headwind is less than the lift-off speed';
  throw inconsistent('headwind', received, unit, min, max, source);
}
