import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fieldKeys, fieldOf } from '../../docs/worksheet-page/fields.ts';
import { noFile, readOwnFile } from '../../docs/worksheet-page/own-file.ts';
import { requestOf } from '../../docs/worksheet-page/request.ts';
import { orderOf, rowsOf } from '../../docs/worksheet-page/rows.ts';
import { sentencesOf } from '../../docs/worksheet-page/sentences.ts';
import { type PageState, startState, withObstacle, withValue } from '../../docs/worksheet-page/state.ts';
import { workOut } from '../../docs/worksheet-page/work-out.ts';
import { assessLanding, assessTakeoff } from '../../src/assessment/index.ts';
import { exampleRequest, type Json, stateOf } from './worksheet-page-state.ts';

const names = [
  'takeoff-28',
  'takeoff-10',
  'landing-10',
  'landing-28',
  'case-gusty-crosswind-landing',
  'case-gusty-crosswind-takeoff',
  'case-soft-spring-takeoff',
  'case-summer-trees-landing',
  'case-summer-trees-takeoff',
  'quarry-landing-04',
  'quarry-takeoff-04',
];

/** What a request says of the other job has no sentence. */
function ofItsJob({ policies = {}, ...request }: Json): Json {
  const { approachClearance, approachAngle, ...others } = policies;
  const kept = request.schema.includes('landing') ? policies : others;
  return { ...request, ...(Object.keys(kept).length === 0 ? {} : { policies: kept }) };
}

const { request: start } = exampleRequest('takeoff-28');
const data = start.performanceData;
const worked = (state: PageState) => workOut(state, { ok: true, data });
const set = (changes: Readonly<Record<string, string>>) =>
  Object.entries(changes).reduce((state, [key, value]) => withValue(state, key as never, value), startState);

