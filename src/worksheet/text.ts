import {
  type Assessment,
  breakEvenSentence,
  completedFor,
  criterionSentence,
  markSentence,
  stairLines,
} from './ledger.ts';

const width = 88;

/**
 * A finished assessment as plain text: the ledger in sentences, with the metres that each costs at its right edge.
 *
 * @param assessment - what `assessTakeoff` or `assessLanding` returned.
 * @returns lines of text; the head is its first paragraph.
 */
export function worksheetText(assessment: Assessment): string {
  const lines = [
    ...assessment.headline.map(({ text }) => text),
    completedFor(assessment),
    '',
    ...stairLines(assessment).map(({ sentence, added = '', total = '' }) => ledgerLine(sentence, added, total)),
    '',
    ...assessment.criteria.map(criterionSentence),
    ...section('Why', texts(assessment.reasons)),
    ...section('Choices made on the way', decisions(assessment)),
    ...section(
      'Held against the distance available, everything else as it is',
      assessment.breakEvens.map(breakEvenSentence),
    ),
    ...section('Marks on the ground', assessment.marks.map(markSentence)),
    ...section(
      'Speeds',
      assessment.speeds.map(
        ({ name, speed, calibrated }) =>
          `${name} ${speed.value} KIAS${calibrated === undefined ? '' : ` (${calibrated.value} KCAS)`}`,
      ),
    ),
    ...section('From first principles, beside the factors', texts(assessment.estimates)),
    ...section('Advice', texts(assessment.advice)),
    ...section('Hazards', texts(assessment.hazards)),
    ...section('Data notes', texts(assessment.dataNotes)),
    ...section('Not assessed', [`${assessment.notAssessed.join('; ')}.`]),
    ...section('Limits of use', assessment.limitsOfUse),
  ];
  return `${lines.flatMap((line) => wrap(line)).join('\n')}\n`;
}

function texts(sentences: readonly { text: string }[]): string[] {
  return [...new Set(sentences.map(({ text }) => text))];
}

/** What no formula decides: which law was used, what got no credit, what is a bound. */
function decisions({ trace }: Assessment): string[] {
  return texts(trace.flatMap((entry) => (entry.kind === 'decision' ? [entry] : [])));
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', `${title}:`, ...lines.map((line) => `  ${line}`)];
}

function ledgerLine(sentence: string, added: string, total: string): string {
  return `${sentence.padEnd(width - 24)}${added.padStart(12)}${total.padStart(12)}`;
}

/** Breaks a long sentence at spaces; continued lines are indented. */
function wrap(line: string): string[] {
  if (line.length <= width) return [line];
  const indent = line.startsWith('  ') ? '    ' : '  ';
  const lines: string[] = [];
  let rest = line;
  while (rest.length > width) {
    const at = lastBreak(rest);
    if (at <= indent.length) break;
    lines.push(rest.slice(0, at));
    rest = indent + rest.slice(at + 1);
  }
  return [...lines, rest];
}

/** The last space that parts no number from its unit. */
function lastBreak(line: string): number {
  let at = line.lastIndexOf(' ', width);
  while (at > 0 && /\d/.test(line.charAt(at - 1)) && !/[A-Z(]/.test(line.charAt(at + 1)))
    at = line.lastIndexOf(' ', at - 1);
  return at;
}
