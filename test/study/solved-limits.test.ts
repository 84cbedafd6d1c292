import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factorSets } from '../../src/distance/index.ts';
import type { ReadResult } from '../../src/documents/index.ts';
import { type AnyRequest, assessAny, prepareAny, weatherOf } from '../../src/study/any-request.ts';
import { comparisonsOf } from '../../src/study/comparisons.ts';
import {
  greatestCrosswind,
  greatestSurfaceFactor,
  greatestTailwind,
  highestTemperature,
  mostAdverseSurface,
  performanceLimitedMass,
  type SolvedLimit,
  shortestRunway,
  tallestObstacle,
} from '../../src/study/index.ts';
import { inputsOf } from '../../src/study/inputs/all.ts';
import {
  crosswindQuestion,
  massQuestion,
  runwayLengthQuestion,
  surfaceFactorQuestion,
  tailwindQuestion,
  temperatureQuestion,
} from '../../src/study/questions.ts';
import { breakEvensOn28, pressureAltitude_ft, printed, wind } from '../assessment/recompute.ts';
import { landingRequest, takeoffRequest } from '../assessment/scenario.ts';
import { evenly } from '../evenly.ts';
import { aeroplanes, landingOf, lightWind, takeoffOf } from './aeroplanes.ts';

function solvedOf(result: ReadResult<SolvedLimit>): SolvedLimit {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

const limits = {
  mass: { solve: performanceLimitedMass, question: massQuestion },
  temperature: { solve: highestTemperature, question: temperatureQuestion },
  tailwind: { solve: greatestTailwind, question: tailwindQuestion },
  crosswind: { solve: greatestCrosswind, question: crosswindQuestion },
  'runway length': { solve: shortestRunway, question: runwayLengthQuestion },
  'surface factor': { solve: greatestSurfaceFactor, question: surfaceFactorQuestion },
} as const;
const names = Object.keys(limits) as (keyof typeof limits)[];

/** The verdict of the whole, explained assessment with the input at a value. */
function assessedAt(request: AnyRequest, name: keyof typeof limits, value: number) {
  const assessed = assessAny(limits[name].question(request).input.at(value));
  return assessed.ok ? assessed.value.verdict : 'undetermined';
}

/** Solving, and assessing at the solution and one step beyond it, must agree. */
function agrees(request: AnyRequest, name: keyof typeof limits): SolvedLimit {
  const limit = solvedOf(limits[name].solve(request));
  const { favourable, adverse } = limits[name].question(request);
  const towards = adverse >= favourable ? 1 : -1;
  const at = (value: number) => assessedAt(request, name, value);
  const { from, to } = limit.range;
  if (limit.answer === 'value') {
    const value = limit.value?.value as number;
    expect(at(value), `${name} at ${value}`).toBe('within');
    const beyond =
      (value + limit.tolerance * towards) * towards > to.value * towards ? to.value : value + limit.tolerance * towards;
    expect(at(Number(beyond.toPrecision(12))), `${name} beyond ${value}`).not.toBe('within');
    expect(limit.limitedBy.length).toBeGreaterThan(0);
    expect(limit.limitedBy.every(({ verdict }) => verdict !== 'within')).toBe(true);
  } else if (limit.answer === 'withinThroughoutRange') {
    for (const share of [0, 0.3, 0.7, 1]) expect(at(from.value + (to.value - from.value) * share)).toBe('within');
    expect(limit.limitedBy).toEqual([]);
  } else {
    const verdicts = [0, 0.3, 0.7, 1].map((share) => at(from.value + (to.value - from.value) * share));
    expect(verdicts).not.toContain('within');
    if (limit.answer === 'outsideThroughoutRange') expect(new Set(verdicts)).toEqual(new Set(['outside']));
    expect(limit.limitedBy.length).toBeGreaterThan(0);
  }
  expect(limit.working).toHaveLength(limit.evaluations);
  expect(limit.limitsOfUse.length).toBeGreaterThan(0);
  return limit;
}

describe('take-off 28 of the demo', () => {
  const request = takeoffRequest('takeoff-28');
  // Published with the scenario; they look at the distance alone.
  const published = breakEvensOn28();

  it('turns for mass, temperature and surface where the distance alone turns', () => {
    expect(agrees(request, 'mass')).toMatchObject({
      answer: 'value',
      value: { value: published.mass, unit: 'kg' },
      tolerance: 1,
      limitedBy: [{ id: 'takeoff-distance', verdict: 'outside' }],
      sentence: {
        code: 'limit-value',
        text: 'Mass: within limits up to 970 kg; beyond that the take-off distance, 1 m short.',
      },
    });
    expect(agrees(request, 'temperature').value).toEqual({ value: published.temperature, unit: 'degC' });
    expect(agrees(request, 'surface factor').value).toEqual({ value: published['surface factor'], unit: 'ratio' });
  });

  it('is tighter for the tailwind: the personal limit of 5 kt comes before the distance at 5.5 kt', () => {
    const limit = agrees(request, 'tailwind');
    expect(limit.value).toEqual({ value: 5, unit: 'kt' });
    expect(limit.value?.value).toBeLessThan(published.tailwind);
    expect(limit.limitedBy).toMatchObject([{ id: 'tailwind', limitStatus: 'personal' }]);
    const without = takeoffRequest('takeoff-28', { personalLimits: undefined });
    expect(agrees(without, 'tailwind').value).toEqual({ value: published.tailwind, unit: 'kt' });
  });

  it('keeps what the request confirms of the safety factor when the surface is replaced', () => {
    const classB = factorSets['easa-class-b'];
    const tests = classB.takeoff.safety.flatMap((each) => each.tests);
    const safety = classB.takeoff.safety.map((each) => ({
      ...each,
      tests: each.tests.map((test) => ({ ...test, access: 'recalled' as const })),
    }));
    const recalled = takeoffRequest('takeoff-28', {
      factorSet: { ...classB, takeoff: { ...classB.takeoff, safety } },
      'policies.confirmations': tests.map(({ id }) => ({ factorId: id, edition: '2024', date: '2026-07-14' })),
    });
    expect(agrees(recalled, 'surface factor').value).toEqual({ value: published['surface factor'], unit: 'ratio' });
  });

  it('needs no shorter runway than the distance required, and takes the crosswind of the least limit', () => {
    const required = printed.takeoffDistance(940, pressureAltitude_ft, 26) * (1 - 0.045 * wind(292).used) * 1.2 * 1.25;
    expect(agrees(request, 'runway length').value).toEqual({ value: Math.ceil(required), unit: 'm' });
    expect(agrees(request, 'crosswind').value).toEqual({ value: 18, unit: 'kt' });
  });
});

describe('solving and assessing at the solution agree', () => {
  const sets = ['easa-class-b', 'uk-light-aeroplane-leaflet', 'faa-handbook', 'part-nco'] as const;

  it.each(aeroplanes.flatMap((aeroplane) => sets.map((set) => [aeroplane, set] as const)))(
    '%s under %s, take-off and landing',
    (aeroplane, factorSet) => {
      // On pavement, where every set has a figure; the leaflet's safety factors are second-hand, not recalled.
      const changes = {
        ...lightWind,
        factorSet,
        'runway.surface': { kind: 'paved', condition: 'dry' },
        'runway.obstacles': [],
      };
      const found = [takeoffOf(aeroplane, changes), landingOf(aeroplane, changes)].flatMap((request) =>
        names.map((name) => agrees(request, name).answer),
      );
      // Not the ends of the ranges alone.
      expect(found.filter((answer) => answer === 'value').length).toBeGreaterThanOrEqual(3);
    },
  );

  it('on grass over trees, whatever the day', () => {
    const anyRequest = fc
      .record({
        which: fc.constantFrom('takeoff-28', 'takeoff-10', 'landing-10', 'landing-28'),
        'mass.value': fc.integer({ min: 860, max: 1040 }),
        'weather.temperature.value': fc.integer({ min: 16, max: 38 }),
        'weather.qnh.value': fc.integer({ min: 990, max: 1030 }),
        'weather.wind.from.value': fc.integer({ min: 1, max: 36 }).map((tens) => tens * 10),
        'runway.length.value': fc.constantFrom(830, 1000),
      })
      .map(({ which, ...changes }) =>
        which.startsWith('takeoff') ? takeoffRequest(which, changes) : landingRequest(which, changes),
      );
    fc.assert(
      fc.property(anyRequest, fc.constantFrom(...names), (request, name) => {
        agrees(request, name);
      }),
      { numRuns: 60 },
    );
  });
});

describe('monotonicity', () => {
  const spread = evenly(0, 1);

  it('everything from the favourable end to the solved value is within, and nothing beyond it', () => {
    const requests = [takeoffRequest('takeoff-28'), landingRequest('landing-10'), takeoffOf('linnet-two', lightWind)];
    const solved = requests.map(
      (request) => new Map(names.map((name) => [name, solvedOf(limits[name].solve(request))])),
    );
    fc.assert(
      fc.property(fc.nat(requests.length - 1), fc.constantFrom(...names), spread, (i, name, share) => {
        const limit = solved[i]?.get(name) as SolvedLimit;
        if (limit.value === undefined) return;
        const { from, to } = limit.range;
        const inside = from.value + (limit.value.value - from.value) * share;
        const outside = limit.value.value + (to.value - limit.value.value) * share;
        const request = requests[i] as AnyRequest;
        expect(assessedAt(request, name, inside)).toBe('within');
        if (Math.abs(outside - limit.value.value) >= limit.tolerance)
          expect(assessedAt(request, name, outside)).not.toBe('within');
      }),
      { numRuns: 120 },
    );
  });

  it('a heavier aeroplane takes no higher temperature, and warmer air no greater mass', () => {
    const temperature = (kg: number) =>
      solvedOf(highestTemperature(takeoffRequest('takeoff-28', { 'mass.value': kg }))).value?.value ?? -40;
    const mass = (degC: number) =>
      solvedOf(performanceLimitedMass(takeoffRequest('takeoff-28', { 'weather.temperature.value': degC }))).value
        ?.value ?? 0;
    fc.assert(
      fc.property(fc.integer({ min: 941, max: 1010 }), fc.integer({ min: 1, max: 30 }), (kg, more) => {
        expect(temperature(kg + more)).toBeLessThanOrEqual(temperature(kg));
      }),
      { numRuns: 15 },
    );
    fc.assert(
      fc.property(fc.integer({ min: 16, max: 30 }), fc.integer({ min: 1, max: 9 }), (degC, more) => {
        expect(mass(degC + more)).toBeLessThanOrEqual(mass(degC));
      }),
      { numRuns: 15 },
    );
  });
});

describe('answers without a value', () => {
  it('within throughout: a landing whose table holds for all masses', () => {
    const limit = agrees(landingRequest('landing-10'), 'mass');
    expect(limit).toMatchObject({ answer: 'withinThroughoutRange', range: { to: { value: 1050, unit: 'kg' } } });
    expect(limit.value).toBeUndefined();
    expect(limit.sentence.text).toBe('Mass: within limits throughout the range, 940 kg to 1\u00a0050 kg.');
  });

  it('outside throughout: trees that no mass clears on the approach', () => {
    const limit = agrees(landingRequest('landing-28'), 'mass');
    expect(limit).toMatchObject({ answer: 'outsideThroughoutRange', limitedBy: [{ id: 'landing-distance' }] });
    expect(limit.sentence.text).toContain('outside limits throughout the range');
  });

  it('undetermined is not within, and is named', () => {
    const unlooked = agrees(takeoffRequest('takeoff-28', { 'runway.obstacles': undefined }), 'mass');
    expect(unlooked).toMatchObject({
      answer: 'undetermined',
      limitedBy: [{ id: 'obstacle', verdict: 'undetermined', reasons: [{ code: 'obstacles-not-assessed' }] }],
    });
    expect(unlooked.sentence.text).toContain('the gradient over obstacles, undetermined');
  });

  it('a figure that ends before a limit is reached turns the verdict as well', () => {
    // Wind used beyond the last printed tailwind: 4 kt.
    const short = takeoffRequest('takeoff-28', {
      'performanceData.takeoff.0.corrections.tailwind.upTo.value': 4,
      'runway.length.value': 1500,
      'runway.ends.0.declaredDistances': undefined,
      'runway.ends.1.declaredDistances': undefined,
    });
    expect(agrees(short, 'tailwind')).toMatchObject({ answer: 'withinThroughoutRange', range: { to: { value: 4 } } });
    // No temperature axis: the search runs over all temperatures, the figures end with the density altitude.
    const limit = agrees(takeoffOf('plover-two', { ...lightWind, 'mass.value': 1300 }), 'temperature');
    expect(limit.range.to.value).toBe(50);
  });
});

describe('tallestObstacle', () => {
  it('turns where the gradient turns, by height on its ground', () => {
    const request = takeoffRequest('takeoff-10');
    const limit = solvedOf(tallestObstacle(request, 'pines'));
    expect(limit).toMatchObject({ answer: 'value', limitedBy: [{ id: 'obstacle' }] });
    const at = (value: number) => {
      const assessed = assessAny(
        takeoffRequest('takeoff-10', { 'runway.obstacles.0.height': { value, unit: 'mHeight' } }),
      );
      return assessed.ok && assessed.value.verdict;
    };
    expect(limit.value?.unit).toBe('mHeight');
    expect([at(limit.value?.value as number), at((limit.value?.value as number) + 1)]).toEqual(['within', 'outside']);
  });

  it('searches the elevation of a top where that is stated, in its unit', () => {
    const limit = solvedOf(tallestObstacle(takeoffRequest('quarry-takeoff-04'), 'spoil heap'));
    const at = (value: number) => {
      const top = { value, unit: 'ftElevation' };
      const assessed = assessAny(takeoffRequest('quarry-takeoff-04', { 'runway.obstacles.1.topElevation': top }));
      return assessed.ok && assessed.value.verdict;
    };
    expect(limit.value?.unit).toBe('ftElevation');
    expect([at(limit.value?.value as number), at((limit.value?.value as number) + 1)]).toEqual(['within', 'outside']);
  });

  it('refuses a name that belongs to none or to several', () => {
    const request = takeoffRequest('takeoff-10');
    expect(tallestObstacle(request, 'oaks')).toMatchObject({
      ok: false,
      faults: [{ path: 'runway.obstacles', message: 'none of the obstacles listed is named "oaks"' }],
    });
    const [pines] = request.runway.obstacles ?? [];
    const twice = { ...request, runway: { ...request.runway, obstacles: [pines, pines] as never } };
    expect(tallestObstacle(twice, 'pines')).toMatchObject({
      ok: false,
      faults: [{ message: '2 of the obstacles listed are named "pines"' }],
    });
  });
});

describe('mostAdverseSurface', () => {
  const grass = (condition: 'dry' | 'wet', ground: 'firm' | 'soft' = 'firm') =>
    ({ kind: 'grass', condition, length: 'up to 20 cm', ground }) as const;
  const list = [{ kind: 'paved', condition: 'dry' } as const, grass('dry'), grass('wet'), grass('wet', 'soft')];
  const found = (request: AnyRequest, surfaces = list as readonly (typeof list)[number][]) => {
    const result = mostAdverseSurface(request, surfaces);
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    return result.value;
  };

  it('is the last that is within before the first that is not, each with its verdict', () => {
    const result = found(takeoffRequest('takeoff-28'));
    expect(result).toMatchObject({ answer: 'value', value: grass('dry'), evaluations: 4 });
    // Wet grass costs 1.30: 835 m of 830.
    expect(result.limitedBy).toMatchObject([{ id: 'takeoff-distance', margin: { value: -5 } }]);
    expect(result.surfaces.map(({ verdict }) => verdict)).toEqual(['within', 'within', 'outside', 'undetermined']);
    expect(result.sentence.text).toBe(
      'Dry grass up to 20 cm on firm ground is the last of the surfaces given that is within limits; on wet grass up to 20 cm on firm ground the take-off distance, 5 m short.',
    );
  });

  it('says so where all are within, and where none is', () => {
    expect(found(takeoffRequest('takeoff-28'), list.slice(0, 2))).toMatchObject({
      answer: 'withinThroughoutRange',
      limitedBy: [],
    });
    expect(found(landingRequest('landing-28'), list.slice(0, 2))).toMatchObject({ answer: 'outsideThroughoutRange' });
    const gravel = found(takeoffRequest('takeoff-28'), [{ kind: 'gravel', condition: 'dry' } as never]);
    expect(gravel.answer).toBe('undetermined');
    expect(gravel.limitedBy.map(({ id }) => id)).toEqual(['takeoff-run', 'takeoff-distance']);
  });

  it('places a fault of a surface in the list, and refuses an empty one', () => {
    const broken = [...list, { kind: 'mud' } as never];
    expect(mostAdverseSurface(takeoffRequest('takeoff-28'), broken)).toMatchObject({
      ok: false,
      faults: [expect.objectContaining({ path: expect.stringContaining('surfaces[4]') })],
    });
    expect(mostAdverseSurface(takeoffRequest('takeoff-28'), [])).toMatchObject({ ok: false });
  });
});

describe('units and faults', () => {
  it('answers in the units of the request, rounded to the safe side', () => {
    const inOthers = takeoffRequest('takeoff-28', {
      mass: { value: 2072, unit: 'lb' },
      'weather.temperature': { value: 78.8, unit: 'degF' },
      'weather.dewPoint': undefined,
      'runway.length': { value: 2723, unit: 'ft' },
      'runway.ends.0.declaredDistances': undefined,
      'runway.ends.1.declaredDistances': undefined,
    });
    const mass = agrees(inOthers, 'mass').value;
    expect(mass?.unit).toBe('lb');
    expect(Math.abs((mass?.value ?? 0) * 0.45359237 - 970)).toBeLessThan(1.5);
    expect(agrees(inOthers, 'temperature').value?.unit).toBe('degF');
    const length = agrees(inOthers, 'runway length').value;
    expect(length?.unit).toBe('ft');
    expect(Math.abs((length?.value ?? 0) * 0.3048 - 771)).toBeLessThan(1);
  });

  it('keeps a declared distance, a clearway and a displaced threshold in proportion to the runway', () => {
    for (const request of [takeoffRequest('quarry-takeoff-04'), landingRequest('quarry-landing-04')])
      expect(agrees(request, 'runway length').answer).toBe('value');
  });

  it('searches at the virtual temperature from the dew point up', () => {
    const humid = takeoffRequest('takeoff-28', { 'policies.humidity': 'virtual temperature', 'mass.value': 1000 });
    const limit = agrees(humid, 'temperature');
    expect(limit.range.from.value).toBe(16);
  });

  it('gives the faults of the request', () => {
    const broken = takeoffRequest('takeoff-28', { 'mass.value': -1 });
    for (const name of names) {
      const result = limits[name].solve(broken);
      expect(!result.ok && result.faults.map(({ path }) => path)).toEqual(['mass.value']);
    }
    expect(tallestObstacle(broken, 'pines').ok).toBe(false);
  });
});

describe('comparing with a changed weather or mass', () => {
  it('is the same as reading the changed request again', () => {
    const requests = [
      takeoffRequest('takeoff-28'),
      landingRequest('landing-28'),
      takeoffOf('plover-two'),
      landingOf('linnet-two'),
    ];
    for (const request of requests) {
      for (const input of inputsOf(request).filter(({ changes }) => changes !== 'request')) {
        const compare = comparisonsOf(request, input);
        for (const by of [-3, -1, 0, 0.5, 2]) {
          const value = (input.today as number) + by;
          if (value < input.min || value > input.max) continue;
          const changed = input.at(value);
          const prepared = prepareAny(changed);
          if (!prepared.ok) throw new Error(JSON.stringify(prepared.faults));
          expect(compare(value), `${input.id} ${value}`).toEqual(prepared.value.compare(weatherOf(changed)));
        }
      }
    }
  });
});
