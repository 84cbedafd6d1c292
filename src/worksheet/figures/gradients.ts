import { type Criterion, marginInWords, type ObstacleAhead, verdictInWords } from '../../assessment/index.ts';
import { formatNumber } from '../../units/index.ts';
import type { UnitWord } from '../../units/unit-table.ts';
import type { Assessment } from '../ledger.ts';
import { cut, roundStep, wrapped } from './layout.ts';
import { box, hatching, line, svg, words } from './svg.ts';

const width = 400;
const top = 26;
const base = 196;
const axis = 34;
const barsEnd = 290;
const edge = 398;
/** More bars than this are no longer read one by one. */
const mostBars = 4;

/**
 * The climb-out as gradients, not heights: for each obstacle an upright bar as tall as the gradient that it demands from
 * the 50 ft point, and one level line for the gradient achieved over the ground.
 *
 * @param assessment - what `assessTakeoff` or `assessLanding` returned.
 * @returns an SVG element with its text alternative; undefined for a landing, and where there is no bar to draw.
 */
export function gradientsFigure(assessment: Assessment): string | undefined {
  if (!('climbOut' in assessment) || assessment.climbOut === undefined) return undefined;
  const { achieved, obstacles } = assessment.climbOut;
  if (achieved === undefined) return undefined;
  const criteria = assessment.criteria.filter(({ id }) => id === 'obstacle');
  const all = obstacles.map((each, i) => ({ ...each, judged: criteria[i] }));
  const demanding = all.filter((each): each is Demand => each.required !== undefined).sort(byDemand);
  if (demanding.length === 0) return undefined;
  const shownBars = demanding.slice(0, mostBars);
  const notes = [
    ...all.filter(({ required }) => required === undefined).map(withoutBar),
    ...leftOut(demanding.slice(mostBars)),
  ].map((each) => cut(each, edge - axis, 11));
  const y = upright(achieved.value, shownBars);
  const foot = base + 46;
  return svg({
    width,
    height: foot + notes.length * 15,
    title: 'The climb-out as gradients over the ground, in percent',
    description: descriptionOf(achieved.value, all),
    parts: [
      ...scale(y),
      ...shownBars.flatMap((each, i) => bar(y, each, achieved.value, i, shownBars.length)),
      ...level(y, achieved.value),
      ...notes.map((each, i) => words(axis, foot + 8 + i * 15, each, { size: 11 })),
    ],
  });
}

interface Judgement extends ObstacleAhead {
  readonly judged: Criterion | undefined;
}

type Demand = Judgement & Required<Pick<ObstacleAhead, 'required'>>;

const byDemand = (a: Demand, b: Demand) => b.required.value - a.required.value;
const percent = (value: number, rounding: 'up' | 'down') => `${formatNumber(value, { decimals: 1, rounding })} %`;

interface Upright {
  (value: number): number;
  readonly step: number;
  readonly from: number;
  readonly to: number;
}

/** From nothing, or from the loss of height where there is no climb; a demand far beyond any climb leaves the scale. */
function upright(achieved: number, bars: readonly Demand[]): Upright {
  const greatest = Math.max(achieved, ...bars.map(({ required }) => required.value));
  const seen = Math.min(greatest, Math.max(40, 4 * achieved));
  const lowest = Math.min(0, achieved);
  const step = roundStep(seen - lowest, 6);
  const from = Math.floor(lowest / step) * step;
  const to = Math.ceil((seen * 1.02) / step) * step;
  const y = (value: number) => base - ((Math.min(value, to) - from) / (to - from)) * (base - top);
  return Object.assign(y, { step, from, to });
}

function scale(y: Upright): string[] {
  const parts = [
    line([
      [axis, y(y.from)],
      [axis, y(y.to)],
    ]),
    line([
      [axis, y(0)],
      [barsEnd, y(0)],
    ]),
  ];
  for (let value = y.from; value <= y.to + 1e-9; value += y.step) {
    parts.push(
      line([
        [axis - 4, y(value)],
        [axis, y(value)],
      ]),
    );
    parts.push(
      words(axis - 7, y(value) + 3.5, formatNumber(value, { decimals: y.step < 1 ? 1 : 0 }), {
        anchor: 'end',
        size: 10,
      }),
    );
  }
  return [...parts, words(axis - 7, top - 12, '%', { anchor: 'end', size: 10 })];
}

