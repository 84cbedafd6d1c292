import { describe, expect, it } from 'vitest';
import { landingSituationOf } from '../../src/assessment/assess-landing.ts';
import { takeoffSituationOf } from '../../src/assessment/assess-takeoff.ts';
import { conditionsOf } from '../../src/assessment/request/conditions.ts';
import { northOf, northOfWind } from '../../src/assessment/request/north.ts';
import { ownSurfaceOf } from '../../src/assessment/request/own-surface.ts';
import { placedObstacle } from '../../src/assessment/request/placed-obstacle.ts';
import { situationOf } from '../../src/assessment/request/situation.ts';
import { calibrated, flownSpeed, printedSpeed, tableSpeed } from '../../src/assessment/request/speeds.ts';
import { windLawsOf } from '../../src/assessment/request/wind-laws.ts';
import { factorSets, type Surface } from '../../src/distance/index.ts';
import { type Changes, landingRequest, performanceData, takeoffRequest } from './scenario.ts';

const figure = (value: number, unit: string) => ({ value, unit });
const takeoff = (changes?: Changes, name = 'takeoff-28') => situationOf(takeoffRequest(name, changes));
const landing = (changes?: Changes, name = 'landing-10') => situationOf(landingRequest(name, changes));
const foot = 0.3048;

// Runway 10/28 of 830 m, 112 and 292 degTrue, at 387 and 438 ft, pines 25 m beyond the 28 end.
describe('the runway in use', () => {
  const runway = (changes?: Changes) => takeoff(changes).runway;
  const declared = (distances: Record<string, number>) => ({
    'runway.ends.1.declaredDistances': Object.fromEntries(
      Object.entries(distances).map(([key, value]) => [key, figure(value, 'm')]),
    ),
  });

  it('is described from the end where it is painted', () => {
    expect(runway()).toMatchObject({
      designator: '28',
      direction_deg: 292,
      directionFrom: 'survey',
      length_m: 830,
      tora_m: 830,
      toda_m: 830,
      asda_m: 830,
      lda_m: 830,
      hasClearway: false,
      hasStopway: false,
      displaced_m: 0,
      offset_m: 0,
      toraShorter_m: 0,
      aerodrome_ft: 438,
    });
    // From 438 down to 387 ft.
    expect(runway().slope_percent).toBeCloseTo((-51 * foot * 100) / 830, 9);
    expect(runway().start_mElevation).toBeCloseTo(438 * foot, 9);
    const other = runway({ runwayInUse: '10' });
    expect(other).toMatchObject({ designator: '10', direction_deg: 112, aerodrome_ft: 438 });
    expect(other.slope_percent).toBeCloseTo((51 * foot * 100) / 830, 9);
    expect(other.start_mElevation).toBeCloseTo(387 * foot, 9);
  });

  it('has its obstacles ahead beyond the other end, and behind beyond its own', () => {
    const names = (list: readonly { name: string }[] | undefined) => list?.map(({ name }) => name);
    // The pines stand beyond the 28 end: behind a take-off on 28, ahead of one on 10.
    expect([names(runway().ahead), names(runway().behind)]).toEqual([[], ['pines']]);
    const other = runway({ runwayInUse: '10' });
    expect([names(other.ahead), names(other.behind)]).toEqual([['pines'], []]);
    const unknown = runway({ 'runway.obstacles': undefined });
    expect([unknown.ahead, unknown.behind]).toEqual([undefined, undefined]);
  });

  it('is as long as it is declared, else as long as it is', () => {
    expect(runway(declared({ TORA: 800, TODA: 860, ASDA: 840, LDA: 700 }))).toMatchObject({
      tora_m: 800,
      toda_m: 860,
      asda_m: 840,
      lda_m: 700,
      hasClearway: true,
      hasStopway: true,
    });
    // Unpublished: no clearway and no stopway beyond the TORA.
    expect(runway(declared({ TORA: 800 }))).toMatchObject({
      tora_m: 800,
      toda_m: 800,
      asda_m: 800,
      lda_m: 830,
      hasClearway: false,
      hasStopway: false,
      toraShorter_m: 30,
      offset_m: 30,
    });
    expect(runway(declared({ TODA: 860 }))).toMatchObject({ tora_m: 830, hasClearway: true, hasStopway: false });
    expect(runway(declared({ ASDA: 840 }))).toMatchObject({ toda_m: 830, hasClearway: false, hasStopway: true });
    expect(runway({ 'runway.ends.1.declaredDistances': undefined })).toMatchObject({ tora_m: 830, lda_m: 830 });
    expect(runway(declared({ TORA: 831 }))).toMatchObject({ tora_m: 831, toraShorter_m: 0, offset_m: 0 });
  });

  it('loses what lining up takes from the start, of every distance but that for landing', () => {
    const lost = runway({ ...declared({ TORA: 800, TODA: 860, ASDA: 840 }), lineUpLoss: figure(50, 'ft') });
    expect(lost.tora_m).toBeCloseTo(800 - 15.24, 9);
    expect(lost.toda_m).toBeCloseTo(860 - 15.24, 9);
    expect(lost.asda_m).toBeCloseTo(840 - 15.24, 9);
    expect(lost.offset_m).toBeCloseTo(30 + 15.24, 9);
    expect(lost).toMatchObject({ lda_m: 830, hasClearway: true, hasStopway: true, toraShorter_m: 30 });
    expect(runway({ lineUpLoss: undefined })).toMatchObject({ tora_m: 830, offset_m: 0 });
    expect(landing().runway).toMatchObject({ tora_m: 830, offset_m: 0 });
  });

  it('loses a displaced threshold for landing alone', () => {
    const displaced = { 'runway.ends.1.displacedThreshold': figure(200, 'ft') };
    const unpublished = runway({ ...displaced, 'runway.ends.1.declaredDistances': undefined });
    expect(unpublished.displaced_m).toBeCloseTo(60.96, 9);
    expect(unpublished.lda_m).toBeCloseTo(830 - 60.96, 9);
    expect(unpublished.tora_m).toBe(830);
    expect(runway({ ...displaced, ...declared({ LDA: 700 }) })).toMatchObject({ lda_m: 700 });
  });

  it('lies on an aerodrome as high as is stated, else as high as its higher end', () => {
    expect(runway({ 'runway.aerodromeElevation': figure(150, 'mElevation') }).aerodrome_ft).toBeCloseTo(150 / foot, 9);
    const metres = { 'runway.ends.0.elevation': figure(140, 'mElevation') };
    expect(runway(metres).aerodrome_ft).toBeCloseTo(140 / foot, 9);
  });

  it('knows whether its direction is that of a survey', () => {
    expect(runway({ 'runway.ends.1.directionFrom': undefined }).directionFrom).toBe('survey');
    expect(runway({ 'runway.ends.1.directionFrom': 'designator' }).directionFrom).toBe('designator');
  });
});

