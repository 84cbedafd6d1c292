import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readPerformanceData } from '../../src/aircraft/index.ts';

// biome-ignore lint/suspicious/noExplicitAny: a document that is about to be broken has no type
type Loose = any;

const folder = new URL('../../examples/performance-data/', import.meta.url);
const names = fs.readdirSync(folder);
const read = (name: string) => readPerformanceData(JSON.parse(fs.readFileSync(new URL(name, folder), 'utf8')));

describe('the example performance data', () => {
  it('hold a grid and a chart', () =>
    expect(names).toEqual(expect.arrayContaining(['corran-four.json', 'skerry-two.json'])));

  it.each(names)('%s is read without faults or findings, and comes back as it was', (name) => {
    const result = read(name);
    expect(result).toMatchObject({ ok: true, findings: [] });
    expect(result.ok && JSON.parse(JSON.stringify(result.value))).toEqual(
      JSON.parse(fs.readFileSync(new URL(name, folder), 'utf8')),
    );
  });

  it.each([
    [
      'points that do not rise',
      (chart: Loose) => chart.panels[0].curves[0].points.reverse(),
      'must rise along the panel',
    ],
    ['curves out of order', (chart: Loose) => chart.panels[0].curves.reverse(), 'must rise from curve to curve'],
    ['guide lines that cross', (chart: Loose) => chart.panels[1].guides[0][0].splice(1, 1, 900), 'may not cross'],
    [
      'a guide that misses the reference line',
      (chart: Loose) => (chart.panels[1].referenceLine = 950),
      'must cross the reference line',
    ],
    ['a unit of another quantity', (chart: Loose) => (chart.panels[1].along.unit = 'kt'), 'is not a unit of mass'],
    [
      'one scale twice',
      (chart: Loose) => (chart.panels[2].along = { quantity: 'mass', unit: 'kg' }),
      'two scales show mass',
    ],
    [
      'an ordinate out of bounds',
      (chart: Loose) => chart.panels[3].guides[0][0].splice(1, 1, -5),
      'is not within 1 to 20000',
    ],
    [
      'a point that is not a number',
      (chart: Loose) => chart.panels[0].curves[0].points[0].splice(1, 1, Number.NaN),
      'NaN',
    ],
  ])('a chart with %s is refused with its path', (_name, change, message) => {
    const json = JSON.parse(fs.readFileSync(new URL('skerry-two.json', folder), 'utf8'));
    change(json.takeoff[0].distance);
    const result = readPerformanceData(json);
    const faults = result.ok ? [] : result.faults;
    expect(
      faults.some((fault) => fault.path.startsWith('takeoff[0].distance') && fault.message.includes(message)),
    ).toBe(true);
  });
});
