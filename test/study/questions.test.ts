import { describe, expect, it } from 'vitest';
import { tallestObstacle } from '../../src/study/index.ts';
import {
  massQuestion,
  runwayLengthQuestion,
  tailwindQuestion,
  temperatureQuestion,
} from '../../src/study/questions.ts';
import { takeoffRequest } from '../assessment/scenario.ts';
import { takeoffOf } from './aeroplanes.ts';
import { limitNames, limits, solvedOf } from './limits.ts';

const ends = ({ favourable, adverse }: { favourable: number; adverse: number }) => [favourable, adverse];
// The scenario has no table for it.
const untabled = takeoffRequest('takeoff-28', { configuration: 'flap-0' });

describe('the range of a question', () => {
  it('is that of the printed masses up to the maximum, or from half of it where none is printed', () => {
    expect(ends(massQuestion(takeoffRequest('takeoff-28')))).toEqual([850, 1050]);
    expect(ends(massQuestion(takeoffOf('linnet-two')))).toEqual([375, 750]);
    expect(ends(massQuestion(untabled))).toEqual([525, 1050]);
  });

  it('is that of the printed temperatures, or all that a request takes', () => {
    expect(ends(temperatureQuestion(takeoffRequest('takeoff-28')))).toEqual([0, 40]);
    expect(ends(temperatureQuestion(untabled))).toEqual([-40, 50]);
  });

  it('ends with the last printed tailwind, of an axis or of a law', () => {
    // The law of the scenario ends at 8 kt, the axis of the other one at 5 kt of tailwind.
    expect(ends(tailwindQuestion(takeoffRequest('takeoff-28')))).toEqual([0, 8]);
    expect(ends(tailwindQuestion(takeoffOf('plover-two')))).toEqual([0, 5]);
    // An axis without a tailwind leaves the question to the law; nothing at all leaves 20 kt.
    const axis = 'performanceData.takeoff.0.distance.axes.2.values';
    const law = {
      change: { value: 10, unit: 'percent' },
      per: { value: 2, unit: 'kt' },
      upTo: { value: 4, unit: 'kt' },
    };
    const calm = { [axis]: [0, 5, 10, 20] };
    const both = takeoffOf('plover-two', { ...calm, 'performanceData.takeoff.0.corrections.tailwind': law });
    expect(ends(tailwindQuestion(both))).toEqual([0, 4]);
    expect(ends(tailwindQuestion(takeoffOf('plover-two', calm)))).toEqual([0, 20]);
    expect(ends(tailwindQuestion(untabled))).toEqual([0, 20]);
  });

  it('runs down from 3 000 m of runway, or from the runway itself where that is longer', () => {
    const bare = {
      'runway.ends.0.declaredDistances': undefined,
      'runway.ends.1.declaredDistances': undefined,
    };
    const of = (metres: number) =>
      ends(runwayLengthQuestion(takeoffRequest('takeoff-28', { ...bare, 'runway.length.value': metres })));
    expect(of(830)).toEqual([3000, 50]);
    expect(of(3500)).toEqual([3500, 50]);
  });
});

describe('without a table for the configuration flown', () => {
  it.each(limitNames)('the %s has no value, and the distance is what is undetermined', (name) => {
    const found = solvedOf(limits[name].solve(untabled));
    expect(found.answer).toBe('undetermined');
    expect(found).not.toHaveProperty('value');
    expect(found.limitedBy.map(({ id }) => id)).toContain('takeoff-distance');
  });
});

describe('the tallest obstacle', () => {
  it('is none of a request that lists none', () => {
    for (const obstacles of [undefined, []])
      expect(tallestObstacle(takeoffRequest('takeoff-10', { 'runway.obstacles': obstacles }), 'pines')).toEqual({
        ok: false,
        faults: [{ path: 'runway.obstacles', message: 'none of the obstacles listed is named "pines"' }],
      });
  });

  it('is searched up to 300 m above its foot: its ground, or the end beyond which it stands', () => {
    const pines = solvedOf(tallestObstacle(takeoffRequest('takeoff-10'), 'pines')).range;
    expect(pines.to).toEqual({ value: 300, unit: 'mHeight' });
    // 300 m are 984.25 ft; the 22 end lies at 1 853 ft, the 04 end at 1 846 ft.
    const heap = solvedOf(tallestObstacle(takeoffRequest('quarry-takeoff-04'), 'spoil heap')).range;
    expect(heap.to).toEqual({ value: expect.closeTo(1853 + 984.252, 2), unit: 'ftElevation' });
    const reversed = takeoffRequest('quarry-takeoff-04', {
      runwayInUse: '22',
      'runway.obstacles.0': {
        name: 'bank',
        end: '04',
        beyond: { value: 900, unit: 'm' },
        topElevation: { value: 3000, unit: 'ftElevation' },
      },
    });
    const bank = solvedOf(tallestObstacle(reversed, 'bank')).range;
    expect(bank.to.value).toBeCloseTo(1846 + 984.252, 2);
    expect(bank.from.value).toBeGreaterThanOrEqual(1846);
  });
});
