import {
  type Domain,
  demand,
  type HeightInMetres,
  inconsistent,
  type Numbers,
  type TrueAirspeed,
} from '../units/index.ts';

/** Inputs of {@link heightForSpeedGain}. */
export interface HeightForSpeedGainInputs {
  /** Speed before. */
  readonly from: TrueAirspeed;
  /** Speed after, no lower. */
  readonly to: TrueAirspeed;
}

export const heightForSpeedGainDomain = {
  from: { unit: 'ktas', min: 0, max: 300, source: 'library range' },
  to: { unit: 'ktas', min: 0, max: 300, source: 'library range' },
} satisfies Domain<HeightForSpeedGainInputs>;

/** Standard acceleration of free fall. */
const g_mps2 = 9.80665;

/**
 * Height that is not climbed because the energy goes into a higher speed.
 *
 * h = (V₂² − V₁²) / (2 g): V₁ the speed before and V₂ the speed after, true airspeeds given in kt, g = 9.80665 m/s².
 *
 * @param x - `from` and `to` 0 KTAS to 300 KTAS, `to` no lower than `from`.
 * @returns The height given up in m.
 * @throws {@link DomainError} when a parameter is not within its range, or the speed falls.
 * @record flight-path.height-for-speed-gain
 *
 * @example
 * heightForSpeedGain({ from: ktas(55), to: ktas(65) }) // ≈ 16.19 ± 0.01
 */
export function heightForSpeedGain(x: HeightForSpeedGainInputs): HeightInMetres {
  demand('from', x.from, heightForSpeedGainDomain.from);
  demand('to', x.to, heightForSpeedGainDomain.to);
  const { from: from_kt, to: to_kt }: Numbers<HeightForSpeedGainInputs> = x;
  if (to_kt < from_kt) refuseSpeedLoss(to_kt, from_kt);
  const v1_mps = (from_kt * 1852) / 3600;
  const v2_mps = (to_kt * 1852) / 3600;
  return ((v2_mps ** 2 - v1_mps ** 2) / (2 * g_mps2)) as HeightInMetres;
}

function refuseSpeedLoss(received: number, min: number): never {
  const { unit, max } = heightForSpeedGainDomain.to;
  const source = 'the speed rises';
  throw inconsistent('to', received, unit, min, max, source);
}
