import type { FormulaRecord } from '../sources/index.ts';
import { dewPoint, dewPointDomain, relativeHumidity, relativeHumidityDomain } from './humidity.ts';

export const relativeHumidityRecord = {
  id: 'atmosphere.relative-humidity',
  title: 'Relative humidity',
  equation: 'U = 100\\,\\frac{e(t_d)}{e(t)}',
  formula: relativeHumidity,
  domain: relativeHumidityDomain,
  inputs: {
    temperature: { symbol: 't', meaning: 'air temperature' },
    dewPoint: { symbol: 't_d', meaning: 'dew point' },
  },
  outputs: { result: { symbol: 'U', unit: 'percent', meaning: 'relative humidity' } },
  citations: [
    { source: 'bolton-1980', locator: 'equation (10)', access: 'second-hand' },
    { source: 'groundroll', locator: 'definition of the dew point', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: {
    nonePublished: 'the sources print no example from a dew point; the vapour pressure has check values of its own',
  },
} satisfies FormulaRecord<typeof relativeHumidity>;

export const dewPointRecord = {
  id: 'atmosphere.dew-point',
  title: 'Dew point from relative humidity',
  equation: 't_d = \\frac{243.5\\,w}{17.67 - w},\\quad w = \\ln\\frac{U}{100} + \\frac{17.67\\,t}{t + 243.5}',
  formula: dewPoint,
  domain: dewPointDomain,
  inputs: {
    temperature: { symbol: 't', meaning: 'air temperature' },
    relativeHumidity: { symbol: 'U', meaning: 'relative humidity' },
  },
  outputs: { result: { symbol: 't_d', unit: 'degC', meaning: 'dew point' } },
  citations: [
    { source: 'bolton-1980', locator: 'equation (10)', access: 'second-hand' },
    { source: 'groundroll', locator: 'inverse of the formula of Bolton', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: {
    nonePublished: 'the sources print no example of a dew point; the vapour pressure has check values of its own',
  },
} satisfies FormulaRecord<typeof dewPoint>;