describe('the direction of the runway', () => {
  const at = (north: string | undefined, changes: Changes = {}) =>
    takeoff({
      'weather.wind': {
        source: 'observed',
        from: north === undefined ? 'variable' : figure(190, north),
        speed: figure(7, 'kt'),
      },
      ...changes,
    });
  const magneticRunway = {
    'runway.ends.0.direction': figure(99, 'degMagnetic'),
    'runway.ends.1.direction': figure(279, 'degMagnetic'),
  };

  it('is given against the north of the wind, through the variation: 13° E', () => {
    const { runway, notes } = at('degMagnetic');
    expect(runway.direction_deg).toBe(292 - 13);
    expect(notes).toEqual([
      {
        code: 'north-converted',
        parameters: {
          given_deg: 292,
          givenNorth: 'true',
          converted_deg: 279,
          convertedNorth: 'magnetic',
          variation: '13.0° E',
          source: 'chart, 2026',
        },
      },
    ]);
    const back = at('degTrue', magneticRunway);
    expect(back.runway.direction_deg).toBe(292);
    expect(back.notes[0]?.parameters).toMatchObject({
      given_deg: 279,
      givenNorth: 'magnetic',
      converted_deg: 292,
      convertedNorth: 'true',
    });
  });

  it('turns the other way with a westerly variation', () => {
    const west = at('degMagnetic', { 'variation.value.value': -4.25 });
    expect(west.runway.direction_deg).toBe(296.25);
    expect(west.notes[0]?.parameters['variation']).toMatch(/^4\.[23]° W$/);
    const none = at('degMagnetic', { 'variation.value.value': 0 });
    expect(none.runway.direction_deg).toBe(292);
    expect(none.notes[0]?.parameters['variation']).toBe('0.0° E');
  });

  it('stays where both are stated against one north, or the wind against none', () => {
    for (const each of [at('degTrue'), at(undefined), at('degTrue', { variation: undefined })]) {
      expect(each.runway.direction_deg).toBe(292);
      expect(each.notes).toEqual([]);
    }
    const magnetic = at('degMagnetic', magneticRunway);
    expect([magnetic.runway.direction_deg, magnetic.notes]).toEqual([279, []]);
  });

  it('goes by the range of a wind that has no direction', () => {
    const range = { from: figure(160, 'degMagnetic'), to: figure(240, 'degMagnetic') };
    const wind = { source: 'observed', from: 'variable', speed: figure(7, 'kt') } as const;
    expect(at(undefined, { 'weather.wind': { ...wind, range } }).runway.direction_deg).toBe(279);
    expect(northOfWind({ ...wind, range } as never)).toBe('degMagnetic');
    expect(northOfWind(wind as never)).toBeUndefined();
    expect(northOf(takeoffRequest('takeoff-28', { 'weather.wind': wind, ...magneticRunway }))).toBe('degMagnetic');
    expect(northOf(takeoffRequest('takeoff-28', magneticRunway))).toBe('degTrue');
  });
});

