import { type Criterion, marginInWords, type Stairs, verdictInWords } from '../../assessment/index.ts';
import { formatNumber } from '../../units/index.ts';
import type { UnitWord } from '../../units/unit-table.ts';
import { type Assessment, markInWords, shown, stairInWords } from '../ledger.ts';
import { cut, roundStep, spread, wrapped } from './layout.ts';
import { hatching, line, svg, wedge, words } from './svg.ts';

const width = 420;
const top = 34;
const bottom = 330;
const axis = 34;
const marksEnd = 138;
const stairsStart = 140;
const edge = 418;

const names: Readonly<Record<string, string>> = {
  manual: "manual's figure",
  mass: 'mass',
  elevation: 'altitude',
  temperature: 'temperature',
  wind: 'wind used',
};

/**
 * The distance as stairs: an upright scale in metres, each correction a step from the manual's figure up to the distance
 * required, a ruled line for the distance available, and the points at which to give up as ticks on the scale.
 *
 * @param assessment - what `assessTakeoff` or `assessLanding` returned.
 * @returns an SVG element with its text alternative; undefined where the distance is undetermined.
 */
export function stairsFigure(assessment: Assessment): string | undefined {
  const { stairs } = assessment;
  const judged = assessment.criteria.find(({ id }) => id.endsWith('-distance'));
  if (stairs === undefined || judged === undefined) return undefined;
  const lost_m = lostOnApproach(judged);
  const marks = marksOf(assessment);
  const highest = Math.max(
    stairs.available.value + lost_m,
    ...stairs.steps.map(({ total }) => total.value),
    ...marks.map(({ at_m }) => at_m),
  );
  const step = roundStep(highest, 10);
  const end_m = Math.ceil((highest * 1.02) / step) * step;
  // What obstacles take may be more than there is; the line then lies at the foot.
  const y = (metres: number) => bottom - (Math.max(0, metres) / end_m) * (bottom - top);
  const treadLabels = labelsOfTreads(y, stairs, lost_m);
  const markLabels = labelsOfMarks(y, marks, stairs.available.value);
  const lowest = Math.max(...[...treadLabels, ...markLabels].map(({ centre, height }) => centre + height / 2));
  return svg({
    width,
    height: Math.max(bottom + 12, y(stairs.available.value) + 36, lowest + 2),
    title: `The distance as stairs, in metres: ${titleOf(assessment)}`,
    description: descriptionOf(assessment, stairs, judged, lost_m),
    parts: [
      ...scale(y, step, end_m),
      ...ruledLine(y, stairs, judged, lost_m),
      ...treads(y, stairs, treadLabels),
      ...ticks(markLabels),
    ],
  });
}

type Scale = (metres: number) => number;

/** `Take-off on 28` */
function titleOf({ headline }: Assessment): string {
  return (headline[0]?.text ?? '').split(':')[0] ?? '';
}

function lostOnApproach({ reasons }: Criterion): number {
  return Number(reasons.find(({ code }) => code === 'approach-loss')?.parameters['lost_m'] ?? 0);
}

function scale(y: Scale, step: number, end_m: number): string[] {
  const numbers: string[] = [];
  for (let metres = 0; metres <= end_m + 1e-9; metres += step) {
    numbers.push(
      line([
        [axis - 4, y(metres)],
        [axis, y(metres)],
      ]),
    );
    numbers.push(words(axis - 7, y(metres) + 3.5, formatNumber(metres), { anchor: 'end', size: 10 }));
  }
  return [
    line([
      [axis, y(0)],
      [axis, y(end_m)],
    ]),
    words(axis - 7, top - 14, 'm', { anchor: 'end', size: 10 }),
    ...numbers,
  ];
}

/** The distance available, with what is left or missing below and above it. */
function ruledLine(y: Scale, { available, required, steps }: Stairs, judged: Criterion, lost_m: number): string[] {
  const at = y(available.value);
  const x = columnOf(steps.length);
  const outcome =
    judged.verdict === 'undetermined'
      ? verdictInWords(judged.verdict)
      : marginInWords(judged.margin.value, judged.margin.unit as UnitWord);
  return [
    line(
      [
        [axis, at - 1.5],
        [edge, at - 1.5],
      ],
      { width: 1.2 },
    ),
    line(
      [
        [axis, at + 1.5],
        [edge, at + 1.5],
      ],
      { width: 1.2 },
    ),
    words(x, at - 6, `${shown(available)} available`, { bold: true }),
    words(x, at + 15, `${shown(required)} required: ${outcome}`, { size: 11 }),
    ...(lost_m === 0 ? [] : [words(x, at + 29, `${formatNumber(lost_m)} m lost on the approach`, { size: 11 })]),
  ];
}

function treadWidth(count: number): number {
  return Math.max(8, Math.min(20, 84 / count));
}

/** Where the words to the right of the stairs begin. */
function columnOf(count: number): number {
  return stairsStart + treadWidth(count) * count + 14;
}

