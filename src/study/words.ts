import { type Criterion, marginInWords, type Verdict } from '../assessment/index.ts';
import { comparisonStep } from '../units/comparison-step.ts';
import { type FormatOptions, formatValue, type Measure, type UnitWord } from '../units/index.ts';

/** The step to which a solved value is given in its unit: what a pilot can read off or act upon. */
export function stepOf(unit: UnitWord): number {
  if (unit === 'ratio') return 0.001;
  if (unit === 'inHg') return 0.01;
  return unit === 'NM' ? 0.1 : comparisonStep(unit);
}

/** As many decimals as a step has. */
export function decimalsOf(step: number): number {
  return Math.max(0, Math.round(-Math.log10(step)));
}

/** A measure with as many decimals as its step. */
export function inWords(
  { value, unit }: Measure<UnitWord>,
  step = stepOf(unit),
  rounding: FormatOptions['rounding'] = 'nearest',
): string {
  return formatValue(value, unit, { decimals: decimalsOf(step), rounding });
}

export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** A subject with its article: `the crosswind`, `the gradient over pines`. */
export function named(subject: string): string {
  return subject.startsWith('the ') ? subject : `the ${subject}`;
}

/** A criterion by its name and margin: `the crosswind, 1 kt to spare`; `the take-off distance, undetermined`. */
export function criterionInWords(criterion: Criterion): string {
  if (criterion.verdict === 'undetermined') return `${named(criterion.subject)}, undetermined`;
  return `${named(criterion.subject)}, ${marginInWords(criterion.margin.value, criterion.margin.unit as UnitWord)}`;
}

const order: readonly Verdict[] = ['outside', 'undetermined', 'within'];

/** The margin of a criterion as a share of its limit; none where it is undetermined. */
export function shareOfLimit(criterion: Criterion): number | undefined {
  if (criterion.verdict === 'undetermined') return undefined;
  return criterion.margin.value / Math.max(Math.abs(criterion.limit.value), 1e-9);
}

/** Criteria as they limit: outside before undetermined before within, then by the margin as a share of the limit. */
export function tightestFirst(criteria: readonly Criterion[]): Criterion[] {
  return [...criteria].sort(
    (a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict) || (shareOfLimit(a) ?? 0) - (shareOfLimit(b) ?? 0),
  );
}

/** Any outside is outside; else any undetermined is undetermined. */
export function overallVerdict(verdicts: readonly Verdict[]): Verdict {
  return order.find((verdict) => verdicts.includes(verdict)) ?? 'undetermined';
}
