import {
  type DensityAltitude,
  type Domain,
  demand,
  type Hectopascals,
  type KilogramsPerCubicMetre,
  type PressureAltitude,
} from '../units/index.ts';
import { tabulatedPressure } from './standard-atmosphere-bounds.ts';
import { altitudeOfDensity_m, altitudeOfPressure_m } from './standard-atmosphere-layers.ts';

/** Inputs of {@link pressureAltitudeFromPressure}. */
export interface PressureAltitudeFromPressureInputs {
  /** Static pressure. */
  readonly pressure: Hectopascals;
}

/** Inputs of {@link densityAltitudeFromDensity}. */
export interface DensityAltitudeFromDensityInputs {
  /** Density of the air, dry or humid. */
  readonly density: KilogramsPerCubicMetre;
}

export const pressureAltitudeFromPressureDomain = {
  pressure: tabulatedPressure,
} satisfies Domain<PressureAltitudeFromPressureInputs>;

// Just inside what the standard atmosphere has at 80 000 m and at −5 000 m.
export const densityAltitudeFromDensityDomain = {
  density: { unit: 'kgPerM3', min: 1.5701e-5, max: 1.93046, source: 'ICAO standard atmosphere, -5000 m to 80000 m' },
} satisfies Domain<DensityAltitudeFromDensityInputs>;

/**
 * Pressure altitude from a static pressure, in every layer of the standard atmosphere.
 *
 * H = Hb + (Tb/β) ((p/pb)^(−β R/g0) − 1), or H = Hb − (R Tb/g0) ln(p/pb) where β = 0: p the pressure in hPa, Hb, Tb and
 * pb those of the base of the layer in which that pressure lies, β the change of temperature in it; H in m, here in ft.
 * In the troposphere {@link pressureAltitudeFromQfe} is the same in fewer bytes.
 *
 * @param x - `pressure` 0.0088628 hPa to 1776.87 hPa.
 * @returns Pressure altitude in ft.
 * @throws {@link DomainError} when the pressure is not within its range.
 * @record atmosphere.pressure-altitude-from-pressure
 *
 * @example
 * pressureAltitudeFromPressure({ pressure: hPa(850) }) // ≈ 4781.17 ± 0.01
 * pressureAltitudeFromPressure({ pressure: hPa(100) }) // ≈ 53083.05 ± 0.01
 */
export function pressureAltitudeFromPressure(x: PressureAltitudeFromPressureInputs): PressureAltitude {
  demand('pressure', x.pressure, pressureAltitudeFromPressureDomain.pressure);
  return (altitudeOfPressure_m(x.pressure) / 0.3048) as PressureAltitude;
}

/**
 * Density altitude from a density, in every layer of the standard atmosphere.
 *
 * H = Hb + (Tb/β) ((ρ/ρb)^(−1/(g0/(β R) + 1)) − 1), or H = Hb − (R Tb/g0) ln(ρ/ρb) where β = 0: ρ the density in kg/m³,
 * Hb, Tb and ρb those of the base of the layer in which that density lies, β the change of temperature in it; H in m,
 * here in ft.
 *
 * @param x - `density` 1.5701e-5 kg/m³ to 1.93046 kg/m³.
 * @returns Density altitude in ft.
 * @throws {@link DomainError} when the density is not within its range.
 * @record atmosphere.density-altitude-from-density
 *
 * @example
 * densityAltitudeFromDensity({ density: kgPerM3(1) }) // ≈ 6772.62 ± 0.01
 */
export function densityAltitudeFromDensity(x: DensityAltitudeFromDensityInputs): DensityAltitude {
  demand('density', x.density, densityAltitudeFromDensityDomain.density);
  return (altitudeOfDensity_m(x.density) / 0.3048) as DensityAltitude;
}