function bar(y: Upright, { name, required, judged }: Demand, achieved: number, i: number, count: number): string[] {
  const slot = (barsEnd - axis - 8) / count;
  const middle = axis + 8 + slot * (i + 0.5);
  const wide = Math.min(38, slot * 0.5);
  const x = middle - wide / 2;
  const head = y(Math.max(0, required.value));
  const missing = Math.min(y(Math.max(0, achieved)), y(0)) - head;
  const isBroken = required.value > y.to;
  const label = { anchor: 'middle', size: 11 } as const;
  // The figure stands on its bar, or on the level line where that would run through it.
  const isCrossed = y(achieved) < head + 1 && y(achieved) > head - 16;
  const foot = isCrossed ? y(achieved) : head;
  return [
    box({ x, y: head, width: wide, height: y(0) - head }, { tinted: true }),
    hatching({ x, y: head, width: wide, height: missing }),
    ...(isBroken
      ? [
          line(
            [
              [x - 5, head + 16],
              [x + wide / 3, head + 10],
              [x + (wide * 2) / 3, head + 18],
              [x + wide + 5, head + 12],
            ],
            { width: 3 },
          ),
        ]
      : []),
    words(middle, foot - 5, required.value <= 0 ? 'asks none' : percent(required.value, 'up'), {
      ...label,
      bold: true,
    }),
    ...[...wrapped(name, slot - 6, 11, 2), outcomeOf(judged)].map((each, row, { length }) =>
      words(
        middle,
        base + 15 + row * 12,
        each,
        row === length - 1 ? { anchor: 'middle', size: 10, bold: true } : label,
      ),
    ),
  ];
}

/** In so few words that they stand under a bar: how many percentage points. */
function outcomeOf(judged: Criterion | undefined): string {
  if (judged === undefined || judged.verdict === 'undetermined') return verdictInWords('undetermined');
  const points = formatNumber(Math.abs(judged.margin.value), { decimals: 1 });
  return `${points} ${judged.margin.value < 0 ? 'short' : 'to spare'}`;
}

function level(y: Upright, achieved: number): string[] {
  const at = y(achieved);
  return [
    line(
      [
        [axis, at],
        [barsEnd + 6, at],
      ],
      { width: 2.4 },
    ),
    words(barsEnd + 12, at - 2, percent(achieved, 'down'), { bold: true }),
    words(barsEnd + 12, at + 11, 'achieved over', { size: 11 }),
    words(barsEnd + 12, at + 24, 'the ground', { size: 11 }),
  ];
}

function withoutBar({ name, judged }: Judgement): string {
  const isBefore = judged?.reasons.some(({ code }) => code === 'obstacle-before-screen') === true;
  const why = isBefore ? 'stands before the 50 ft point, ' : '';
  return `${name}: ${why}${verdictInWords(judged?.verdict ?? 'undetermined')}`;
}

function leftOut(others: readonly Demand[]): string[] {
  const [first] = others;
  if (first === undefined) return [];
  return [`${others.length} more demand at most ${percent(first.required.value, 'up')}`];
}

function descriptionOf(achieved: number, all: readonly Judgement[]): string {
  const each = all.map((obstacle) => {
    const { name, required, judged } = obstacle;
    if (required === undefined) return `${withoutBar(obstacle)}.`;
    const verdict = verdictInWords(judged?.verdict ?? 'undetermined');
    const margin =
      judged === undefined || judged.verdict === 'undetermined'
        ? ''
        : `, ${marginInWords(judged.margin.value, judged.margin.unit as UnitWord)}`;
    return `${name} demands ${percent(required.value, 'up')}: ${verdict}${margin}.`;
  });
  return [`${percent(achieved, 'down')} achieved over the ground.`, ...each].join(' ');
}
