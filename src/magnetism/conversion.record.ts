import type { FormulaRecord } from '../sources/index.ts';
import { magneticFromTrue, magneticFromTrueDomain, trueFromMagnetic, trueFromMagneticDomain } from './conversion.ts';

export const trueFromMagneticRecord = {
  id: 'magnetism.true-from-magnetic',
  title: 'True direction from a magnetic one',
  equation: 'T = M + D',
  formula: trueFromMagnetic,
  domain: trueFromMagneticDomain,
  inputs: {
    direction: { symbol: 'M', meaning: 'magnetic direction' },
    variation: { symbol: 'D', meaning: 'variation, east positive' },
  },
  outputs: {
    result: { symbol: 'T', unit: 'degTrue', meaning: 'true direction' },
  },
  citations: [{ source: 'afman-15-111', locator: '3.7.1: add easterly, subtract westerly variation', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof trueFromMagnetic>;

export const magneticFromTrueRecord = {
  id: 'magnetism.magnetic-from-true',
  title: 'Magnetic direction from a true one',
  equation: 'M = T - D',
  formula: magneticFromTrue,
  domain: magneticFromTrueDomain,
  inputs: {
    direction: { symbol: 'T', meaning: 'true direction' },
    variation: { symbol: 'D', meaning: 'variation, east positive' },
  },
  outputs: {
    result: { symbol: 'M', unit: 'degMagnetic', meaning: 'magnetic direction' },
  },
  citations: [{ source: 'afman-15-111', locator: '3.7.2: subtract easterly, add westerly variation', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof magneticFromTrue>;
