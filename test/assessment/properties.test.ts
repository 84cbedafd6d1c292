import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  assessLanding,
  assessTakeoff,
  type Conditions,
  type Criterion,
  type LandingAssessment,
  prepareLanding,
  prepareTakeoff,
  type TakeoffAssessment,
  type Weather,
} from '../../src/assessment/index.ts';
import { evenly } from '../evenly.ts';
import { type Changes, landing, landingRequest, takeoff, takeoffRequest } from './scenario.ts';

type Assessment = TakeoffAssessment | LandingAssessment;

const order = { within: 0, undetermined: 1, outside: 2 } as const;
const metres = (assessment: Assessment) =>
  assessment.stairs?.steps.find(({ step }) => step === 'safety factor')?.total.value;

const assessments = {
  'takeoff-28': takeoff,
  'takeoff-10': takeoff,
  'landing-10': landing,
  'landing-28': landing,
} as const;
const name = fc.constantFrom(...(Object.keys(assessments) as (keyof typeof assessments)[]));
const runs = { numRuns: 40 };

/** A straight wind along the runway: positive the tailwind on the end in use. */
function along(example: keyof typeof assessments, tail_kt: number): Changes {
  const uses10 = example.endsWith('10');
  const from = tail_kt >= 0 === uses10 ? 292 : 112;
  const speed = { value: Math.abs(tail_kt), unit: 'kt' };
  return { 'weather.wind': { source: 'METAR', from: { value: from, unit: 'degTrue' }, speed } };
}

/** The required distance does not fall and nothing turns into within from one assessment to the next. */
function worsens(before: Assessment, after: Assessment): void {
  if (before.verdict !== 'within') expect(after.verdict).not.toBe('within');
  const [less, more] = [metres(before), metres(after)];
  if (less !== undefined && more !== undefined) expect(more).toBeGreaterThanOrEqual(less);
  // Once there is no figure, worse conditions do not bring one back.
  if (less === undefined) expect(more).toBeUndefined();
}

describe('worse conditions never turn anything into within', () => {
  const pair = (min: number, max: number) =>
    fc.tuple(evenly(min, max), evenly(min, max)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);

  it('more mass', () => {
    fc.assert(
      fc.property(name, pair(700, 1100), (which, [light, heavy]) => {
        const at = (kg: number) => assessments[which](which, { 'mass.value': kg });
        worsens(at(light), at(heavy));
      }),
      runs,
    );
  });

  it('more heat', () => {
    fc.assert(
      fc.property(name, pair(-20, 50), (which, [cold, warm]) => {
        const at = (degC: number) =>
          assessments[which](which, { 'weather.temperature.value': degC, 'weather.dewPoint': undefined });
        worsens(at(cold), at(warm));
      }),
      runs,
    );
  });

  it('less pressure', () => {
    fc.assert(
      fc.property(name, pair(900, 1050), (which, [low, high]) => {
        const at = (hPa: number) => assessments[which](which, { 'weather.qnh.value': hPa });
        worsens(at(high), at(low));
      }),
      runs,
    );
  });

  it('more tailwind', () => {
    fc.assert(
      fc.property(name, pair(-30, 12), (which, [less, more]) => {
        const at = (knots: number) => assessments[which](which, along(which, knots));
        worsens(at(less), at(more));
      }),
      runs,
    );
  });

  it('a wider range of directions', () => {
    fc.assert(
      fc.property(name, fc.integer({ min: 1, max: 60 }), (which, half) => {
        const direction = (value: number) => ({ value: ((value + 360) % 360) + 0, unit: 'degTrue' });
        const range = { from: direction(190 - half), to: direction(190 + half) };
        worsens(assessments[which](which), assessments[which](which, { 'weather.wind.range': range }));
      }),
      runs,
    );
  });

  it('a worse surface along a declared chain', () => {
    const grass = (condition: string, ground = 'firm') => ({ kind: 'grass', condition, length: 'up to 20 cm', ground });
    const chain = [{ kind: 'paved', condition: 'dry' }, grass('dry'), grass('wet'), grass('wet', 'soft')];
    for (const which of Object.keys(assessments) as (keyof typeof assessments)[]) {
      const along = chain.map((surface) => assessments[which](which, { 'runway.surface': surface }));
      for (let i = 1; i < along.length; i += 1) worsens(along[i - 1] as Assessment, along[i] as Assessment);
    }
  });

  it('a shorter runway', () => {
    const without = { 'runway.ends.0.declaredDistances': undefined, 'runway.ends.1.declaredDistances': undefined };
    const level = { 'runway.ends.0.elevation.value': 438, 'runway.obstacles': [] };
    fc.assert(
      fc.property(name, pair(300, 1500), (which, [short, long]) => {
        const at = (m: number) => assessments[which](which, { ...without, ...level, 'runway.length.value': m });
        worsens(at(long), at(short));
      }),
      runs,
    );
  });
});

