import { worksheetSections } from 'groundroll/worksheet';
import type { SentenceId } from './fields.ts';
import type { Assessment } from './work-out.ts';

/** What one sentence of the ledger costs from one end: as the worksheet of the library says it. */
export interface Tread {
  readonly sentence: string;
  readonly detail?: string;
  readonly factor?: string;
  readonly added?: string;
  readonly total: string;
  /** Places in the trace. */
  readonly steps: readonly number[];
}

/** The right edge of one sentence for one end. */
export interface Row {
  readonly treads: readonly Tread[];
  /** The running total below the sentence; empty above the first figure. */
  readonly total: string;
  /** Why there is no figure from here on, where it is this sentence that has none. */
  readonly refusal: readonly string[];
}

/** The sentences that stand in the ledger, in the order of the running total. */
const ledgerSentences = [
  'air',
  'wind',
  'surface',
  'slope',
  'speed',
  'factors',
] as const satisfies readonly SentenceId[];
export type LedgerSentence = (typeof ledgerSentences)[number];

/** Their order today: a manual whose own table runs along the slope takes the slope before the surface. */
export function orderOf(assessments: readonly (Assessment | undefined)[]): readonly LedgerSentence[] {
  const isSlopeFirst = assessments.some((assessment) => {
    const steps = (assessment?.stairs?.steps ?? assessment?.stairsKnown ?? []).map(({ step }) => step);
    return steps.includes('slope') && steps.includes('surface') && steps.indexOf('slope') < steps.indexOf('surface');
  });
  return isSlopeFirst ? ['air', 'wind', 'slope', 'surface', 'speed', 'factors'] : ledgerSentences;
}

const sentenceOfStep: Readonly<Record<string, LedgerSentence>> = {
  manual: 'air',
  technique: 'air',
  mass: 'air',
  elevation: 'air',
  temperature: 'air',
  wind: 'wind',
  surface: 'surface',
  slope: 'slope',
  'speed addition': 'speed',
  'excess height': 'speed',
  'safety factor': 'factors',
  'no safety factor': 'factors',
};

/** The sentence that a reason for having no figure speaks of. */
function sentenceOfReason(code: string): LedgerSentence {
  if (code.includes('tailwind')) return 'wind';
  if (code.startsWith('surface')) return 'surface';
  if (code.startsWith('slope')) return 'slope';
  if (code === 'no-calibration') return 'speed';
  if (code === 'recalled-factor' || code.startsWith('safety')) return 'factors';
  return 'air';
}

export const undetermined = 'undetermined';

/** The ledger of one end: rows by sentence, the running total carried along, undetermined from the refusal on. */
export function rowsOf(
  assessment: Assessment | undefined,
  order: readonly LedgerSentence[],
): Record<LedgerSentence, Row> {
  const lines = assessment === undefined ? [] : treadsOf(assessment);
  const reasons = assessment === undefined || assessment.stairs !== undefined ? [] : reasonsOf(assessment);
  const refusedAt = Math.min(...reasons.map(({ code }) => order.indexOf(sentenceOfReason(code))));
  let total = assessment === undefined ? undetermined : '';
  const rows = order.map((sentence, i) => {
    if (i >= refusedAt) total = undetermined;
    const treads = i > refusedAt ? [] : lines.filter(({ step }) => sentenceOfStep[step] === sentence);
    if (total !== undetermined) total = treads.at(-1)?.total ?? total;
    const refusal = reasons.filter(({ code }) => sentenceOfReason(code) === sentence).map(({ text }) => text);
    return [sentence, { treads, total, refusal }];
  });
  return Object.fromEntries(rows) as Record<LedgerSentence, Row>;
}

/** The lines of the library's ledger beside the treads that they word. */
function treadsOf(assessment: Assessment): (Tread & { readonly step: string })[] {
  const treads = assessment.stairs?.steps ?? assessment.stairsKnown ?? [];
  const lines = worksheetSections(assessment).find(({ id }) => id === 'ledger')?.lines ?? [];
  return treads.map(({ step }, i) => ({ step, total: '', ...lines[i] }) as Tread & { readonly step: string });
}

function reasonsOf({ criteria }: Assessment) {
  return criteria.filter(({ id }) => id.endsWith('-distance')).flatMap(({ reasons }) => reasons);
}
