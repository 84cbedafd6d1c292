import type { UnitWord } from '../units/unit-table.ts';

/** What one axis of a table, or one panel of a chart, may run along. */
export type AxisQuantity =
  | 'mass'
  | 'pressureAltitude'
  | 'densityAltitude'
  | 'temperature'
  | 'isaDeviation'
  | 'headwind'
  | 'slope'
  | 'indicatedAirspeed'
  | 'height';

/** The units that manuals print these quantities in. */
export type AxisUnit =
  | 'kg'
  | 'lb'
  | 'ftPA'
  | 'ftDA'
  | 'degC'
  | 'degF'
  | 'degCDifference'
  | 'kt'
  | 'percent'
  | 'kias'
  | 'ftHeight'
  | 'mHeight';

interface AxisFacts {
  /** In words, for a reader. */
  readonly words: string;
  /** The unit in which points are given to a reading. */
  readonly readingUnit: UnitWord;
  readonly units: readonly AxisUnit[];
}

/** Every axis quantity with its words and units. A headwind is positive, a slope is positive uphill in the direction of use. */
export const axisFacts: Readonly<Record<AxisQuantity, AxisFacts>> = {
  mass: { words: 'mass', readingUnit: 'kg', units: ['kg', 'lb'] },
  pressureAltitude: { words: 'pressure altitude', readingUnit: 'ftPA', units: ['ftPA'] },
  densityAltitude: { words: 'density altitude', readingUnit: 'ftDA', units: ['ftDA'] },
  temperature: { words: 'temperature', readingUnit: 'degC', units: ['degC', 'degF'] },
  isaDeviation: {
    words: 'deviation from the standard temperature',
    readingUnit: 'degCDifference',
    units: ['degCDifference'],
  },
  headwind: { words: 'headwind', readingUnit: 'kt', units: ['kt'] },
  slope: { words: 'slope', readingUnit: 'percent', units: ['percent'] },
  indicatedAirspeed: { words: 'indicated airspeed', readingUnit: 'kias', units: ['kias'] },
  height: { words: 'height above the surface', readingUnit: 'mHeight', units: ['ftHeight', 'mHeight'] },
};

export const axisQuantities = Object.keys(axisFacts) as readonly AxisQuantity[];
