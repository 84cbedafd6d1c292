import { type CalibratedAirspeed, type Domain, demand, type Kilograms, type Numbers } from '../units/index.ts';

/** Inputs of {@link manoeuvringSpeed}. */
export interface ManoeuvringSpeedInputs {
  /** V_A that the manual gives, calibrated. */
  readonly referenceManoeuvringSpeed: CalibratedAirspeed;
  /** Mass for which it is given, as a rule the maximum. */
  readonly referenceMass: Kilograms;
  /** Mass to be flown. */
  readonly mass: Kilograms;
}

const massBound = { unit: 'kg', min: 100, max: 5700, source: 'library range, class B' } as const;

export const manoeuvringSpeedDomain = {
  referenceManoeuvringSpeed: { unit: 'kcas', min: 20, max: 300, source: 'library range' },
  referenceMass: massBound,
  mass: massBound,
} satisfies Domain<ManoeuvringSpeedInputs>;

/**
 * Manoeuvring speed V_A at another mass: lower when the aeroplane is lighter, because the same lift then gives a higher
 * load factor. A figure that the manual prints for the mass comes first.
 *
 * V_A = V_A,ref √(m/m_ref): V_A,ref the manoeuvring speed in kt, calibrated, at the mass m_ref; m the mass in kg.
 *
 * @param x - `referenceManoeuvringSpeed` 20 kt to 300 kt, `referenceMass` and `mass` 100 kg to 5700 kg.
 * @returns Calibrated airspeed in kt; round it down before it is flown.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record airspeed.manoeuvring-speed
 *
 * @example
 * manoeuvringSpeed({ referenceManoeuvringSpeed: kcas(100), referenceMass: kg(1000), mass: kg(810) }) // ≈ 90 ± 1e-9
 */
export function manoeuvringSpeed(x: ManoeuvringSpeedInputs): CalibratedAirspeed {
  demand('referenceManoeuvringSpeed', x.referenceManoeuvringSpeed, manoeuvringSpeedDomain.referenceManoeuvringSpeed);
  demand('referenceMass', x.referenceMass, manoeuvringSpeedDomain.referenceMass);
  demand('mass', x.mass, manoeuvringSpeedDomain.mass);
  const { referenceManoeuvringSpeed: vRef_kt, referenceMass: mRef_kg, mass: m_kg }: Numbers<ManoeuvringSpeedInputs> = x;
  return (vRef_kt * Math.sqrt(m_kg / mRef_kg)) as CalibratedAirspeed;
}