describe('an obstacle', () => {
  const obstacle = { name: 'pines', end: '28', beyond: figure(0.1, 'NM') };

  it('has a top, or a height above its ground, in metres', () => {
    const byTop = placedObstacle({ ...obstacle, topElevation: figure(500, 'ftElevation') } as never);
    expect(byTop.beyond_m).toBeCloseTo(185.2, 9);
    expect(byTop.top_mElevation).toBeCloseTo(152.4, 9);
    expect(byTop.offset_m).toBeUndefined();
    const byHeight = placedObstacle({
      ...obstacle,
      groundElevation: figure(438, 'ftElevation'),
      height: figure(28, 'mHeight'),
      lateralOffset: figure(100, 'ft'),
    } as never);
    expect(byHeight.top_mElevation).toBeCloseTo(438 * foot + 28, 9);
    expect(byHeight.offset_m).toBeCloseTo(30.48, 9);
  });

  it('has a gradient over it as its criterion, in tenths of a percent', () => {
    expect(placedObstacle({ ...obstacle, topElevation: figure(500, 'ftElevation') } as never)).toMatchObject({
      name: 'pines',
      words: {
        id: 'obstacle',
        quantity: 'gradient over pines',
        unit: 'percent',
        limitStatus: 'clearance asked',
        step: 0.1,
      },
      labels: {
        required: 'gradient required over pines',
        factored: 'clearance over pines, factored',
        unfactored: 'clearance over pines, unfactored',
        lost: 'landing distance lost over pines',
      },
    });
  });
});

describe('a situation', () => {
  it('of a take-off has its phase, configuration, flap, table, climb, mass and set', () => {
    const found = takeoff();
    expect(found).toMatchObject({
      phase: 'takeoff',
      configuration: 'flap-15',
      flap: '15',
      table: { configuration: 'flap-15', liftOffSpeed: {} },
      climb: { configuration: 'flap-15', use: 'initial' },
      mass_kg: 940,
      maximumMass: { value: 1050, unit: 'kg' },
      massCriterion: { id: 'mass', quantity: 'take-off mass', unit: 'kg', limitStatus: 'limitation' },
      set: { id: 'easa-class-b' },
      safety: 'of the set',
      readsDensityAltitude: false,
      confirmations: [],
    });
    expect(found.screen_m).toBeCloseTo(15.24, 9);
    expect([...found.calibrations.keys()].sort()).toEqual(['15', '35']);
  });

  it('of a landing has those of the landing', () => {
    const maxima = { 'performanceData.masses.maximumLanding': figure(2200, 'lb'), mass: figure(2000, 'lb') };
    const found = landing({ ...maxima, configuration: undefined });
    expect(found).toMatchObject({
      phase: 'landing',
      configuration: 'flap-35',
      flap: '35',
      table: { configuration: 'flap-35', approachSpeed: {} },
      climb: { configuration: 'flap-35', use: 'balked landing' },
      maximumMass: { value: 2200, unit: 'lb' },
      massCriterion: { quantity: 'landing mass', unit: 'lb' },
    });
    // 1 lb is 0.45359237 kg.
    expect(found.mass_kg).toBeCloseTo(907.18474, 9);
  });

  it('has the maximum mass and the climb of its own phase where the data state both', () => {
    const [initial, balked] = takeoffRequest('takeoff-28').performanceData.climb;
    const data = {
      'performanceData.masses.maximumLanding': figure(1000, 'kg'),
      'performanceData.climb': [
        { ...balked, configuration: 'flap-15' },
        { ...initial, configuration: 'flap-35' },
        initial,
        balked,
      ],
    };
    expect(takeoff(data)).toMatchObject({ maximumMass: { value: 1050 }, climb: { use: 'initial' } });
    expect(landing(data)).toMatchObject({ maximumMass: { value: 1000 }, climb: { use: 'balked landing' } });
  });

  it('takes the only configuration of its phase where none is named', () => {
    const linnet = { performanceData: performanceData('linnet-two'), configuration: undefined };
    expect(takeoff(linnet)).toMatchObject({ configuration: 'takeoff', flap: '1' });
    expect(landing(linnet)).toMatchObject({ configuration: 'landing', flap: '2' });
  });

  it('without a table for its configuration has none of its figures', () => {
    const found = takeoff({ configuration: 'flap-0' });
    expect(found).toMatchObject({ table: undefined, climb: undefined, flap: '0', uncoveredAxes: [] });
    expect(found.screen_m).toBeCloseTo(15.24, 9);
    expect(Object.values(found.ready).filter((each) => each !== undefined)).toEqual([]);
    expect(found.windLaws).toEqual({ headwind: undefined, tailwind: undefined, greatestHeadwind_kt: 0 });
    expect(found.ownSurface).toEqual({ exact: undefined, least: [] });
  });

  it('measures to the screen height of its table', () => {
    expect(takeoff({ 'performanceData.takeoff.0.screenHeight': figure(15, 'mHeight') }).screen_m).toBe(15);
  });

  it('takes a set of the library by its word, and another as it is', () => {
    expect(takeoff({ factorSet: 'part-nco' }).set).toBe(factorSets['part-nco']);
    const own = { ...factorSets['part-nco'], id: 'own' };
    expect(takeoff({ factorSet: own }).set).toEqual(own);
  });

  it('has what the set says of the surface in its phase', () => {
    const ids = ({ surfaceEffect }: ReturnType<typeof takeoff>) => surfaceEffect.factors.map(({ id }) => id);
    expect(ids(takeoff())).toEqual(['easa-b-takeoff-grass-dry']);
    expect(ids(landing())).toEqual(['easa-b-landing-grass']);
  });

  it('goes without a safety factor and keeps confirmations where the request says so', () => {
    const confirmations = [{ factorId: 'easa-b-takeoff-slope', edition: '1', date: '2026-07-14' }];
    expect(takeoff({ safetyFactor: 'none', policies: { confirmations } })).toMatchObject({
      safety: 'none',
      confirmations,
    });
    expect(takeoff({ safetyFactor: undefined, policies: undefined })).toMatchObject({
      safety: 'of the set',
      confirmations: [],
    });
  });

  it('has the limits of the data and then those of the pilot, and compares with those that bind', () => {
    const found = takeoff();
    expect(found.crosswindLimits).toEqual([
      { value: 19, unit: 'kt', status: 'demonstrated' },
      { value: 18, unit: 'kt', status: 'personal' },
    ]);
    expect(found.tailwindLimits).toEqual([
      { value: 8, unit: 'kt', status: 'limitation' },
      { value: 5, unit: 'kt', status: 'personal' },
    ]);
    const compared = ({ windCriteria }: typeof found) =>
      [...windCriteria.crosswind, ...windCriteria.tailwind].map(({ words, value, unit }) => [
        words.id,
        words.limitStatus,
        words.unit,
        value,
        unit,
      ]);
    const tail = [
      ['tailwind', 'limitation', 'kt', 8, 'kt'],
      ['tailwind', 'personal', 'kt', 5, 'kt'],
    ];
    expect(compared(found)).toEqual([
      ['crosswind', 'demonstrated', 'kt', 19, 'kt'],
      ['crosswind', 'personal', 'kt', 18, 'kt'],
      ...tail,
    ]);
    const informs = takeoff({ policies: { demonstratedCrosswind: 'information' } });
    expect(informs.crosswindLimits).toHaveLength(2);
    expect(compared(informs)).toEqual([['crosswind', 'personal', 'kt', 18, 'kt'], ...tail]);
    const limitation = [{ speed: figure(17, 'mph'), status: 'limitation' }];
    const stated = { policies: { demonstratedCrosswind: 'information' }, 'performanceData.crosswind': limitation };
    expect(compared(takeoff({ ...stated, personalLimits: undefined }))).toEqual([
      ['crosswind', 'limitation', 'mph', 17, 'mph'],
      ['tailwind', 'limitation', 'kt', 8, 'kt'],
    ]);
    expect(takeoff({ 'personalLimits.tailwind': undefined }).tailwindLimits).toHaveLength(1);
    expect(takeoff({ 'personalLimits.crosswind': undefined }).crosswindLimits).toHaveLength(1);
  });
});

