import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from './packed.ts';

describe('the example of a decision', () => {
  const { stdout, stderr, status } = spawnSync('node', [path.join(root, 'examples/decision.mjs')], {
    encoding: 'utf8',
    cwd: root,
  });
  const plain = stdout.replaceAll('\u00a0', ' ');

  it('runs to its end', () => {
    expect(stderr).toBe('');
    expect(status).toBe(0);
  });

  it.each([
    // Published with the scenario: 970 kg and 35 °C by the distance; the tailwind by the personal limit.
    /^# Take-off on 28 at Vesikorpi, Corran Four$/m,
    /^Valid only if the aeroplane is Corran Four /m,
    /Assess again if the wind backs beyond 185° true, .* the grass wets, .* above 35 °C, .* above 970 kg\./,
    /Mass: within limits up to 970 kg/,
    /Temperature: within limits up to 35 °C/,
    /Tailwind used: within limits up to 5\.0 kt; beyond that the tailwind/,
    /Runway length: within limits down to 771 m/,
    /28: within limits; tightest is the crosswind, 1 kt to spare, then the take-off distance, 59 m\./,
    /A distance of \d+ m covers 95 % of the 10 000 cases/,
    /the pilot in command decide/,
    /no chance of success/,
  ])('prints %s', (line) => {
    expect(plain).toMatch(line);
  });
});
