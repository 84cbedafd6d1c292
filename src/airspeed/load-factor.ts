import { type Degrees, type Domain, demand, type Numbers, type Ratio } from '../units/index.ts';

/** Inputs of {@link loadFactorInTurn}. */
export interface LoadFactorInTurnInputs {
  /** Angle of bank, without regard to its side. */
  readonly bank: Degrees;
}

export const loadFactorInTurnDomain = {
  bank: { unit: 'deg', min: 0, max: 85, source: 'library range' },
} satisfies Domain<LoadFactorInTurnInputs>;

/**
 * Load factor in a level, coordinated turn.
 *
 * n = 1/cos φ: φ the angle of bank in degrees.
 *
 * @param x - `bank` 0° to 85°.
 * @returns Load factor as a ratio, 1 with wings level.
 * @throws {@link DomainError} when the bank is not within its range.
 * @record airspeed.load-factor-in-turn
 *
 * @example
 * loadFactorInTurn({ bank: degrees(60) }) // ≈ 2 ± 1e-9
 */
export function loadFactorInTurn(x: LoadFactorInTurnInputs): Ratio {
  demand('bank', x.bank, loadFactorInTurnDomain.bank);
  const { bank: bank_deg }: Numbers<LoadFactorInTurnInputs> = x;
  const bank_rad = (bank_deg * Math.PI) / 180;
  return (1 / Math.cos(bank_rad)) as Ratio;
}
