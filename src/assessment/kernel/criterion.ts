import type { FactorKind } from '../../distance/index.ts';
import { roundDown, roundUp } from '../../units/index.ts';
import type { UnitWord } from '../../units/unit-table.ts';
import type { Reason } from '../result/reason.ts';

export type Verdict = 'within' | 'outside' | 'undetermined';

/** What makes a limit binding. */
export type LimitStatus =
  | 'limitation'
  | 'demonstrated'
  | 'personal'
  | 'distance available'
  | 'clearance asked'
  | 'none given';

/** One comparison of a figure with a limit, in plain figures. */
export interface Judged {
  readonly id:
    | 'mass'
    | 'takeoff-run'
    | 'takeoff-distance'
    | 'landing-distance'
    | 'obstacle'
    | 'approach-obstacles'
    | 'crosswind'
    | 'tailwind';
  readonly subject: string;
  readonly quantity: string;
  readonly unit: UnitWord;
  readonly sense: 'at most' | 'at least';
  readonly limitStatus: LimitStatus;
  readonly verdict: Verdict;
  readonly limit: number | undefined;
  readonly value: number | undefined;
  /** Positive is favourable; none for an undetermined one. */
  readonly margin: number | undefined;
  /** Before anything is rounded, for differences and means; never compared with a limit. */
  readonly unroundedValue: number | undefined;
  readonly unroundedMargin: number | undefined;
  /** For an undetermined one: the value is no less, or no more, than this. */
  readonly atLeast: number | undefined;
  readonly atMost: number | undefined;
  readonly reasons: readonly Reason[];
}

type Named = Pick<Judged, 'id' | 'subject' | 'quantity' | 'unit' | 'limitStatus'>;

const noFigures = {
  limit: undefined,
  value: undefined,
  margin: undefined,
  unroundedValue: undefined,
  unroundedMargin: undefined,
  atLeast: undefined,
  atMost: undefined,
};

/** Built field by field: spreading objects of this size is several times slower, and every assessment makes a dozen. */
function judgedOf(
  { id, subject, quantity, unit, limitStatus }: Named,
  sense: Judged['sense'],
  verdict: Verdict,
  reasons: readonly Reason[],
  {
    limit,
    value,
    margin,
    unroundedValue,
    unroundedMargin,
    atLeast: least,
    atMost: most,
  }: Pick<Judged, 'limit' | 'value' | 'margin' | 'unroundedValue' | 'unroundedMargin' | 'atLeast' | 'atMost'>,
): Judged {
  return {
    id,
    subject,
    quantity,
    unit,
    limitStatus,
    sense,
    verdict,
    limit,
    value,
    margin,
    unroundedValue,
    unroundedMargin,
    atLeast: least,
    atMost: most,
    reasons,
  };
}

/** The step to which a unit is rounded; one metre per second would be two knots, so that unit goes by tenths. */
function stepOf(unit: UnitWord): number {
  return unit === 'mps' || unit === 'percent' ? 0.1 : 1;
}

/** Two ways to the same figure may differ in the last bits; equality with a limit is within it. */
function isEqual(value: number, limit: number): boolean {
  return Math.abs(value - limit) <= 1e-9 * Math.max(1, Math.abs(limit));
}

/** Compares a figure that must not exceed its limit; what is required rounds up, what is available down. */
export function atMost(
  named: Named,
  value: number,
  limit: number,
  kind: FactorKind | 'no bound' = 'value',
  reasons: readonly Reason[] = [],
): Judged {
  const step = stepOf(named.unit);
  const bound = roundDown(limit, step);
  const shown = isEqual(value, limit) ? bound : roundUp(value, step);
  const verdict = verdictOf(shown <= bound, kind);
  const open = verdict === 'undetermined';
  return judgedOf(named, 'at most', verdict, reasons, {
    limit: bound,
    value: open ? undefined : shown,
    margin: open ? undefined : roundTail(bound - shown, step),
    unroundedValue: open ? undefined : value,
    unroundedMargin: open ? undefined : limit - value,
    atLeast: open && kind === 'at-least' ? shown : undefined,
    atMost: open && kind === 'at-most' ? shown : undefined,
  });
}

/** Compares a figure that must reach its limit; what is achieved rounds down, what is asked up. */
export function atLeast(
  named: Named,
  value: number,
  limit: number,
  kind: FactorKind | 'no bound',
  reasons: readonly Reason[],
): Judged {
  const step = stepOf(named.unit);
  const shown = roundDown(value, step);
  const bound = isEqual(value, limit) ? shown : roundUp(limit, step);
  const verdict = verdictOf(shown >= bound, kind);
  if (verdict === 'undetermined') return judgedOf(named, 'at least', verdict, reasons, noFigures);
  return judgedOf(named, 'at least', verdict, reasons, {
    ...noFigures,
    limit: bound,
    value: shown,
    margin: roundTail(shown - bound, step),
    unroundedValue: value,
    unroundedMargin: value - limit,
  });
}

/** A comparison that cannot be made, with why. */
export function undetermined(named: Named, sense: Judged['sense'], reasons: readonly Reason[], limit?: number): Judged {
  return judgedOf(named, sense, 'undetermined', reasons, { ...noFigures, limit });
}

/** Takes a verdict back to undetermined, for a figure that nobody has confirmed. */
export function withheld(judged: Judged, reasons: readonly Reason[]): Judged {
  return {
    ...judged,
    verdict: 'undetermined',
    value: undefined,
    margin: undefined,
    unroundedValue: undefined,
    unroundedMargin: undefined,
    reasons: [...judged.reasons, ...reasons],
  };
}

/** An at-least figure can prove outside only, an at-most figure within only. */
function verdictOf(fits: boolean, kind: FactorKind | 'no bound'): Verdict {
  if (kind === 'no bound') return 'undetermined';
  if (fits) return kind === 'at-least' ? 'undetermined' : 'within';
  return kind === 'at-most' ? 'undetermined' : 'outside';
}

/** Any outside is outside; else any undetermined is undetermined. */
export function overall(judged: readonly Judged[]): Verdict {
  if (judged.some(({ verdict }) => verdict === 'outside')) return 'outside';
  return judged.some(({ verdict }) => verdict === 'undetermined') ? 'undetermined' : 'within';
}

const order: readonly Verdict[] = ['outside', 'undetermined', 'within'];

/** The limiting criterion: outside before undetermined before within, then the smallest margin as a share of its limit. */
export function limiting(judged: readonly Judged[]): Judged {
  const share = ({ margin, limit }: Judged) => (margin ?? 0) / Math.max(Math.abs(limit ?? 1), 1e-9);
  return [...judged].sort(
    (a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict) || share(a) - share(b),
  )[0] as Judged;
}

/** A difference of decimal steps without its binary tail. */
function roundTail(difference: number, step: number): number {
  const perUnit = Math.round(1 / step);
  return Math.round(difference * perUnit) / perUnit;
}
