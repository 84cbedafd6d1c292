import {
  type Degrees,
  type Domain,
  demand,
  inconsistent,
  type Knots,
  type Numbers,
  type Ratio,
  type TrueAirspeed,
} from '../units/index.ts';

/** Inputs of {@link crabAngle}. */
export interface CrabAngleInputs {
  /** Wind across the runway: positive from the right, negative from the left. */
  readonly crosswind: Knots;
  readonly trueAirspeed: TrueAirspeed;
}

/** Inputs of {@link sideslipAngle}. */
export interface SideslipAngleInputs {
  /** Wind across the runway: positive from the right, negative from the left. */
  readonly crosswind: Knots;
  readonly trueAirspeed: TrueAirspeed;
}

/** Inputs of {@link sideslipBank}. */
export interface SideslipBankInputs extends SideslipAngleInputs {
  /** C_Yβ of the aeroplane, the change of the side force coefficient for each radian of sideslip; negative. */
  readonly sideForceDerivative: Ratio;
  /** Lift coefficient at the speed of the approach. */
  readonly liftCoefficient: Ratio;
}

const crosswind = { unit: 'kt', min: -40, max: 40, source: 'library range' } as const;
const trueAirspeed = { unit: 'ktas', min: 25, max: 300, source: 'library range' } as const;

export const crabAngleDomain = { crosswind, trueAirspeed } satisfies Domain<CrabAngleInputs>;

export const sideslipAngleDomain = { crosswind, trueAirspeed } satisfies Domain<SideslipAngleInputs>;

export const sideslipBankDomain = {
  crosswind,
  trueAirspeed,
  sideForceDerivative: {
    unit: 'ratio',
    min: -1,
    max: -0.05,
    source: 'library range; a side force acts against the slip',
  },
  liftCoefficient: { unit: 'ratio', min: 0.4, max: 3, source: 'library range' },
} satisfies Domain<SideslipBankInputs>;

/**
 * Crab angle of an approach along the centreline with the wings level: how far the nose points into the wind.
 *
 * α = arcsin(X / V): X the crosswind in kt and V the true airspeed in kt.
 *
 * @param x - `crosswind` −40 kt to 40 kt and no more than the true airspeed, `trueAirspeed` 25 KTAS to 300 KTAS.
 * @returns The angle from the centreline to the nose in degrees, positive to the right, into a wind from the right.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the crosswind
 * exceeds the true airspeed.
 * @record wind.crab-angle
 *
 * @example
 * crabAngle({ crosswind: kt(-8), trueAirspeed: ktas(62) }) // ≈ -7.413 ± 0.001
 */
export function crabAngle(x: CrabAngleInputs): Degrees {
  return intoWind_deg(x) as Degrees;
}

/**
 * Angle of sideslip of a wing-low approach: with the nose and the track on the centreline, the air comes from the side at
 * the angle at which a crab would point the nose.
 *
 * β = arcsin(X / V): X the crosswind in kt and V the true airspeed in kt.
 *
 * @param x - `crosswind` −40 kt to 40 kt and no more than the true airspeed, `trueAirspeed` 25 KTAS to 300 KTAS.
 * @returns The angle of sideslip in degrees, positive with the air from the right.
 * @throws {@link DomainError} as {@link crabAngle}.
 * @record wind.sideslip-angle
 *
 * @example
 * sideslipAngle({ crosswind: kt(8), trueAirspeed: ktas(62) }) // ≈ 7.413 ± 0.001
 */
export function sideslipAngle(x: SideslipAngleInputs): Degrees {
  return intoWind_deg(x) as Degrees;
}

/**
 * Angle of bank that balances the sideslip of a wing-low approach, for an aeroplane whose side force is known. The side
 * force of the rudder, a small part, is left out.
 *
 * sin φ = −C_Yβ β / C_L with β = arcsin(X / V) in radians: C_Yβ the side force derivative for each radian, C_L the lift
 * coefficient, X the crosswind and V the true airspeed in kt. There is no figure that would do for every aeroplane.
 *
 * @param x - `crosswind` −40 kt to 40 kt and no more than the true airspeed, `trueAirspeed` 25 KTAS to 300 KTAS,
 * `sideForceDerivative` −1 to −0.05, `liftCoefficient` 0.4 to 3.
 * @returns The angle of bank in degrees, positive with the right wing low, into a wind from the right.
 * @throws {@link DomainError} as {@link crabAngle}, and with code `inconsistent` when no bank balances the sideslip.
 * @record wind.sideslip-bank
 *
 * @example
 * sideslipBank({ crosswind: kt(8), trueAirspeed: ktas(62), sideForceDerivative: ratio(-0.5), liftCoefficient: ratio(1.2) }) // ≈ 3.09 ± 0.01
 */
export function sideslipBank(x: SideslipBankInputs): Degrees {
  demand('sideForceDerivative', x.sideForceDerivative, sideslipBankDomain.sideForceDerivative);
  demand('liftCoefficient', x.liftCoefficient, sideslipBankDomain.liftCoefficient);
  const { sideForceDerivative: cyBeta, liftCoefficient: cl }: Numbers<SideslipBankInputs> = x;
  const beta_rad = (intoWind_deg(x) * Math.PI) / 180;
  const sine = (-cyBeta * beta_rad) / cl;
  if (Math.abs(sine) > 1) refuseNoBalance(cl, Math.abs(cyBeta * beta_rad));
  return ((Math.asin(sine) * 180) / Math.PI) as Degrees;
}

function intoWind_deg(x: CrabAngleInputs): number {
  demand('crosswind', x.crosswind, crosswind);
  demand('trueAirspeed', x.trueAirspeed, trueAirspeed);
  const { crosswind: crosswind_kt, trueAirspeed: v_kt }: Numbers<CrabAngleInputs> = x;
  if (Math.abs(crosswind_kt) > v_kt) refuseCrosswind(crosswind_kt, v_kt);
  return (Math.asin(crosswind_kt / v_kt) * 180) / Math.PI;
}

function refuseCrosswind(received: number, v_kt: number): never {
  const source = 'the crosswind does not exceed the true airspeed';
  const parameter = 'crosswind';
  throw inconsistent(parameter, received, 'kt', -v_kt, v_kt, source);
}

function refuseNoBalance(received: number, min: number): never {
  const source = 'the lift can balance the side force';
  const { unit, max } = sideslipBankDomain.liftCoefficient;
  throw inconsistent('liftCoefficient', received, unit, min, max, source);
}