/** Requests all over the place, of which most are answered. */
const anyChanges = fc
  .record({
    'mass.value': evenly(700, 1100),
    'weather.temperature.value': evenly(-15, 45),
    'weather.qnh.value': evenly(940, 1045),
    'weather.wind.from.value': fc.integer({ min: 1, max: 360 }),
    'weather.wind.speed.value': fc.integer({ min: 1, max: 25 }),
    gust: fc.option(fc.integer({ min: 0, max: 15 })),
    'runway.obstacles.0.beyond.value': evenly(0, 3000),
    'runway.obstacles.0.height.value': evenly(0, 60),
    dewPointSpread: fc.option(evenly(0, 20)),
    factorSet: fc.constantFrom('easa-class-b', 'uk-light-aeroplane-leaflet'),
    'policies.humidity': fc.constantFrom('information', 'virtual temperature'),
    'policies.betweenPrintedValues': fc.constantFrom('interpolate', 'next-worse'),
  })
  .map(({ gust, dewPointSpread, ...changes }): Changes => {
    const speed = changes['weather.wind.speed.value'];
    const dewPoint = { value: changes['weather.temperature.value'] - (dewPointSpread ?? 0), unit: 'degC' };
    return {
      ...changes,
      'weather.wind.gust': gust === null ? undefined : { value: speed + gust, unit: 'kt' },
      'weather.dewPoint': dewPointSpread === null ? undefined : dewPoint,
      'policies.humidity': dewPointSpread === null ? 'information' : changes['policies.humidity'],
    };
  });

const decided = (criterion: Criterion) => criterion.verdict !== 'undetermined';

describe('every assessment', () => {
  it('has a margin whose sign agrees with the verdict, and an overall verdict that follows from the criteria', () => {
    fc.assert(
      fc.property(name, anyChanges, (which, changes) => {
        const { criteria, verdict } = assessments[which](which, changes);
        for (const each of criteria) {
          if (each.verdict === 'undetermined') expect(each.reasons.length).toBeGreaterThan(0);
          else {
            expect(each.margin.value >= 0).toBe(each.verdict === 'within');
            const difference =
              each.sense === 'at most' ? each.limit.value - each.value.value : each.value.value - each.limit.value;
            expect(each.margin.value).toBeCloseTo(difference, 9);
          }
        }
        const worst = criteria.map((each) => each.verdict).sort((a, b) => order[b] - order[a])[0];
        const anyOutside = criteria.some((each) => each.verdict === 'outside');
        expect(verdict).toBe(anyOutside ? 'outside' : worst);
        expect(criteria.some(decided)).toBe(true);
      }),
      runs,
    );
  });

  it('holds no figure that is not finite, and comes back from JSON as it was', () => {
    fc.assert(
      fc.property(name, anyChanges, (which, changes) => {
        const assessment = assessments[which](which, changes);
        expect(notFinite(assessment)).toEqual([]);
        expect(JSON.parse(JSON.stringify(assessment, withoutMinusZero))).toEqual(withoutUndefined(assessment));
      }),
      runs,
    );
  });

  it('leaves its request as it was, and gives the same again', () => {
    fc.assert(
      fc.property(name, anyChanges, (which, changes) => {
        const request = which.startsWith('takeoff') ? takeoffRequest(which, changes) : landingRequest(which, changes);
        const frozen = deepFrozen(structuredClone(request));
        const assess = () =>
          frozen.schema === 'groundroll/takeoff-request/1' ? assessTakeoff(frozen) : assessLanding(frozen);
        const first = assess();
        expect(first.ok).toBe(true);
        expect(frozen).toEqual(request);
        expect(assess()).toEqual(first);
      }),
      { numRuns: 50 },
    );
  });
});

function notFinite(value: unknown, place = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${place}: ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => notFinite(part, `${place}.${key}`));
}

const withoutMinusZero = (_key: string, value: unknown) => (Object.is(value, -0) ? 0 : value);

function withoutUndefined(value: unknown): unknown {
  if (Object.is(value, -0)) return 0;
  if (Array.isArray(value)) return value.map(withoutUndefined);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).filter(([, part]) => part !== undefined);
  return Object.fromEntries(entries.map(([key, part]) => [key, withoutUndefined(part)]));
}

function deepFrozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    for (const part of Object.values(value)) deepFrozen(part);
    Object.freeze(value);
  }
  return value;
}

/** The weather of a request in plain figures. */
function plain(weather: Weather): Conditions {
  const { wind, temperature, dewPoint, qnh } = weather;
  return {
    from_deg: typeof wind.from === 'string' ? 'variable' : wind.from.value,
    speed_kt: wind.speed.value,
    gust_kt: wind.gust?.value ?? wind.speed.value,
    gustReported: wind.gust !== undefined,
    range_deg: undefined,
    temperature_degC: temperature.value,
    dewPoint_degC: dewPoint?.value,
    pressure: { qnh_hPa: qnh?.value as number },
  };
}

