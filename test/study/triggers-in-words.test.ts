import { describe, expect, it } from 'vitest';
import type { AnyRequest } from '../../src/study/any-request.ts';
import { reassessTriggers } from '../../src/study/index.ts';
import { performanceData, takeoffRequest } from '../assessment/scenario.ts';

function found(request: AnyRequest) {
  const result = reassessTriggers(request);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

/** The data of the demo with the last printed pressure altitude somewhere else. */
function printedUpTo(altitude_ft: number): Record<string, unknown> {
  const text = JSON.stringify(performanceData('corran-four'));
  const data = JSON.parse(text.replaceAll('[0,2000,4000]', `[0,2000,${altitude_ft}]`)) as { examples?: unknown };
  delete data.examples;
  return data as Record<string, unknown>;
}

const noWindLimits = { crosswind: [{ speed: { value: 60, unit: 'kt' }, status: 'limitation' }], tailwind: [] };
const distances = (value: number) =>
  Object.fromEntries(['TORA', 'TODA', 'ASDA', 'LDA'].map((key) => [key, { value, unit: 'm' }]));

/** A long paved runway in a calm: mass, temperature and wetness turn nothing. */
const long = (data: object) =>
  takeoffRequest('takeoff-28', {
    performanceData: { ...data, ...noWindLimits },
    personalLimits: undefined,
    'runway.length.value': 3000,
    'runway.ends.0.declaredDistances': distances(3000),
    'runway.ends.1.declaredDistances': distances(3000),
    'runway.surface': { kind: 'paved', condition: 'dry' },
    'weather.wind': { source: 'METAR', from: { value: 292, unit: 'degTrue' }, speed: { value: 0, unit: 'kt' } },
  });

describe('what calls for another assessment, in one sentence', () => {
  it('is one thing alone where one thing turns the verdict', () => {
    // 4000 ft is the last pressure altitude printed: 438 ft and 3562 ft of the standard atmosphere, rounded up to 1 hPa.
    const last_hPa = Math.ceil(1013.25 * (1 - (4000 - 438) / 145442.156) ** (1 / 0.1902631));
    const one = found(long(performanceData('corran-four')));
    expect(one.triggers.map(({ sentence }) => sentence.text)).toEqual([`the QNH is below ${last_hPa} hPa`]);
    expect(one.sentence.text).toBe(`Assess again if the QNH is below ${last_hPa} hPa.`);
    // Beyond the table there is no figure.
    expect(one.triggers[0]?.verdict).toBe('undetermined');
    expect(one.limitsOfUse[0]).toContain('two changes together may turn the verdict sooner');
    expect(one.limitsOfUse.length).toBeGreaterThan(1);
  });

  it('is nothing where nothing does', () => {
    // 850 hPa is 5217 ft there.
    expect(found(long(printedUpTo(6000)))).toMatchObject({
      verdict: 'within',
      triggers: [],
      sentence: { text: 'Nothing within the ranges searched turns the verdict while everything else stays.' },
    });
  });

  it('sets the last of several off with or', () => {
    // A crosswind limit of the pilot's own, and a steady wind across: it turns with the wind and with gusts, at 13 kt.
    const across = found({
      ...long(printedUpTo(6000)),
      personalLimits: { crosswind: { value: 13, unit: 'kt' } },
      weather: {
        ...long(printedUpTo(6000)).weather,
        wind: { source: 'METAR', from: { value: 202, unit: 'degTrue' }, speed: { value: 10, unit: 'kt' } },
      },
    } as AnyRequest);
    const parts = across.triggers.map(({ sentence }) => sentence.text);
    expect(parts).toEqual(expect.arrayContaining(['the wind speed rises above 13 kt', 'gusts rise above 13 kt']));
    expect(across.sentence.text).toBe(`Assess again if ${parts.slice(0, -1).join(', ')}, or ${parts.at(-1)}.`);
  });
});

describe('the limits behind it', () => {
  const triggers = () => found(takeoffRequest('takeoff-28')).triggers;
  const coded = (code: string) => (each: { sentence: { code: string } }) => each.sentence.code === code;

  it('are searched from what is reported: 180° round, 40 kt up', () => {
    const all = triggers();
    const range = (code: string) => {
      const searched = all.find(coded(code))?.limit?.range;
      return [searched?.from.value, searched?.to.value];
    };
    expect(range('trigger-backs')).toEqual([190, 10]);
    expect(range('trigger-wind-above')).toEqual([7, 47]);
    expect(range('trigger-gust')).toEqual([17, 57]);
  });

  it('and no farther than a wind is read', () => {
    // Gusts of 75 kt from ahead: 40 kt more is above the 100 kt that a request takes.
    const strong = long(printedUpTo(6000));
    const wind = {
      source: 'METAR',
      from: { value: 292, unit: 'degTrue' },
      speed: { value: 65, unit: 'kt' },
      gust: { value: 75, unit: 'kt' },
    };
    const found65 = found({ ...strong, weather: { ...strong.weather, wind } } as AnyRequest);
    expect(found65.verdict).toBe('within');
    expect(found65.triggers.map(({ sentence }) => sentence.code)).not.toContain('trigger-wind-above');
    expect(found65.triggers.map(({ sentence }) => sentence.code)).not.toContain('trigger-gust');
  });

  it('name what turns, the limiting one first, and what it turns into', () => {
    const all = triggers();
    expect(all.find(coded('trigger-gust'))).toMatchObject({
      verdict: 'outside',
      limitedBy: [{ id: 'crosswind' }],
      sentence: { text: 'gusts rise above 18 kt' },
    });
    const surfaces = all.filter(coded('trigger-surface'));
    expect(surfaces.map(({ sentence, verdict }) => [sentence.text, verdict])).toEqual([
      // Wet grass 1.30 takes 5 m more than there are; soft ground is at least 1.25, longer grass has no factor.
      ['the grass wets', 'outside'],
      ['the ground softens', 'undetermined'],
      ['the grass stands above 20 cm', 'undetermined'],
    ]);
    expect(surfaces[0]?.limitedBy.map(({ id }) => id)).toEqual(['takeoff-distance']);
    for (const { limitedBy } of surfaces) for (const { verdict } of limitedBy) expect(verdict).not.toBe('within');
  });

  it('words quantities in small letters, but not QNH', () => {
    const texts = triggers().map(({ sentence }) => sentence.text);
    expect(texts).toContain('the temperature is above 35 °C');
    expect(texts).toContain('the mass is above 970 kg');
    expect(texts.filter((text) => text.startsWith('the QNH is below '))).toHaveLength(1);
  });
});
