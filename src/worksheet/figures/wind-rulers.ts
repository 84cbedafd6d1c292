import type { WindLimitFound, WindOnRunway } from '../../assessment/index.ts';
import {
  formatAcrossRunway,
  formatAlongRunway,
  formatNumber,
  formatValue,
  type Knots,
  roundUp,
} from '../../units/index.ts';
import { convert } from '../../units/unit-table.ts';
import type { Assessment } from '../ledger.ts';
import { widthOf } from './layout.ts';
import { box, hatching, line, svg, wedge, words } from './svg.ts';

const width = 400;
const left = 14;
const right = 386;
const rowHeight = 15;

/**
 * The wind on two rulers: the crosswind in knots against each limit, a tick named by its status, with the reported
 * spread as a bar and its worst end marked; below it the head and tailwind, with the part of it that is used.
 *
 * @param assessment - what `assessTakeoff` or `assessLanding` returned.
 * @returns an SVG element with its text alternative.
 */
export function windRulersFigure(assessment: Assessment): string {
  const { across, along } = assessment.windOnRunway;
  const first = acrossRuler(across, 12);
  const second = alongRuler(along, first.end + 30);
  return svg({
    width,
    height: second.end + 4,
    title: 'The wind on two rulers, in knots',
    description: `${acrossInWords(across)} ${alongInWords(along)}`,
    parts: [...first.parts, ...second.parts],
  });
}

interface Ruler {
  readonly parts: readonly string[];
  readonly end: number;
}

type Across = WindOnRunway['across'];
type Along = WindOnRunway['along'];
type Scale = (knots: number) => number;

const inKnots = ({ speed }: WindLimitFound) => convert(speed.value, speed.unit, 'kt') as number;
const limitInWords = ({ speed, status, binds }: WindLimitFound) =>
  `${formatValue(speed.value, speed.unit, { decimals: Number.isInteger(speed.value) ? 0 : 1, rounding: 'down' })} ${status}${binds ? '' : ', informs only'}`;

/** Up to the next five knots, with room for the eye. */
const upToFive = (knots: number) => Math.max(10, Math.ceil((knots + 1) / 5) * 5);

function acrossRuler({ least, greatest, from, limits }: Across, top: number): Ruler {
  const end_kt = upToFive(Math.max(greatest.value, ...limits.map(inKnots)));
  const x: Scale = (knots) => left + (knots / end_kt) * (right - left);
  const ruler = top + 10 + limits.length * rowHeight;
  const worst = from === 'neither side' ? 'no crosswind' : sideInWords(greatest.value, from);
  return {
    parts: [
      words(left, top, 'Crosswind, kt', { bold: true }),
      ...edge(x, ruler, 0, end_kt),
      ...limitTicks(
        limits.map((each) => ({ at: x(inKnots(each)), text: limitInWords(each) })),
        ruler,
      ),
      ...reported(x(least.value), x(greatest.value), ruler, x(greatest.value)),
      ...worstEnd(x(greatest.value), ruler, worst),
    ],
    end: ruler + 62,
  };
}

function alongRuler({ least, greatest, used, limits }: Along, top: number): Ruler {
  const tail_kt = upToFive(Math.max(-least.value, -used.value, ...limits.map(inKnots)));
  const head_kt = upToFive(Math.max(greatest.value, used.value));
  const x: Scale = (knots) => left + ((knots + tail_kt) / (tail_kt + head_kt)) * (right - left);
  const ruler = top + 10 + Math.max(1, limits.length) * rowHeight;
  return {
    parts: [
      words(left, top, 'Tailwind, kt', { bold: true }),
      words(right, top, 'Headwind, kt', { bold: true, anchor: 'end' }),
      ...edge(x, ruler, -tail_kt, head_kt),
      ...zeroLine(x(0), ruler),
      ...limitTicks(
        limits.map((each) => ({ at: x(-inKnots(each)), text: limitInWords(each) })),
        ruler,
        x(0),
      ),
      ...reported(x(least.value), x(greatest.value), ruler, x(used.value), x(0)),
      ...worstEnd(x(used.value), ruler, `used: ${alongShort(used.value)}`),
    ],
    end: ruler + 62,
  };
}

/** The ruler's own edge: a tick for each knot, a longer one with its number for each five. */
function edge(x: Scale, at: number, from_kt: number, to_kt: number): string[] {
  const parts = [
    line(
      [
        [x(from_kt), at],
        [x(to_kt), at],
      ],
      { width: 1.4 },
    ),
  ];
  const fine = to_kt - from_kt > 60 ? 5 : 1;
  const numbered = to_kt - from_kt > 60 ? 10 : 5;
  for (let knots = from_kt; knots <= to_kt; knots += fine) {
    const isNumbered = knots % numbered === 0;
    parts.push(
      line([
        [x(knots), at],
        [x(knots), at + (isNumbered ? 8 : 4)],
      ]),
    );
    if (isNumbered) {
      parts.push(words(x(knots), at + 19, formatNumber(Math.abs(knots)), { anchor: 'middle', size: 10 }));
    }
  }
  return parts;
}

