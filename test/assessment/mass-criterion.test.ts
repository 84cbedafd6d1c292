import { describe, expect, it } from 'vitest';
import { landingSituationOf } from '../../src/assessment/assess-landing.ts';
import { takeoffSituationOf } from '../../src/assessment/assess-takeoff.ts';
import { massCriterion } from '../../src/assessment/kernel/mass-criterion.ts';
import { type Changes, landingRequest, takeoffRequest } from './scenario.ts';

// The example: 940 kg of at most 1050.
const situation = (changes?: Changes) => takeoffSituationOf(takeoffRequest('takeoff-28', changes));

describe('the mass', () => {
  it('is within at the maximum, and says nothing', () => {
    expect(massCriterion(situation({ 'mass.value': 1050 }))).toMatchObject({
      id: 'mass',
      quantity: 'take-off mass',
      limitStatus: 'limitation',
      sense: 'at most',
      verdict: 'within',
      unit: 'kg',
      value: 1050,
      limit: 1050,
      margin: 0,
      reasons: [],
    });
  });

  it('is outside above it, with both figures', () => {
    const parameters = { mass: 1050.4, limit: 1050, unit: 'kg' };
    expect(massCriterion(situation({ 'mass.value': 1050.4 }))).toMatchObject({
      verdict: 'outside',
      value: 1051,
      margin: -1,
      reasons: [{ code: 'mass-above-maximum', parameters }],
    });
  });

  it('is compared in the unit of the data: 1050 kg are 2314.85 lb, 1051 kg 2317.06', () => {
    // 1 lb is 0.45359237 kg.
    const inPounds = { 'performanceData.masses.maximumTakeoff': { value: 2316.5, unit: 'lb' } };
    expect(massCriterion(situation({ ...inPounds, 'mass.value': 1050 }))).toMatchObject({
      verdict: 'within',
      unit: 'lb',
      value: 2315,
      limit: 2316,
      margin: 1,
    });
    const { verdict, reasons } = massCriterion(situation({ ...inPounds, 'mass.value': 1051 }));
    expect(verdict).toBe('outside');
    expect(reasons[0]?.parameters).toMatchObject({ limit: 2316.5, unit: 'lb' });
    expect(reasons[0]?.parameters['mass']).toBeCloseTo(1051 / 0.45359237, 9);
  });

  it('of a landing has the maximum of a landing', () => {
    const maxima = { 'performanceData.masses.maximumLanding': { value: 1000, unit: 'kg' }, 'mass.value': 1001 };
    expect(massCriterion(landingSituationOf(landingRequest('landing-10', maxima)))).toMatchObject({
      quantity: 'landing mass',
      verdict: 'outside',
      limit: 1000,
    });
  });
});
