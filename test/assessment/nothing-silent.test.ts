import { describe, expect, it } from 'vitest';
import { assessLanding, assessTakeoff, prepareTakeoff } from '../../src/assessment/index.ts';
import { codes, criterion, judged, landing, landingRequest, takeoff, takeoffRequest, turning } from './scenario.ts';

const data = 'performanceData';
const surfaces = (phase: 'takeoff' | 'landing') => `${data}.${phase}.0.corrections.surfaces`;
const mark = (assessment: { marks: readonly { id: string; at?: { value: number } }[] }, id: string) =>
  assessment.marks.find((each) => each.id === id)?.at?.value;
const paths = (result: { ok: boolean; faults?: readonly { path: string }[] }) =>
  (result.faults ?? []).map(({ path }) => path);

describe('a wind that no limit stands against', () => {
  const none = { [`${data}.crosswind`]: [], [`${data}.tailwind`]: [], personalLimits: undefined };

  it('leaves the crosswind undetermined, not absent', () => {
    const wind = { source: 'METAR', from: { value: 202, unit: 'degTrue' }, speed: { value: 35, unit: 'kt' } };
    const assessment = takeoff('takeoff-28', { ...none, 'weather.wind': wind });
    expect(criterion(assessment, 'crosswind').reasons.map(({ code }) => code)).toEqual(['no-crosswind-limit']);
    expect(assessment.verdict).not.toBe('within');
  });

  it('leaves the tailwind undetermined, and says nothing where there is none', () => {
    expect(criterion(takeoff('takeoff-28', none), 'tailwind').verdict).toBe('undetermined');
    expect(takeoff('takeoff-10', none).criteria.filter(({ id }) => id === 'tailwind')).toEqual([]);
  });

  it('is the same where a demonstrated value is taken for information only', () => {
    const informed = { personalLimits: undefined, policies: { demonstratedCrosswind: 'information' } };
    expect(criterion(takeoff('takeoff-28', informed), 'crosswind').verdict).toBe('undetermined');
  });
});

describe('a speed that the data do not have', () => {
  const lightOnly = (values: readonly number[]) => ({
    axes: [{ quantity: 'mass', unit: 'kg', values: [800, 900] }],
    unit: 'kias',
    cells: values,
  });

  it('does not drop the addition to the approach', () => {
    const assessment = landing('landing-10', { [`${data}.landing.0.approachSpeed`]: lightOnly([55, 57]) });
    expect(judged(assessment, 'landing-distance')).toEqual({ verdict: 'undetermined' });
    expect(codes(criterion(assessment, 'landing-distance').reasons)).toContain('off-table');
  });

  it('does not drop an addition to the lift-off speed', () => {
    const changes = {
      [`${data}.takeoff.0.liftOffSpeed`]: lightOnly([45, 46]),
      liftOffSpeedAddition: { value: 10, unit: 'kt' },
    };
    expect(judged(takeoff('takeoff-28', changes), 'takeoff-distance')).toEqual({ verdict: 'undetermined' });
  });

  it('is not taken as no height given up for speed', () => {
    const flap15 = takeoffRequest('takeoff-10').performanceData.calibrations.filter(({ flap }) => flap !== '15');
    const assessment = takeoff('takeoff-10', {
      [`${data}.calibrations`]: flap15,
      [`${data}.climb.0.flap`]: '35',
      [`${data}.climb.0.speed`]: { axes: [], unit: 'kias', cells: 65 },
    });
    expect(criterion(assessment, 'obstacle').verdict).toBe('undetermined');
    expect(codes(criterion(assessment, 'obstacle').reasons)).toEqual(['no-calibration']);
  });
});

describe('marks', () => {
  it('count the height given up to gain the climb speed', () => {
    const assessment = takeoff('takeoff-10', {
      'runway.obstacles.0.beyond.value': 400,
      [`${data}.climb.0.flap`]: '35',
      [`${data}.climb.0.speed`]: { axes: [], unit: 'kias', cells: 65 },
    });
    // By hand: 960.7 m without the loss, less 14.55 m / (0.09488 - 0.01873), less 219.6 m airborne.
    expect(mark(assessment, 'latest-lift-off')).toBe(550);
  });

  it('are not given where nobody has looked for obstacles', () => {
    const assessment = takeoff('takeoff-10', { 'runway.obstacles': undefined });
    expect(assessment.marks.every(({ at }) => at === undefined)).toBe(true);
    expect(codes(assessment.marks.flatMap(({ reasons }) => reasons))).toContain('obstacles-not-assessed');
  });

  it('of the touchdown are not given on a factor that is a lower bound', () => {
    const soft = { factorSet: 'uk-light-aeroplane-leaflet', 'runway.surface.ground': 'soft' };
    expect(mark(landing('landing-10', soft), 'latest-touchdown-point')).toBeUndefined();
    expect(mark(landing('landing-10'), 'latest-touchdown-point')).toBe(564);
  });

  it('take the elevation of the line-up point on a slope', () => {
    const mast = {
      name: 'mast',
      end: '10',
      beyond: { value: 600, unit: 'm' },
      topElevation: { value: 520, unit: 'ftElevation' },
    };
    const assessment = takeoff('takeoff-28', { 'runway.obstacles': [mast], lineUpLoss: { value: 100, unit: 'm' } });
    const step = assessment.trace.find(
      (entry) => entry.kind === 'step' && entry.record === 'flight-path.latest-path-start',
    );
    // By hand: the mast's top over the surface at the line-up point, reached over the end of the runway.
    expect(step?.kind === 'step' && (step.inputs['obstacleTop'] as number)).toBeCloseTo(
      (520 - 438) * 0.3048 + 0.01873 * 100,
      2,
    );
  });
});