describe('the policies', () => {
  it('are the cautious ones unless the request says otherwise', () => {
    expect(takeoff({ policies: undefined }).policies).toEqual({
      headwindShare: 0.5,
      tailwindShare: 1.5,
      demonstratedCrosswind: 'limit',
      favourableSlope: 'no credit',
      favourableEdge: 'read-at-edge',
      betweenPrintedValues: 'interpolate',
      humidity: 'information',
      unreportedGust: 'mean',
      speedAdditionInDistance: 'paid for',
      verticalClearance: 50,
      approachClearance: 50,
      approachAngle: 3,
      reactionTime: 3,
      firstPrinciples: 'information',
    });
  });

  it('are those of the request, heights in feet', () => {
    const policies = {
      headwindShare: figure(0.4, 'ratio'),
      tailwindShare: figure(2, 'ratio'),
      demonstratedCrosswind: 'information',
      favourableSlope: 'of the manual',
      favourableEdge: 'refuse',
      betweenPrintedValues: 'next-worse',
      humidity: 'virtual temperature',
      unreportedGust: 'mean plus 10 kt',
      speedAdditionInDistance: 'ignored',
      verticalClearance: figure(35, 'ftHeight'),
      approachClearance: figure(6.096, 'mHeight'),
      approachAngle: figure(4, 'deg'),
      reactionTime: figure(2, 's'),
      firstPrinciples: 'more adverse',
    };
    const found = takeoff({ policies }).policies;
    expect(found).toEqual({
      headwindShare: 0.4,
      tailwindShare: 2,
      demonstratedCrosswind: 'information',
      favourableSlope: 'of the manual',
      favourableEdge: 'refuse',
      betweenPrintedValues: 'next-worse',
      humidity: 'virtual temperature',
      unreportedGust: 'mean plus 10 kt',
      speedAdditionInDistance: 'ignored',
      verticalClearance: 35,
      approachClearance: found.approachClearance,
      approachAngle: 4,
      reactionTime: 2,
      firstPrinciples: 'more adverse',
    });
    expect(found.approachClearance).toBeCloseTo(20, 9);
  });

  it('settle how tables are read: what a high value of an axis is worth depends on the phase', () => {
    const modes = ({ ready }: ReturnType<typeof takeoff>) => [
      ready.distance?.mode,
      ready.groundRoll?.mode,
      ready.rateOfClimb?.mode,
    ];
    const at = { favourableEdge: 'read-at-edge', between: 'interpolate', highIsFavourable: ['headwind'] };
    expect(modes(takeoff({ policies: undefined }))).toEqual([
      { ...at, worse: 'greater' },
      { ...at, worse: 'greater' },
      { ...at, worse: 'less' },
    ]);
    const strict = { policies: { favourableEdge: 'refuse', betweenPrintedValues: 'next-worse' } };
    const chosen = { favourableEdge: 'refuse', between: 'next-worse', highIsFavourable: ['headwind', 'slope'] };
    expect(modes(landing(strict))).toEqual([
      { ...chosen, worse: 'greater' },
      { ...chosen, worse: 'greater' },
      { ...chosen, worse: 'less' },
    ]);
  });
});

