import type { FactorKind } from '../../distance/index.ts';
import { comparisonStep } from '../../units/comparison-step.ts';
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

/** What a criterion is called, and in which unit and to which step it compares. */
export type Named = Pick<Judged, 'id' | 'subject' | 'quantity' | 'unit' | 'limitStatus'> & { readonly step: number };

/** Puts the words of a criterion together; all in one place, because objects of one make are the quickest to read. */
export function named(
  id: Judged['id'],
  subject: string,
  quantity: string,
  unit: UnitWord,
  limitStatus: LimitStatus,
): Named {
  return { id, subject, quantity, unit, limitStatus, step: comparisonStep(unit) };
}

/** Field by field: spreading objects of this size is several times slower, and every assessment makes a dozen. */
function judgedOf(
  words: Named,
  sense: Judged['sense'],
  verdict: Verdict,
  reasons: readonly Reason[],
  limit: number | undefined,
  value?: number,
  margin?: number,
  unroundedValue?: number,
  unroundedMargin?: number,
  least?: number,
  most?: number,
): Judged {
  return {
    id: words.id,
    subject: words.subject,
    quantity: words.quantity,
    unit: words.unit,
    limitStatus: words.limitStatus,
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

/** A comparison without a figure, that may yet be known to be no less or no more than one. */
function open(
  words: Named,
  sense: Judged['sense'],
  reasons: readonly Reason[],
  limit?: number,
  least?: number,
  most?: number,
): Judged {
  return judgedOf(
    words,
    sense,
    'undetermined',
    reasons,
    limit,
    undefined,
    undefined,
    undefined,
    undefined,
    least,
    most,
  );
}

/** Two ways to the same figure may differ in the last bits; equality with a limit is within it. */
function isEqual(value: number, limit: number): boolean {
  return Math.abs(value - limit) <= 1e-9 * Math.max(1, Math.abs(limit));
}

const noReasons: readonly Reason[] = [];

/** Compares a figure that must not exceed its limit; what is required rounds up, what is available down. */
export function atMost(
  words: Named,
  value: number,
  limit: number,
  kind: FactorKind | 'no bound' = 'value',
  reasons: readonly Reason[] = noReasons,
): Judged {
  const { step } = words;
  const bound = roundDown(limit, step);
  const shown = isEqual(value, limit) ? bound : roundUp(value, step);
  const verdict = verdictOf(shown <= bound, kind);
  if (verdict !== 'undetermined') {
    return judgedOf(
      words,
      'at most',
      verdict,
      reasons,
      bound,
      shown,
      roundTail(bound - shown, step),
      value,
      limit - value,
    );
  }
  const least = kind === 'at-least' ? shown : undefined;
  const most = kind === 'at-most' ? shown : undefined;
  return open(words, 'at most', [...reasons, reasonOfBound(kind)], bound, least, most);
}

/** Compares a figure that must reach its limit; what is achieved rounds down, what is asked up. */
export function atLeast(
  words: Named,
  value: number,
  limit: number,
  kind: FactorKind | 'no bound',
  reasons: readonly Reason[],
): Judged {
  const { step } = words;
  const shown = roundDown(value, step);
  const bound = isEqual(value, limit) ? shown : roundUp(limit, step);
  const verdict = verdictOf(shown >= bound, kind);
  if (verdict === 'undetermined') return undetermined(words, 'at least', [...reasons, reasonOfBound(kind)]);
  return judgedOf(
    words,
    'at least',
    verdict,
    reasons,
    bound,
    shown,
    roundTail(shown - bound, step),
    value,
    value - limit,
  );
}

/** A comparison that cannot be made, with why. */
export function undetermined(words: Named, sense: Judged['sense'], reasons: readonly Reason[], limit?: number): Judged {
  return open(words, sense, reasons, limit);
}

/** Takes a verdict back to undetermined where there are reasons to, such as a factor that nobody has confirmed. */
export function withheldFor(judged: Judged, reasons: readonly Reason[]): Judged {
  if (reasons.length === 0) return judged;
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

const boundAtLeast: Reason = { code: 'bound-at-least', parameters: {} };
const boundAtMost: Reason = { code: 'bound-at-most', parameters: {} };
const boundsBothWays: Reason = { code: 'bounds-both-ways', parameters: {} };

/** Why a figure that is there decides nothing. */
function reasonOfBound(kind: FactorKind | 'no bound'): Reason {
  if (kind === 'at-least') return boundAtLeast;
  return kind === 'at-most' ? boundAtMost : boundsBothWays;
}

/** An at-least figure can prove outside only, an at-most figure within only. */
function verdictOf(fits: boolean, kind: FactorKind | 'no bound'): Verdict {
  if (kind === 'no bound') return 'undetermined';
  if (fits) return kind === 'at-least' ? 'undetermined' : 'within';
  return kind === 'at-most' ? 'undetermined' : 'outside';
}

/** The worst first. Compared word by word: a table of them would be looked up by a text, which takes several times as long. */
function rank(verdict: Verdict): number {
  if (verdict === 'within') return 2;
  return verdict === 'outside' ? 0 : 1;
}

/** Of two verdicts the one that decides: any outside is outside; else any undetermined is undetermined. */
export function worse(a: Verdict, b: Verdict): Verdict {
  return rank(b) < rank(a) ? b : a;
}

/** The verdict on all of them. */
export function overall(judged: readonly Judged[]): Verdict {
  let found: Verdict = 'within';
  for (const { verdict } of judged) {
    if (verdict === 'outside') return verdict;
    if (verdict === 'undetermined') found = verdict;
  }
  return found;
}

/** The limiting criterion: the worst verdict, then the smallest margin as a share of its limit; of equal ones the first. */
export function limiting(judged: readonly Judged[]): Judged {
  return judged.reduce((tightest, each) => (isTighter(each, tightest) ? each : tightest));
}

/** Whether a criterion limits more than another. */
export function isTighter(a: Judged, b: Judged): boolean {
  return a.verdict === b.verdict ? shareLeft(a) < shareLeft(b) : rank(a.verdict) < rank(b.verdict);
}

function shareLeft({ margin, limit }: Judged): number {
  return (margin ?? 0) / Math.max(Math.abs(limit ?? 1), 1e-9);
}

/** A difference of decimal steps without its binary tail. */
function roundTail(difference: number, step: number): number {
  if (step === 1) return Math.round(difference);
  const perUnit = Math.round(1 / step);
  return Math.round(difference * perUnit) / perUnit;
}
