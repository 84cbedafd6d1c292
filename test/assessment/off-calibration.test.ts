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
