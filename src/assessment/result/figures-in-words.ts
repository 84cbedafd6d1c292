import { asGiven, decimalsGiven } from '../../units/as-given.ts';
import { formatNumber, formatSlope, formatValue, type Percent, roundUp } from '../../units/index.ts';
import type { UnitWord } from '../../units/unit-table.ts';
import type { Parameters } from './parameters.ts';

/** A figure that the manual prints, as it prints it. */
export const asPrinted = (value: unknown, unit: unknown) => asGiven({ value: value as number, unit: unit as UnitWord });

/** A limit with its decimals, rounded down: 7.7 m/s is not 8. */
export const limited = (value: unknown, unit: unknown) =>
  formatValue(value as number, unit as UnitWord, { decimals: tenths(value), rounding: 'down' });

/** A figure rounded to the nearest: what counts neither way, and what was rounded before. */
export const figure = (value: unknown, decimals = 0) => formatNumber(value as number, { decimals });

/** What counts against the pilot. */
export const figureUp = (value: unknown, decimals = 0) => formatNumber(value as number, { decimals, rounding: 'up' });

/** What counts for the pilot. */
export const figureDown = (value: unknown, decimals = 0) =>
  formatNumber(value as number, { decimals, rounding: 'down' });

/** One decimal for what is not whole; a binary tail is none. */
const tenths = (value: unknown) => (decimalsGiven(value as number) === 0 ? 0 : 1);

/** A factor with the two decimals that are usual, or with the third where it is printed. */
export const factorFigure = (value: unknown) => figure(value, Math.min(3, Math.max(2, decimalsGiven(value as number))));

/** A slope that is too steep, never as if it were not. */
export const steepSlope = (value: unknown) => {
  const percent = value as number;
  return formatSlope((Math.sign(percent) * roundUp(Math.abs(percent), 0.1)) as Percent);
};

/** Two figures that bound a third; one where they are the same. */
export const band = (low: unknown, high: unknown) =>
  low === high ? figure(low, 2) : `${figureDown(low, 2)} to ${figureUp(high, 2)}`;

/** The value for which a table was asked. */
export function asked({ given, unit }: Parameters): string {
  return formatValue(given as number, unit as UnitWord, { decimals: 1 });
}

/** The same where it is off the table, never as if it were on it. */
export function askedBeyond({ given, max, unit }: Parameters): string {
  const rounding = (given as number) > (max as number) ? 'up' : 'down';
  return formatValue(given as number, unit as UnitWord, { decimals: 1, rounding });
}

/** A clearance without a sign. */
export function aboveOrBelow(feet: number): string {
  return feet < 0 ? `${figure(-feet)} ft below its top` : `${figure(feet)} ft above its top`;
}
