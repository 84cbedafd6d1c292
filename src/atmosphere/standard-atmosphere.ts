import {
  type Celsius,
  type Domain,
  demand,
  type GeometricAltitudeInMetres,
  type GeopotentialAltitudeInMetres,
  type Hectopascals,
  type KilogramsPerCubicMetre,
  type Knots,
  type MetresPerSecondSquared,
  type Numbers,
  type PascalSeconds,
  type PressureAltitude,
  type Ratio,
  type SquareMetresPerSecond,
} from '../units/index.ts';
import { geometricAltitude_m, geopotentialAltitude_m } from './geopotential-altitude.ts';
import { tabulatedGeometric, tabulatedGeopotential, tabulatedPressure } from './standard-atmosphere-bounds.ts';
import {
  betaS,
  g0_mPerS2,
  kappa,
  kt_mPerS,
  P0_hPa,
  R_JPerKgK,
  r_m,
  rho0_kgPerM3,
  S_K,
  T0_K,
  Ti_K,
} from './standard-atmosphere-constants.ts';
import { altitudeOfPressure_m, density, layerAt, pressureIn, temperatureIn } from './standard-atmosphere-layers.ts';

/** Inputs of {@link standardAtmosphere}. */
export interface StandardAtmosphereInputs {
  readonly geopotentialAltitude: GeopotentialAltitudeInMetres;
}

/** Inputs of {@link standardAtmosphereAtGeometricAltitude}. */
export interface StandardAtmosphereAtGeometricAltitudeInputs {
  readonly geometricAltitude: GeometricAltitudeInMetres;
}

/** Inputs of {@link standardAtmosphereAtPressureAltitude}. */
export interface StandardAtmosphereAtPressureAltitudeInputs {
  readonly pressureAltitude: PressureAltitude;
}

/** Inputs of {@link standardAtmosphereAtPressure}. */
export interface StandardAtmosphereAtPressureInputs {
  /** Static pressure. */
  readonly pressure: Hectopascals;
}

/** The air of the standard atmosphere at one altitude. */
export interface StandardAir {
  readonly temperature: Celsius;
  readonly pressure: Hectopascals;
  readonly density: KilogramsPerCubicMetre;
  readonly speedOfSound: Knots;
  readonly dynamicViscosity: PascalSeconds;
  readonly kinematicViscosity: SquareMetresPerSecond;
  /** Acceleration of free fall, which falls with the geometric altitude. */
  readonly freeFall: MetresPerSecondSquared;
  /** θ: temperature over that at mean sea level. */
  readonly temperatureRatio: Ratio;
  /** δ: pressure over that at mean sea level. */
  readonly pressureRatio: Ratio;
  /** σ: density over 1.225 kg/m³; at mean sea level 1.000000015, because the printed gas constant is rounded. */
  readonly densityRatio: Ratio;
  /** √σ: equivalent over true airspeed. */
  readonly rootOfDensityRatio: Ratio;
  /** Dynamic viscosity over that at mean sea level. */
  readonly viscosityRatio: Ratio;
}

export const standardAtmosphereDomain = {
  geopotentialAltitude: tabulatedGeopotential,
} satisfies Domain<StandardAtmosphereInputs>;

export const standardAtmosphereAtGeometricAltitudeDomain = {
  geometricAltitude: tabulatedGeometric,
} satisfies Domain<StandardAtmosphereAtGeometricAltitudeInputs>;

export const standardAtmosphereAtPressureAltitudeDomain = {
  pressureAltitude: {
    unit: 'ftPA',
    min: -16404,
    max: 262467,
    source: 'whole feet within -5000 m to 80000 m, ICAO Doc 7488/3',
  },
} satisfies Domain<StandardAtmosphereAtPressureAltitudeInputs>;

export const standardAtmosphereAtPressureDomain = {
  pressure: tabulatedPressure,
} satisfies Domain<StandardAtmosphereAtPressureInputs>;

/**
 * The ICAO standard atmosphere at a geopotential altitude, in all its layers.
 *
 * T = Tb + β (H − Hb); p = pb (1 + β (H − Hb)/Tb)^(−g0/(β R)), or p = pb exp(−g0 (H − Hb)/(R Tb)) where β = 0;
 * ρ = p/(R T); a = √(κ R T); μ = βs T^(3/2)/(T + S); ν = μ/ρ: H the geopotential altitude in m, Hb, Tb and pb those of
 * the base of its layer, R = 287.05287 J/(kg K), g0 = 9.80665 m/s², κ = 1.4, βs = 1.458e-6 kg/(m s K^½), S = 110.4 K.
 * Ratios are to 288.15 K, 1013.25 hPa and 1.225 kg/m³.
 *
 * @param x - `geopotentialAltitude` −5000 m to 80 000 m.
 * @returns Temperature in °C, pressure in hPa, density, speed of sound in kt, viscosities, free fall and ratios.
 * @throws {@link DomainError} when the altitude is not within its range.
 * @record atmosphere.standard-atmosphere
 *
 * @example
 * const tropopause = standardAtmosphere({ geopotentialAltitude: mGeopotential(11000) })
 * tropopause.temperature // ≈ -56.5 ± 1e-9
 * tropopause.pressure // ≈ 226.3204 ± 0.0001
 * tropopause.density // ≈ 0.3639176 ± 0.0000001
 * standardAtmosphere({ geopotentialAltitude: mGeopotential(80001) }) // throws geopotentialAltitude: 80001
 */
