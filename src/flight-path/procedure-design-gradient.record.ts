import type { FormulaRecord } from '../sources/index.ts';
import { procedureDesignGradient, procedureDesignGradientDomain } from './procedure-design-gradient.ts';

export const procedureDesignGradientRecord = {
  id: 'flight-path.procedure-design-gradient',
  title: 'Procedure design gradient over an obstacle (ICAO)',
  equation: 'PDG = 0.008 + \\frac{h - 5\\,\\mathrm{m}}{d}',
  formula: procedureDesignGradient,
  domain: procedureDesignGradientDomain,
  inputs: {
    obstacleHeight: { symbol: 'h', meaning: 'top of the obstacle over the departure end of the runway' },
    distance: { symbol: 'd', meaning: 'distance of the obstacle from the departure end of the runway' },
  },
  outputs: { result: { symbol: 'PDG', unit: 'ratio', meaning: 'procedure design gradient' } },
  citations: [
    { source: 'mathematics', locator: 'straight line from the start of the gradient', access: 'derived' },
    {
      source: 'icao-8168',
      locator: 'Vol. II, I-3-2, 2.2.6: 3.3 %, from 5 m over the end of the runway',
      access: 'read',
    },
    {
      source: 'icao-8168',
      locator: 'Vol. II, minimum obstacle clearance 0.8 % of the distance',
      access: 'second-hand',
    },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof procedureDesignGradient>;
