import { describe, expect, it } from 'vitest';
import { edgeReasons, noChartReading, noReading } from '../../src/assessment/kernel/no-reading.ts';
import { type Changes, takeoff } from './scenario.ts';

const temperature = { quantity: 'temperature', unit: 'degC', values: [0, 20, 40] } as const;
const mass = { quantity: 'mass', unit: 'lb', values: [1900, 2300] } as const;

describe('why there is no figure', () => {
  const off = { table: 'distance', quantity: 'temperature', given: 41, min: 0, max: 40, unit: 'degC' };

  it('of a table is a blank cell, a value off its axis, or an edge from which the figures still change', () => {
    expect(noReading({ reason: 'blank' } as never, 'distance')).toEqual({
      code: 'blank-cell',
      parameters: { table: 'distance' },
    });
    expect(noReading({ reason: 'off-edge', axis: temperature, at: 41 }, 'distance')).toEqual({
      code: 'off-table',
      parameters: off,
    });
    expect(noReading({ reason: 'not-monotonic', axis: temperature, at: -3 }, 'distance')).toEqual({
      code: 'table-not-monotonic',
      parameters: { ...off, given: -3 },
    });
  });

  it('of a chart is a value off a scale, between no two curves, or an edge from which they still change', () => {
    const reading = { scale: { quantity: 'temperature', unit: 'degC' }, at: 41, min: 0, max: 40 };
    const found = (reason: string) => noChartReading({ ...reading, reason } as never, 'distance');
    expect(found('off-edge')).toEqual({ code: 'off-table', parameters: off });
    expect(found('not-monotonic')).toEqual({ code: 'table-not-monotonic', parameters: off });
    expect(found('off-curves')).toEqual({
      code: 'off-curves',
      parameters: { table: 'distance', quantity: 'temperature' },
    });
  });
});

describe('the edge that a table was read at', () => {
  it('is the nearer end of the axis, in the unit of the axis', () => {
    // 800 kg are 1763.7 lb, 1100 kg 2425.1 lb.
    const edge = (mass_kg: number) => edgeReasons([mass], { mass: mass_kg }, 'distance');
    const parameters = { table: 'distance', quantity: 'mass', unit: 'lb' };
    expect(edge(800)).toEqual([
      { code: 'read-at-edge', parameters: { ...parameters, given: expect.closeTo(1763.698, 3), edge: 1900 } },
    ]);
    expect(edge(1100)).toEqual([
      { code: 'read-at-edge', parameters: { ...parameters, given: expect.closeTo(2425.085, 3), edge: 2300 } },
    ]);
    expect(edgeReasons([], { mass: 800 }, 'distance')).toEqual([]);
  });
});

describe('the next worse printed figure', () => {
  it('is said to be read where the request chooses it', () => {
    const says = (changes: Changes) =>
      takeoff('takeoff-28', changes).trace.some(
        (entry) => entry.kind === 'decision' && entry.code === 'read-next-worse',
      );
    expect([says({ 'policies.betweenPrintedValues': 'next-worse' }), says({})]).toEqual([true, false]);
  });
});