describe('the request of the worksheet page', () => {
  it('begins as the take-off of the examples, from either end', () => {
    expect(requestOf(startState, 1, data)).toEqual(ofItsJob(start));
    expect(requestOf(startState, 0, data)).toEqual(ofItsJob({ ...start, runwayInUse: '10' }));
    expect(stateOf(start, 'corran-four')).toEqual(startState);
  });

  it.each(names)('can be that of the example %s', (name) => {
    const { request, aeroplane } = exampleRequest(name);
    const place = request.runway.ends[0].designator === request.runwayInUse ? 0 : 1;
    expect(requestOf(stateOf(request, aeroplane), place, request.performanceData)).toEqual(ofItsJob(request));
  });

  it('is assessed as the library assesses it, both ends', () => {
    for (const name of names) {
      const { request, aeroplane } = exampleRequest(name);
      const { ends, faults } = workOut(stateOf(request, aeroplane), { ok: true, data: request.performanceData });
      expect(faults).toEqual([]);
      for (const { name: runwayInUse, assessment } of ends) {
        const assess: Json = request.schema.includes('takeoff') ? assessTakeoff : assessLanding;
        const ours = assess(ofItsJob({ ...request, runwayInUse }));
        expect(JSON.parse(JSON.stringify(assessment))).toEqual(JSON.parse(JSON.stringify(ours.value)));
      }
    }
  });

  it('confirms a recalled factor once somebody has compared it, and no other in its place', () => {
    const wet = { factorSet: 'uk-light-aeroplane-leaflet', surface: 'paved', condition: 'wet', conditionCode: 'none' };
    const compared = {
      compared: 'uk-leaflet-takeoff-paved-wet',
      comparedEdition: 'the copy in the club house',
      comparedDate: '2026-11-20',
    };
    const verdictOf = (changes: Readonly<Record<string, string>>) => {
      const { ends, faults } = worked(set(changes));
      expect(faults).toEqual([]);
      return ends[1].assessment?.criteria.find(({ id }) => id === 'takeoff-distance')?.verdict;
    };
    expect(verdictOf(wet)).toBe('undetermined');
    expect(sentencesOf(set(wet), data, undefined).factors).toContain('wet paved \u00d7\u00a01.00');
    expect(verdictOf({ ...wet, ...compared })).toBe('within');
    expect(requestOf(set({ ...wet, ...compared }), 1, data)['policies']).toMatchObject({
      confirmations: [{ factorId: compared.compared, edition: compared.comparedEdition, date: compared.comparedDate }],
    });
    // Soft ground is recalled as well, and nobody has compared that.
    const soft = { ...wet, ...compared, surface: 'grass', condition: 'dry', ground: 'soft' };
    expect(verdictOf(soft)).toBe('undetermined');
    expect(JSON.stringify(requestOf(set(soft), 1, data))).not.toContain('confirmations');
    // A dry paved runway asks for no such factor, so nothing is said of it.
    expect(sentencesOf(set({ ...wet, condition: 'dry' }), data, undefined).factors).not.toContain('memory');
  });

  it('asks for edition and date in the sentence where they are missing', () => {
    const { faults } = worked(
      set({
        factorSet: 'uk-light-aeroplane-leaflet',
        surface: 'snow',
        compared: 'uk-leaflet-takeoff-snow',
        comparedDate: 'last week',
      }),
    );
    expect(faults.map(({ sentence, field }) => [sentence, field])).toEqual([
      ['factors', 'field-comparedEdition'],
      ['factors', 'field-comparedDate'],
    ]);
  });

  it('carries what is typed as it is: no figure is guessed, clamped or left out', () => {
    const requested = (mass: string): Json => requestOf(set({ mass }), 0, data)['mass'];
    expect(requested('940')).toEqual({ value: 940, unit: 'kg' });
    expect(requested(' 940.50 ')).toEqual({ value: 940.5, unit: 'kg' });
    expect(requested('\u22125')).toEqual({ value: -5, unit: 'kg' });
    expect(requested('')).toEqual({ unit: 'kg' });
    for (const text of ['abc', '9,5', '1e3', '0x10', '940 kg', 'Infinity', 'NaN', '.', '-']) {
      expect(requested(text)).toEqual({ value: text, unit: 'kg' });
    }
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        const text = value.toFixed(6);
        expect(requested(text).value).toBe(Number(text));
      }),
    );
  });

  it('never makes the library throw, and a refusal has its sentence', () => {
    const text = fc.oneof(fc.string(), fc.integer().map(String), fc.constantFrom('', '0', '28', '-1', '1e9'));
    const keys = fc.constantFrom(...fieldKeys.filter((key) => fieldOf(key).choices === undefined));
    fc.assert(
      fc.property(fc.array(fc.tuple(keys, text), { maxLength: 3 }), fc.boolean(), (changes, isLanding) => {
        const { ends, faults } = worked(
          set({ ...Object.fromEntries(changes), job: isLanding ? 'landing' : 'takeoff' }),
        );
        expect(faults.length > 0).toBe(ends.some(({ assessment }) => assessment === undefined));
      }),
      { numRuns: 150 },
    );
  });
});