describe('what figures run along', () => {
  it('is told of a table and of a chart', () => {
    const ready = (name: string, configuration = 'takeoff') =>
      takeoff({ performanceData: performanceData(name), configuration });
    const along = ({ ready: { distance } }: ReturnType<typeof takeoff>) => [
      distance?.runsAlongHeadwind,
      distance?.runsAlongSlope,
      distance?.runsAlongHeight,
      distance?.runsAlongIsaDeviation,
      distance?.runsAlongDensityAltitude,
    ];
    expect(along(takeoff())).toEqual([false, false, false, false, false]);
    const plover = ready('plover-two');
    expect(along(plover)).toEqual([true, true, false, false, true]);
    expect(plover.readsDensityAltitude).toBe(true);
    expect(plover.ready.distance?.table).toBeDefined();
    const skerry = ready('skerry-two');
    expect(along(skerry)).toEqual([true, false, true, false, false]);
    // The climb of that aeroplane is printed along density altitude, its take-off is not.
    expect(skerry.readsDensityAltitude).toBe(true);
    expect(skerry.ready.distance?.table).toBeUndefined();
  });

  it('has the names that a reason gives to it', () => {
    const names = ({ ready }: ReturnType<typeof takeoff>) =>
      Object.values(ready).flatMap((each) => (each === undefined ? [] : [each.name]));
    expect(names(takeoff())).toEqual([
      'ground roll',
      'distance',
      'rate of climb',
      'lift-off speed',
      '50 ft speed',
      'climb speed',
    ]);
    expect(names(landing())).toEqual(['ground roll', 'distance', 'rate of climb', 'approach speed', 'climb speed']);
  });
});

describe('the laws for wind', () => {
  const table = (changes: Changes = {}) => takeoff(changes).table;
  const law = (change: number, per: number, upTo: number) => ({
    change: figure(change, 'percent'),
    per: figure(per, 'kt'),
    upTo: figure(upTo, 'kt'),
  });
  const corrections = 'performanceData.takeoff.0.corrections';

  it('are so much for each knot, up to the last one printed', () => {
    expect(windLawsOf(table())).toEqual({
      headwind: { percentPerKnot: -1, cap_kt: 15 },
      tailwind: { percentPerKnot: 4.5, cap_kt: 8 },
      greatestHeadwind_kt: 15,
    });
    expect(windLawsOf(table({ [corrections]: { headwind: law(-10, 8, 16), tailwind: law(10, 2, 6) } }))).toEqual({
      headwind: { percentPerKnot: -1.25, cap_kt: 16 },
      tailwind: { percentPerKnot: 5, cap_kt: 6 },
      greatestHeadwind_kt: 16,
    });
  });

  it('may be missing: no headwind is then credited', () => {
    expect(windLawsOf(table({ [corrections]: {} }))).toEqual({
      headwind: undefined,
      tailwind: undefined,
      greatestHeadwind_kt: 0,
    });
  });

  it('end with the axis of the table where there is one', () => {
    const alongWind = (values: number[]) => {
      const axes = [{ quantity: 'headwind', unit: 'kt', values }];
      const figures = { axes, unit: 'm', cells: values.map(() => 400) };
      return windLawsOf(table({ 'performanceData.takeoff.0.distance': figures })).greatestHeadwind_kt;
    };
    expect(alongWind([-5, 0, 20])).toBe(20);
    // Printed for tailwinds alone.
    expect(alongWind([-10, -5])).toBe(0);
  });
});

