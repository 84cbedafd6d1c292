import { describe, expect, it } from 'vitest';
import { readPerformanceData } from '../../src/aircraft/index.ts';
import { performanceData } from '../assessment/scenario.ts';

// Documents that random inputs have found to throw.

type Part = Record<string, never>;

function changed(name: string, path: string, change: (value: never) => unknown): unknown {
  const document = performanceData(name);
  const keys = path.split('.');
  const last = keys.pop() as string;
  const parent = keys.reduce((part, key) => part[key] as never, document as Part) as Record<string, unknown>;
  parent[last] = change(parent[last] as never);
  return document;
}
const faultsOf = (json: unknown) => {
  const read = readPerformanceData(json);
  return read.ok ? [] : read.faults;
};

describe('a chart with a line that cannot be read', () => {
  const guides = 'takeoff.0.groundRoll.panels.1.guides';
  const curves = 'takeoff.0.groundRoll.panels.0.curves';

  it.each([
    ['no points', `${guides}.0`, () => [], 'a curve has at least 2 points'],
    ['one point', `${guides}.1`, (line: unknown[]) => line.slice(0, 1), 'a curve has at least 2 points'],
    [
      'points that fall',
      `${guides}.0`,
      (line: unknown[]) => [...line].reverse(),
      'the points of a curve must rise along the panel',
    ],
    ['an infinite place', `${guides}.0.2.0`, () => Number.POSITIVE_INFINITY, 'is not a finite number'],
    ['a curve without points', `${curves}.1.points`, () => [], 'a curve has at least 2 points'],
  ] as const)('has the fault of that line alone: %s', (_name, path, change, message) => {
    const faults = faultsOf(changed('skerry-two', path, change as never));
    expect(faults.map((fault) => fault.message)).toEqual([message]);
    expect(path.startsWith(faults[0]?.path.replaceAll(/\[(\d+)\]/g, '.$1') ?? '-')).toBe(true);
  });
});

describe('a table far above the atmosphere', () => {
  it('is read without a true airspeed to hold it against', () => {
    const axis = 'takeoff.0.groundRoll.axes.1';
    expect(performanceData('corran-four')).toHaveProperty(`${axis}.quantity`, 'pressureAltitude');
    const read = readPerformanceData(
      changed('corran-four', `${axis}.values`, (values: number[]) => [...values.slice(0, -1), 60_090]),
    );
    expect(read.ok).toBe(true);
  });
});