function labelsOfTreads(y: Scale, { steps, available }: Stairs, lost_m: number) {
  const labels = steps.map(({ step, factor, total }, i) => ({
    at: y(total.value),
    height: 15,
    end: stairsStart + treadWidth(steps.length) * (i + 1),
    isAbove: total.value > available.value,
    text: `${formatNumber(total.value, { decimals: 1 })} ${names[step] ?? step}${i === 0 ? '' : ` \u00d7 ${formatNumber(factor, { decimals: 3 })}`}`,
  }));
  const line_y = y(available.value);
  const belowWords = line_y + (lost_m === 0 ? 21 : 35);
  return [
    ...placedIn(
      labels.filter(({ isAbove }) => !isAbove),
      belowWords,
      bottom + 8,
    ),
    ...placedIn(
      labels.filter(({ isAbove }) => isAbove),
      4,
      line_y - 18,
    ),
  ];
}

function treads(y: Scale, { steps, available, required }: Stairs, labels: ReturnType<typeof labelsOfTreads>): string[] {
  const wide = treadWidth(steps.length);
  const column = columnOf(steps.length);
  const start = (i: number) => stairsStart + wide * i;
  const outline = steps.flatMap(({ total }, i) => [
    [start(i), y(total.value)] as const,
    [start(i + 1), y(total.value)] as const,
  ]);
  const last = { x: start(steps.length - 1), width: wide };
  const [high, low] = [y(required.value), y(available.value)];
  const spare = [
    [last.x + wide / 2, high - 3],
    [last.x + wide / 2, low + 4],
  ] as const;
  return [
    line(outline, { width: 2.2 }),
    // What is missing is hatched; what is spare is a bracket between the top step and the line.
    high < low ? hatching({ ...last, y: high, height: low - high }) : line(spare, { accent: true, dashes: '2 2' }),
    ...labels.flatMap(({ at, end, centre, text }) => [
      line(
        [
          [end + 2, at],
          [column - 12, at],
          [column - 3, centre],
        ],
        { accent: true, dashes: '1 2' },
      ),
      words(column, centre + 4, cut(text, edge - column, 11.5), { size: 11.5 }),
    ]),
  ];
}

function placedIn<T extends { at: number; height: number }>(labels: readonly T[], from: number, to: number) {
  const centres = spread(labels, from, to);
  return labels.map((each, i) => ({ ...each, centre: centres[i] as number }));
}

interface MarkDrawn {
  readonly name: string;
  readonly at_m: number;
  readonly text: string;
}

/** The acceleration check and the latest points; where one aims is none of them. */
function marksOf({ marks }: Assessment): MarkDrawn[] {
  return marks.flatMap(({ id, at, speed }) => {
    if (at === undefined || id === 'aiming-point') return [];
    const due = speed === undefined ? '' : `, ${shown(speed)} due`;
    const where = at.value < 0 ? `${formatNumber(-at.value)} m before the threshold` : `${shown(at)}${due}`;
    return [{ name: markInWords(id), at_m: at.value, text: `${markInWords(id)} ${where}` }];
  });
}

function labelsOfMarks(y: Scale, marks: readonly MarkDrawn[], available_m: number) {
  const labels = marks.map(({ at_m, text }) => {
    const lines = wrapped(text, marksEnd - axis - 22, 11, 4);
    return { at: y(at_m), at_m, height: lines.length * 12 + 5, lines };
  });
  const line_y = y(available_m);
  return [
    ...placedIn(
      labels.filter(({ at_m }) => at_m <= available_m),
      line_y + 4,
      bottom + 10,
    ),
    ...placedIn(
      labels.filter(({ at_m }) => at_m > available_m),
      4,
      line_y - 4,
    ),
  ];
}

function ticks(labels: ReturnType<typeof labelsOfMarks>): string[] {
  return labels.flatMap(({ at, at_m, centre, lines }) => [
    wedge([axis + 1, at], at_m < 0 ? 'down' : 'left', 4),
    line(
      [
        [axis + 6, at],
        [axis + 13, at],
        [axis + 18, centre],
      ],
      { accent: true },
    ),
    ...lines.map((each, i) => words(axis + 21, centre + 4 + (i - (lines.length - 1) / 2) * 12, each, { size: 11 })),
  ]);
}

function descriptionOf(assessment: Assessment, stairs: Stairs, judged: Criterion, lost_m: number): string {
  const [manual, ...rest] = stairs.steps.map(
    ({ step, total }) => `${stairInWords(step)} ${formatNumber(total.value, { decimals: 1 })} m`,
  );
  const verdict = verdictInWords(judged.verdict);
  const outcome =
    judged.verdict === 'undetermined'
      ? verdict
      : `${verdict}, ${marginInWords(judged.margin.value, judged.margin.unit as UnitWord)}`;
  const lost = lost_m === 0 ? '' : `, after ${formatNumber(lost_m)} m lost on the approach`;
  return [
    `${manual}; ${rest.join('; ')}.`,
    `Required ${shown(stairs.required)} of ${shown(stairs.available)} available${lost}: ${outcome}.`,
    ...marksOf(assessment).map(({ text }) => `${text}.`),
  ].join(' ');
}