describe('what a table has no axis for', () => {
  const at = 'performanceData.takeoff.0';
  const single = (cells: number) => ({ axes: [], unit: 'm', cells });
  const stated = {
    [`${at}.distance`]: single(400),
    [`${at}.groundRoll`]: single(200),
    [`${at}.associatedConditions.mass`]: figure(2000, 'lb'),
    [`${at}.associatedConditions.pressureAltitude`]: figure(1000, 'ftPA'),
    [`${at}.associatedConditions.temperature`]: figure(59, 'degF'),
  };

  it('is nothing in the example', () => {
    expect(takeoff().uncoveredAxes).toEqual([]);
  });

  it('has the value that the table holds for, in kg, ft and °C, and the rule of the set', () => {
    const { mass, elevation, temperature } = factorSets['uk-light-aeroplane-leaflet'].takeoff;
    const axes = takeoff({ ...stated, factorSet: 'uk-light-aeroplane-leaflet' }).uncoveredAxes;
    expect(axes.map(({ quantity, rule, law }) => [quantity, rule, law])).toEqual([
      ['mass', mass, undefined],
      ['elevation', elevation, undefined],
      ['temperature', temperature, undefined],
    ]);
    const [kg, ft, degC] = axes.map(({ holdsFor }) => holdsFor);
    expect(kg).toBeCloseTo(907.18474, 9);
    expect(ft).toBe(1000);
    expect(degC).toBeCloseTo(15, 9);
    expect(axes.map(({ notCovered }) => notCovered)).toEqual([
      { code: 'mass-not-covered', parameters: { table: 'take-off', limit_kg: kg } },
      { code: 'elevation-not-covered', parameters: { table: 'take-off', limit_ft: ft } },
      { code: 'temperature-not-covered', parameters: { table: 'take-off', limit_degC: degC } },
    ]);
  });

  it('is of a landing in a landing, one by one', () => {
    const { mass } = factorSets['uk-light-aeroplane-leaflet'].landing;
    const axes = landing({ factorSet: 'uk-light-aeroplane-leaflet' }).uncoveredAxes;
    expect(axes).toEqual([
      {
        quantity: 'mass',
        holdsFor: 1050,
        law: undefined,
        rule: mass,
        notCovered: { code: 'mass-not-covered', parameters: { table: 'landing', limit_kg: 1050 } },
      },
    ]);
  });

  it("has the manual's own law in the same units", () => {
    const law = (change: number, per: object, upTo: object) => ({ change: figure(change, 'percent'), per, upTo });
    const laws = takeoff({
      ...stated,
      [`${at}.corrections`]: {
        mass: law(5, figure(100, 'lb'), figure(2300, 'lb')),
        pressureAltitude: law(10, figure(1000, 'ftPA'), figure(4000, 'ftPA')),
        temperature: law(8, figure(10, 'degCDifference'), figure(95, 'degF')),
      },
    }).uncoveredAxes.map((axis) => axis.law);
    expect(laws.map((each) => each?.change)).toEqual([5, 10, 8]);
    expect(laws[0]?.per).toBeCloseTo(45.359237, 9);
    expect(laws[0]?.upTo).toBeCloseTo(1043.262451, 9);
    expect(laws[1]).toMatchObject({ per: 1000, upTo: 4000 });
    expect(laws[2]?.per).toBe(10);
    expect(laws[2]?.upTo).toBeCloseTo(35, 9);
  });
});

describe("the manual's own figure for a surface", () => {
  const correction = (surface: string, condition: string) => ({
    surface,
    condition,
    increase: figure(10, 'percent'),
    percentOf: 'distance',
  });
  const surfaces = [
    correction('grass', 'dry'),
    correction('grass', 'wet'),
    correction('paved', 'wet'),
    correction('gravel', 'dry'),
  ];
  const own = (surface: object) => {
    const { exact, least } = ownSurfaceOf({ corrections: { surfaces } } as never, surface as Surface);
    return [exact?.condition, least.map(({ surface: kind, condition }) => `${condition} ${kind}`)];
  };
  const grass = (condition: string, length = 'up to 20 cm', ground = 'firm') =>
    own({ kind: 'grass', condition, length, ground });

  it('is for the very condition, and for milder ones a least', () => {
    expect(grass('dry')).toEqual(['dry', ['dry grass']]);
    expect(grass('wet')).toEqual(['wet', ['dry grass', 'wet grass']]);
    expect(own({ kind: 'paved', condition: 'wet' })).toEqual(['wet', ['wet paved']]);
    expect(own({ kind: 'paved', condition: 'dry' })).toEqual([undefined, []]);
    expect(own({ kind: 'gravel', condition: 'dry' })).toEqual(['dry', ['dry gravel']]);
    expect(own({ kind: 'gravel', condition: 'wet' })).toEqual([undefined, ['dry gravel']]);
    expect(own({ kind: 'snow' })).toEqual([undefined, []]);
  });

  it('is not for soft ground, long grass or very short wet grass', () => {
    expect(grass('dry', 'up to 20 cm', 'soft')).toEqual([undefined, ['dry grass']]);
    expect(grass('wet', 'over 20 cm')).toEqual([undefined, ['dry grass', 'wet grass']]);
    expect(grass('wet', 'very short')).toEqual([undefined, ['dry grass', 'wet grass']]);
    expect(grass('dry', 'very short')).toEqual(['dry', ['dry grass']]);
  });

  it('is not for a runway with snow or ice on it', () => {
    const code = (conditionCode: number) => own({ kind: 'paved', condition: 'wet', conditionCode })[0];
    expect([5, 4, 3, 2, 1, 0].map(code)).toEqual(['wet', undefined, undefined, undefined, undefined, undefined]);
  });

  it('may be missing', () => {
    const surface = { kind: 'paved', condition: 'wet' } as const;
    expect(ownSurfaceOf(undefined, surface)).toEqual({ exact: undefined, least: [] });
    expect(ownSurfaceOf({ corrections: {} } as never, surface)).toEqual({ exact: undefined, least: [] });
  });
});

