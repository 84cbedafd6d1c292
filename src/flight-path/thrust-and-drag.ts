import {
  type Domain,
  demand,
  inconsistent,
  type Kilograms,
  type KilogramsPerCubicMetre,
  type KilogramsPerMetre,
  type Newtons,
  type Numbers,
  type Ratio,
  type SquareMetres,
  type TrueAirspeed,
} from '../units/index.ts';

/** An aeroplane in a climb: thrust T₀ + a V², drag by a parabolic polar, and the speed at which it stalls. */
export interface ThrustAndDragInputs {
  /** Mass of the aeroplane. */
  readonly mass: Kilograms;
  /** Thrust at standstill, T₀, at the density of the air climbed in. */
  readonly staticThrust: Newtons;
  /** Change of the thrust for each square of the airspeed, a in T₀ + a V²; negative for a propeller. */
  readonly thrustChange: KilogramsPerMetre;
  /** Wing area to which the coefficients refer. */
  readonly wingArea: SquareMetres;
  /** Density of the air. */
  readonly density: KilogramsPerCubicMetre;
  /** Drag coefficient without lift, C_D0. */
  readonly zeroLiftDrag: Ratio;
  /** Drag coefficient of the lift for each square of the lift coefficient, K = 1/(π e A). */
  readonly inducedDragFactor: Ratio;
  /** Stall speed at this mass and density, wings level. */
  readonly stallSpeed: TrueAirspeed;
}

export const thrustAndDragDomain = {
  mass: { unit: 'kg', min: 100, max: 10000, source: 'library range' },
  staticThrust: { unit: 'N', min: 100, max: 100000, source: 'library range' },
  thrustChange: { unit: 'kgPerM', min: -50, max: 0, source: 'library range, thrust that does not grow with speed' },
  wingArea: { unit: 'm2', min: 1, max: 200, source: 'library range' },
  density: { unit: 'kgPerM3', min: 0.3, max: 1.6, source: 'library range' },
  zeroLiftDrag: { unit: 'ratio', min: 0.005, max: 0.3, source: 'library range' },
  inducedDragFactor: { unit: 'ratio', min: 0.01, max: 0.5, source: 'library range' },
  stallSpeed: { unit: 'ktas', min: 10, max: 200, source: 'library range' },
} satisfies Domain<ThrustAndDragInputs>;

/** Excess thrust over a speed, T − D = T₀ − k V² − H/V², in N, with V in m/s. */
export interface ExcessThrust {
  readonly t0_N: number;
  /** Parasite drag less the change of the thrust, for each square of the speed. */
  readonly k_kgPerM: number;
  /** Induced drag times the square of the speed. */
  readonly h_kgM3PerS4: number;
  readonly weight_N: number;
  readonly stall_mps: number;
}

/** Standard acceleration of free fall. */
const g_mps2 = 9.80665;

/** The excess thrust of an aeroplane whose inputs have passed {@link demandThrustAndDrag}. */
export function excessThrust(x: ThrustAndDragInputs): ExcessThrust {
  const { mass: m_kg, staticThrust: t0_N, thrustChange: a_kgPerM, wingArea: s_m2 }: Numbers<ThrustAndDragInputs> = x;
  const { density: rho_kgPerM3, zeroLiftDrag: cd0, inducedDragFactor: k }: Numbers<ThrustAndDragInputs> = x;
  const { stallSpeed: stall_kt }: Numbers<ThrustAndDragInputs> = x;
  const weight_N = m_kg * g_mps2;
  const parasite_kgPerM = 0.5 * rho_kgPerM3 * s_m2 * cd0;
  const h_kgM3PerS4 = (2 * k * weight_N ** 2) / (rho_kgPerM3 * s_m2);
  const stall_mps = (stall_kt * 1852) / 3600;
  return { t0_N, k_kgPerM: parasite_kgPerM - a_kgPerM, h_kgM3PerS4, weight_N, stall_mps };
}

/** The checks apart from the terms: together they would be too long to be compiled into what calls them. */
export function demandThrustAndDrag(x: ThrustAndDragInputs): void {
  demand('mass', x.mass, thrustAndDragDomain.mass);
  demand('staticThrust', x.staticThrust, thrustAndDragDomain.staticThrust);
  demand('thrustChange', x.thrustChange, thrustAndDragDomain.thrustChange);
  demand('wingArea', x.wingArea, thrustAndDragDomain.wingArea);
  demand('density', x.density, thrustAndDragDomain.density);
  demand('zeroLiftDrag', x.zeroLiftDrag, thrustAndDragDomain.zeroLiftDrag);
  demand('inducedDragFactor', x.inducedDragFactor, thrustAndDragDomain.inducedDragFactor);
  demand('stallSpeed', x.stallSpeed, thrustAndDragDomain.stallSpeed);
}

/** Refuses thrust that does not exceed the drag at any speed: there is then no climb to choose a speed for. */
export function demandClimb({ t0_N, k_kgPerM, h_kgM3PerS4 }: ExcessThrust): void {
  const least_N = 2 * Math.sqrt(k_kgPerM * h_kgM3PerS4);
  if (t0_N <= least_N) refuseThrust(t0_N, least_N);
}

function refuseThrust(received: number, min: number): never {
  const { unit, max } = thrustAndDragDomain.staticThrust;
  const source = 'the thrust exceeds the drag at some speed';
  throw inconsistent('staticThrust', received, unit, min, max, source);
}

/** Refuses a speed below the stall; the stall speed is the parameter named, because it is what was given. */
export function demandAboveStall(v_mps: number, { stall_mps }: ExcessThrust): void {
  if (v_mps < stall_mps) refuseBelowStall(v_mps, stall_mps);
}

function refuseBelowStall(v_mps: number, stall_mps: number): never {
  const { unit, min } = thrustAndDragDomain.stallSpeed;
  const received = (stall_mps * 3600) / 1852;
  const max = (v_mps * 3600) / 1852;
  const source = 'the speed found would be below the stall';
  throw inconsistent('stallSpeed', received, unit, min, max, source);
}
