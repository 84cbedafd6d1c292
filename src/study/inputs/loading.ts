import { type AnyRequest, isTakeoff } from '../any-request.ts';
import { inUnit, plain, type StudyInput } from './study-input.ts';

/** The mass at this end of the flight, in the unit in which the request states it. */
export function massInput(request: AnyRequest): StudyInput {
  const { value, unit } = request.mass;
  return {
    id: 'mass',
    changes: 'mass',
    quantity: 'mass',
    unit,
    today: value,
    min: plain(inUnit({ value: 50, unit: 'kg' }, unit)),
    max: plain(inUnit({ value: 10_000, unit: 'kg' }, unit)),
    at: (mass) => ({ ...request, mass: { value: mass, unit } }),
  };
}

/** The maximum mass of the phase, in the unit in which the request states its mass. */
export function maximumMass(request: AnyRequest): number {
  const { masses } = request.performanceData;
  return plain(inUnit(isTakeoff(request) ? masses.maximumTakeoff : masses.maximumLanding, request.mass.unit));
}
