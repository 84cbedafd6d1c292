import type { FormulaRecord } from '../sources/index.ts';
import {
  designatorDirection,
  designatorDirectionDomain,
  nearestDesignators,
  nearestDesignatorsDomain,
} from './designator.ts';

export const nearestDesignatorsRecord = {
  id: 'magnetism.nearest-designators',
  title: 'Runway designators nearest to a magnetic direction',
  equation: 'n \\in \\{1, \\dots, 36\\}: \\quad |\\theta - 10n| \\le 5^\\circ',
  formula: nearestDesignators,
  domain: nearestDesignatorsDomain,
  inputs: {
    direction: { symbol: '\\theta', meaning: 'magnetic direction of the centreline' },
  },
  outputs: {
    kind: { symbol: 'k', unit: 'text', meaning: 'one designator, or a tie of two' },
    designator: { symbol: 'n', unit: 'text', meaning: 'the nearest designator' },
    offset: { symbol: '\\theta - 10n', unit: 'deg', meaning: 'direction less that of the designator' },
    first: { symbol: 'n_1', unit: 'text', meaning: 'designator before a direction that ends in 5' },
    second: { symbol: 'n_2', unit: 'text', meaning: 'designator after a direction that ends in 5' },
    access: { symbol: 'a', unit: 'text', meaning: 'how the rule behind the number is known' },
  },
  citations: [
    {
      source: 'faa-aim',
      locator: '4-3-6 a, 20 April 2023: nearest tenth of the azimuth; 5 either way',
      access: 'read',
    },
    { source: 'navy-14342a', locator: 'after NAVAIR 51-50AAA-2: 5 goes up', access: 'read' },
    { source: 'dafif-rules', locator: 'low end identifier: 5 goes down', access: 'read' },
    { source: 'trade-practice', locator: 'north is 36, not 00', access: 'recalled' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof nearestDesignators>;

export const designatorDirectionRecord = {
  id: 'magnetism.designator-direction',
  title: 'Direction for which a runway designator stands',
  equation: '\\theta = 10 n \\pm 5^\\circ',
  formula: designatorDirection,
  domain: designatorDirectionDomain,
  inputs: {
    designator: { symbol: 'n', meaning: 'designator as painted or charted' },
  },
  outputs: {
    number: { symbol: 'n', unit: 'data', meaning: 'number of the designator' },
    side: { symbol: 's', unit: 'text', meaning: 'left, centre, right or none' },
    direction: { symbol: '\\theta', unit: 'degMagnetic', meaning: 'ten times the number' },
    spreadFrom: { symbol: '\\theta_1', unit: 'degMagnetic', meaning: 'anticlockwise end of the spread' },
    spreadTo: { symbol: '\\theta_2', unit: 'degMagnetic', meaning: 'clockwise end of the spread' },
    directionFrom: { symbol: 'o', unit: 'text', meaning: 'where the direction comes from' },
  },
  citations: [
    { source: 'faa-aim', locator: '4-3-6 a, 20 April 2023: nearest tenth of the azimuth', access: 'read' },
    { source: 'trade-practice', locator: 'numbers run from 1 to 36', access: 'recalled' },
  ],
  homogeneous: false,
  checkValues: {
    nonePublished:
      'sources print designators for directions, not directions for designators; the tests hold that the published examples lie in the spread',
  },
} satisfies FormulaRecord<typeof designatorDirection>;
