import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { codes, criterion, example, takeoff, totals, turning } from './scenario.ts';

const chartData = JSON.parse(
  readFileSync(new URL('../../examples/performance-data/skerry-two.json', import.meta.url), 'utf8'),
);

/** The aeroplane with its take-off in a chart, on a paved level runway at sea level in calm air. */
const calm = {
  performanceData: chartData,
  configuration: 'takeoff',
  mass: { value: 850, unit: 'kg' },
  'runway.surface': { kind: 'paved', condition: 'dry' },
  'runway.aerodromeElevation': { value: 0, unit: 'ftElevation' },
  'runway.ends.0.elevation': { value: 0, unit: 'ftElevation' },
  'runway.ends.1.elevation': { value: 0, unit: 'ftElevation' },
  'runway.obstacles': [],
  'weather.wind': { source: 'METAR', from: 'variable', speed: { value: 0, unit: 'kt' } },
  'weather.qnh': { value: 1013.25, unit: 'hPa' },
  'weather.temperature': { value: 20, unit: 'degC' },
  'weather.dewPoint': undefined,
};

describe('a take-off read from a chart', () => {
  const assess = () => takeoff('takeoff-28', calm);

  it('follows the guide lines: 442 and 504 m at 10 and 30 °C, 0.925 of it at 850 kg, 0.56 of that on the ground', () => {
    expect(totals(assess())['manual']).toBeCloseTo(473 * 0.925, 0);
    const roll = [...assess().trace]
      .reverse()
      .find((entry) => entry.kind === 'step' && entry.label.startsWith('ground roll, panel of height'));
    expect(roll?.kind === 'step' && (roll.output as number)).toBeCloseTo(473 * 0.925 * 0.56, 0);
  });

  it('notes one step for each panel', () => {
    const panels = assess().trace.flatMap((entry) =>
      entry.kind === 'step' && entry.record === 'aircraft.interpolate-curves' ? [entry.label] : [],
    );
    expect(panels.filter((label) => label.startsWith('distance, '))).toEqual([
      'distance, panel of temperature',
      'distance, panel of mass',
      'distance, panel of headwind',
      'distance, panel of height above the surface',
      // Read once more along the panel of wind, at the wind used.
      'distance, panel of temperature',
      'distance, panel of mass',
      'distance, panel of headwind',
      'distance, panel of height above the surface',
    ]);
  });

  it('has its break-evens within what the chart prints', () => {
    expect(turning(assess())).toMatchObject({ mass: 'withinThroughoutRange', tailwind: 'withinThroughoutRange' });
    expect(assess().breakEvens.find(({ quantity }) => quantity === 'tailwind')?.range.to.value).toBe(6);
  });

  it('credits the headwind of the panel by the accountability', () => {
    const wind = { source: 'METAR', from: { value: 292, unit: 'degTrue' }, speed: { value: 20, unit: 'kt' } };
    const inWind = takeoff('takeoff-28', { ...calm, 'weather.wind': wind });
    // Half of 20 kt, half way to the 0.76 drawn at 20 kt.
    expect((totals(inWind)['wind'] as number) / (totals(inWind)['manual'] as number)).toBeCloseTo(0.88, 3);
  });

  it('is read at the favourable edge of a scale, and says so', () => {
    const cold = takeoff('takeoff-28', { ...calm, 'weather.temperature': { value: -30, unit: 'degC' } });
    const edges = cold.trace.flatMap((entry) =>
      entry.kind === 'decision' && entry.code === 'read-at-edge' ? [entry.parameters] : [],
    );
    expect(edges).toContainEqual({ table: 'distance', quantity: 'temperature', given: -30, edge: -10, unit: 'degC' });
  });

  it('has no figure off the chart, and says on which scale', () => {
    const hot = takeoff('takeoff-28', {
      ...calm,
      'weather.temperature': { value: 49, unit: 'degC' },
      'weather.qnh': { value: 860, unit: 'hPa' },
      'runway.aerodromeElevation': { value: 3000, unit: 'ftElevation' },
    });
    expect(criterion(hot, 'takeoff-distance').verdict).toBe('undetermined');
    expect(new Set(codes(criterion(hot, 'takeoff-distance').reasons))).toEqual(new Set(['off-curves']));
  });

  it('is the same from a document read as JSON', () => {
    expect(takeoff('takeoff-28', { ...calm, performanceData: JSON.parse(JSON.stringify(chartData)) })).toEqual(
      assess(),
    );
    expect(example('takeoff-28', calm)).toMatchObject({ configuration: 'takeoff' });
  });
});
