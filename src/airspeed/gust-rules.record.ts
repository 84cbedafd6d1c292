import type { FormulaRecord } from '../sources/index.ts';
import {
  halfGustIncrement,
  halfGustIncrementDomain,
  quarterMeanOrHalfIncrement,
  quarterMeanOrHalfIncrementDomain,
} from './gust-rules.ts';

export const halfGustIncrementRecord = {
  id: 'airspeed.half-gust-increment',
  title: 'Addition of half the gust increment',
  equation: '\\Delta V = \\tfrac{1}{2}(G - W)',
  formula: halfGustIncrement,
  domain: halfGustIncrementDomain,
  inputs: {
    meanSpeed: { symbol: 'W', meaning: 'mean speed of the wind' },
    gust: { symbol: 'G', meaning: 'speed of the gusts' },
  },
  outputs: { result: { symbol: '\\Delta V', unit: 'kt', meaning: 'addition to the approach speed, unrounded' } },
  citations: [{ source: 'faa-afh', locator: 'ch. 9, p. 9-20 and 9-21 of edition C', access: 'read' }],
  homogeneous: true,
  checkValues: {
    nonePublished: 'the one handbook example states the approach speed itself, with the gust increment already taken',
  },
} satisfies FormulaRecord<typeof halfGustIncrement>;

export const quarterMeanOrHalfIncrementRecord = {
  id: 'airspeed.quarter-mean-or-half-increment',
  title: 'Addition of a quarter of the mean wind or half the gust increment',
  equation:
    '\\Delta V = \\begin{cases} \\max\\left(\\tfrac{1}{4}W, \\tfrac{1}{2}(G - W)\\right) & W > 16\\,\\mathrm{kt} \\\\ 0 & \\text{otherwise} \\end{cases}',
  formula: quarterMeanOrHalfIncrement,
  domain: quarterMeanOrHalfIncrementDomain,
  inputs: {
    meanSpeed: { symbol: 'W', meaning: 'mean speed of the wind' },
    gust: { symbol: 'G', meaning: 'speed of the gusts' },
  },
  outputs: { result: { symbol: '\\Delta V', unit: 'kt', meaning: 'addition to the approach speed, unrounded' } },
  citations: [{ source: 'danish-ppl-textbook', locator: 'p. 523', access: 'read' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof quarterMeanOrHalfIncrement>;