describe('a bound', () => {
  const confirmed = { factorId: 'uk-leaflet-takeoff-soft', edition: '7c', date: '2026-07-01' };

  it('from below proves no obstacle within', () => {
    const assessment = takeoff('takeoff-10', {
      factorSet: 'uk-light-aeroplane-leaflet',
      'runway.surface.ground': 'soft',
      'runway.obstacles.0.beyond.value': 900,
      policies: { confirmations: [confirmed] },
    });
    expect(criterion(assessment, 'obstacle').verdict).toBe('undetermined');
    expect(codes(assessment.headline)).toContain('confirmed');
  });

  const veryShort = { 'runway.surface': { kind: 'grass', condition: 'wet', length: 'very short', ground: 'firm' } };
  const own = (condition: string, percent: number) => ({
    [surfaces('landing')]: [
      { surface: 'grass', condition, increase: { value: percent, unit: 'percent' }, percentOf: 'distance' },
    ],
  });

  it("from above is not displaced by the manual's figure for another wet grass", () => {
    expect(criterion(landing('landing-10', { ...veryShort, ...own('wet', 20) }), 'landing-distance').verdict).toBe(
      'undetermined',
    );
  });

  it("from above proves nothing once the manual's milder figure exceeds it", () => {
    const long = {
      'runway.length.value': 1200,
      'runway.obstacles': [],
      'runway.ends.0.declaredDistances': undefined,
      'runway.ends.1.declaredDistances': undefined,
    };
    const assessment = landing('landing-10', { ...veryShort, ...own('dry', 75), ...long });
    expect(criterion(assessment, 'landing-distance').verdict).toBe('undetermined');
  });
});

describe('equality', () => {
  it('with a maximum mass in pounds is within it', () => {
    for (const pounds of [2315, 1999, 1501]) {
      const changes = {
        [`${data}.masses.maximumTakeoff`]: { value: pounds, unit: 'lb' },
        [`${data}.masses.maximumLanding`]: { value: pounds, unit: 'lb' },
        mass: { value: pounds, unit: 'lb' },
      };
      expect(judged(takeoff('takeoff-28', changes), 'mass')).toEqual({
        verdict: 'within',
        value: pounds,
        limit: pounds,
        margin: 0,
      });
    }
  });

  it('with a crosswind limit in miles per hour is within it', () => {
    const mph = { value: 17, unit: 'mph' };
    const changes = {
      [`${data}.crosswind`]: [{ speed: mph, status: 'limitation' }],
      personalLimits: undefined,
      'weather.wind': { source: 'METAR', from: { value: 202, unit: 'degTrue' }, speed: mph },
    };
    expect(judged(takeoff('takeoff-28', changes), 'crosswind')).toMatchObject({ verdict: 'within', margin: 0 });
  });

  it('of a temperature in Fahrenheit with the last printed one is on the table', () => {
    for (const degF of [104, 86, 77]) {
      const axis = [32, 50, 68, degF - 5, degF];
      const assessment = takeoff('takeoff-28', {
        [`${data}.takeoff.0.distance.axes.2`]: { quantity: 'temperature', unit: 'degF', values: axis },
        [`${data}.takeoff.0.groundRoll.axes.2`]: { quantity: 'temperature', unit: 'degF', values: axis },
        'weather.temperature': { value: degF, unit: 'degF' },
        'weather.dewPoint': undefined,
      });
      expect(assessment.stairs).toBeDefined();
    }
  });

  it('of a wind exactly abeam with no tailwind is no tailwind', () => {
    const changes = {
      [`${data}.takeoff.0.corrections.tailwind`]: undefined,
      'runway.ends.0.direction.value': 90,
      'runway.ends.1.direction.value': 270,
      'weather.wind': { source: 'METAR', from: { value: 360, unit: 'degTrue' }, speed: { value: 8, unit: 'kt' } },
    };
    for (const from of [180, 360]) {
      const assessment = takeoff('takeoff-28', { ...changes, 'weather.wind.from.value': from });
      expect(criterion(assessment, 'takeoff-distance').verdict).toBe('within');
      expect(codes(assessment.hazards)).not.toContain('hazard-tailwind');
    }
  });
});

