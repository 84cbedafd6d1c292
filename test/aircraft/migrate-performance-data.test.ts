import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { migratePerformanceData, readPerformanceData } from '../../src/aircraft/index.ts';

type Json = Record<string, never>;
const present = (): Json =>
  JSON.parse(fs.readFileSync(new URL('../../examples/performance-data/corran-four.json', import.meta.url), 'utf8'));

/** The document as version 0 wrote it: a law for one knot. */
function asVersion0(): unknown {
  const document = present() as never as { schema: string; takeoff: Json[]; landing: Json[] };
  for (const table of [...document.takeoff, ...document.landing]) {
    const corrections = table['corrections'] as never as Record<string, Record<string, { value: number }>>;
    for (const [name, law] of Object.entries(corrections)) {
      const { change, per, upTo } = law as Record<'change' | 'per' | 'upTo', { value: number }>;
      expect(per.value).toBe(1);
      corrections[name] = { percentPerKnot: change, upTo };
    }
  }
  return { ...document, schema: 'groundroll/performance-data/0' };
}

describe('migratePerformanceData', () => {
  it('brings version 0 to what is read today, figure for figure', () => {
    const migrated = migratePerformanceData(asVersion0());
    expect(migrated).toEqual({ ok: true, value: present() });
    expect(migrated.ok && readPerformanceData(migrated.value).ok).toBe(true);
  });

  it('leaves the present version as it is, and changes no input', () => {
    const [document, copy] = [present(), present()];
    expect(migratePerformanceData(document)).toEqual({ ok: true, value: copy });
    expect(document).toEqual(copy);
  });

  it('takes no step that a document has behind it', () => {
    const headwind = { percentPerKnot: { value: -1, unit: 'percent' } };
    const document = { schema: 'groundroll/performance-data/1', takeoff: [{ corrections: { headwind } }], landing: [] };
    expect(migratePerformanceData(document)).toEqual({ ok: true, value: document });
  });

  it.each([
    [{ schema: 'groundroll/performance-data/2' }, 'version 2 is newer than version 1, the one that is read here'],
    [{ schema: 'groundroll/takeoff-request/1' }, 'is not that of performance data'],
    [{ schema: 'groundroll/performance-data/1e9' }, 'is not that of performance data'],
    [{}, 'is not that of performance data'],
    [null, 'is not that of performance data'],
    ['groundroll/performance-data/0', 'is not that of performance data'],
  ])('refuses %j', (json, message) => {
    expect(migratePerformanceData(json)).toEqual({ ok: false, faults: [{ path: 'schema', message }] });
  });

  it.each([
    { takeoff: 3, landing: null },
    { takeoff: [null, 4, { corrections: [] }] },
    { takeoff: [{ corrections: { headwind: 3, tailwind: [], adverseSlope: {} } }] },
  ])('passes on what is wrong, for the reader to say: %j', (wrong) => {
    const migrated = migratePerformanceData({ schema: 'groundroll/performance-data/0', ...wrong });
    expect(migrated.ok && readPerformanceData(migrated.value).ok).toBe(false);
  });

  it('writes a law for one knot or one percent as printed, and leaves every other part as it is', () => {
    const upTo = { value: 10, unit: 'kt' };
    const change = { value: -1, unit: 'percent' };
    const migrated = (table: unknown) => {
      const read = migratePerformanceData({
        schema: 'groundroll/performance-data/0',
        takeoff: [table],
        landing: [table],
      });
      const { takeoff, landing } = (read.ok ? read.value : {}) as { takeoff: unknown[]; landing: unknown[] };
      expect(landing).toEqual(takeoff);
      return takeoff[0];
    };
    const surfaces = [{ surface: 'grass' }];
    expect(
      migrated({
        flap: 1,
        corrections: {
          surfaces,
          headwind: { percentPerKnot: change, upTo },
          tailwind: { percentPerKnot: change },
          adverseSlope: { percentPerPercent: change, upTo },
        },
      }),
    ).toEqual({
      flap: 1,
      corrections: {
        surfaces,
        headwind: { change, per: { value: 1, unit: 'kt' }, upTo },
        tailwind: { change, per: { value: 1, unit: 'kt' } },
        adverseSlope: { change, per: { value: 1, unit: 'percent' }, upTo },
      },
    });
    for (const table of [
      { corrections: {} },
      { corrections: { headwind: { percentPerPercent: change }, adverseSlope: { percentPerKnot: change } } },
      { corrections: { headwind: null, tailwind: [1], adverseSlope: 'steep' } },
      { corrections: null },
      { corrections: [1] },
      { other: 1 },
      null,
      [1],
      'text',
    ]) {
      expect(migrated(table)).toEqual(table);
    }
  });
});
