import type { FormulaRecord } from '../sources/index.ts';
import { approachSpeed, approachSpeedDomain, gustIncrement, gustIncrementDomain } from './gust-addition.ts';

export const gustIncrementRecord = {
  id: 'airspeed.gust-increment',
  title: 'Gust increment',
  equation: '\\Delta W = G - W',
  formula: gustIncrement,
  domain: gustIncrementDomain,
  inputs: {
    meanSpeed: { symbol: 'W', meaning: 'mean speed of the wind' },
    gust: { symbol: 'G', meaning: 'speed of the gusts' },
  },
  outputs: { result: { symbol: '\\Delta W', unit: 'kt', meaning: 'gust increment' } },
  citations: [{ source: 'faa-afh', locator: 'ch. 9, gusts on the approach', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof gustIncrement>;

export const approachSpeedRecord = {
  id: 'airspeed.approach-speed',
  title: 'Approach speed in gusts',
  equation: 'V = V_\\mathrm{pub} + \\tfrac{1}{2}\\Delta W',
  formula: approachSpeed,
  domain: approachSpeedDomain,
  inputs: {
    publishedSpeed: { symbol: 'V_\\mathrm{pub}', meaning: 'approach speed of the manual' },
    gustIncrement: { symbol: '\\Delta W', meaning: 'gust increment' },
  },
  outputs: { result: { symbol: 'V', unit: 'kias', meaning: 'approach speed, unrounded' } },
  citations: [{ source: 'faa-afh', locator: 'ch. 9, half the gust increment is added', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof approachSpeed>;