describe('the weather in plain figures', () => {
  const plain = (changes: Changes = {}, unreportedGust: 'mean' | 'mean plus 10 kt' = 'mean') =>
    conditionsOf(takeoffRequest('takeoff-28', changes).weather, { unreportedGust });

  it('is in degrees, knots, °C and hPa', () => {
    expect(plain()).toEqual({
      from_deg: 190,
      speed_kt: 7,
      gust_kt: 17,
      gustReported: true,
      range_deg: undefined,
      temperature_degC: 26,
      dewPoint_degC: 16,
      pressure: { qnh_hPa: 1006 },
    });
    const other = plain({
      'weather.wind.speed': figure(4, 'mps'),
      'weather.wind.gust': figure(20, 'mph'),
      'weather.temperature': figure(77, 'degF'),
      'weather.dewPoint': figure(59, 'degF'),
      'weather.qnh': figure(29.92, 'inHg'),
    });
    expect(other.speed_kt).toBeCloseTo((4 * 3600) / 1852, 9);
    expect(other.gust_kt).toBeCloseTo((20 * 1609.344) / 1852, 9);
    expect(other.temperature_degC).toBeCloseTo(25, 9);
    expect(other.dewPoint_degC).toBeCloseTo(15, 9);
    // 1 inHg is 33.86389 hPa.
    expect(other.pressure).toEqual({ qnh_hPa: expect.closeTo(29.92 * 33.86389, 3) });
  });

  it('has a range, no dew point and a QFE where the report does', () => {
    const found = plain({
      'weather.wind.range': { from: figure(160, 'degTrue'), to: figure(240, 'degTrue') },
      'weather.dewPoint': undefined,
      'weather.qnh': undefined,
      'weather.qfe': figure(990, 'hPa'),
    });
    expect(found).toMatchObject({ range_deg: { from: 160, to: 240 }, pressure: { qfe_hPa: 990 } });
    expect(found.dewPoint_degC).toBeUndefined();
  });

  it.each(['variable', 'not reported'])('is worst from everywhere where the direction is %s', (from) => {
    expect(plain({ 'weather.wind.from': from }).from_deg).toBe('variable');
  });

  it('has the mean for a gust that is not reported, or 10 kt more by choice, but not in calm air', () => {
    const noGust = { 'weather.wind.gust': undefined };
    expect(plain(noGust)).toMatchObject({ gust_kt: 7, gustReported: false });
    expect(plain(noGust, 'mean plus 10 kt')).toMatchObject({ gust_kt: 17, gustReported: false });
    const calm = { ...noGust, 'weather.wind.speed.value': 0 };
    expect(plain(calm, 'mean plus 10 kt')).toMatchObject({ speed_kt: 0, gust_kt: 0 });
    expect(plain(calm)).toMatchObject({ gust_kt: 0 });
    expect(plain({}, 'mean plus 10 kt')).toMatchObject({ gust_kt: 17, gustReported: true });
  });
});

