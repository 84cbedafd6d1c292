import {
  type Domain,
  demand,
  type FeetPerMinute,
  inconsistent,
  type Knots,
  type Numbers,
  type TrueAirspeed,
} from '../units/index.ts';

/** Inputs of {@link crossoverWind}. */
export interface CrossoverWindInputs {
  /** V_X, the speed of the best angle, as true airspeed. */
  readonly speedX: TrueAirspeed;
  /** Rate of climb at V_X. */
  readonly rateX: FeetPerMinute;
  /** V_Y, the speed of the best rate, as true airspeed; above V_X. */
  readonly speedY: TrueAirspeed;
  /** Rate of climb at V_Y; above that at V_X. */
  readonly rateY: FeetPerMinute;
}

export const crossoverWindDomain = {
  speedX: { unit: 'ktas', min: 10, max: 300, source: 'library range' },
  rateX: { unit: 'ftPerMin', min: 1, max: 6000, source: 'library range' },
  speedY: { unit: 'ktas', min: 15, max: 300, source: 'library range' },
  rateY: { unit: 'ftPerMin', min: 10, max: 6000, source: 'library range' },
} satisfies Domain<CrossoverWindInputs>;

/** Speeds or rates that differ by a smaller share than this are one and the same. */
const leastShare = 1e-9;

/**
 * Wind in which V_X and V_Y gain the same height on the way to an obstacle. In more headwind, and in less tailwind, V_X
 * gains more; in more tailwind V_Y does.
 *
 * w* = (R_Y V_X − R_X V_Y) / (R_Y − R_X): V_X and V_Y true airspeeds in kt, R_X and R_Y the rates of climb at them in
 * ft/min; from R_X / (V_X − w) = R_Y / (V_Y − w).
 *
 * @param x - `speedX` 10 KTAS to 300 KTAS, `rateX` 1 ft/min to 6000 ft/min, `speedY` 15 KTAS to 300 KTAS and above `speedX`,
 * `rateY` 10 ft/min to 6000 ft/min and above `rateX`.
 * @returns The wind component in kt: positive a headwind, negative a tailwind; it may be stronger than any wind flown in.
 * @throws {@link DomainError} when a parameter is not within its range, or V_Y is not the faster and the better climbing.
 * @record flight-path.crossover-wind
 *
 * @example
 * crossoverWind({ speedX: ktas(60), rateX: ftPerMin(600), speedY: ktas(75), rateY: ftPerMin(700) }) // ≈ -30 ± 1e-9
 */
export function crossoverWind(x: CrossoverWindInputs): Knots {
  demand('speedX', x.speedX, crossoverWindDomain.speedX);
  demand('rateX', x.rateX, crossoverWindDomain.rateX);
  demand('speedY', x.speedY, crossoverWindDomain.speedY);
  demand('rateY', x.rateY, crossoverWindDomain.rateY);
  const { speedX: vx_kt, rateX: rx_ftPerMin, speedY: vy_kt, rateY: ry_ftPerMin }: Numbers<CrossoverWindInputs> = x;
  if (!isAbove(vy_kt, vx_kt)) refuse('speedY', vy_kt, vx_kt, 'V_Y is faster than V_X');
  if (!isAbove(ry_ftPerMin, rx_ftPerMin)) refuse('rateY', ry_ftPerMin, rx_ftPerMin, 'V_Y climbs at the higher rate');
  return ((ry_ftPerMin * vx_kt - rx_ftPerMin * vy_kt) / (ry_ftPerMin - rx_ftPerMin)) as Knots;
}

function isAbove(greater: number, less: number): boolean {
  return greater - less > leastShare * less;
}

function refuse(parameter: 'speedY' | 'rateY', received: number, other: number, source: string): never {
  const { unit, max } = crossoverWindDomain[parameter];
  const min = other * (1 + leastShare);
  throw inconsistent(parameter, received, unit, min, max, source);
}
