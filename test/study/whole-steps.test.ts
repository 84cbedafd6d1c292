import { describe, expect, it } from 'vitest';
import { highestTemperature, reassessTriggers, type SolvedLimit } from '../../src/study/index.ts';
import { judged, landingRequest, takeoff, takeoffRequest } from '../assessment/scenario.ts';

/** The limit itself; a request with faults fails the test. */
function solved(result: { ok: true; value: SolvedLimit } | { ok: false; faults: readonly unknown[] }): SolvedLimit {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

describe('a solved limit', () => {
  it('is a whole step, and prints none that is outside', () => {
    const found = solved(highestTemperature(takeoffRequest('case-summer-trees-takeoff')));
    expect(found.value).toEqual({ value: 27, unit: 'degC' });
    expect(found.sentence.text).toContain('27 °C');
    const at = (value: number) =>
      judged(takeoff('case-summer-trees-takeoff', { 'weather.temperature': { value, unit: 'degC' } }), 'obstacle');
    expect(at(27).verdict).toBe('within');
    expect(at(28).verdict).toBe('outside');
  });

  it('is the whole step below where today is none itself', () => {
    const found = solved(
      highestTemperature(takeoffRequest('takeoff-28', { 'weather.temperature': { value: 35.5, unit: 'degC' } })),
    );
    expect(found.value).toEqual({ value: 35, unit: 'degC' });
  });

  it('calls for another assessment no later than where the search found it outside', () => {
    const narrowed = {
      'weather.wind.range': { from: { value: 280, unit: 'degTrue' }, to: { value: 310, unit: 'degTrue' } },
    };
    const found = reassessTriggers(landingRequest('case-gusty-crosswind-landing', narrowed));
    if (!found.ok) throw new Error(JSON.stringify(found.faults));
    const words = JSON.stringify(found.value);
    expect(words).toContain('rises above 16 kt');
    expect(words).not.toContain('gusts rise above 27 kt');
  });
});
