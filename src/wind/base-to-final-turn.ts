import {
  type Degrees,
  type Domain,
  demand,
  demandWord,
  inconsistent,
  type Knots,
  type Metres,
  type Numbers,
  type Seconds,
  type TrueAirspeed,
} from '../units/index.ts';
import { type Circuit, circuits } from './circuit-leg.ts';
import { bankFor, radiusOf_m, rateOf_degPerS } from './turn.ts';
import { crosswind, headwind, startDistance, trueAirspeed } from './turn-in-wind-bounds.ts';

/** The speed, the wind and the side of a base-to-final turn. */
interface TurnInWindInputs {
  /** True airspeed, held through the turn. */
  readonly trueAirspeed: TrueAirspeed;
  /** Wind along the runway in use: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
  /** Wind across the runway in use: positive from the right, negative from the left. */
  readonly crosswind: Knots;
  readonly circuit: Circuit;
}

/** Inputs of {@link baseToFinalTurn}. */
export interface BaseToFinalTurnInputs extends TurnInWindInputs {
  /** Angle of bank, held through the turn. */
  readonly bank: Degrees;
}

/** Inputs of {@link baseToFinalBank}. */
export interface BaseToFinalBankInputs extends TurnInWindInputs {
  /** Distance from the extended centreline at which the turn is begun; {@link turnRadius} where it is begun as for calm. */
  readonly startDistance: Metres;
}

/** A base-to-final turn at a constant bank, from the track of the base leg to the centreline's. */
export interface BaseToFinalTurn {
  /** Angle through which the heading turns: more than 90° where the wind is from behind on the base leg. */
  readonly headingChange: Degrees;
  readonly time: Seconds;
  /** Distance across the centreline that the turn takes: begun here, it ends on the centreline. */
  readonly lateralDistance: Metres;
  /** Distance along the runway direction that the turn takes. */
  readonly distanceAlongRunway: Metres;
  /** What the turn would take in calm, across and along alike: its radius. */
  readonly distanceInCalm: Metres;
  /** How far beyond the centreline the turn ends when it is begun as for calm; negative where it ends short of it. */
  readonly overshoot: Metres;
}

export const baseToFinalTurnDomain = {
  trueAirspeed,
  headwind,
  crosswind,
  bank: { unit: 'deg', min: 1, max: 75, source: 'library range' },
} satisfies Domain<BaseToFinalTurnInputs>;

export const baseToFinalBankDomain = {
  trueAirspeed,
  headwind,
  crosswind,
  startDistance,
} satisfies Domain<BaseToFinalBankInputs>;

/**
 * Base-to-final turn in the wind at a constant bank: what it takes across and along the runway, and by how much it ends
 * beyond the centreline when it is begun as for calm. A wind from behind on the base leg makes both greater.
 *
 * With R = V² / (g tan φ), r_x = −H/V and r_y the wind from behind on the base leg over V (−X/V in a circuit to the left,
 * X/V to the right): heading change Δ = π/2 + arcsin r_x + arcsin r_y, time Δ R/V, distance across
 * d_y = R (√(1 − r_y²) + r_x + r_y Δ) and along d_x = R (√(1 − r_x²) + r_y + r_x Δ), overshoot d_y − R. V is the true
 * airspeed given in kt, φ the bank, H the headwind and X the crosswind from the right on the runway in kt. The drift is
 * held off, so that base leg and final are straight tracks at a right angle. Rolling in is not in it: it takes the ground
 * speed on the base leg times its time besides.
 *
 * @param x - `trueAirspeed` 20 KTAS to 300 KTAS, `bank` 1° to 75°, `headwind` and `crosswind` −200 kt to 200 kt, `circuit`
 * `'left'` or `'right'`.
 * @returns `headingChange` in degrees, `time` in s, and in m `lateralDistance`, `distanceAlongRunway`, `distanceInCalm`
 * and `overshoot`, which is negative where the turn ends short of the centreline.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the wind exceeds
 * the true airspeed across one of the tracks or leaves no ground speed on it.
 * @record wind.base-to-final-turn
 *
 * @example
 * baseToFinalTurn({ trueAirspeed: ktas(65), bank: degrees(20), headwind: kt(5), crosswind: kt(-12), circuit: 'left' }).overshoot // ≈ 67.65 ± 0.01
 * baseToFinalTurn({ trueAirspeed: ktas(65), bank: degrees(20), headwind: kt(0), crosswind: kt(0), circuit: 'left' }).overshoot // ≈ 0 ± 1e-9
 */
