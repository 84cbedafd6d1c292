import { demandWord } from './domain.ts';
import { roundDown, roundUp } from './rounding.ts';
import type { Quantity } from './tag.ts';
import type { UnitWord } from './unit-table.ts';

/** What follows the number, for a reader; the unit words of the code never reach a page. */
const shownAfter: { readonly [U in Exclude<UnitWord, ByHemisphere>]: string } = {
  m: ' m',
  ft: ' ft',
  km: ' km',
  NM: ' NM',
  ftElevation: ' ft elevation',
  mElevation: ' m elevation',
  ftHeight: ' ft',
  mHeight: ' m',
  ftPA: ' ft pressure altitude',
  mPA: ' m pressure altitude',
  ftDA: ' ft density altitude',
  mDA: ' m density altitude',
  ftGeopotential: ' ft geopotential altitude',
  mGeopotential: ' m geopotential altitude',
  ftGeometric: ' ft geometric altitude',
  mGeometric: ' m geometric altitude',
  kt: ' kt',
  mph: ' mph',
  mps: ' m/s',
  ftPerS: ' ft/s',
  kias: ' KIAS',
  kcas: ' KCAS',
  keas: ' KEAS',
  ktas: ' KTAS',
  mpsTAS: ' m/s true airspeed',
  ftPerSTAS: ' ft/s true airspeed',
  ktGS: ' kt ground speed',
  ftPerMin: ' ft/min',
  mpsVertical: ' m/s',
  degC: ' °C',
  degF: ' °F',
  K: ' K',
  degR: ' °R',
  degCDifference: ' °C',
  hPa: ' hPa',
  inHg: ' inHg',
  Pa: ' Pa',
  psf: ' lbf/ft²',
  psi: ' psi',
  inH2O: ' inH2O',
  ftPerHPa: ' ft/hPa',
  kg: ' kg',
  lb: ' lb',
  deg: '°',
  rad: ' rad',
  degPerYear: '° per year',
  degPerS: '°/s',
  radPerS: ' rad/s',
  degLatitude: '° latitude',
  degLongitude: '° longitude',
  degTrue: '° true',
  degMagnetic: '° magnetic',
  ratio: '',
  percent: ' %',
  ftPerNM: ' ft/NM',
  kgPerM3: ' kg/m³',
  slugPerFt3: ' slug/ft³',
  PaS: ' Pa s',
  slugPerFtS: ' slug/(ft s)',
  m2PerS: ' m²/s',
  ft2PerS: ' ft²/s',
  NPerM2: ' N/m²',
  lbfPerFt2: ' lbf/ft²',
  mps2: ' m/s²',
  ftPerS2: ' ft/s²',
  s2PerM2: ' s²/m²',
  s2PerFt2: ' s²/ft²',
  m2: ' m²',
  L: ' L',
  USgal: ' US gal',
  N: ' N',
  kgPerM: ' N/(m/s)²',
  s: ' s',
  min: ' min',
  year: '',
  nT: ' nT',
  nTPerYear: ' nT per year',
};

/** Quantities shown as so much to the east or to the west, never with a sign. */
type ByHemisphere = 'degEast' | 'degEastPerYear';

/** How to print a quantity. */
export interface FormatOptions {
  /** Decimal places; 0 if not given. */
  readonly decimals?: number;
  /** `nearest` if not given; `up` for what is required, `down` for what is available. */
  readonly rounding?: 'nearest' | 'up' | 'down';
}

/**
 * A number with a no-break space between thousands: `1 095`. The minus sign is the typographic one.
 *
 * @throws {@link DomainError} for a rounding of another name.
 *
 * @example
 * formatNumber(1094.6) // => '1\u00a0095'
 * formatNumber(770.2, { rounding: 'up' }) // => '771'
 * formatNumber(-12.25, { decimals: 1, rounding: 'down' }) // => '\u221212.3'
 */
export function formatNumber(value: number, options: FormatOptions = {}): string {
  const { decimals = 0, rounding = 'nearest' } = options;
  demandWord('rounding', rounding, ['nearest', 'up', 'down'], 'the ways to round');
  const step = 10 ** -decimals;
  const rounded = rounding === 'up' ? roundUp(value, step) : rounding === 'down' ? roundDown(value, step) : value;
  const [whole = '', fraction] = Math.abs(rounded).toFixed(decimals).split('.');
  const digits = whole.replace(/\B(?=(\d{3})+$)/g, '\u00a0') + (fraction === undefined ? '' : `.${fraction}`);
  const isNegative = rounded < 0 && Number(rounded.toFixed(decimals)) !== 0;
  return isNegative ? `\u2212${digits}` : digits;
}

/**
 * A quantity in words for a reader: `1 095 ft pressure altitude`, `190° true`, `3.0° W`.
 * A variation and its change are shown by hemisphere, never by sign.
 *
 * @example
 * formatQuantity(ftPA(1095), 'ftPA') // => '1\u00a0095 ft pressure altitude'
 * formatQuantity(degEast(-3), 'degEast', { decimals: 1 }) // => '3.0° W'
 */
export function formatQuantity<U extends UnitWord>(quantity: Quantity<U>, unit: U, options?: FormatOptions): string {
  return formatValue(quantity, unit, options);
}

/**
 * As {@link formatQuantity}, for a value and a unit word that come from a document.
 *
 * @example
 * formatValue(-3, 'degEast', { decimals: 1 }) // => '3.0° W'
 * formatValue(28, 'degC') // => '28 °C'
 */
export function formatValue(value: number, unit: UnitWord, options?: FormatOptions): string {
  if (unit !== 'degEast' && unit !== 'degEastPerYear') return `${formatNumber(value, options)}${shownAfter[unit]}`;
  const hemisphere = value < 0 ? 'W' : 'E';
  return `${formatNumber(Math.abs(value), options)}° ${hemisphere}${unit === 'degEastPerYear' ? ' per year' : ''}`;
}

/**
 * A slope in words, positive uphill in the direction of use.
 *
 * @example
 * formatSlope(percent(1.9)) // => 'uphill 1.9 %'
 * formatSlope(percent(-1.9)) // => 'downhill 1.9 %'
 * formatSlope(percent(0)) // => 'level'
 */
export function formatSlope(slope: Quantity<'percent'>): string {
  const shownSlope = formatNumber(Math.abs(slope), { decimals: 1 });
  if (Number(shownSlope) === 0) return 'level';
  return `${slope > 0 ? 'uphill' : 'downhill'} ${shownSlope} %`;
}

/**
 * A headwind or tailwind component in words, headwind positive; a headwind rounds down, a tailwind up.
 *
 * @example
 * formatAlongRunway(kt(4.7)) // => '4 kt headwind'
 * formatAlongRunway(kt(-3.2)) // => '4 kt tailwind'
 */
export function formatAlongRunway(component: Quantity<'kt'>): string {
  const knots = component < 0 ? roundUp(-component) : roundDown(component);
  return `${formatNumber(knots)} kt ${component < 0 ? 'tailwind' : 'headwind'}`;
}

/**
 * A crosswind component in words, positive from the right, rounded up.
 *
 * @example
 * formatAcrossRunway(kt(-8.3)) // => '9 kt from the left'
 * formatAcrossRunway(kt(0)) // => 'no crosswind'
 */
export function formatAcrossRunway(component: Quantity<'kt'>): string {
  const knots = roundUp(Math.abs(component));
  if (knots === 0) return 'no crosswind';
  return `${formatNumber(knots)} kt from the ${component < 0 ? 'left' : 'right'}`;
}
