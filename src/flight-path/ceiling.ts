import {
  type DensityAltitude,
  type Domain,
  demand,
  type FeetPerMinute,
  inconsistent,
  type Numbers,
} from '../units/index.ts';

/** Inputs of {@link absoluteCeiling}. */
export interface AbsoluteCeilingInputs {
  /** Rate of climb at a density altitude of zero. */
  readonly rateAtZero: FeetPerMinute;
  /** Density altitude at which 100 ft/min are left. */
  readonly serviceCeiling: DensityAltitude;
}

/** Inputs of {@link serviceCeiling}. */
export interface ServiceCeilingInputs {
  /** Rate of climb at a density altitude of zero. */
  readonly rateAtZero: FeetPerMinute;
  /** Density altitude at which no rate of climb is left. */
  readonly absoluteCeiling: DensityAltitude;
}

/** Inputs of {@link rateAtDensityAltitude}. */
export interface RateAtDensityAltitudeInputs {
  /** Rate of climb at a density altitude of zero. */
  readonly rateAtZero: FeetPerMinute;
  /** Density altitude at which no rate of climb is left. */
  readonly absoluteCeiling: DensityAltitude;
  /** Density altitude climbed through, no higher than the absolute ceiling. */
  readonly densityAltitude: DensityAltitude;
}

export const absoluteCeilingDomain = {
  rateAtZero: { unit: 'ftPerMin', min: 101, max: 10000, source: 'library range, above 100 ft/min' },
  serviceCeiling: { unit: 'ftDA', min: 0, max: 60000, source: 'library range' },
} satisfies Domain<AbsoluteCeilingInputs>;

export const serviceCeilingDomain = {
  rateAtZero: { unit: 'ftPerMin', min: 100, max: 10000, source: 'library range, no less than 100 ft/min' },
  absoluteCeiling: { unit: 'ftDA', min: 100, max: 60000, source: 'library range' },
} satisfies Domain<ServiceCeilingInputs>;

export const rateAtDensityAltitudeDomain = {
  rateAtZero: { unit: 'ftPerMin', min: 1, max: 10000, source: 'library range' },
  absoluteCeiling: { unit: 'ftDA', min: 100, max: 60000, source: 'library range' },
  densityAltitude: { unit: 'ftDA', min: -5000, max: 60000, source: 'library range' },
} satisfies Domain<RateAtDensityAltitudeInputs>;

/** Rate of climb that is left at the service ceiling. */
const serviceRate_ftPerMin = 100;

/**
 * Absolute ceiling of an aeroplane whose rate of climb falls linearly with density altitude.
 *
 * H = H_s R₀ / (R₀ − 100): H_s the service ceiling, where 100 ft/min are left, in ft of density altitude, R₀ the rate of
 * climb at a density altitude of zero in ft/min. A model for one mass and configuration, no substitute for the manual.
 *
 * @param x - `rateAtZero` 101 ft/min to 10 000 ft/min, `serviceCeiling` 0 ft to 60 000 ft of density altitude.
 * @returns The absolute ceiling in ft of density altitude.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.absolute-ceiling
 *
 * @example
 * absoluteCeiling({ rateAtZero: ftPerMin(600), serviceCeiling: ftDA(12500) }) // ≈ 15000 ± 0.01
 */
export function absoluteCeiling(x: AbsoluteCeilingInputs): DensityAltitude {
  demand('rateAtZero', x.rateAtZero, absoluteCeilingDomain.rateAtZero);
  demand('serviceCeiling', x.serviceCeiling, absoluteCeilingDomain.serviceCeiling);
  const { rateAtZero: r0_ftPerMin, serviceCeiling: hs_ft }: Numbers<AbsoluteCeilingInputs> = x;
  return ((hs_ft * r0_ftPerMin) / (r0_ftPerMin - serviceRate_ftPerMin)) as DensityAltitude;
}

/**
 * Service ceiling of an aeroplane whose rate of climb falls linearly with density altitude.
 *
 * H_s = H (1 − 100 / R₀): H the absolute ceiling in ft of density altitude, R₀ the rate of climb at a density altitude of
 * zero in ft/min; at H_s 100 ft/min are left. A model for one mass and configuration, no substitute for the manual.
 *
 * @param x - `rateAtZero` 100 ft/min to 10 000 ft/min, `absoluteCeiling` 100 ft to 60 000 ft of density altitude.
 * @returns The service ceiling in ft of density altitude.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.service-ceiling
 *
 * @example
 * serviceCeiling({ rateAtZero: ftPerMin(600), absoluteCeiling: ftDA(15000) }) // ≈ 12500 ± 0.01
 */
export function serviceCeiling(x: ServiceCeilingInputs): DensityAltitude {
  demand('rateAtZero', x.rateAtZero, serviceCeilingDomain.rateAtZero);
  demand('absoluteCeiling', x.absoluteCeiling, serviceCeilingDomain.absoluteCeiling);
  const { rateAtZero: r0_ftPerMin, absoluteCeiling: h_ft }: Numbers<ServiceCeilingInputs> = x;
  return (h_ft * (1 - serviceRate_ftPerMin / r0_ftPerMin)) as DensityAltitude;
}

/**
 * Rate of climb at a density altitude, of an aeroplane whose rate of climb falls linearly to its absolute ceiling.
 *
 * R = R₀ (1 − h/H): R₀ the rate of climb at a density altitude of zero in ft/min, h the density altitude and H the absolute
 * ceiling, both in ft of density altitude. A model for one mass and configuration, no substitute for the manual.
 *
 * @param x - `rateAtZero` 1 ft/min to 10 000 ft/min, `absoluteCeiling` 100 ft to 60 000 ft and `densityAltitude` −5000 ft
 * to 60 000 ft of density altitude, no higher than the absolute ceiling.
 * @returns The rate of climb in ft/min; nil at the absolute ceiling.
 * @throws {@link DomainError} when a parameter is not within its range, or above the absolute ceiling.
 * @record flight-path.rate-at-density-altitude
 *
 * @example
 * rateAtDensityAltitude({ rateAtZero: ftPerMin(600), absoluteCeiling: ftDA(15000), densityAltitude: ftDA(5000) }) // ≈ 400 ± 1e-9
 */
export function rateAtDensityAltitude(x: RateAtDensityAltitudeInputs): FeetPerMinute {
  demand('rateAtZero', x.rateAtZero, rateAtDensityAltitudeDomain.rateAtZero);
  demand('absoluteCeiling', x.absoluteCeiling, rateAtDensityAltitudeDomain.absoluteCeiling);
  demand('densityAltitude', x.densityAltitude, rateAtDensityAltitudeDomain.densityAltitude);
  const { rateAtZero: r0_ftPerMin, absoluteCeiling: top_ft }: Numbers<RateAtDensityAltitudeInputs> = x;
  const { densityAltitude: h_ft }: Numbers<RateAtDensityAltitudeInputs> = x;
  if (h_ft > top_ft) refuseAboveCeiling(h_ft, top_ft);
  return (r0_ftPerMin * (1 - h_ft / top_ft)) as FeetPerMinute;
}

function refuseAboveCeiling(received: number, max: number): never {
  const { unit, min } = rateAtDensityAltitudeDomain.densityAltitude;
  const source = 'no climb above the absolute ceiling';
  throw inconsistent('densityAltitude', received, unit, min, max, source);
}
