import type { FormulaRecord } from '../../sources/index.ts';
import { normalDeviate } from './normal-deviate.ts';

export const normalDeviateRecord = {
  id: 'study.normal-deviate',
  title: 'A normally distributed number from two evenly distributed ones',
  equation: 'z = \\sqrt{-2\\ln u_1}\\,\\cos(2\\pi u_2)',
  formula: normalDeviate,
  // A draw has no unit.
  domain: {},
  inputs: {
    first: { symbol: 'u_1', meaning: 'a draw above 0, up to 1' },
    second: { symbol: 'u_2', meaning: 'a draw from 0 to 1' },
  },
  outputs: { result: { symbol: 'z', unit: 'ratio', meaning: 'number with mean 0 and standard deviation 1' } },
  citations: [{ source: 'jcgm-101', locator: 'annex C.4, the method of Box and Muller', access: 'recalled' }],
  homogeneous: true,
  checkValues: { nonePublished: 'the guide prints the method and no figures; its distribution is tested' },
} satisfies FormulaRecord<typeof normalDeviate>;
