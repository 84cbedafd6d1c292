import { describe, expect, it } from 'vitest';
import type { AnyRequest } from '../../src/study/any-request.ts';
import { type ReassessTriggers, reassessTriggers } from '../../src/study/index.ts';
import { takeoff as recomputed } from '../assessment/recompute.ts';
import { landing, landingRequest, takeoff, takeoffRequest } from '../assessment/scenario.ts';

function found(request: AnyRequest): ReassessTriggers {
  const result = reassessTriggers(request);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

const codes = (triggers: ReassessTriggers) => triggers.triggers.map(({ sentence }) => sentence.code);
const limit = (triggers: ReassessTriggers, code: string, quantity = '') => {
  const trigger = triggers.triggers.find(
    ({ sentence, limit: own }) => sentence.code === code && (own?.quantity ?? '').toLowerCase().includes(quantity),
  );
  return trigger?.limit?.value?.value as number;
};

describe('take-off 28 of the demo', () => {
  const triggers = found(takeoffRequest('takeoff-28'));

  it('is held by one sentence', () => {
    expect(triggers.sentence.text).toBe(
      'Assess again if the wind backs beyond 185° true, the wind speed with its gusts rises above 8 kt, gusts rise above 18 kt, the grass wets, the ground softens, the grass stands above 20 cm, the temperature is above 35 °C, the QNH is below 976 hPa, or the mass is above 970 kg.',
    );
    expect(triggers.verdict).toBe('within');
  });

  it('turns where the published figures turn', () => {
    // Published: 814 m at 185°, 855 m at 180°; the personal tailwind limit of 5 kt comes first, beyond 185°.
    expect(recomputed('28', 185).margin).toBeGreaterThan(0);
    expect(limit(triggers, 'trigger-backs')).toBe(185);
    expect(limit(triggers, 'trigger-above', 'temperature')).toBe(35);
    expect(limit(triggers, 'trigger-above', 'mass')).toBe(970);
  });

  it('has a limit behind each sentence: within at it, not one step beyond', () => {
    const at = {
      'trigger-backs': (value: number) => takeoff('takeoff-28', { 'weather.wind.from.value': value }),
      'trigger-wind-above': (value: number) =>
        takeoff('takeoff-28', { 'weather.wind.speed.value': value, 'weather.wind.gust.value': value + 10 }),
      'trigger-gust': (value: number) => takeoff('takeoff-28', { 'weather.wind.gust.value': value }),
      'trigger-below': (value: number) => takeoff('takeoff-28', { 'weather.qnh.value': value }),
    };
    const step = { 'trigger-backs': -1, 'trigger-wind-above': 1, 'trigger-gust': 1, 'trigger-below': -1 };
    for (const code of Object.keys(at) as (keyof typeof at)[]) {
      const value = limit(triggers, code);
      expect([at[code](value).verdict, at[code](value + step[code]).verdict === 'within'], code).toEqual([
        'within',
        false,
      ]);
    }
  });

  it('names what turns, and the verdict beyond', () => {
    const wets = triggers.triggers.find(({ sentence }) => sentence.text === 'the grass wets');
    expect(wets).toMatchObject({ verdict: 'outside', limitedBy: [{ id: 'takeoff-distance', margin: { value: -5 } }] });
    const softens = triggers.triggers.find(({ sentence }) => sentence.text === 'the ground softens');
    // "At least 1.25": never within, and not yet outside.
    expect(softens?.verdict).toBe('undetermined');
    expect(triggers.limitsOfUse[0]).toContain('two changes together');
    expect(triggers.limitsOfUse.length).toBeGreaterThan(1);
  });
});

describe('the wind', () => {
  it('turns either way, counted on beyond north and printed within the circle', () => {
    const northerly = found(
      takeoffRequest('takeoff-28', {
        'weather.wind': { source: 'METAR', from: { value: 350, unit: 'degTrue' }, speed: { value: 12, unit: 'kt' } },
      }),
    );
    const veers = northerly.triggers.find(({ sentence }) => sentence.code === 'trigger-veers');
    const printed = Number(/beyond (\d+)°/.exec(veers?.sentence.text ?? '')?.[1]);
    expect(printed).toBeLessThan(90);
    const at = (from: number) =>
      takeoff('takeoff-28', {
        'weather.wind': { source: 'METAR', from: { value: from, unit: 'degTrue' }, speed: { value: 12, unit: 'kt' } },
      }).verdict;
    expect(at(printed)).toBe('within');
    expect(at(printed + 1)).not.toBe('within');
  });

  it('falling away is a trigger where the distance lives by it', () => {
    const quarry = found(landingRequest('quarry-landing-04'));
    const least = limit(quarry, 'trigger-wind-below');
    const at = (value: number) => landing('quarry-landing-04', { 'weather.wind.speed.value': value }).verdict;
    expect([at(least), at(least - 1)]).toEqual(['within', 'outside']);
  });

  it('without a direction has none to turn', () => {
    const variable = takeoffRequest('takeoff-28', {
      'weather.wind.from': 'variable',
      'weather.wind.speed.value': 2,
      'weather.wind.gust': undefined,
    });
    expect(found(variable).verdict).toBe('within');
    expect(codes(found(variable))).not.toContain('trigger-backs');
    expect(codes(found(variable))).toContain('trigger-wind-above');
  });
});

describe('other requests', () => {
  it('QFE is named as such', () => {
    const byQfe = takeoffRequest('takeoff-28', {
      'weather.qnh': undefined,
      'weather.qfe': { value: 990, unit: 'hPa' },
    });
    expect(found(byQfe).sentence.text).toContain('the QFE is below');
  });

  it('paved runways wet, and then something lies on them', () => {
    const paved = { kind: 'paved', condition: 'dry' };
    const words = (surface: object) =>
      found(takeoffRequest('takeoff-28', { 'runway.surface': surface })).triggers.map(({ sentence }) => sentence.text);
    // Wet paved is 1.00 in the set: no trigger.
    expect(words(paved)).not.toContain('the runway wets');
    expect(words({ ...paved, conditionCode: 6 })).not.toContain('the runway wets');
    expect(words({ ...paved, condition: 'wet' })).toContain('anything more than wetness lies on the runway');
    expect(words({ ...paved, condition: 'wet', conditionCode: 5 })).toContain(
      'anything more than wetness lies on the runway',
    );
  });

  it('says that nothing turns it where nothing does, and names no trigger of snow', () => {
    const snow = found(takeoffRequest('takeoff-28', { 'runway.surface': { kind: 'snow' } }));
    expect(snow).toMatchObject({ verdict: 'undetermined', triggers: [] });
    expect(snow.sentence.text).toBe(
      'Take-off on 28: undetermined as it stands: there is no verdict of within limits to hold.',
    );
  });

  it('has no triggers where the verdict is not within', () => {
    expect(found(takeoffRequest('takeoff-10'))).toMatchObject({ verdict: 'outside', triggers: [] });
    expect(found(landingRequest('landing-28')).sentence.text).toContain('Landing on 28: outside limits');
  });

  it('gives the faults of the request', () => {
    const result = reassessTriggers(takeoffRequest('takeoff-28', { 'mass.value': -1 }));
    expect(!result.ok && result.faults.map(({ path }) => path)).toEqual(['mass.value']);
  });
});
