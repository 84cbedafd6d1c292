import { describe, expect, it } from 'vitest';
import { worksheetSections, worksheetText } from '../../src/worksheet/index.ts';
import { landing, takeoff } from './scenario.ts';

const soft = { 'runway.surface': { kind: 'grass', condition: 'dry', length: 'up to 20 cm', ground: 'soft' } };
const steps = (known: readonly { step: string }[] | undefined) => known?.map(({ step }) => step);

describe('the treads before the first without a figure', () => {
  it('are those of the same day on a surface that has a factor, up to the surface', () => {
    const { stairs, stairsKnown } = takeoff('takeoff-28', soft);
    expect(stairs).toBeUndefined();
    expect(steps(stairsKnown)).toEqual(['manual', 'wind']);
    expect(stairsKnown).toEqual(takeoff('takeoff-28').stairs?.steps.slice(0, 2));
  });

  it('end at the first that is missing, whatever comes after it', () => {
    const gale = { 'weather.wind.speed': { value: 14, unit: 'kt' }, 'weather.wind.gust': undefined };
    const from = { 'weather.wind.from': { value: 112, unit: 'degTrue' } };
    expect(steps(takeoff('takeoff-28', { ...gale, ...from }).stairsKnown)).toEqual(['manual']);
    expect(steps(landing('landing-28', { ...soft, ...gale, ...from }).stairsKnown)).toEqual(['manual']);
  });

  it('of a landing whose speed addition has no price are all before it', () => {
    const uncalibrated = landing('landing-10', { 'performanceData.calibrations': [] });
    expect(uncalibrated.stairs).toBeUndefined();
    const all = landing('landing-10').stairs?.steps ?? [];
    const at = all.findIndex(({ step }) => step === 'speed addition');
    expect(uncalibrated.stairsKnown).toEqual(all.slice(0, at));
  });

  it('are none where the manual has no figure, and where the distance is known', () => {
    expect(takeoff('takeoff-28', { configuration: 'flap-0' })).not.toHaveProperty('stairsKnown');
    expect(takeoff('takeoff-28')).not.toHaveProperty('stairsKnown');
  });

  it('stand in the worksheet above the total that is undetermined', () => {
    const assessment = takeoff('takeoff-28', soft);
    const ledger = worksheetSections(assessment).find(({ id }) => id === 'ledger')?.lines ?? [];
    expect(ledger.map(({ total }) => total)).toEqual(['443.0 m', '513.5 m', 'undetermined']);
    expect(worksheetText(assessment).replace(/\s+/g, ' ')).toContain('513.5 m The distance required undetermined');
  });
});
