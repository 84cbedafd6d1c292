import type { FormulaRecord } from '../sources/index.ts';
import { crosswindByAnglePlusTwenty, crosswindByAnglePlusTwentyDomain } from './angle-plus-twenty.ts';

export const crosswindByAnglePlusTwentyRecord = {
  id: 'rules-of-thumb.crosswind-by-angle-plus-twenty',
  title: 'Crosswind by angle plus twenty',
  equation: 'X \\approx W\\min\\left(\\frac{\\varphi + 20}{100}, 1\\right)',
  formula: crosswindByAnglePlusTwenty,
  domain: crosswindByAnglePlusTwentyDomain,
  inputs: {
    windSpeed: { symbol: 'W', meaning: 'wind speed' },
    angle: { symbol: '\\varphi', meaning: 'angle between wind and runway' },
  },
  outputs: { result: { symbol: 'X', unit: 'kt', meaning: 'crosswind without its side, approximate' } },
  citations: [{ source: 'crosswind-rules-forum', locator: 'angle plus 20', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof crosswindByAnglePlusTwenty>;
