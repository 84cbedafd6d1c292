import type { FormulaRecord } from '../sources/index.ts';
import { lateralSemiWidth, lateralSemiWidthDomain } from './lateral-semi-width.ts';

export const lateralSemiWidthRecord = {
  id: 'flight-path.lateral-semi-width',
  title: 'Half the width in which obstacles count (performance class B, two or more engines)',
  equation:
    'w = \\begin{cases} b/2 + 60\\,\\mathrm{m} + 0.125\\,D & b < 60\\,\\mathrm{m} \\\\ 90\\,\\mathrm{m} + 0.125\\,D & \\text{otherwise} \\end{cases}',
  formula: lateralSemiWidth,
  domain: lateralSemiWidthDomain,
  inputs: {
    wingspan: { symbol: 'b', meaning: 'wingspan' },
    distance: { symbol: 'D', meaning: 'distance travelled' },
  },
  outputs: { result: { symbol: 'w', unit: 'm', meaning: 'half the width of the strip' } },
  citations: [{ source: 'eu-965-2012', locator: 'CAT.POL.A.310(a)', access: 'read' }],
  homogeneous: false,
  checkValues: { nonePublished: 'the rule prints its relation and no example' },
} satisfies FormulaRecord<typeof lateralSemiWidth>;