describe('a refusal', () => {
  it.each([
    [{ mass: 'abc' }, 'aeroplane', 'field-mass', '"abc" is not a number'],
    [{ mass: '' }, 'aeroplane', 'field-mass', 'is missing'],
    [{ mass: '9' }, 'aeroplane', 'field-mass', '9 kg is not within 50 to 10000 kg'],
    [{ length: '7000' }, 'runway', 'field-length', '7000 m is not within 50 to 6000 m'],
    [{ designator2: '40' }, 'runway', 'field-designator2', '"40" is not a runway designator'],
    [
      { direction1: '200' },
      'runway',
      'field-direction1',
      '200 degTrue contradicts the painted number 10; at most 30° apart',
    ],
    [{ temperature: '60' }, 'air', 'field-temperature', '60 degC is not within -40 to 50 degC'],
    [{ pressure: '29.7' }, 'air', 'field-pressure', '29.7 hPa is not within 850 to 1085 hPa'],
    [{ windGust: '3' }, 'wind', 'field-windGust', '3 kt is below the mean, 7 kt'],
    [{ windNorth: 'magnetic' }, 'wind', 'field-windFrom', 'a wind from METAR is in degTrue, not in degMagnetic'],
    [{ elevation1: '' }, 'slope', 'field-elevation1', 'is missing'],
    [{ TODA2: '700' }, 'distances', 'field-TODA2', '700 m is less than the TORA, 830 m'],
    [{ brakingCoefficient: '9' }, 'limits', 'field-brakingCoefficient', '9 ratio is not within 0.02 to 0.8 ratio'],
    [{ crosswindLimit: '99' }, 'limits', 'field-crosswindLimit', '99 kt is not within 0 to 60 kt'],
    [{ reactionTime: '0' }, 'policies', 'field-reactionTime', '0 s is not within 0.5 to 10 s'],
    [{ weather: 'METAR', metar: '' }, 'air', 'field-metar', 'the report is empty'],
    [
      { weather: 'METAR', metar: 'METAR ZZZZ 141350Z 190O7KT 26/16 Q1006' },
      'air',
      'field-metar',
      '"190O7KT" at character 20 is not a wind group: dddffKT or dddffGffKT, in KT or MPS',
    ],
  ])(
    'of %o stands in its sentence, at its figure, in the words of the library',
    (changes, sentence, field, message) => {
      expect(worked(set(changes)).faults).toContainEqual(expect.objectContaining({ sentence, field, message }));
    },
  );

  it('of an obstacle stands at that obstacle', () => {
    const { faults } = worked(withObstacle(startState, 0, 'beyond', 'near'));
    expect(faults).toEqual([
      {
        sentence: 'obstacles',
        field: 'obstacle-1-beyond',
        label: 'Distance beyond the end of obstacle 1',
        message: '"near" is not a number',
      },
    ]);
  });

  it('of an own file lists every fault with its place', () => {
    expect(workOut(set({ aeroplane: 'own' }), noFile).faults[0]?.message).toMatch(/no file is chosen/);
    expect(readOwnFile('a.json', '{')).toMatchObject({
      ok: false,
      faults: [expect.stringMatching(/^a\.json is not JSON: /)],
    });
    const broken = { ...data, masses: { maximumTakeoff: { value: -5, unit: 'kg' } }, extra: 1 };
    const read = readOwnFile('a.json', JSON.stringify(broken));
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.faults.length).toBeGreaterThan(1);
    expect(read.faults).toContain('extra: is not a key of this document');
  });

  it('takes a file of the examples', () => {
    const text = readFileSync('examples/performance-data/linnet-two.json', 'utf8');
    expect(readOwnFile('linnet-two.json', text)).toMatchObject({ ok: true, data: JSON.parse(text) });
  });
});

describe('the right edge of the ledger', () => {
  const rows = (changes: Readonly<Record<string, string>>, end: 0 | 1) => {
    const { assessment } = worked(set(changes)).ends[end];
    return rowsOf(assessment, orderOf([assessment]));
  };

  it('carries the total on where a sentence adds nothing', () => {
    const { surface, slope, speed, factors } = rows({}, 1);
    expect([slope.treads, speed.treads]).toEqual([[], []]);
    expect([slope.total, speed.total]).toEqual([surface.total, surface.total]);
    expect(factors.total).toBe('770.2 m');
  });

  it('is undetermined from the sentence that has no figure on, and known above it', () => {
    const { air, wind, surface, slope, factors } = rows({ ground: 'soft' }, 1);
    expect([air.total, wind.total]).toEqual(['443.0 m', '513.5 m']);
    expect(surface.refusal.join()).toMatch(/soft ground/);
    expect([surface.total, slope.total, factors.total]).toEqual(['undetermined', 'undetermined', 'undetermined']);
  });

  it('is undetermined throughout where the request is refused', () => {
    const all = Object.values(rows({ mass: 'abc' }, 0));
    expect(all.map(({ total }) => total)).toEqual(Array(6).fill('undetermined'));
  });

  it('has the slope before the surface where the table of the manual runs along the slope', () => {
    const { request } = exampleRequest('takeoff-10');
    const plover = JSON.parse(readFileSync('examples/performance-data/plover-two.json', 'utf8'));
    const state = set({ takeoffConfiguration: 'takeoff', mass: '700' });
    const { ends } = workOut(state, { ok: true, data: plover });
    expect(request.runwayInUse).toBe('10');
    const order = orderOf(ends.map(({ assessment }) => assessment));
    expect(order.indexOf('slope')).toBeLessThan(order.indexOf('surface'));
    const totals = Object.values(rowsOf(ends[0].assessment, order)).map(({ total }) => total);
    expect(totals.every((total) => / m$/.test(total))).toBe(true);
  });
});