/**
 * Limits stand up from the ruler, each with its name beside the top of its line; the farther from the outer end, the
 * taller, so that no line runs through a name.
 */
function limitTicks(limits: readonly { at: number; text: string }[], ruler: number, zero?: number): string[] {
  const outwards = [...limits].sort((a, b) => (zero === undefined ? a.at - b.at : b.at - a.at));
  return outwards.flatMap(({ at, text }, row) => {
    const head = ruler - 8 - row * rowHeight;
    const wide = widthOf(text, 11) + 5;
    const isLeft = zero === undefined ? at - wide >= left - 10 : at + wide > width;
    return [
      line(
        [
          [at, ruler],
          [at, head - 9],
        ],
        { width: 2.2 },
      ),
      words(isLeft ? at - 5 : at + 5, head, text, { anchor: isLeft ? 'end' : 'start', size: 11 }),
    ];
  });
}

/** Neither headwind nor tailwind; it leaves out the number in its way. */
function zeroLine(at: number, ruler: number): string[] {
  const parts = [
    [ruler - 5, ruler + 9],
    [ruler + 22, ruler + 38],
  ] as const;
  return parts.map(([from, to]) =>
    line(
      [
        [at, from],
        [at, to],
      ],
      { width: 1.6 },
    ),
  );
}

/** The spread of the report as a hatched bar; a report without spread is one line. Its name stands clear of the worst end. */
function reported(from: number, to: number, ruler: number, worst: number, zero = left): string[] {
  const bar = { x: from, y: ruler + 25, width: Math.max(0, to - from), height: 10 };
  const end = line(
    [
      [to, ruler + 24],
      [to, ruler + 36],
    ],
    { width: 3 },
  );
  return [nameOfReport(from, to, ruler, worst, zero), ...(bar.width < 1 ? [end] : [hatching(bar, 4), box(bar)])];
}

function nameOfReport(from: number, to: number, ruler: number, worst: number, zero: number): string {
  const size = 10;
  const wide = widthOf('reported', size) + 6;
  if (from - wide > left && (from <= zero || from - wide > zero)) {
    return words(from - 5, ruler + 34, 'reported', { anchor: 'end', size });
  }
  if (to + wide < width) return words(to + 6, ruler + 34, 'reported', { size });
  const isWorstAtLeft = Math.abs(worst - from) < Math.abs(worst - to);
  return isWorstAtLeft
    ? words(to, ruler + 47, 'reported', { anchor: 'end', size })
    : words(from, ruler + 47, 'reported', { size });
}

function worstEnd(at: number, ruler: number, text: string): string[] {
  const wide = widthOf(text, 11.5);
  const anchor = at + wide / 2 > width - 4 ? 'end' : at - wide / 2 < 4 ? 'start' : 'middle';
  const x = anchor === 'end' ? width - 4 : anchor === 'start' ? 4 : at;
  return [wedge([at, ruler + 37], 'up', 4.5), words(x, ruler + 57, text, { anchor, size: 11.5, bold: true })];
}

function sideInWords(knots: number, from: Across['from']): string {
  if (from === 'left' || from === 'right') return formatAcrossRunway((from === 'left' ? -knots : knots) as Knots);
  return `${formatNumber(roundUp(knots))} kt from either side`;
}

function alongShort(knots: number): string {
  return knots === 0 ? 'no wind' : formatAlongRunway(knots as Knots);
}

function acrossInWords({ least, greatest, from, limits }: Across): string {
  if (from === 'neither side') return `No crosswind. ${limitsInWords(limits)}`;
  const worst = sideInWords(greatest.value, from);
  return `Crosswind: from ${formatNumber(roundUp(least.value))} kt to ${worst} at worst. ${limitsInWords(limits)}`;
}

function alongInWords({ least, greatest, used, limits }: Along): string {
  const spread = `from ${alongShort(least.value)} to ${alongShort(greatest.value)}`;
  return `Along the runway: ${spread}; used: ${alongShort(used.value)}. ${limitsInWords(limits)}`;
}

function limitsInWords(limits: readonly WindLimitFound[]): string {
  return limits.length === 0 ? 'No limit is given.' : `Limits: ${limits.map(limitInWords).join(', ')}.`;
}
