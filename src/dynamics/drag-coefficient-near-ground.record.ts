import type { FormulaRecord } from '../sources/index.ts';
import { dragCoefficientNearGround, dragCoefficientNearGroundDomain } from './drag-coefficient-near-ground.ts';

export const dragCoefficientNearGroundRecord = {
  id: 'dynamics.drag-coefficient-near-ground',
  title: 'Drag coefficient near the ground',
  equation: 'C_D = C_{D,0} + \\Delta C_{D,0} + \\left(k_1 + \\frac{\\varphi}{\\pi e A\\!R}\\right)C_L^2',
  formula: dragCoefficientNearGround,
  domain: dragCoefficientNearGroundDomain,
  inputs: {
    zeroLiftDrag: { symbol: 'C_{D,0}', meaning: 'drag coefficient without lift' },
    gearDrag: { symbol: '\\Delta C_{D,0}', meaning: 'addition of undercarriage and flaps' },
    viscousDragFactor: { symbol: 'k_1', meaning: 'viscous drag due to lift' },
    spanEfficiency: { symbol: 'e', meaning: 'span efficiency' },
    aspectRatio: { symbol: 'A\\!R', meaning: 'aspect ratio' },
    groundEffectFactor: { symbol: '\\varphi', meaning: 'ground-effect factor' },
    liftCoefficient: { symbol: 'C_L', meaning: 'lift coefficient' },
  },
  outputs: {
    result: { symbol: 'C_D', unit: 'ratio', meaning: 'drag coefficient' },
  },
  citations: [{ source: 'anderson-aircraft-performance', locator: 'ch. 6, ground roll, and ex. 6.6', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof dragCoefficientNearGround>;
