import { describe, expect, it } from 'vitest';
import { readChart, readPerformanceData, verifyExamples } from '../../src/aircraft/index.ts';
import * as assessment from '../../src/assessment/index.ts';
import { checkValues, compareCheckValues, formulaRecords } from '../../src/register/index.ts';
import type { FormulaRecord } from '../../src/sources/index.ts';
import * as study from '../../src/study/index.ts';
import { worksheet, worksheetHtml, worksheetMarkdown, worksheetText } from '../../src/worksheet/index.ts';
import { landingRequest, performanceData, takeoffRequest } from '../assessment/scenario.ts';

// In a module a write to something frozen throws; so whatever accepts frozen inputs has changed none of them.

function deepFrozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value)) deepFrozen(part);
  }
  return value;
}

/** The record with a formula that gets its inputs frozen, and says how often it was called. */
function frozen(record: FormulaRecord) {
  let calls = 0;
  const formula = (inputs: never) => {
    calls += 1;
    return record.formula(deepFrozen(inputs));
  };
  return { record: { ...record, formula }, calls: () => calls };
}

describe('frozen inputs', () => {
  const published = formulaRecords.filter(({ checkValues: stated }) => stated === 'published');
  const others = formulaRecords.filter(({ checkValues: stated }) => stated !== 'published');

  it.each(published.map((each) => [each.id, each] as const))('give %s the same published figures', (id, record) => {
    const own = checkValues.filter((each) => each.record === id);
    const watched = frozen(record);
    expect(compareCheckValues([watched.record as FormulaRecord], deepFrozen(own))).toEqual(
      compareCheckValues([record], own),
    );
    expect(watched.calls()).toBe(own.length);
  });

  it.each(others.map((each) => [each.id, each] as const))(
    'are accepted or refused by %s as others are',
    (_id, record) => {
      const middle = Object.entries(record.domain).map(([name, { min, max }]) => [name, (min + max) / 2]);
      const answer = (inputs: unknown) => {
        try {
          return record.formula(inputs as never);
        } catch (error) {
          // A formula that also needs a word or a list says that it is missing; it must not say that it cannot write.
          expect(String(error)).not.toMatch(/read only|not extensible|Cannot (assign|delete|define|add)/);
          return String(error);
        }
      };
      expect(answer(deepFrozen(Object.fromEntries(middle)))).toEqual(answer(Object.fromEntries(middle)));
    },
  );

  const takeoff = () => takeoffRequest('takeoff-28');
  const landing = () => landingRequest('landing-10');
  const both = () => ({
    schema: 'groundroll/departure-and-arrival-request/1' as const,
    sequence: 'departure then arrival' as const,
    departure: takeoff(),
    arrival: landing(),
  });
  const axes = {
    masses: [850, 940].map((value) => ({ mass: { value, unit: 'kg' as const } })),
    temperatures: [10, 30].map((value) => ({ value, unit: 'degC' as const })),
  };
  const known = <T>(result: { ok: true; value: T } | { ok: false; faults: readonly unknown[] }): T => {
    if (result.ok) return result.value;
    throw new Error(JSON.stringify(result.faults));
  };
  const page = () => worksheet(known(assessment.assessTakeoff(takeoff())), formulaRecords);

  /** Every function of a document or a finished result, with what it gets. */
  const functions: readonly (readonly [name: string, call: (input: never) => unknown, input: () => unknown])[] = [
    ['readPerformanceData', readPerformanceData, () => performanceData('corran-four')],
    ['verifyExamples', verifyExamples, () => performanceData('corran-four')],
    ['assessTakeoff', assessment.assessTakeoff, takeoff],
    ['assessLanding', assessment.assessLanding, landing],
    ['readTakeoffRequest', assessment.readTakeoffRequest, takeoff],
    ['readLandingRequest', assessment.readLandingRequest, landing],
    ['readWeather', assessment.readWeather, () => takeoff().weather],
    ['prepareTakeoff', (input) => known(assessment.prepareTakeoff(input)).assess, takeoff],
    ['assessDepartureAndArrival', study.assessDepartureAndArrival, both],
    ['readDepartureAndArrivalRequest', study.readDepartureAndArrivalRequest, both],
    ['performanceLimitedMass', study.performanceLimitedMass, takeoff],
    ['highestTemperature', study.highestTemperature, takeoff],
    ['greatestTailwind', study.greatestTailwind, takeoff],
    ['greatestCrosswind', study.greatestCrosswind, takeoff],
    ['shortestRunway', study.shortestRunway, landing],
    ['sensitivities', study.sensitivities, takeoff],
    ['reassessTriggers', study.reassessTriggers, takeoff],
    ['compareFactorSets', study.compareFactorSets, takeoff],
    ['mostAdverseSurface', (input) => study.mostAdverseSurface(input, deepFrozen([takeoff().runway.surface])), takeoff],
    ['runwayDistanceTable', (input) => study.runwayDistanceTable(input, deepFrozen(axes)), takeoff],
    ['uncertainty', (input) => study.uncertainty(input, deepFrozen({ cases: 200 })), takeoff],
    ['worksheet', (input) => worksheet(input, formulaRecords), () => known(assessment.assessTakeoff(takeoff()))],
    ['worksheetText', worksheetText as never, () => known(assessment.assessTakeoff(takeoff()))],
    ['worksheetMarkdown', worksheetMarkdown as never, page],
    ['worksheetHtml', worksheetHtml as never, page],
  ];

  it.each(functions)('give %s the same result', (name, call, input) => {
    const expected = call(input() as never);
    const found = call(deepFrozen(input()) as never);
    if (typeof expected !== 'function') expect(JSON.stringify(found), name).toBe(JSON.stringify(expected));
  });

  it('are read by a chart', () => {
    const [table] = (performanceData('skerry-two') as { takeoff: { distance: never }[] }).takeoff;
    const point = { pressureAltitude: 1000, temperature: 20, mass: 850, headwind: 5, height: 10 };
    const mode = { favourableEdge: 'read-at-edge', between: 'interpolate', worse: 'greater', highIsFavourable: [] };
    expect(readChart(deepFrozen(table?.distance as never), deepFrozen(point), deepFrozen(mode) as never)).toMatchObject(
      {
        ok: true,
      },
    );
  });

  it('would show a formula that writes to them', () => {
    const [record] = published;
    const writing = {
      ...(record as FormulaRecord),
      formula: (inputs: Record<string, unknown>) => {
        inputs['more'] = 1;
        return 0;
      },
    };
    const own = checkValues.filter((each) => each.record === writing.id);
    expect(() => compareCheckValues([frozen(writing as never).record as never], own)).toThrow(/not extensible/);
  });
});