// Lift-off at 45, 48 and 51 KIAS with 850, 950 and 1050 kg; flap 15 reads 45 KIAS as 48 KCAS, 50 as 52.
describe('a speed', () => {
  const liftOff = (changes: Changes = {}) => {
    const found = takeoff(changes);
    return [found, found.ready.liftOffSpeed as never] as const;
  };

  it('is printed for the mass, between printed ones in a straight line', () => {
    const printed = printedSpeed(...liftOff({ 'mass.value': 900 }));
    expect(printed).toMatchObject({ ok: true, kias: 46.5, edges: [] });
    expect(printed.ok && printed.kcas).toBeCloseTo(48 + (4 * 1.5) / 5, 9);
  });

  it('is flown in whole knots, rounded up after an addition, and calibrated then', () => {
    const flown = flownSpeed(...liftOff({ 'mass.value': 900 }), 1.2);
    // 46.5 + 1.2 = 47.7, 48 KIAS, three fifths from 48 to 52 KCAS.
    expect(flown).toMatchObject({ ok: true, kias: 48, edges: [] });
    expect(flown.ok && flown.kcas).toBeCloseTo(50.4, 9);
    expect(flownSpeed(...liftOff({ 'mass.value': 950 }))).toMatchObject({ kias: 48 });
    const otherFlap = flownSpeed(...liftOff({ 'mass.value': 950 }), 0, '35');
    // Flap 35 reads 45 KIAS as 49.5 KCAS, 50 as 53.5.
    expect(otherFlap.ok && otherFlap.kcas).toBeCloseTo(49.5 + (4 * 3) / 5, 9);
    const none = flownSpeed(...liftOff({ 'mass.value': 950 }), 0, '0');
    expect(none).toMatchObject({ ok: true, kias: 48, kcas: undefined });
  });

  it('has no calibration beyond the printed speeds', () => {
    const [found] = liftOff();
    expect(calibrated(found, '15', 60)).toBeCloseTo(60.5, 9);
    expect(calibrated(found, '15', 61)).toBeUndefined();
    expect(calibrated(found, '20', 50)).toBeUndefined();
  });

  it('is read at the edge for a lighter aeroplane, which is said, or refused by choice', () => {
    expect(printedSpeed(...liftOff({ 'mass.value': 800 }))).toMatchObject({
      ok: true,
      kias: 45,
      edges: [{ code: 'read-at-edge', parameters: { table: 'lift-off speed', given: 800, edge: 850, unit: 'kg' } }],
    });
    expect(flownSpeed(...liftOff({ 'mass.value': 800 }))).toMatchObject({ edges: [{ code: 'read-at-edge' }] });
    const refused = liftOff({ 'mass.value': 800, 'policies.favourableEdge': 'refuse' });
    const why = { ok: false, reason: { code: 'off-table', parameters: { table: 'lift-off speed', given: 800 } } };
    expect(printedSpeed(...refused)).toMatchObject(why);
    expect(flownSpeed(...refused)).toMatchObject(why);
    expect(tableSpeed(...liftOff({ 'mass.value': 1060 }))).toMatchObject({ ok: false, reason: { code: 'off-table' } });
  });

  describe('of the table is that of the mass at which its distance is read', () => {
    const kias = (changes: Changes) => {
      const found = tableSpeed(...liftOff(changes));
      return found.ok ? found.kias : undefined;
    };
    const nextWorse = { 'policies.betweenPrintedValues': 'next-worse' };

    it('today, where it is interpolated', () => {
      expect(kias({ 'mass.value': 900 })).toBe(46.5);
      expect(kias({ 'mass.value': 850 })).toBe(45);
    });

    it('the first printed one for a lighter aeroplane', () => {
      expect(kias({ 'mass.value': 800 })).toBe(45);
      expect(kias({ 'mass.value': 800, ...nextWorse })).toBe(45);
    });

    it('the next printed one by choice, itself where it is printed', () => {
      expect(kias({ 'mass.value': 900, ...nextWorse })).toBe(48);
      expect(kias({ 'mass.value': 950, ...nextWorse })).toBe(48);
      expect(kias({ 'mass.value': 951, ...nextWorse })).toBe(51);
    });

    it('the next printed one along the axis of mass, wherever that stands among the axes', () => {
      const axes = [
        { quantity: 'temperature', unit: 'degC', values: [0, 30] },
        { quantity: 'mass', unit: 'kg', values: [850, 1000] },
      ];
      const cells = [
        [300, 400],
        [330, 440],
      ];
      // 48 and 51 KIAS with 950 and 1050 kg.
      const second = { 'performanceData.takeoff.0.distance': { axes, unit: 'm', cells } };
      expect(kias({ ...second, ...nextWorse, 'mass.value': 900 })).toBe(49.5);
    });

    it('the one that the table states, unless more is flown', () => {
      const at = 'performanceData.takeoff.0';
      const stated = {
        [`${at}.distance`]: { axes: [], unit: 'm', cells: 400 },
        [`${at}.associatedConditions.mass`]: figure(1000, 'kg'),
      };
      expect(kias({ ...stated, 'mass.value': 900 })).toBe(49.5);
      expect(kias({ ...stated, 'mass.value': 1050 })).toBe(51);
      // 2000 lb are 907.18 kg.
      const pounds = { ...stated, [`${at}.associatedConditions.mass`]: figure(2000, 'lb'), 'mass.value': 850 };
      expect(kias(pounds)).toBeCloseTo(45 + (3 * 57.18474) / 100, 9);
    });

    it("today's where the table knows no mass at all", () => {
      const none = { 'performanceData.takeoff.0.distance': { axes: [], unit: 'm', cells: 400 } };
      expect(kias({ ...none, 'mass.value': 900 })).toBe(46.5);
      expect(kias({ ...none, 'mass.value': 900, ...nextWorse })).toBe(46.5);
    });

    it('in the unit of the axis: 1300, 1500 and 1700 lb', () => {
      const plover = (pounds: number, changes: Changes = {}) => {
        const data = { performanceData: performanceData('plover-two'), configuration: 'takeoff' };
        const found = takeoff({ ...data, mass: figure(pounds, 'lb'), ...changes });
        const speed = tableSpeed(found, found.ready.liftOffSpeed as never);
        return speed.ok ? speed.kias : undefined;
      };
      expect(plover(1200)).toBeCloseTo(44, 9);
      expect(plover(1400)).toBeCloseTo(45.5, 9);
      expect(plover(1400, nextWorse)).toBeCloseTo(47, 9);
    });
  });

  it('of a chart without masses is read as it is', () => {
    const data = { performanceData: performanceData('skerry-two'), configuration: 'takeoff', 'mass.value': 800 };
    const found = takeoff({ ...data, 'policies.betweenPrintedValues': 'next-worse' });
    expect(tableSpeed(found, found.ready.liftOffSpeed as never)).toMatchObject({ ok: true, kias: 48 });
  });

  it('of the take-off and of the landing are settled with the request', () => {
    const up = takeoffSituationOf(takeoffRequest('takeoff-28', { liftOffSpeedAddition: figure(2, 'kt') }));
    // 47.7 KIAS printed for 940 kg, and 56.6 at 50 ft.
    expect(up.liftOff).toMatchObject({ ok: true, kias: 50 });
    expect(up.atScreen).toMatchObject({ ok: true, kias: 59 });
    expect(up.tableLiftOff).toMatchObject({ ok: true, kias: expect.closeTo(47.7, 9) });
    const down = landingSituationOf(landingRequest('landing-10'));
    expect(down.published).toMatchObject({ ok: true, kias: 57, kcas: expect.closeTo(57.5 + (4 * 2) / 5, 9) });
  });
});