export function baseToFinalTurn(x: BaseToFinalTurnInputs): BaseToFinalTurn {
  demand('bank', x.bank, baseToFinalTurnDomain.bank);
  const { rx, ry, change_rad, acrossInRadii } = turnInWind(x);
  const { trueAirspeed: v_kt, bank: bank_deg }: Numbers<BaseToFinalTurnInputs> = x;
  const radius_m = radiusOf_m(v_kt, bank_deg);
  const headingChange = (change_rad * 180) / Math.PI;
  const time = headingChange / rateOf_degPerS(v_kt, bank_deg);
  const lateralDistance = radius_m * acrossInRadii;
  const distanceAlongRunway = radius_m * (Math.sqrt(1 - rx ** 2) + ry + rx * change_rad);
  const overshoot = lateralDistance - radius_m;
  return {
    headingChange,
    time,
    lateralDistance,
    distanceAlongRunway,
    distanceInCalm: radius_m,
    overshoot,
  } as BaseToFinalTurn;
}

/**
 * Angle of bank that rolls out of the base-to-final turn on the centreline, from where the turn is begun.
 *
 * tan φ = V² / (g d) · (√(1 − r_y²) + r_x + r_y Δ): d the distance from the extended centreline at which the turn is begun,
 * in m, the others as in {@link baseToFinalTurn}.
 *
 * @param x - `trueAirspeed` 20 KTAS to 300 KTAS, `startDistance` 1 m to 20 000 m, `headwind` and `crosswind` −200 kt to
 * 200 kt, `circuit` `'left'` or `'right'`.
 * @returns The angle of bank in degrees, below 90°; {@link baseToFinalVerdict} compares it with a limit.
 * @throws {@link DomainError} as {@link baseToFinalTurn}.
 * @record wind.base-to-final-bank
 *
 * @example
 * const startDistance = turnRadius({ trueAirspeed: ktas(65), bank: degrees(20) })
 * baseToFinalBank({ trueAirspeed: ktas(65), startDistance, headwind: kt(5), crosswind: kt(-12), circuit: 'left' }) // ≈ 23.87 ± 0.01
 */
export function baseToFinalBank(x: BaseToFinalBankInputs): Degrees {
  demand('startDistance', x.startDistance, startDistance);
  const { acrossInRadii } = turnInWind(x);
  const { trueAirspeed: v_kt, startDistance: start_m }: Numbers<BaseToFinalBankInputs> = x;
  return bankFor(v_kt, start_m / acrossInRadii) as Degrees;
}

/** The turn without its size: the wind as shares of the airspeed, the change of heading, and the distance across in radii. */
function turnInWind(x: TurnInWindInputs) {
  demand('trueAirspeed', x.trueAirspeed, trueAirspeed);
  demand('headwind', x.headwind, headwind);
  demand('crosswind', x.crosswind, crosswind);
  demandWord('circuit', x.circuit, circuits, 'the side of the turns');
  demandTracks(x);
  const { trueAirspeed: v_kt, headwind: headwind_kt, crosswind: crosswind_kt }: Numbers<TurnInWindInputs> = x;
  const tailwindOnBase_kt = x.circuit === 'left' ? -crosswind_kt : crosswind_kt;
  const rx = -headwind_kt / v_kt;
  const ry = tailwindOnBase_kt / v_kt;
  const change_rad = Math.PI / 2 + Math.asin(rx) + Math.asin(ry);
  return { rx, ry, change_rad, acrossInRadii: Math.sqrt(1 - ry ** 2) + rx + ry * change_rad };
}

/** Refuses a wind in which one of the two tracks cannot be kept, or is not made good forwards. */
function demandTracks(x: Numbers<TurnInWindInputs>): void {
  const { trueAirspeed: v_kt, headwind: headwind_kt, crosswind: crosswind_kt, circuit } = x;
  // A wind that is weaker than the airspeed leaves a ground speed on every track.
  if (headwind_kt ** 2 + crosswind_kt ** 2 < v_kt ** 2) return;
  if (Math.abs(crosswind_kt) >= v_kt) refuseWind('crosswind', crosswind_kt, -v_kt, v_kt);
  const mostOnFinal_kt = Math.sqrt(v_kt ** 2 - crosswind_kt ** 2);
  if (headwind_kt <= -v_kt || headwind_kt >= mostOnFinal_kt) refuseWind('headwind', headwind_kt, -v_kt, mostOnFinal_kt);
  const mostOnBase_kt = Math.sqrt(v_kt ** 2 - headwind_kt ** 2);
  if (circuit === 'left' && crosswind_kt >= mostOnBase_kt) refuseWind('crosswind', crosswind_kt, -v_kt, mostOnBase_kt);
  if (circuit === 'right' && crosswind_kt <= -mostOnBase_kt)
    refuseWind('crosswind', crosswind_kt, -mostOnBase_kt, v_kt);
}

function refuseWind(parameter: 'headwind' | 'crosswind', received: number, min: number, max: number): never {
  const source = 'the wind leaves a ground speed on base leg and final';
  throw inconsistent(parameter, received, 'kt', min, max, source);
}
