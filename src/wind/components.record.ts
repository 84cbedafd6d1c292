import type { FormulaRecord } from '../sources/index.ts';
import { windComponents, windComponentsDomain } from './components.ts';

export const windComponentsRecord = {
  id: 'wind.components',
  title: 'Headwind and crosswind component',
  equation: 'H = W\\cos(\\varphi - \\theta), \\qquad X = W\\sin(\\varphi - \\theta)',
  formula: windComponents,
  domain: windComponentsDomain,
  inputs: {
    from: { symbol: '\\varphi', meaning: 'direction the wind blows from' },
    speed: { symbol: 'W', meaning: 'wind speed' },
    direction: { symbol: '\\theta', meaning: 'direction of the runway, against the same north' },
  },
  outputs: {
    headwind: { symbol: 'H', unit: 'kt', meaning: 'component along the runway, headwind positive' },
    crosswind: { symbol: 'X', unit: 'kt', meaning: 'component across the runway, from the right positive' },
  },
  citations: [
    { source: 'mathematics', locator: 'resolution of a vector', access: 'derived' },
    { source: 'faa-phak', locator: 'ch. 11, crosswind component chart', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof windComponents>;
