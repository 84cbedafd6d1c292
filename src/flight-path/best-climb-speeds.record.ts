import type { FormulaRecord } from '../sources/index.ts';
import { bestAngleSpeedInWind, bestAngleSpeedInWindDomain } from './best-angle-in-wind.ts';
import { bestAngleSpeed, bestRateSpeed } from './best-climb-speeds.ts';
import { rateFromThrust, rateFromThrustDomain } from './rate-from-thrust.ts';
import { thrustAndDragDomain } from './thrust-and-drag.ts';

const thrustAndDrag = {
  mass: { symbol: 'm', meaning: 'mass of the aeroplane' },
  staticThrust: { symbol: 'T_0', meaning: 'static thrust' },
  thrustChange: { symbol: 'a', meaning: 'change of the thrust for each square of the airspeed' },
  wingArea: { symbol: 'S', meaning: 'wing area' },
  density: { symbol: '\\rho', meaning: 'density of the air' },
  zeroLiftDrag: { symbol: 'C_{D0}', meaning: 'drag coefficient without lift' },
  inducedDragFactor: { symbol: 'K', meaning: 'drag coefficient of the lift for each square of the lift coefficient' },
  stallSpeed: { symbol: 'V_S', meaning: 'stall speed, below which no speed is returned' },
} as const;

const shortened = 'k = \\tfrac12\\rho S C_{D0} - a,\\ H = \\frac{2K(mg)^2}{\\rho S}';

export const bestAngleSpeedRecord = {
  id: 'flight-path.best-angle-speed',
  title: 'V_X from thrust and drag',
  equation: `V_X = \\left(\\frac{H}{k}\\right)^{1/4} \\ge V_S, \\qquad ${shortened}`,
  formula: bestAngleSpeed,
  domain: thrustAndDragDomain,
  inputs: thrustAndDrag,
  outputs: { result: { symbol: 'V_X', unit: 'ktas', meaning: 'speed of the best angle in still air' } },
  citations: [
    { source: 'mathematics', locator: 'greatest excess thrust for a parabolic polar', access: 'derived' },
    { source: 'faa-phak', locator: 'ch. 11: the best angle is at the greatest excess thrust', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof bestAngleSpeed>;

export const bestRateSpeedRecord = {
  id: 'flight-path.best-rate-speed',
  title: 'V_Y from thrust and drag',
  equation: `V_Y^2 = \\frac{T_0 + \\sqrt{T_0^2 + 12kH}}{6k} \\ge V_S^2, \\qquad ${shortened}`,
  formula: bestRateSpeed,
  domain: thrustAndDragDomain,
  inputs: thrustAndDrag,
  outputs: { result: { symbol: 'V_Y', unit: 'ktas', meaning: 'speed of the best rate' } },
  citations: [
    { source: 'mathematics', locator: 'greatest excess power for a parabolic polar', access: 'derived' },
    { source: 'faa-phak', locator: 'ch. 11: the best rate is at the greatest excess power', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof bestRateSpeed>;

export const rateFromThrustRecord = {
  id: 'flight-path.rate-from-thrust',
  title: 'Rate of climb from thrust and drag',
  equation: `ROC = \\frac{(T_0 - kV^2 - H/V^2)\\,V}{mg},\\ V \\ge V_S, \\qquad ${shortened}`,
  formula: rateFromThrust,
  domain: rateFromThrustDomain,
  inputs: { ...thrustAndDrag, trueAirspeed: { symbol: 'V', meaning: 'true airspeed' } },
  outputs: { result: { symbol: 'ROC', unit: 'ftPerMin', meaning: 'rate of climb' } },
  citations: [
    { source: 'mathematics', locator: 'excess power over weight', access: 'derived' },
    { source: 'faa-phak', locator: 'ch. 11, climb performance', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof rateFromThrust>;

export const bestAngleSpeedInWindRecord = {
  id: 'flight-path.best-angle-speed-in-wind',
  title: 'Speed of the steepest climb over the ground in wind',
  equation: `ROC'(V)\\,(V - w) = ROC(V),\\ V \\ge V_S,\\ ROC = \\frac{(T_0 - kV^2 - H/V^2)\\,V}{mg}, \\qquad ${shortened}`,
  formula: bestAngleSpeedInWind,
  domain: bestAngleSpeedInWindDomain,
  inputs: { ...thrustAndDrag, headwind: { symbol: 'w', meaning: 'wind component, headwind positive' } },
  outputs: { result: { symbol: 'V', unit: 'ktas', meaning: 'speed of the steepest climb over the ground' } },
  citations: [
    { source: 'mathematics', locator: 'tangent from the wind to the curve of the rate of climb', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof bestAngleSpeedInWind>;
