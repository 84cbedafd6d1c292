import { type Domain, demand, type GroundSpeed, type Numbers, type PoundsPerSquareInch } from '../units/index.ts';

/** Inputs of {@link hydroplaningSpeed}, {@link hydroplaningSpeedAtTouchdown} and {@link hydroplaningSpeedEarlierHandbook}. */
export interface HydroplaningSpeedInputs {
  /** Tyre pressure of the wheel that is asked about; for braking that of the main wheels. */
  readonly tyrePressure: PoundsPerSquareInch;
}

export const hydroplaningSpeedDomain = {
  tyrePressure: { unit: 'psi', min: 5, max: 300, source: 'library range' },
} satisfies Domain<HydroplaningSpeedInputs>;

/**
 * Ground speed above which a tyre that is rolling may ride up on standing water and lose the runway (hydroplaning,
 * aquaplaning), as the handbook for pilots gives it. Where the water is shallower than the tread, a speed says little.
 *
 * V = 9.0 √p: p the tyre pressure in psi, V in kt.
 *
 * @param x - `tyrePressure` 5 psi to 300 psi.
 * @returns The ground speed in kt.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record distance.hydroplaning-speed
 *
 * @example
 * hydroplaningSpeed({ tyrePressure: psi(36) }) // => 54
 */
export function hydroplaningSpeed(x: HydroplaningSpeedInputs): GroundSpeed {
  return speedWith(9.0, x);
}

/**
 * Ground speed above which a tyre that does not turn yet may hydroplane: the one to use for the touchdown, because it is
 * the lower.
 *
 * V = 7.7 √p: p the tyre pressure in psi, V in kt.
 *
 * @param x - `tyrePressure` 5 psi to 300 psi.
 * @returns The ground speed in kt.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record distance.hydroplaning-speed-at-touchdown
 *
 * @example
 * hydroplaningSpeedAtTouchdown({ tyrePressure: psi(36) }) // ≈ 46.2 ± 1e-9
 */
export function hydroplaningSpeedAtTouchdown(x: HydroplaningSpeedInputs): GroundSpeed {
  return speedWith(7.7, x);
}

/**
 * The hydroplaning speed as an earlier edition of the flying handbook gives it, here because pilots still quote it: lower
 * than {@link hydroplaningSpeed} and higher than {@link hydroplaningSpeedAtTouchdown}.
 *
 * V = 8.6 √p: p the tyre pressure in psi, V in kt.
 *
 * @param x - `tyrePressure` 5 psi to 300 psi.
 * @returns The ground speed in kt.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record distance.hydroplaning-speed-earlier-handbook
 *
 * @example
 * hydroplaningSpeedEarlierHandbook({ tyrePressure: psi(24) }) // ≈ 42.13 ± 0.01
 */
export function hydroplaningSpeedEarlierHandbook(x: HydroplaningSpeedInputs): GroundSpeed {
  return speedWith(8.6, x);
}

function speedWith(coefficient: number, x: HydroplaningSpeedInputs): GroundSpeed {
  demand('tyrePressure', x.tyrePressure, hydroplaningSpeedDomain.tyrePressure);
  const { tyrePressure: p_psi }: Numbers<HydroplaningSpeedInputs> = x;
  return (coefficient * Math.sqrt(p_psi)) as GroundSpeed;
}
