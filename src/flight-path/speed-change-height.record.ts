import type { FormulaRecord } from '../sources/index.ts';
import { heightForSpeedGain, heightForSpeedGainDomain } from './speed-change-height.ts';

export const heightForSpeedGainRecord = {
  id: 'flight-path.height-for-speed-gain',
  title: 'Height given up for speed',
  equation: 'h = \\frac{V_2^2 - V_1^2}{2g}',
  formula: heightForSpeedGain,
  domain: heightForSpeedGainDomain,
  inputs: {
    from: { symbol: 'V_1', meaning: 'speed before' },
    to: { symbol: 'V_2', meaning: 'speed after' },
  },
  outputs: { result: { symbol: 'h', unit: 'mHeight', meaning: 'height given up' } },
  citations: [{ source: 'mathematics', locator: 'exchange of potential and kinetic energy', access: 'derived' }],
  homogeneous: false,
  checkValues: { nonePublished: 'mechanics from first principles; no source prints an example' },
} satisfies FormulaRecord<typeof heightForSpeedGain>;
