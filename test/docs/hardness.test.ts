import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
// @ts-expect-error a tool without types
import { hardnessPage } from '../../tools/hardness.mjs';

describe('the page of how hard it is to break', () => {
  it('holds what was recorded', () => {
    const page = fs.readFileSync(new URL('../../docs/guides/hardness.md', import.meta.url), 'utf8');
    expect(hardnessPage() === page, 'run `npm run hardness`').toBe(true);
  });

  it('states at least nine in ten for every formula, criterion, kernel, request, result, study and column', () => {
    const measured = new URL('../../docs/measurements/mutants.json', import.meta.url);
    const all = JSON.parse(fs.readFileSync(measured, 'utf8')) as Record<string, { score_percent: number }>;
    const folders = ['atmosphere', 'airspeed', 'magnetism', 'wind', 'distance', 'flight-path', 'dynamics'];
    const ofAssessment = ['criteria', 'kernel', 'request', 'result'].map((part) => `assessment/${part}`);
    for (const folder of [...folders, 'rules-of-thumb', 'units', ...ofAssessment, 'study', 'columns']) {
      expect.soft(all[folder]?.score_percent, folder).toBeGreaterThanOrEqual(90);
    }
  });
});
