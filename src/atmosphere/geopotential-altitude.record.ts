import type { FormulaRecord } from '../sources/index.ts';
import {
  geometricAltitude,
  geometricAltitudeDomain,
  geopotentialAltitude,
  geopotentialAltitudeDomain,
} from './geopotential-altitude.ts';

export const geopotentialAltitudeRecord = {
  id: 'atmosphere.geopotential-altitude',
  title: 'Geopotential altitude',
  equation: 'H = \\frac{r h}{r + h}',
  formula: geopotentialAltitude,
  domain: geopotentialAltitudeDomain,
  inputs: {
    geometricAltitude: { symbol: 'h', meaning: 'geometric altitude' },
  },
  outputs: { result: { symbol: 'H', unit: 'mGeopotential', meaning: 'geopotential altitude' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formula (9)', access: 'read' },
    { source: 'icao-7488', locator: 'constants of the standard atmosphere', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof geopotentialAltitude>;

export const geometricAltitudeRecord = {
  id: 'atmosphere.geometric-altitude',
  title: 'Geometric altitude',
  equation: 'h = \\frac{r H}{r - H}',
  formula: geometricAltitude,
  domain: geometricAltitudeDomain,
  inputs: {
    geopotentialAltitude: { symbol: 'H', meaning: 'geopotential altitude' },
  },
  outputs: { result: { symbol: 'h', unit: 'mGeometric', meaning: 'geometric altitude' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formula (8)', access: 'read' },
    { source: 'icao-7488', locator: 'constants of the standard atmosphere', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof geometricAltitude>;
