import { describe, expect, it } from 'vitest';
import { factorSets } from '../../src/distance/index.ts';
import { type AnyRequest, assessAny, prepareAny, weatherOf } from '../../src/study/any-request.ts';
import { comparisonsOf } from '../../src/study/comparisons.ts';
import { mostAdverseSurface, tallestObstacle } from '../../src/study/index.ts';
import { inputsOf } from '../../src/study/inputs/all.ts';
import { breakEvensOn28, pressureAltitude_ft, printed, wind } from '../assessment/recompute.ts';
import { landingRequest, takeoffRequest } from '../assessment/scenario.ts';
import { landingOf, lightWind, takeoffOf } from './aeroplanes.ts';
import { agrees, limitNames, limits, solvedOf } from './limits.ts';

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

it('says of the range no more than was searched', () => {
  const masses = { maximumTakeoff: { value: 960.7, unit: 'kg' }, maximumLanding: { value: 960.7, unit: 'kg' } };
  const light = takeoffRequest('takeoff-28', { 'performanceData.masses': masses, 'mass.value': 900.2 });
  expect(solvedOf(limits.mass.solve(light)).sentence.text).toBe(
    'Mass: within limits throughout the range, 901 kg to 960 kg.',
  );
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

  it('refuses an obstacle at the other end, on which no criterion depends, and never calls it within limits', () => {
    // The pines stand beyond the 28 end: behind a take-off on 28 and ahead of a landing on 10.
    const faults = (phase: string) => [
      {
        path: 'runway.obstacles',
        message: `"pines" stands beyond the 28 end: no criterion of a ${phase} depends on it`,
      },
    ];
    expect(tallestObstacle(takeoffRequest('takeoff-28'), 'pines')).toEqual({
      ok: false,
      faults: faults('take-off on 28'),
    });
    expect(tallestObstacle(landingRequest('landing-10'), 'pines')).toEqual({
      ok: false,
      faults: faults('landing on 10'),
    });
    expect(tallestObstacle(landingRequest('landing-28'), 'pines').ok).toBe(true);
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
    for (const name of limitNames) {
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
