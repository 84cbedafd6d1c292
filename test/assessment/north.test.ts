import { describe, expect, it } from 'vitest';
import {
  assessLanding,
  assessTakeoff,
  prepareLanding,
  prepareTakeoff,
  type Weather,
} from '../../src/assessment/index.ts';
import { type Changes, landingRequest, takeoffRequest } from './scenario.ts';

function value<T>(result: { ok: true; value: T } | { ok: false; faults: unknown }): T {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

const reported = { source: 'observed', speed: { value: 9, unit: 'kt' } } as const;

/** The runway in magnetic degrees, 13° less than true, under a wind of the given kind. */
const onMagneticRunway = (wind: object): Changes => ({
  'runway.ends.0.direction': { value: 99, unit: 'degMagnetic' },
  'runway.ends.1.direction': { value: 279, unit: 'degMagnetic' },
  'weather.wind': { ...reported, ...wind },
});
const degrees = (value: number, unit: 'degTrue' | 'degMagnetic') => ({ value, unit });
const rangeIn = (unit: 'degTrue' | 'degMagnetic') => ({ from: degrees(160, unit), to: degrees(240, unit) });
const winds = {
  'true, from a direction': { from: degrees(190, 'degTrue') },
  'true, by its range alone': { from: 'variable', range: rangeIn('degTrue') },
  'magnetic, from a direction': { from: degrees(190, 'degMagnetic') },
  'magnetic, by its range alone': { from: 'variable', range: rangeIn('degMagnetic') },
  'without a direction': { from: 'variable' },
} as const;
type Name = keyof typeof winds;
const names = Object.keys(winds) as Name[];
const northOf = (name: Name) => (name.startsWith('true') ? 'degTrue' : 'degMagnetic');

describe('a prepared take-off or landing', () => {
  it.each(names)('prepared with a wind that is %s takes later winds against that north alone', (first) => {
    const takeoff = takeoffRequest('takeoff-28', onMagneticRunway(winds[first]));
    const landing = landingRequest('landing-10', onMagneticRunway(winds[first]));
    const prepared = [value(prepareTakeoff(takeoff)), value(prepareLanding(landing))] as const;
    for (const { north } of prepared) expect(north).toBe(northOf(first));
    for (const now of names) {
      const weather = { ...takeoff.weather, wind: { ...reported, ...winds[now] } } as Weather;
      const answers = prepared.map((each) => each.assess(weather));
      if (now !== 'without a direction' && northOf(now) !== northOf(first)) {
        for (const answer of answers) {
          const message = `the take-off or landing is prepared for winds in ${northOf(first)}, this one is in ${northOf(now)}`;
          const path = `weather.wind.${now.includes('range') ? 'range' : 'from'}`;
          expect(answer).toEqual({ ok: false, faults: [{ path, message }] });
        }
        continue;
      }
      // A wind without any direction is worst from everywhere, whatever the north.
      const whole = [value(assessTakeoff({ ...takeoff, weather })), value(assessLanding({ ...landing, weather }))];
      answers.forEach((answer, i) => {
        expect(value(answer as never)).toMatchObject({ verdict: whole[i]?.verdict, criteria: whole[i]?.criteria });
      });
    }
  });
});
