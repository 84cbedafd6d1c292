import { describe, expect, it } from 'vitest';
import { type Changes, criterion, landing, takeoff } from './scenario.ts';

const constant = (kias: number) => ({ axes: [], unit: 'kias', cells: kias });
const purpose = 'the cost of the speed addition';

// Flap 35 is calibrated from 37 to 65 KIAS, flap 15 from 45 to 60.
describe('a speed off its calibration', () => {
  const approach = (knots: number, changes: Changes = {}) =>
    criterion(
      landing('landing-10', { approachSpeedAddition: { value: knots, unit: 'kt' }, ...changes }),
      'landing-distance',
    );
  const liftOff = (knots: number, changes: Changes = {}) =>
    criterion(
      takeoff('takeoff-28', { liftOffSpeedAddition: { value: knots, unit: 'kt' }, ...changes }),
      'takeoff-distance',
    );

  it('has no price, whether it is the one flown or that of the table', () => {
    expect(approach(8).verdict).toBe('within');
    expect(approach(9).reasons).toMatchObject([
      { code: 'no-calibration', parameters: { flap: '35', speed_kias: 66, purpose } },
    ]);
    const slow = { 'performanceData.landing.0.approachSpeed': constant(36) };
    expect(approach(5, slow).reasons).toMatchObject([
      { code: 'no-calibration', parameters: { flap: '35', speed_kias: 41, purpose } },
    ]);
    expect(liftOff(13).reasons).toMatchObject([
      { code: 'no-calibration', parameters: { flap: '15', speed_kias: 61, purpose } },
    ]);
    const early = { 'performanceData.takeoff.0.liftOffSpeed': constant(44) };
    expect(liftOff(2, early).reasons).toMatchObject([
      { code: 'no-calibration', parameters: { flap: '15', speed_kias: 46, purpose } },
    ]);
  });
});

describe('a speed that is printed for the mass of the table, and not for that of the day', () => {
  const heavy = (cells: readonly number[]) => ({
    axes: [{ quantity: 'mass', unit: 'kg', values: [1000, 1050] }],
    unit: 'kias',
    cells,
  });
  const refuse = { 'policies.favourableEdge': 'refuse' };
  const parameters = { quantity: 'mass', given: 940, min: 1000, max: 1050, unit: 'kg' };

  it('has no price either, where no edge is read', () => {
    const approach = { 'performanceData.landing.0.approachSpeed': heavy([55, 57]), ...refuse };
    expect(criterion(landing('landing-10', approach), 'landing-distance').reasons).toMatchObject([
      { code: 'off-table', parameters: { ...parameters, table: 'approach speed' } },
    ]);
    const single = (value: number) => ({ axes: [], unit: 'm', cells: value });
    const liftOff = {
      'performanceData.takeoff.0.distance': single(400),
      'performanceData.takeoff.0.groundRoll': single(200),
      'performanceData.takeoff.0.associatedConditions.mass': { value: 1050, unit: 'kg' },
      'performanceData.takeoff.0.associatedConditions.pressureAltitude': { value: 4000, unit: 'ftPA' },
      'performanceData.takeoff.0.associatedConditions.temperature': { value: 40, unit: 'degC' },
      'performanceData.takeoff.0.liftOffSpeed': heavy([50, 51]),
      liftOffSpeedAddition: { value: 2, unit: 'kt' },
      ...refuse,
    };
    expect(criterion(takeoff('takeoff-28', liftOff), 'takeoff-distance').reasons).toMatchObject([
      { code: 'off-table', parameters: { ...parameters, table: 'lift-off speed' } },
    ]);
  });
});
