import type { Citation } from '../sources/index.ts';
import { formatAlongRunway, formatValue, kt, type UnitWord } from '../units/index.ts';

/** A range of one input over which a rule of thumb is compared; both ends are compared. */
export interface ComparedRange {
  /** What the input is, as it stands in a sentence: a wind, an angle. */
  readonly words: string;
  readonly unit: UnitWord;
  readonly min: number;
  readonly max: number;
  /** From one compared value to the next. */
  readonly step: number;
}

/** Which way a rule errs: `reads low` gives less than the exact figure. */
export type RuleOfThumbSide = 'reads low' | 'reads high';

/** A rule that the trade teaches, beside what it approximates. */
// biome-ignore lint/suspicious/noExplicitAny: a rule of any inputs must be assignable
export interface RuleOfThumb<I = any> {
  readonly id: string;
  readonly title: string;
  /** What the rule says, in words of our own. */
  readonly words: string;
  readonly rule: (inputs: I) => number;
  readonly exact: (inputs: I) => number;
  /** Unit of both results. */
  readonly unit: UnitWord;
  /** Whether the size of its error is told by the difference or in percent of the exact figure. */
  readonly errorIn: 'difference' | 'percent';
  /** The domain over which the rule is used and compared. */
  readonly domain: { readonly [K in keyof I]: ComparedRange };
  /** The way of erring that leads into trouble; `either` where both do. */
  readonly unsafeSide: RuleOfThumbSide | 'either';
  /** Why that side is the unsafe one. */
  readonly because: string;
  /** A sentence: where within its domain the rule errs on the unsafe side. */
  readonly unsafeWhere: string;
  /** Who teaches it. */
  readonly citation: Citation;
}

/** A rule's figure beside the exact one. */
export interface RuleOfThumbError {
  readonly rule: number;
  readonly exact: number;
  readonly unit: UnitWord;
  /** Rule minus exact, in the unit of both. */
  readonly difference: number;
  /** The difference in percent of the exact figure; missing where that is zero. */
  readonly percent: number | undefined;
  readonly side: RuleOfThumbSide | 'exact';
  /** Whether the rule errs here on its unsafe side. */
  readonly isUnsafe: boolean;
}

/** Where a rule errs most, with the error there. */
export interface RuleOfThumbExtreme<I> {
  readonly inputs: I;
  readonly error: RuleOfThumbError;
}

/** The worst errors of a rule over its domain; one that does not occur there is missing. */
export interface WorstRuleOfThumbError<I> {
  readonly low: RuleOfThumbExtreme<I> | undefined;
  readonly high: RuleOfThumbExtreme<I> | undefined;
  /** The worst on the unsafe side. */
  readonly unsafe: RuleOfThumbExtreme<I> | undefined;
}

/** Differences below this share of the exact figure are noise of the arithmetic. */
const noise = 1e-9;

/**
 * Error of a rule of thumb in one case.
 *
 * @param rule - The rule, such as {@link clockRule}.
 * @param inputs - The case; it may lie outside the rule's domain, as long as rule and exact formula both answer.
 * @returns Both figures, their difference, and the side on which the rule errs.
 * @throws {@link DomainError} when the rule or the exact formula refuses the case.
 *
 * @example
 * ruleOfThumbError(clockRule, { windSpeed: kt(20), angle: degrees(60) }).percent?.toFixed(1) // => '15.5'
 * ruleOfThumbError(clockRule, { windSpeed: kt(20), angle: degrees(20) }).isUnsafe // => true
 */
export function ruleOfThumbError<I>(rule: RuleOfThumb<I>, inputs: I): RuleOfThumbError {
  const byRule: number = rule.rule(inputs);
  const exact: number = rule.exact(inputs);
  const difference = byRule - exact;
  const isExact = Math.abs(difference) <= noise * Math.max(1, Math.abs(exact));
  const side = isExact ? 'exact' : difference < 0 ? 'reads low' : 'reads high';
  return {
    rule: byRule,
    exact,
    unit: rule.unit,
    difference,
    percent: exact === 0 ? undefined : (100 * difference) / exact,
    side,
    isUnsafe: side !== 'exact' && (rule.unsafeSide === 'either' || side === rule.unsafeSide),
  };
}

/**
 * The worst errors of a rule of thumb over its domain, found by trying every step of each input. Nothing is stored: the
 * rule and the exact formula are computed at each call.
 *
 * @param rule - The rule, such as {@link clockRule}.
 * @returns The worst error to each side and on the unsafe side, with the case in which it occurs.
 *
 * @example
 * worstRuleOfThumbError(clockRule).high?.error.percent?.toFixed(1) // => '15.5'
 * worstRuleOfThumbError(clockRule).unsafe?.error.percent?.toFixed(1) // => '-4.4'
 * worstRuleOfThumbError(threeHundredFeetRule).unsafe // => undefined
 */
