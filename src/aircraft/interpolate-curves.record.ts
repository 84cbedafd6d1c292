import type { FormulaRecord } from '../sources/index.ts';
import { interpolateCurves } from './interpolate-curves.ts';

export const interpolateCurvesRecord = {
  id: 'aircraft.interpolate-curves',
  title: 'Reading between the digitised curves of a chart',
  equation:
    'y_c = y_1 + (y_2 - y_1)\\,\\frac{x - x_1}{x_2 - x_1}, \\qquad y = y_l + (y_u - y_l)\\,\\frac{a - a_l}{a_u - a_l}',
  formula: interpolateCurves,
  domain: {},
  inputs: {
    along: { symbol: 'x', meaning: 'where the panel is read' },
    at: { symbol: 'a', meaning: 'value of the family, or ordinate on the reference line' },
    lower: { symbol: 'l', meaning: 'piece of the curve at or below that value' },
    upper: { symbol: 'u', meaning: 'piece of the curve at or above that value' },
  },
  outputs: { result: { symbol: 'y', unit: 'data', meaning: 'ordinate, in the unit of the chart' } },
  citations: [
    { source: 'mathematics', locator: 'linear interpolation along and between curves', access: 'derived' },
    {
      source: 'trade-practice',
      locator: 'charts are entered at the reference line and followed along the guide lines',
      access: 'common-practice',
    },
  ],
  homogeneous: false,
  checkValues: {
    nonePublished: 'no chart with its digitised points and a printed answer was found in a source that may be copied',
  },
} satisfies FormulaRecord<typeof interpolateCurves>;
