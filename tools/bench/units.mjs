// The same conversions with general unit libraries. They do more at run time: they parse unit names, check that
// dimensions agree, and carry the unit with the number. Here units are types, which are gone at run time.
import {
  feetFromMetres,
  ft,
  hectopascalsFromInchesOfMercury,
  inHg,
  kilogramsFromPounds,
  kt,
  lb,
  m,
  metresFromFeet,
  metresPerSecondFromKnots,
} from 'groundroll/units';
import Qty from 'js-quantities';
import { createUnit, unit } from 'mathjs';
import * as safeUnits from 'safe-units';
import { interleaved, shares, spread } from './harness.mjs';

const { feet, hours, kilograms, Measure, meters, nauticalMiles, pascals, pounds, seconds } = safeUnits;

createUnit('knot', '1852 m/hour');
createUnit('inchOfMercury', '3386.388640341 Pa');
const knots = nauticalMiles.per(hours);
const metersPerSecond = meters.per(seconds);
const hectopascals = Measure.of(100, pascals, 'hPa');
const inchesOfMercury = Measure.of(3386.388640341, pascals, 'inHg');

/** A unit library may have rounded the factor of a unit; what differs more is another conversion. */
const agreement = 1e-6;

const conversions = [
  {
    name: 'feet in metres',
    ours: (v) => metresFromFeet(ft(v)),
    mathjs: (v) => unit(v, 'ft').toNumber('m'),
    jsQuantities: (v) => Qty(v, 'ft').to('m').scalar,
    prepared: Qty.swiftConverter('ft', 'm'),
    safeUnits: (v) => Measure.of(v, feet).valueIn(meters),
  },
  {
    name: 'metres in feet',
    ours: (v) => feetFromMetres(m(v)),
    mathjs: (v) => unit(v, 'm').toNumber('ft'),
    jsQuantities: (v) => Qty(v, 'm').to('ft').scalar,
    prepared: Qty.swiftConverter('m', 'ft'),
    safeUnits: (v) => Measure.of(v, meters).valueIn(feet),
  },
  {
    name: 'knots in metres per second',
    ours: (v) => metresPerSecondFromKnots(kt(v)),
    mathjs: (v) => unit(v, 'knot').toNumber('m/s'),
    jsQuantities: (v) => Qty(v, 'kt').to('m/s').scalar,
    prepared: Qty.swiftConverter('kt', 'm/s'),
    safeUnits: (v) => Measure.of(v, knots).valueIn(metersPerSecond),
  },
  {
    name: 'pounds in kilograms',
    ours: (v) => kilogramsFromPounds(lb(v)),
    mathjs: (v) => unit(v, 'lb').toNumber('kg'),
    jsQuantities: (v) => Qty(v, 'lb').to('kg').scalar,
    prepared: Qty.swiftConverter('lb', 'kg'),
    safeUnits: (v) => Measure.of(v, pounds).valueIn(kilograms),
  },
  {
    name: 'inches of mercury in hectopascals',
    ours: (v) => hectopascalsFromInchesOfMercury(inHg(v)),
    mathjs: (v) => unit(v, 'inchOfMercury').toNumber('hPa'),
    jsQuantities: (v) => Qty(v, 'inHg').to('hPa').scalar,
    prepared: Qty.swiftConverter('inHg', 'hPa'),
    safeUnits: (v) => Measure.of(v, inchesOfMercury).valueIn(hectopascals),
  },
];

const libraries = ['ours', 'mathjs', 'jsQuantities', 'prepared', 'safeUnits'];

const share = shares(13);
const values = Float64Array.from({ length: 64 }, () => 1 + 100 * share());

/** A loop of its own for each conversion, as in an app's code. */
const over = (convert, name) =>
  new Function(
    'convert',
    'values',
    `return () => { /* ${name} */ let sum = 0; for (let i = 0; i < values.length; i += 1) sum += convert(values[i]); return sum; };`,
  )(convert, values);

/** Times conversions of units. */
export function measureUnits({ rounds }) {
  return {
    conversions: conversions.map((conversion) => {
      for (const library of libraries) {
        const [ours, theirs] = [conversion.ours(30), conversion[library](30)];
        if (Math.abs(theirs / ours - 1) > agreement) {
          throw new Error(`${conversion.name}: ${ours}, by ${library} ${theirs}`);
        }
      }
      const names = [...libraries, 'ours'];
      const times = interleaved(
        names.map((library, i) => ({
          run: over(conversion[library], `${conversion.name} ${library} ${i}`),
          per: values.length,
        })),
        { rounds },
      );
      const ns = Object.fromEntries(libraries.map((library, i) => [library, spread(times[i])]));
      return { name: conversion.name, ns, control_ns: spread(times[libraries.length]) };
    }),
  };
}
