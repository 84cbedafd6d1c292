import type { FormulaRecord } from '../sources/index.ts';
import { rollRatio, rollRatioDomain } from './roll-ratio.ts';

export const rollRatioRecord = {
  id: 'dynamics.roll-ratio',
  title: 'Ground roll in other conditions over a known one, as an estimate',
  equation:
    "r = \\frac{s'}{s}, \\quad s' = \\frac{(V' - V_w')^2}{2a'}, \\quad V' = V_{LOF}\\sqrt{\\frac{m'}{m}}, \\quad a' = \\frac{T}{m'} - g(\\mu'\\cos\\theta' + \\sin\\theta'), \\quad T = m\\left[\\frac{(V_{LOF} - V_w)^2}{2s} + g(\\mu\\cos\\theta + \\sin\\theta)\\right]",
  formula: rollRatio,
  domain: rollRatioDomain,
  inputs: {
    groundRoll: { symbol: 's', meaning: 'known ground roll' },
    mass: { symbol: 'm', meaning: 'its mass' },
    liftOffSpeed: { symbol: 'V_{LOF}', meaning: 'its lift-off speed' },
    leastFriction: { symbol: '\\mu_{\\min}', meaning: 'least friction of its surface' },
    greatestFriction: { symbol: '\\mu_{\\max}', meaning: 'greatest friction of its surface' },
    slope: { symbol: '\\tan\\theta', meaning: 'its slope, uphill positive' },
    headwind: { symbol: 'V_w', meaning: 'its headwind' },
    otherMass: { symbol: "m'", meaning: 'mass asked for' },
    otherLeastFriction: { symbol: "\\mu'_{\\min}", meaning: 'least friction of the other surface' },
    otherGreatestFriction: { symbol: "\\mu'_{\\max}", meaning: 'greatest friction of the other surface' },
    otherSlope: { symbol: "\\tan\\theta'", meaning: 'slope asked for' },
    otherHeadwind: { symbol: "V_w'", meaning: 'headwind asked for' },
  },
  outputs: {
    low: { symbol: 'r_{\\min}', unit: 'ratio', meaning: 'ratio with the frictions nearest each other' },
    high: {
      symbol: 'r_{\\max}',
      unit: 'ratio',
      meaning: 'ratio with the frictions farthest apart; missing when the roll may never end',
    },
  },
  citations: [
    {
      source: 'groundroll',
      locator: 'estimate with the effective thrust; it may make an answer more adverse only',
      access: 'policy',
    },
    { source: 'mathematics', locator: 'uniform acceleration', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: { nonePublished: 'a derivation of this library; no example of it is published' },
} satisfies FormulaRecord<typeof rollRatio>;