export function standardAtmosphere(x: StandardAtmosphereInputs): StandardAir {
  demand('geopotentialAltitude', x.geopotentialAltitude, standardAtmosphereDomain.geopotentialAltitude);
  return standardAirAt(x.geopotentialAltitude);
}

/**
 * The ICAO standard atmosphere at a geometric altitude, the metres above mean sea level.
 *
 * The formulas of {@link standardAtmosphere} at H = r h/(r + h): h the geometric altitude in m, r = 6 356 766 m.
 *
 * @param x - `geometricAltitude` −5000 m to 81 020 m.
 * @returns As {@link standardAtmosphere}.
 * @throws {@link DomainError} when the altitude is not within its range.
 * @record atmosphere.standard-atmosphere-at-geometric-altitude
 *
 * @example
 * standardAtmosphereAtGeometricAltitude({ geometricAltitude: mGeometric(10000) }).pressure // ≈ 264.999 ± 0.001
 */
export function standardAtmosphereAtGeometricAltitude(x: StandardAtmosphereAtGeometricAltitudeInputs): StandardAir {
  const domain = standardAtmosphereAtGeometricAltitudeDomain;
  demand('geometricAltitude', x.geometricAltitude, domain.geometricAltitude);
  return standardAirAt(geopotentialAltitude_m(x.geometricAltitude));
}

/**
 * The ICAO standard atmosphere at a pressure altitude, which is the geopotential altitude at which it has a pressure.
 *
 * The formulas of {@link standardAtmosphere} at H = 0.3048 PA: PA the pressure altitude in ft. In real air only the
 * pressure is that of the standard atmosphere there.
 *
 * @param x - `pressureAltitude` −16 404 ft to 262 467 ft.
 * @returns As {@link standardAtmosphere}.
 * @throws {@link DomainError} when the pressure altitude is not within its range.
 * @record atmosphere.standard-atmosphere-at-pressure-altitude
 *
 * @example
 * standardAtmosphereAtPressureAltitude({ pressureAltitude: ftPA(5000) }).densityRatio // ≈ 0.861670 ± 0.000001
 */
export function standardAtmosphereAtPressureAltitude(x: StandardAtmosphereAtPressureAltitudeInputs): StandardAir {
  demand('pressureAltitude', x.pressureAltitude, standardAtmosphereAtPressureAltitudeDomain.pressureAltitude);
  const { pressureAltitude: altitude_ft }: Numbers<StandardAtmosphereAtPressureAltitudeInputs> = x;
  return standardAirAt(altitude_ft * 0.3048);
}

/**
 * The ICAO standard atmosphere where it has a pressure: the temperature, density and ratios of a pressure level.
 *
 * The formulas of {@link standardAtmosphere} at the altitude of {@link pressureAltitudeFromPressure}.
 *
 * @param x - `pressure` 0.0088628 hPa to 1776.87 hPa.
 * @returns As {@link standardAtmosphere}.
 * @throws {@link DomainError} when the pressure is not within its range.
 * @record atmosphere.standard-atmosphere-at-pressure
 *
 * @example
 * standardAtmosphereAtPressure({ pressure: hPa(850) }).temperature // ≈ 5.5276 ± 0.0001
 */
export function standardAtmosphereAtPressure(x: StandardAtmosphereAtPressureInputs): StandardAir {
  demand('pressure', x.pressure, standardAtmosphereAtPressureDomain.pressure);
  return standardAirAt(altitudeOfPressure_m(x.pressure));
}

function standardAirAt(H_m: number): StandardAir {
  const layer = layerAt(H_m);
  const T_K = temperatureIn(layer, H_m);
  const p_hPa = pressureIn(layer, H_m);
  const rho_kgPerM3 = density(p_hPa, T_K);
  const mu_PaS = viscosity_PaS(T_K);
  const sigma = rho_kgPerM3 / rho0_kgPerM3;
  const air: Numbers<StandardAir> = {
    temperature: T_K - Ti_K,
    pressure: p_hPa,
    density: rho_kgPerM3,
    speedOfSound: Math.sqrt(kappa * R_JPerKgK * T_K) / kt_mPerS,
    dynamicViscosity: mu_PaS,
    kinematicViscosity: mu_PaS / rho_kgPerM3,
    freeFall: g0_mPerS2 * (r_m / (r_m + geometricAltitude_m(H_m))) ** 2,
    temperatureRatio: T_K / T0_K,
    pressureRatio: p_hPa / P0_hPa,
    densityRatio: sigma,
    rootOfDensityRatio: Math.sqrt(sigma),
    viscosityRatio: mu_PaS / mu0_PaS,
  };
  return air as StandardAir;
}

/** What Sutherland's law gives at mean sea level, written out. */
export const mu0_PaS = 0.00001789380278077583;

/** Sutherland's law. */
function viscosity_PaS(T_K: number): number {
  return (betaS * T_K ** 1.5) / (T_K + S_K);
}
