import type { FormulaRecord } from '../sources/index.ts';
import {
  loadFactorAtStall,
  loadFactorAtStallDomain,
  stallSpeedAtLoadFactor,
  stallSpeedAtLoadFactorDomain,
} from './load-factor-speed.ts';

export const stallSpeedAtLoadFactorRecord = {
  id: 'airspeed.stall-speed-at-load-factor',
  title: 'Stall speed under a load factor',
  equation: 'V = V_S\\sqrt{n}',
  formula: stallSpeedAtLoadFactor,
  domain: stallSpeedAtLoadFactorDomain,
  inputs: {
    stallSpeed: { symbol: 'V_S', meaning: 'stall speed at a load factor of 1' },
    loadFactor: { symbol: 'n', meaning: 'load factor' },
  },
  outputs: { result: { symbol: 'V', unit: 'kcas', meaning: 'stall speed under the load factor' } },
  citations: [{ source: 'faa-phak', locator: 'ch. 5, load factors and stall speed', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof stallSpeedAtLoadFactor>;

export const loadFactorAtStallRecord = {
  id: 'airspeed.load-factor-at-stall',
  title: 'Load factor at the stall',
  equation: 'n = \\left(\\frac{V}{V_S}\\right)^2',
  formula: loadFactorAtStall,
  domain: loadFactorAtStallDomain,
  inputs: {
    speed: { symbol: 'V', meaning: 'speed flown' },
    stallSpeed: { symbol: 'V_S', meaning: 'stall speed at a load factor of 1' },
  },
  outputs: { result: { symbol: 'n', unit: 'ratio', meaning: 'load factor' } },
  citations: [{ source: 'faa-phak', locator: 'ch. 5, load factors and stall speed', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof loadFactorAtStall>;