export function worstRuleOfThumbError<I>(rule: RuleOfThumb<I>): WorstRuleOfThumbError<I> {
  const worst: { low?: RuleOfThumbExtreme<I>; high?: RuleOfThumbExtreme<I>; unsafe?: RuleOfThumbExtreme<I> } = {};
  const sizeOf = (extreme: RuleOfThumbExtreme<I> | undefined) => sizeOfError(rule, extreme?.error);
  for (const inputs of casesOf(rule)) {
    const error = ruleOfThumbError(rule, inputs);
    if (error.side === 'exact') continue;
    const side = error.side === 'reads low' ? 'low' : 'high';
    const size = sizeOfError(rule, error);
    if (size > sizeOf(worst[side])) worst[side] = { inputs, error };
    if (error.isUnsafe && size > sizeOf(worst.unsafe)) worst.unsafe = { inputs, error };
  }
  return { low: worst.low, high: worst.high, unsafe: worst.unsafe };
}

/**
 * How a rule of thumb errs, in sentences: its worst errors over its domain, and where they are on the unsafe side.
 *
 * @param rule - The rule, such as {@link clockRule}.
 * @returns The sentences, with no-break spaces between figures and units.
 *
 * @example
 * ruleOfThumbInWords(threeHundredFeetRule) // => 'Three hundred feet for a mile. Over a height to lose of 300\u00a0ft to 10\u00a0000\u00a0ft it reads at most 6.1\u00a0% high. Low is the unsafe side: begun too late, the descent ends too steep. It never reads low: the descent always begins early.'
 */
export function ruleOfThumbInWords(rule: RuleOfThumb): string {
  const { low, high } = worstRuleOfThumbError(rule);
  const ranges = Object.entries(rule.domain).map(([name, { words, unit, min, max }]) => {
    // A headwind is signed; the sign is put into words.
    const show = (value: number) => (name === 'headwind' ? formatAlongRunway(kt(value)) : amount(value, unit));
    return `${words} of ${min === max ? show(min) : `${show(min)} to ${show(max)}`}`;
  });
  const errors = [
    ...(low === undefined ? [] : [`${errorInWords(rule, low.error)} low`]),
    ...(high === undefined ? [] : [`${errorInWords(rule, high.error)} high`]),
  ];
  const side = { 'reads low': 'Low is', 'reads high': 'High is', either: 'Either is' }[rule.unsafeSide];
  return `${rule.title}. Over ${ranges.join(' and ')} it reads at most ${errors.join(' and ')}. ${side} the unsafe side: ${rule.because}. ${rule.unsafeWhere}`;
}

function errorInWords(rule: RuleOfThumb, error: RuleOfThumbError): string {
  const size = sizeOfError(rule, error);
  return amount(size, rule.errorIn === 'percent' ? 'percent' : rule.unit, size < 20 ? 1 : 0);
}

/** The reference stands in the sentence already. */
const plainUnit: { readonly [U in UnitWord]?: UnitWord } = { ftPA: 'ft', ftDA: 'ft', ftElevation: 'ft', ktGS: 'kt' };

function amount(value: number, unit: UnitWord, decimals = Number.isInteger(value) ? 0 : 1): string {
  return formatValue(value, plainUnit[unit] ?? unit, { decimals }).replaceAll(' ', '\u00a0');
}

/** How large an error is, in the measure of the rule; none is smaller than any. */
function sizeOfError(rule: RuleOfThumb, error: RuleOfThumbError | undefined): number {
  if (error === undefined) return 0;
  return Math.abs(rule.errorIn === 'percent' ? (error.percent ?? 0) : error.difference);
}

/** Every case of a rule's domain. */
function casesOf<I>(rule: RuleOfThumb<I>): I[] {
  const ranges = Object.entries<ComparedRange>(rule.domain);
  const cases = ranges.reduce<Record<string, number>[]>(
    (before, [name, range]) => before.flatMap((x) => valuesOf(range).map((value) => ({ ...x, [name]: value }))),
    [{}],
  );
  return cases as I[];
}

function valuesOf({ min, max, step }: ComparedRange): number[] {
  const steps = Math.round((max - min) / step);
  return Array.from({ length: steps + 1 }, (_, i) => (i === steps ? max : min + i * step));
}
