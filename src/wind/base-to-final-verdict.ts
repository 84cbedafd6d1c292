import type { Citation } from '../sources/index.ts';
import { type Degrees, type Domain, demand, formatQuantity } from '../units/index.ts';
import { type BaseToFinalBankInputs, baseToFinalBank } from './base-to-final-turn.ts';
import { crosswind, headwind, startDistance, trueAirspeed } from './turn-in-wind-bounds.ts';

/** The greatest bank for a base-to-final turn, with where it stands. */
export interface BaseToFinalBankLimit {
  readonly bank: Degrees;
  readonly citation: Citation;
}

/** The bank that the handbook says not to exceed in the base-to-final turn. */
export const baseToFinalBankLimit: BaseToFinalBankLimit = {
  bank: 30 as Degrees,
  citation: { source: 'faa-afh', locator: 'ch. 5, base-to-final turn: bank of at most 30°', access: 'read' },
};

/** Inputs of {@link baseToFinalVerdict}. */
export interface BaseToFinalVerdictInputs extends BaseToFinalBankInputs {
  /** The most bank that is accepted; {@link baseToFinalBankLimit} holds the handbook's. */
  readonly greatestBank: Degrees;
}

/** Whether a base-to-final turn rolls out on the centreline within a limit of bank; only then is there a bank to fly. */
export type BaseToFinalVerdict =
  | { readonly verdict: 'within'; readonly bank: Degrees }
  | { readonly verdict: 'outside'; readonly advice: { readonly code: 'go-around'; readonly text: string } };

export const baseToFinalVerdictDomain = {
  trueAirspeed,
  headwind,
  crosswind,
  startDistance,
  greatestBank: { unit: 'deg', min: 5, max: 60, source: 'library range' },
} satisfies Domain<BaseToFinalVerdictInputs>;

/** Arithmetic noise that must not turn equality with the limit into a verdict of outside. */
const guard_deg = 1e-9;

/**
 * Whether the base-to-final turn still rolls out on the centreline with an acceptable bank. Where it does not, the
 * answer is to go around: no bank is given that exceeds the limit.
 *
 * φ ≤ φ_max: φ from {@link baseToFinalBank}, φ_max the greatest bank accepted. Equality is within.
 *
 * @param x - as for {@link baseToFinalBank}, and `greatestBank` 5° to 60°.
 * @returns `'within'` with the bank in degrees, or `'outside'` with the advice to go around, as a code and in words.
 * @throws {@link DomainError} as {@link baseToFinalBank}.
 * @record wind.base-to-final-verdict
 *
 * @example
 * const turn = { trueAirspeed: ktas(65), headwind: kt(5), crosswind: kt(-20), circuit: 'left', greatestBank: baseToFinalBankLimit.bank } as const
 * baseToFinalVerdict({ ...turn, startDistance: m(320) }).verdict // => 'within'
 * baseToFinalVerdict({ ...turn, startDistance: m(220) }) // => { verdict: 'outside', advice: { code: 'go-around', text: 'Go around: rolling out on the centreline would take 36.6° of bank, and 30.0° is the most set for this turn.' } }
 */
export function baseToFinalVerdict(x: BaseToFinalVerdictInputs): BaseToFinalVerdict {
  demand('greatestBank', x.greatestBank, baseToFinalVerdictDomain.greatestBank);
  const bank = baseToFinalBank(x);
  if (bank <= x.greatestBank + guard_deg) return { verdict: 'within', bank };
  const needed = formatQuantity(bank, 'deg', { decimals: 1, rounding: 'up' });
  const most = formatQuantity(x.greatestBank, 'deg', { decimals: 1 });
  const text = `Go around: rolling out on the centreline would take ${needed} of bank, and ${most} is the most set for this turn.`;
  return { verdict: 'outside', advice: { code: 'go-around', text } };
}
