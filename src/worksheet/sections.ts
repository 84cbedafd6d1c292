import type { Sentence } from '../assessment/index.ts';
import { inputLines } from './inputs.ts';
import {
  type Assessment,
  breakEvenSentence,
  completedFor,
  criterionSentence,
  markSentence,
  stairLines,
  type WorksheetLine,
} from './ledger.ts';

/** A part of a worksheet, in the order in which it is read. */
export interface WorksheetSection {
  readonly id:
    | 'head'
    | 'ledger'
    | 'criteria'
    | 'why'
    | 'choices'
    | 'break-evens'
    | 'marks'
    | 'speeds'
    | 'first-principles'
    | 'advice'
    | 'hazards'
    | 'data-notes'
    | 'inputs'
    | 'not-assessed'
    | 'limits-of-use';
  readonly title: string;
  readonly lines: readonly WorksheetLine[];
}

/**
 * Everything that a worksheet says, in its order and words: text, Markdown and HTML are three ways to print this list.
 * Sections without a line are left out; the first is the head, whose first line is the verdict.
 */
export function worksheetSections(assessment: Assessment): WorksheetSection[] {
  const { criteria, breakEvens, marks, speeds, notAssessed, limitsOfUse } = assessment;
  const all: readonly WorksheetSection[] = [
    { id: 'head', title: 'Verdict', lines: [...said(assessment.headline), plain(completedFor(assessment))] },
    { id: 'ledger', title: 'What costs the runway', lines: stairLines(assessment) },
    {
      id: 'criteria',
      title: 'Criteria',
      lines: criteria.map((each) => ({ ...plain(criterionSentence(each), each.steps), verdict: each.verdict })),
    },
    { id: 'why', title: 'Why', lines: said(assessment.reasons) },
    { id: 'choices', title: 'Choices made on the way', lines: said(decisions(assessment)) },
    {
      id: 'break-evens',
      title: 'Held against the distance available, everything else as it is',
      lines: breakEvens.map((each) => plain(breakEvenSentence(each))),
    },
    {
      id: 'marks',
      title: 'Marks on the ground',
      lines: marks.map((each) => plain(markSentence(each), each.steps)),
    },
    {
      id: 'speeds',
      title: 'Speeds',
      lines: speeds.map(({ name, speed, calibrated, steps }) =>
        plain(`${name}: ${speed.value} KIAS${calibrated === undefined ? '' : ` (${calibrated.value} KCAS)`}`, steps),
      ),
    },
    {
      id: 'first-principles',
      title: 'From first principles, beside the factors',
      lines: said(assessment.estimates),
    },
    { id: 'advice', title: 'Advice', lines: said(assessment.advice) },
    { id: 'hazards', title: 'Hazards', lines: said(assessment.hazards) },
    { id: 'data-notes', title: 'Data notes', lines: said(assessment.dataNotes) },
    { id: 'inputs', title: 'What was put in', lines: inputLines(assessment).map((each) => plain(each)) },
    { id: 'not-assessed', title: 'Not assessed', lines: [plain(`${notAssessed.join('; ')}.`)] },
    { id: 'limits-of-use', title: 'Limits of use', lines: limitsOfUse.map((each) => plain(each)) },
  ];
  return all.filter(({ lines }) => lines.length > 0);
}

function plain(sentence: string, steps: readonly number[] = []): WorksheetLine {
  return { sentence, steps };
}

/** Sentences, each once. */
function said(sentences: readonly Sentence[]): WorksheetLine[] {
  const once = new Map(sentences.map((each) => [each.text, each]));
  return [...once.values()].map(({ text, steps }) => plain(text, steps));
}

/** What no formula decides: which law was used, what got no credit, what is a bound. */
function decisions({ trace }: Assessment): Sentence[] {
  return trace.flatMap((entry) => (entry.kind === 'decision' ? [entry] : []));
}
