import { type CalibratedAirspeed, type Domain, demand, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link stallSpeedAtLoadFactor}. */
export interface StallSpeedAtLoadFactorInputs {
  /** Stall speed in unaccelerated flight, at the mass and in the configuration flown. */
  readonly stallSpeed: CalibratedAirspeed;
  /** Load factor: lift over weight. */
  readonly loadFactor: Ratio;
}

/** Inputs of {@link loadFactorAtStall}. */
export interface LoadFactorAtStallInputs {
  /** Speed flown. */
  readonly speed: CalibratedAirspeed;
  /** Stall speed in unaccelerated flight, at the mass and in the configuration flown. */
  readonly stallSpeed: CalibratedAirspeed;
}

const stallSpeedBound = { unit: 'kcas', min: 10, max: 150, source: 'library range' } as const;

export const stallSpeedAtLoadFactorDomain = {
  stallSpeed: stallSpeedBound,
  loadFactor: { unit: 'ratio', min: 0, max: 12, source: 'library range' },
} satisfies Domain<StallSpeedAtLoadFactorInputs>;

export const loadFactorAtStallDomain = {
  speed: { unit: 'kcas', min: 0, max: 350, source: 'library range' },
  stallSpeed: stallSpeedBound,
} satisfies Domain<LoadFactorAtStallInputs>;

/**
 * Stall speed under a load factor, in a turn or a pull-out. At the limit load factor it is the manoeuvring speed V_A of
 * the mass.
 *
 * V = V_S √n: V_S the calibrated stall speed in kt at a load factor of 1, n the load factor.
 *
 * @param x - `stallSpeed` 10 kt to 150 kt, `loadFactor` 0 to 12.
 * @returns Calibrated airspeed in kt.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record airspeed.stall-speed-at-load-factor
 *
 * @example
 * stallSpeedAtLoadFactor({ stallSpeed: kcas(50), loadFactor: ratio(4) }) // => 100
 */
export function stallSpeedAtLoadFactor(x: StallSpeedAtLoadFactorInputs): CalibratedAirspeed {
  demand('stallSpeed', x.stallSpeed, stallSpeedAtLoadFactorDomain.stallSpeed);
  demand('loadFactor', x.loadFactor, stallSpeedAtLoadFactorDomain.loadFactor);
  const { stallSpeed: vs_kt, loadFactor: n }: Numbers<StallSpeedAtLoadFactorInputs> = x;
  return (vs_kt * Math.sqrt(n)) as CalibratedAirspeed;
}

/**
 * Load factor at which the wing stalls at a speed: the most that it can be made to carry there.
 *
 * n = (V/V_S)²: V the speed flown and V_S the stall speed at a load factor of 1, both calibrated in kt.
 *
 * @param x - `speed` 0 kt to 350 kt, `stallSpeed` 10 kt to 150 kt.
 * @returns Load factor as a ratio.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record airspeed.load-factor-at-stall
 *
 * @example
 * loadFactorAtStall({ speed: kcas(102), stallSpeed: kcas(60) }) // ≈ 2.89 ± 1e-9
 */
export function loadFactorAtStall(x: LoadFactorAtStallInputs): Ratio {
  demand('speed', x.speed, loadFactorAtStallDomain.speed);
  demand('stallSpeed', x.stallSpeed, loadFactorAtStallDomain.stallSpeed);
  const { speed: v_kt, stallSpeed: vs_kt }: Numbers<LoadFactorAtStallInputs> = x;
  return ((v_kt / vs_kt) ** 2) as Ratio;
}
