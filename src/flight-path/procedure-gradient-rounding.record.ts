import type { FormulaRecord } from '../sources/index.ts';
import { procedureGradientRoundedUp, procedureGradientRoundedUpDomain } from './procedure-gradient-rounding.ts';

export const procedureGradientRoundedUpRecord = {
  id: 'flight-path.procedure-gradient-rounded-up',
  title: 'Climb gradient of an instrument departure as published',
  equation: "CG' = \\left\\lceil \\frac{CG}{s} \\right\\rceil s",
  formula: procedureGradientRoundedUp,
  domain: procedureGradientRoundedUpDomain,
  inputs: {
    gradient: { symbol: 'CG', meaning: 'climb gradient of the procedure' },
    step: { symbol: 's', meaning: 'step to round to' },
  },
  outputs: { result: { symbol: "CG'", unit: 'ftPerNM', meaning: 'climb gradient rounded up' } },
  citations: [
    { source: 'faa-iph', locator: 'ch. 1, design criteria: rounded up to a whole foot', access: 'read' },
    { source: 'faa-8260-rnavdep', locator: 'par. 12e, rounded up to the next 20 ft', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof procedureGradientRoundedUp>;