describe('wind accountability that the manual already contains', () => {
  it('is left out of its tables only: the climb keeps half the headwind', () => {
    const changes = {
      [`${data}.takeoff.0.includes.windAccountability`]: true,
      'weather.wind': { source: 'METAR', from: { value: 112, unit: 'degTrue' }, speed: { value: 10, unit: 'kt' } },
    };
    const assessment = takeoff('takeoff-10', changes);
    const headwinds = assessment.trace.flatMap((entry) =>
      entry.kind === 'step' && entry.record === 'wind.ground-speed' ? [entry.inputs['headwind']] : [],
    );
    expect(new Set(headwinds)).toEqual(new Set([5]));
    expect(assessment.stairs?.steps.find(({ step }) => step === 'wind')?.factor).toBeCloseTo(0.9, 12);
  });
});

describe('a runway description that contradicts itself', () => {
  it.each([
    [
      'feet typed as metres',
      { 'runway.ends.1.declaredDistances': { TORA: { value: 2723, unit: 'm' } } },
      'runway.ends[1].declaredDistances.TORA',
    ],
    [
      'an LDA that forgets the displaced threshold',
      {
        'runway.ends.1.declaredDistances': { LDA: { value: 830, unit: 'm' } },
        'runway.ends.1.displacedThreshold': { value: 60, unit: 'm' },
      },
      'runway.ends[1].declaredDistances.LDA',
    ],
    [
      'directions of the ends exchanged',
      { 'runway.ends.0.direction.value': 292, 'runway.ends.1.direction.value': 112, variation: undefined },
      'runway.ends[0].direction',
    ],
    [
      'a line-up loss longer than the runway',
      { lineUpLoss: { value: 500, unit: 'm' }, 'runway.ends.1.declaredDistances.TORA.value': 450 },
      'lineUpLoss',
    ],
    [
      'a mean direction outside its own range',
      { 'weather.wind.range': { from: { value: 80, unit: 'degTrue' }, to: { value: 100, unit: 'degTrue' } } },
      'weather.wind.from',
    ],
    [
      'virtual temperature without a dew point',
      { policies: { humidity: 'virtual temperature' }, 'weather.dewPoint': undefined },
      'weather.dewPoint',
    ],
  ])('%s', (_name, changes, path) => {
    expect(paths(assessTakeoff(takeoffRequest('takeoff-28', changes)))).toContain(path);
  });

  it('is said where the TORA is shorter than the runway, and read the adverse way', () => {
    const shorter = {
      'runway.ends.0.declaredDistances': { TORA: { value: 730, unit: 'm' } },
      'runway.obstacles.0.beyond.value': 500,
    };
    const assessment = takeoff('takeoff-10', shorter);
    expect(codes(assessment.dataNotes)).toContain('tora-shorter');
    const step = assessment.trace.find(
      (entry) => entry.kind === 'step' && entry.record === 'flight-path.required-gradient',
    );
    // 830 - 100 + 500 m from where the roll starts, less the factored distance.
    expect(step?.kind === 'step' && (step.inputs['distance'] as number)).toBeCloseTo(1230 - 721.474, 2);
  });
});

describe('performance data that say one thing twice', () => {
  it('are refused, each with its path', () => {
    const entry = (percent: number) => ({
      surface: 'grass',
      condition: 'dry',
      increase: { value: percent, unit: 'percent' },
      percentOf: 'distance',
    });
    const request = takeoffRequest('takeoff-28');
    const [first] = request.performanceData.calibrations;
    const changes = {
      [surfaces('takeoff')]: [entry(5), entry(50)],
      [`${data}.calibrations`]: [...request.performanceData.calibrations, first],
    };
    const found = paths(assessTakeoff(takeoffRequest('takeoff-28', changes)));
    expect(found).toContain('performanceData.takeoff.corrections.surfaces[1]'.replace('takeoff.', 'takeoff[0].'));
    expect(found.some((path) => path.startsWith('performanceData.calibrations['))).toBe(true);
  });
});

