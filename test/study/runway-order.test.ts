import { describe, expect, it } from 'vitest';
import type { AnyRequest } from '../../src/study/any-request.ts';
import { compareRunways, mostAdverseSurface, sensitivitySeries } from '../../src/study/index.ts';
import { landing as recomputed } from '../assessment/recompute.ts';
import { landingRequest, performanceData, takeoffRequest } from '../assessment/scenario.ts';

const texts = (request: AnyRequest, ...runways: Parameters<typeof compareRunways>[1][]) => {
  const result = compareRunways(request, ...runways);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value.rows.map(({ sentence }) => sentence.text);
};
const paths = (request: AnyRequest, runways: unknown) => {
  const result = compareRunways(request, runways as never);
  return result.ok ? [] : result.faults.map(({ path }) => path);
};

describe('the ends of runways in words', () => {
  it('say only what there is where one criterion alone is decided', () => {
    // No crosswind of the manual and none of the pilot's own: nothing to hold it against.
    const data = { ...performanceData('corran-four'), crosswind: [], tailwind: [] };
    const unlimited = landingRequest('landing-10', { performanceData: data, personalLimits: undefined });
    expect(texts(unlimited)[0]).toBe(
      `10: undetermined; not to be determined: crosswind; tightest of the rest is the landing distance, ${recomputed('10').margin} m to spare.`,
    );
  });

  it('name a mass above the maximum, and no mass below it', () => {
    // 1050 kg is the maximum of the manual. 17 of 18 kt is the nearest otherwise.
    expect(texts(takeoffRequest('takeoff-28', { 'mass.value': 1060 }))[0]).toMatch(
      /limits; tightest is the mass, 10 kg /,
    );
    expect(texts(landingRequest('landing-10', { 'mass.value': 1050 }))[0]).toMatch(
      /within limits; tightest is the crosswind, 1 kt to spare/,
    );
  });

  it('stand by what is decided where both are undetermined', () => {
    // In a calm 28 is downhill, 10 is uphill and costs more; obstacles nobody looked for leave both open.
    const calm = takeoffRequest('takeoff-28', {
      'runway.obstacles': undefined,
      'weather.wind.speed.value': 0,
      'weather.wind.gust': undefined,
    });
    expect(texts(calm).map((text) => text.split(';')[0])).toEqual(['28: undetermined', '10: undetermined']);
  });
});

describe('runways that cannot be read', () => {
  const request = takeoffRequest('takeoff-28');

  it('are named by their place, with no ends or none that is one', () => {
    expect(paths(request, [{ ...request.runway, ends: [] }])).toEqual(['runways[0].ends[0]', 'runways[0].ends[1]']);
    expect(paths(request, [request.runway, { ...request.runway, ends: [null, null] }])).toEqual(
      expect.arrayContaining(['runways[1].ends[0]', 'runways[1].ends[1]']),
    );
  });

  it('are not confused with another key of that name', () => {
    const weather = { ...request.weather, runway: 'wet' };
    expect(paths({ ...request, weather } as never, [request.runway])).toEqual(['weather.runway']);
  });
});

describe('surfaces in the order of the caller', () => {
  const wet = { kind: 'grass', condition: 'wet', length: 'up to 20 cm', ground: 'firm' } as const;
  const dry = { ...wet, condition: 'dry' } as const;
  const snow = { kind: 'snow' } as const;
  const found = (...surfaces: Parameters<typeof mostAdverseSurface>[1]) => {
    const result = mostAdverseSurface(takeoffRequest('takeoff-28'), surfaces);
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    return result.value;
  };

  it('without one within are outside only where all are', () => {
    expect(found(snow, wet).answer).toBe('undetermined');
    expect(found(wet, snow).answer).toBe('undetermined');
    expect(found(wet, wet).answer).toBe('outsideThroughoutRange');
  });

  it('say what limits first, however many criteria turn', () => {
    const turning = found(dry, snow);
    expect(turning.limitedBy.map(({ id }) => id)).toEqual(['takeoff-run', 'takeoff-distance']);
    expect(turning.sentence.text).toBe(
      'Dry grass up to 20 cm on firm ground is the last of the surfaces given that is within limits; on snow the take-off run, undetermined.',
    );
  });
});

it('a series along something the request does not have names the obstacle only where one is named', () => {
  const message = (along: object) => {
    const result = sensitivitySeries(takeoffRequest('takeoff-28'), along as never);
    return result.ok ? undefined : result.faults[0]?.message;
  };
  expect(message({ input: 'obstacleHeight' })).toBe('this request has no obstacleHeight');
  expect(message({ input: 'obstacleHeight', obstacle: 'chimney' })).toBe(
    'this request has no obstacleHeight of "chimney"',
  );
});
