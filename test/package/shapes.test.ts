import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from './packed.ts';

const folder = path.join(root, 'examples/shapes');

/** What each example prints, worked by hand from the printed figures of its document. */
const expected: Readonly<Record<string, readonly (string | RegExp)[]>> = {
  'grid.mjs': [
    // The demo's own figure, worked out independently in its scenario.
    'Between the figures, 940 kg, 637 ft, 26 °C: 443.0 m',
    'The next worse printed figure: 525 m',
    'Colder than printed, read at the edge: 345 m',
    /Warmer than printed: at\.temperature: 41 degC is not within 0 to 40 degC/,
  ],
  'chart-panels.mjs': [
    // 10 °C and 2 000 ft: 540 m at 900 kg; 0.467 of the way between two guides at 800 kg: 459 m.
    /distance: printed 540\.0 m, read 540\.0 m, agrees/,
    /distance: printed 460\.0 m, read 459\.0 m, agrees/,
    'At 901 kg there is no reading: off-edge',
  ],
  'density-altitude-grid.mjs': [/distance: printed 2 445\.0 ft, read 2 445\.0 ft, agrees/, / ft to 50 ft, \d+ m/],
  'curves-and-constants.mjs': [
    // Half way from 360 m to 425 m; 340 m less a tenth.
    /distance: printed 393\.0 m, read 392\.5 m, agrees/,
    /distance: printed 306\.0 m, read 306\.0 m, agrees/,
    /^Take-off on 28: outside limits; tightest is crosswind/m,
    /^Landing on 28: outside limits/m,
  ],
  'climb-progress.mjs': [
    // 0.75 min to 10 min, 0.3 L to 3.8 L and 1 NM to 12.75 NM: 9.25 min, 3.5 L, 11.75 NM; 10 % more for each 10 °C.
    /0 °C above standard: 9\.3 min, 3\.5 L, 11\.8 NM/,
    /20 °C above standard: 11\.1 min, 4\.2 L, 14\.1 NM/,
  ],
};

describe('the examples of the shapes of data', () => {
  it('are all here', () => {
    const scripts = fs.readdirSync(folder).filter((name) => name !== 'read.mjs');
    expect(scripts.sort()).toEqual(Object.keys(expected).sort());
  });

  it.each(Object.entries(expected))('%s prints what the document says, and the limits of use', (script, lines) => {
    const { stdout, stderr, status } = spawnSync('node', [path.join(folder, script)], { encoding: 'utf8', cwd: root });
    expect(stderr).toBe('');
    expect(status).toBe(0);
    const plain = stdout.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');
    for (const line of lines) {
      if (typeof line === 'string') expect(plain).toContain(line);
      else expect(plain).toMatch(line);
    }
    expect(plain).not.toContain('differs');
    expect(plain).toContain('the pilot in command decide');
  });
});