describe('a break-even', () => {
  it('names what else limits the same quantity', () => {
    const { breakEvens } = takeoff('takeoff-10');
    const limits = (quantity: string) =>
      codes(breakEvens.find((each) => each.quantity === quantity)?.otherLimits ?? []);
    expect(limits('tailwind')).toEqual(['other-limit-tailwind', 'other-limit-tailwind', 'other-limit-obstacles']);
    expect(limits('mass')).toEqual(['other-limit-mass', 'other-limit-obstacles']);
  });

  it('withholds a recalled factor like the verdict does', () => {
    const wetPaved = { factorSet: 'uk-light-aeroplane-leaflet', 'runway.surface': { kind: 'paved', condition: 'wet' } };
    expect(turning(takeoff('takeoff-28', wetPaved))).toMatchObject({ mass: 'undetermined', tailwind: 'undetermined' });
  });
});

describe('a choice that lowers a figure', () => {
  it('of the approach speed is said', () => {
    const assessment = landing('landing-10', { approachSpeedAddition: { value: 0, unit: 'kt' } });
    expect(codes(assessment.trace.flatMap((entry) => (entry.kind === 'decision' ? [entry] : [])))).toContain(
      'addition-below-half-gust',
    );
  });

  it('of the unreported gust can be taken the other way', () => {
    const quiet = { 'weather.wind.gust': undefined, policies: { unreportedGust: 'mean plus 10 kt' } };
    const [crosswind] = takeoff('takeoff-28', quiet).criteria.filter(({ id }) => id === 'crosswind');
    // 17 kt x sin 78 degrees = 16.6 kt, as with the gust reported.
    expect(crosswind).toMatchObject({ verdict: 'within', value: { value: 17, unit: 'kt' } });
  });
});

describe('the comparison of a prepared take-off', () => {
  const prepared = prepareTakeoff(takeoffRequest('takeoff-28'));
  const conditions = {
    from_deg: 190,
    speed_kt: 7,
    gust_kt: 17,
    gustReported: true,
    range_deg: undefined,
    temperature_degC: 26,
    dewPoint_degC: undefined,
    pressure: { qnh_hPa: 1006 },
  } as const;

  it.each([
    ['north given as 0 with wind', { from_deg: 0 }, 'from_deg'],
    ['north given as 0 with gusts over a calm', { from_deg: 0, speed_kt: 0, gust_kt: 12 }, 'from_deg'],
    ['no pressure', { pressure: undefined }, 'pressure'],
    ['a pressure that is a number', { pressure: 1006 }, 'pressure'],
    ['a pressure of nothing', { pressure: {} }, 'qnh_hPa'],
    ['QNH and QFE together', { pressure: { qnh_hPa: 960, qfe_hPa: 1006 } }, 'pressure'],
    ['a QFE out of bounds', { pressure: { qfe_hPa: 499 } }, 'qfe_hPa'],
    ['no range that is null', { range_deg: null }, 'range_deg'],
    ['a range to 0 with wind', { range_deg: { from: 180, to: 0 } }, 'range_deg.to'],
    ['a range from 0 with wind', { range_deg: { from: 0, to: 200 } }, 'range_deg.from'],
    ['a direction outside its range', { range_deg: { from: 200, to: 180 } }, 'from_deg'],
    ['a temperature that is no number', { temperature_degC: Number.NaN }, 'temperature_degC'],
  ])('refuses %s', (_name, change, parameter) => {
    const result = prepared.ok ? prepared.value.compare({ ...conditions, ...change } as never) : undefined;
    expect(result).toMatchObject({ verdict: 'undetermined', refused: { parameter } });
  });

  it('refuses what is no object, and a change that nobody reads', () => {
    const compare = (weather: unknown, changes?: unknown) =>
      prepared.ok ? prepared.value.compare(weather as never, changes as never).refused?.parameter : undefined;
    expect([compare(null), compare(7), compare(conditions, null), compare(conditions, { mass: 1050 })]).toEqual([
      'conditions',
      'conditions',
      'changes',
      'changes',
    ]);
    expect(compare(conditions, {})).toBeUndefined();
    expect(compare({ ...conditions, range_deg: { from: 190, to: 190 } })).toBeUndefined();
    expect(compare({ ...conditions, from_deg: 0, speed_kt: 0, gust_kt: 0 })).toBeUndefined();
  });

  it('answers otherwise', () => {
    expect(prepared.ok && prepared.value.compare(conditions).verdict).toBe('within');
  });
});

describe('a landing with obstacles ahead and no balked landing climb', () => {
  it('says that going around is not assessed', () => {
    const request = landingRequest('landing-10');
    const climb = request.performanceData.climb.filter(({ use }) => use === 'initial');
    const result = assessLanding(landingRequest('landing-10', { [`${data}.climb`]: climb }));
    expect(result.ok && codes(result.value.hazards)).toContain('hazard-no-go-around');
    expect(result.ok && result.value.notAssessed).toContain('going around over the obstacles ahead');
  });
});
