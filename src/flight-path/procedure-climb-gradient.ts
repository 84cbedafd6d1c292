import {
  type Domain,
  demand,
  type Elevation,
  type FeetPerNauticalMile,
  type NauticalMiles,
  type Numbers,
} from '../units/index.ts';

/** Inputs of {@link procedureClimbGradientCivil} and {@link procedureClimbGradientMilitary}. */
export interface ProcedureClimbGradientInputs {
  /** Elevation of the top of the obstacle above mean sea level. */
  readonly obstacleTop: Elevation;
  /** Elevation above mean sea level at which the climb starts; that of the departure end of the runway is the careful choice. */
  readonly startElevation: Elevation;
  /** Distance of the obstacle from the departure end of the runway. */
  readonly distance: NauticalMiles;
}

/** Inputs of {@link altitudeRestrictionGradient}. */
export interface AltitudeRestrictionGradientInputs {
  /** Altitude above mean sea level that must be reached. */
  readonly altitude: Elevation;
  /** Elevation above mean sea level at which the climb starts. */
  readonly startElevation: Elevation;
  /** Distance from the departure end of the runway by which it must be reached. */
  readonly distance: NauticalMiles;
}

const distanceBound = { unit: 'NM', min: 0.01, max: 100, source: 'library range' } as const;

export const procedureClimbGradientDomain = {
  obstacleTop: { unit: 'ftElevation', min: -2000, max: 30000, source: 'library range' },
  startElevation: { unit: 'ftElevation', min: -2000, max: 15000, source: 'library range' },
  distance: distanceBound,
} satisfies Domain<ProcedureClimbGradientInputs>;

export const altitudeRestrictionGradientDomain = {
  altitude: { unit: 'ftElevation', min: -2000, max: 50000, source: 'library range' },
  startElevation: { unit: 'ftElevation', min: -2000, max: 15000, source: 'library range' },
  distance: distanceBound,
} satisfies Domain<AltitudeRestrictionGradientInputs>;

/**
 * Climb gradient that a civil instrument departure of the United States asks for over an obstacle, unrounded.
 *
 * It belongs to the design of instrument procedures and never enters an obstacle criterion of a light aeroplane: it says
 * what a procedure asks of the climb, not what an aeroplane clears. The obstacle takes 76 % of the gradient; the other
 * 24 % is the obstacle clearance, which so grows with the gradient. The military form differs; the two are never mixed.
 *
 * CG = (O − E) / (0.76 D): O the top of the obstacle and E the start of the climb, both in ft above mean sea level, D
 * the distance from the departure end of the runway in NM.
 *
 * @param x - `obstacleTop` −2000 ft to 30 000 ft, `startElevation` −2000 ft to 15 000 ft, `distance` 0.01 NM to 100 NM.
 * @returns The gradient in ft/NM; where it is not above 200 ft/NM, the standard gradient of 200 ft/NM stands instead.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.procedure-climb-gradient-civil
 *
 * @example
 * procedureClimbGradientCivil({ obstacleTop: ftElevation(2100), startElevation: ftElevation(1100), distance: NM(4) }) // ≈ 328.95 ± 0.01
 */
export function procedureClimbGradientCivil(x: ProcedureClimbGradientInputs): FeetPerNauticalMile {
  demandAll(x);
  const { obstacleTop: o_ft, startElevation: e_ft, distance: d_NM }: Numbers<ProcedureClimbGradientInputs> = x;
  return ((o_ft - e_ft) / (0.76 * d_NM)) as FeetPerNauticalMile;
}

/**
 * Climb gradient that a military instrument departure of the United States asks for over an obstacle, unrounded.
 *
 * It belongs to the design of instrument procedures and never enters an obstacle criterion of a light aeroplane. The
 * obstacle clearance is fixed at 48 ft for each nautical mile; the civil form differs; the two are never mixed.
 *
 * CG = (48 D + O − E) / D: O the top of the obstacle and E the start of the climb, both in ft above mean sea level, D
 * the distance from the departure end of the runway in NM.
 *
 * @param x - `obstacleTop` −2000 ft to 30 000 ft, `startElevation` −2000 ft to 15 000 ft, `distance` 0.01 NM to 100 NM.
 * @returns The gradient in ft/NM; where it is not above 200 ft/NM, the standard gradient of 200 ft/NM stands instead.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.procedure-climb-gradient-military
 *
 * @example
 * procedureClimbGradientMilitary({ obstacleTop: ftElevation(2100), startElevation: ftElevation(1100), distance: NM(4) }) // ≈ 298 ± 1e-9
 */
export function procedureClimbGradientMilitary(x: ProcedureClimbGradientInputs): FeetPerNauticalMile {
  demandAll(x);
  const { obstacleTop: o_ft, startElevation: e_ft, distance: d_NM }: Numbers<ProcedureClimbGradientInputs> = x;
  return ((48 * d_NM + o_ft - e_ft) / d_NM) as FeetPerNauticalMile;
}

/**
 * Climb gradient that reaches an altitude restriction of an instrument departure of the United States, unrounded.
 *
 * It belongs to the design of instrument procedures and never enters an obstacle criterion of a light aeroplane: no
 * clearance over any obstacle is in it.
 *
 * CG = (A − E) / D: A the altitude and E the start of the climb, both in ft above mean sea level, D the distance from
 * the departure end of the runway in NM.
 *
 * @param x - `altitude` −2000 ft to 50 000 ft, `startElevation` −2000 ft to 15 000 ft, `distance` 0.01 NM to 100 NM.
 * @returns The gradient in ft/NM; negative when the altitude is lower than the start.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record flight-path.altitude-restriction-gradient
 *
 * @example
 * altitudeRestrictionGradient({ altitude: ftElevation(5000), startElevation: ftElevation(1100), distance: NM(13) }) // ≈ 300 ± 1e-9
 */
export function altitudeRestrictionGradient(x: AltitudeRestrictionGradientInputs): FeetPerNauticalMile {
  demand('altitude', x.altitude, altitudeRestrictionGradientDomain.altitude);
  demand('startElevation', x.startElevation, altitudeRestrictionGradientDomain.startElevation);
  demand('distance', x.distance, altitudeRestrictionGradientDomain.distance);
  const { altitude: a_ft, startElevation: e_ft, distance: d_NM }: Numbers<AltitudeRestrictionGradientInputs> = x;
  return ((a_ft - e_ft) / d_NM) as FeetPerNauticalMile;
}

function demandAll(x: ProcedureClimbGradientInputs): void {
  demand('obstacleTop', x.obstacleTop, procedureClimbGradientDomain.obstacleTop);
  demand('startElevation', x.startElevation, procedureClimbGradientDomain.startElevation);
  demand('distance', x.distance, procedureClimbGradientDomain.distance);
}
