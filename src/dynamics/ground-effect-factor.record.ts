import type { FormulaRecord } from '../sources/index.ts';
import { groundEffectFactor, groundEffectFactorDomain } from './ground-effect-factor.ts';

export const groundEffectFactorRecord = {
  id: 'dynamics.ground-effect-factor',
  title: 'Share of the induced drag left near the ground',
  equation: '\\varphi = \\frac{(16h/b)^2}{1 + (16h/b)^2}',
  formula: groundEffectFactor,
  domain: groundEffectFactorDomain,
  inputs: {
    wingHeight: { symbol: 'h', meaning: 'height of the wing over the surface' },
    wingSpan: { symbol: 'b', meaning: 'span' },
  },
  outputs: {
    result: { symbol: '\\varphi', unit: 'ratio', meaning: 'share of the induced drag' },
  },
  citations: [
    { source: 'anderson-aircraft-performance', locator: 'ch. 6, ground effect, and ex. 6.6', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof groundEffectFactor>;
