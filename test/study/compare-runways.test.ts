import { describe, expect, it } from 'vitest';
import { compareRunways } from '../../src/study/index.ts';
import { landingRequest, takeoffRequest } from '../assessment/scenario.ts';

const texts = (result: ReturnType<typeof compareRunways>) => {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value.rows.map(({ sentence }) => sentence.text);
};

describe('a sentence ends in no name that is missing', () => {
  it('where nothing of a runway is decided', () => {
    const request = landingRequest('landing-10', {
      'runway.surface': { kind: 'snow' },
      'performanceData.crosswind': [],
      'performanceData.tailwind': [],
      personalLimits: undefined,
      'runway.obstacles': [],
    });
    const result = compareRunways(request);
    const row = result.ok ? result.value.rows.find(({ designator }) => designator === '10') : undefined;
    expect(row?.sentence.text).toMatch(/^10: undetermined; not to be determined: .*crosswind.*\.$/);
    expect(row?.sentence.text).not.toContain('rest');
  });

  it('and an end without a designator puts no blame on the end in use', () => {
    const { runway, ...request } = landingRequest('landing-10');
    const result = compareRunways({ ...request, runway: { ...runway, ends: [null, null] } } as never);
    expect(result.ok ? [] : result.faults.map(({ path }) => path)).toEqual(['runway.ends[0]', 'runway.ends[1]']);
  });
});

describe('compareRunways', () => {
  it('sets both ends for the landing in order, with the tightest criteria', () => {
    expect(texts(compareRunways(landingRequest('landing-28')))).toEqual([
      '10: within limits; tightest is the crosswind, 1 kt to spare, then the landing distance, 111 m.',
      '28: outside limits; tightest is the landing distance, 685 m short, then the crosswind, 1 kt to spare.',
    ]);
  });

  it('sets both ends for the take-off, whichever end the request names', () => {
    const wanted = [
      '28: within limits; tightest is the crosswind, 1 kt to spare, then the take-off distance, 59 m.',
      '10: outside limits; tightest is the gradient over pines, 11.7 percentage points short, then the crosswind, 1 kt to spare.',
    ];
    expect(texts(compareRunways(takeoffRequest('takeoff-28')))).toEqual(wanted);
    expect(texts(compareRunways(takeoffRequest('takeoff-10')))).toEqual(wanted);
  });

  it('takes several runways, undetermined ends after those within and before those outside', () => {
    const request = takeoffRequest('takeoff-28');
    const { obstacles: _, ...unlooked } = request.runway;
    const second = {
      ...unlooked,
      ends: unlooked.ends.map((end, i) => ({ ...end, designator: ['09', '27'][i] })),
    } as never;
    const result = compareRunways(request, [second, request.runway]);
    expect(texts(result).map((text) => text.split(':')[0])).toEqual(['28', '09', '27', '10']);
    expect(texts(result)[2]).toBe(
      '27: undetermined; not to be determined: the gradient over obstacles; tightest of the rest is the crosswind, 1 kt to spare, then the take-off distance, 59 m.',
    );
  });

  it('orders ends of one verdict by the share of the limit that is left', () => {
    const request = takeoffRequest('takeoff-28', { 'runway.obstacles': [] });
    const result = compareRunways(request);
    // Crosswind 17 of 18 kt at either end: the same share, so the order of the runway is kept.
    expect(texts(result).map((text) => text.slice(0, 2))).toEqual(['10', '28']);
    const calm = takeoffRequest('takeoff-28', {
      'runway.obstacles': [],
      'weather.wind.speed.value': 0,
      'weather.wind.gust': undefined,
    });
    // Uphill on 10 costs what downhill on 28 does not.
    expect(texts(compareRunways(calm)).map((text) => text.slice(0, 2))).toEqual(['28', '10']);
  });

  it('names the aerodrome where there are several', () => {
    const request = takeoffRequest('takeoff-28');
    const result = compareRunways(request, [request.runway, { ...request.runway, aerodrome: 'Elsewhere' }]);
    expect(texts(result).map((text) => text.split(':')[0])).toEqual([
      'Vesikorpi 28',
      'Elsewhere 28',
      'Vesikorpi 10',
      'Elsewhere 10',
    ]);
  });

  it('carries the limits of use and calls nothing best or safe', () => {
    const result = compareRunways(landingRequest('landing-10'));
    expect(result).toMatchObject({ ok: true, value: { limitsOfUse: expect.arrayContaining([expect.any(String)]) } });
    expect(JSON.stringify(result.ok && result.value.rows)).not.toMatch(/\bbest\b|\bsafe\b/i);
  });

  it('gives every fault once, those of a runway by its place in the list', () => {
    const request = takeoffRequest('takeoff-28');
    const broken = { ...request.runway, length: { value: -1, unit: 'm' } } as never;
    const result = compareRunways({ ...request, mass: { value: -5, unit: 'kg' } }, [request.runway, broken]);
    expect(!result.ok && result.faults.map(({ path }) => path)).toEqual(['mass.value', 'runways[1].length.value']);
    expect(compareRunways(request, [])).toMatchObject({ ok: false, faults: [{ path: 'runways' }] });
    expect(compareRunways(request, [undefined as never])).toMatchObject({
      ok: false,
      faults: [{ path: 'runways[0]' }],
    });
  });
});