const shown = ({ criteria }: Assessment) =>
  criteria.map((each) =>
    each.verdict === 'undetermined'
      ? [each.id, each.subject, each.verdict]
      : [each.id, each.subject, each.verdict, each.value.value, each.limit.value, each.margin.value],
  );

describe('a prepared assessment', () => {
  it('compares with the verdicts and figures of the full one, in every weather', () => {
    fc.assert(
      fc.property(name, anyChanges, (which, changes) => {
        const { weather, ...settled } = assessments[which](which, changes).request;
        const first = { ...settled, weather: takeoffRequest('takeoff-28').weather };
        const prepared =
          first.schema === 'groundroll/takeoff-request/1' ? prepareTakeoff(first) : prepareLanding(first);
        if (!prepared.ok) throw new Error(JSON.stringify(prepared.faults));
        const full = assessments[which](which, changes);
        const compared = prepared.value.compare(plain(weather));
        expect(compared.refused).toBeUndefined();
        expect(compared.verdict).toBe(full.verdict);
        const figures = compared.criteria.map(({ id, subject, verdict, value, limit, margin }) =>
          verdict === 'undetermined' ? [id, subject, verdict] : [id, subject, verdict, value, limit, margin],
        );
        expect(figures).toEqual(shown(full));
        expect(notFinite(compared)).toEqual([]);
        const explained = prepared.value.assess(weather);
        expect(explained).toEqual({ ok: true, value: full });
      }),
      runs,
    );
  });

  it('refuses conditions that are no weather, with why', () => {
    const prepared = prepareTakeoff(takeoffRequest('takeoff-28'));
    if (!prepared.ok) throw new Error(JSON.stringify(prepared.faults));
    const weather = plain(takeoffRequest('takeoff-28').weather);
    for (const [key, value] of [
      ['speed_kt', Number.NaN],
      ['temperature_degC', -300],
      ['gust_kt', 5],
      ['from_deg', 361],
      ['pressure', { qnh_hPa: Number.POSITIVE_INFINITY }],
      ['dewPoint_degC', 50],
    ] as const) {
      const compared = prepared.value.compare({ ...weather, [key]: value });
      expect(compared.verdict).toBe('undetermined');
      expect(compared.refused?.parameter).toBeTypeOf('string');
    }
  });

  it('refuses a weather against another north', () => {
    const prepared = prepareTakeoff(takeoffRequest('takeoff-28'));
    if (!prepared.ok) throw new Error(JSON.stringify(prepared.faults));
    const { weather } = takeoffRequest('takeoff-28', {
      'weather.wind.source': 'FAA tower',
      'weather.wind.from': { value: 180, unit: 'degMagnetic' },
    });
    const result = prepared.value.assess(weather);
    expect(result).toMatchObject({ ok: false, faults: [{ path: 'weather.wind.from' }] });
  });
});

describe('a break-even', () => {
  const distanceOf = (assessment: Assessment) =>
    assessment.criteria.find(({ id }) => id === 'takeoff-distance' || id === 'landing-distance')?.verdict;
  const dry = { 'weather.dewPoint': undefined, 'policies.humidity': undefined };
  const turnsAt = ({ breakEvens }: Assessment, quantity: string) =>
    breakEvens.find((each) => each.quantity === quantity)?.value?.value;

  it('of the mass is within, and a kilogram beyond is not', () => {
    fc.assert(
      fc.property(anyChanges, (changes) => {
        const found = turnsAt(takeoff('takeoff-28', changes), 'mass');
        fc.pre(found !== undefined && found < 1049);
        const at = (kg: number) => distanceOf(takeoff('takeoff-28', { ...changes, 'mass.value': kg }));
        expect(at(found)).toBe('within');
        expect(at(found + 1)).not.toBe('within');
      }),
      runs,
    );
  });

  it('of the temperature is within, and a degree beyond is not', () => {
    fc.assert(
      fc.property(name, anyChanges, (which, changes) => {
        const found = turnsAt(assessments[which](which, { ...changes, ...dry }), 'temperature');
        fc.pre(found !== undefined && found < 39);
        const at = (degC: number) =>
          distanceOf(assessments[which](which, { ...changes, ...dry, 'weather.temperature.value': degC }));
        expect(at(found)).toBe('within');
        expect(at(found + 1)).not.toBe('within');
      }),
      runs,
    );
  });

  it('of the tailwind is within, and a tenth of a knot beyond is not', () => {
    // The tailwind of a break-even is the wind used: 150 % of a mean that blows along the runway.
    fc.assert(
      fc.property(anyChanges, (changes) => {
        const others = Object.entries(changes).filter(([place]) => !place.startsWith('weather.wind.'));
        const at = (used_kt: number) =>
          takeoff('takeoff-28', { ...Object.fromEntries(others), ...along('takeoff-28', used_kt / 1.5) });
        const found = turnsAt(at(0), 'tailwind');
        fc.pre(found !== undefined && found < 7.9);
        expect(distanceOf(at(found as number))).toBe('within');
        expect(distanceOf(at(found + 0.1))).not.toBe('within');
      }),
      runs,
    );
  });
});
