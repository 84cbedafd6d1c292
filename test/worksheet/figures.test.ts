import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradientsFigure, stairsFigure, windRulersFigure } from '../../src/worksheet/index.ts';
import { type Changes, landing, takeoff } from '../assessment/scenario.ts';

const hostile = `<img src=x onerror="alert(1)"> & 'pines'</desc><script>`;
const obstacle = (name: string, beyond: number, height: number) => ({
  name,
  end: '28',
  beyond: { value: beyond, unit: 'm' },
  groundElevation: { value: 438, unit: 'ftElevation' },
  height: { value: height, unit: 'mHeight' },
});

const descriptionOf = (svg: string | undefined) => /<desc>([^<]*)<\/desc>/.exec(svg ?? '')?.[1] ?? '';
const wordsIn = (svg: string | undefined) => [...(svg ?? '').matchAll(/<text[^>]*>([^<]*)</g)].map(([, text]) => text);

/** Well-formed, inside its own frame, in figures, and without anything that fetches, runs or has an id. */
function expectDrawing(svg: string): void {
  expect(svg).toMatch(/^<svg [^>]*role="img"[^>]*><title>[^<]+<\/title><desc>[^<]+<\/desc>/);
  expect(svg).not.toMatch(/NaN|undefined|Infinity|\bid=|href|<script|<style|<image|\bon\w+="/);
  const opened = [...svg.matchAll(/<(\w+)(?:\s[^>]*?)?(?<!\/)>/g)].map(([, name]) => name).sort();
  const closed = [...svg.matchAll(/<\/(\w+)>/g)].map(([, name]) => name).sort();
  expect(opened).toEqual(closed);
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  for (const [, x, y] of svg.matchAll(/<text x="([-\d.]+)" y="([-\d.]+)"/g)) {
    expect(Number(x)).toBeGreaterThanOrEqual(0);
    expect(Number(x)).toBeLessThanOrEqual(Number(width));
    expect(Number(y)).toBeGreaterThanOrEqual(0);
    expect(Number(y)).toBeLessThanOrEqual(Number(height));
  }
  const colours = [...svg.matchAll(/(?:fill|stroke)="([^"]+)"/g)].map(([, colour]) => colour);
  expect(new Set(colours)).toEqual(new Set(['none', 'currentColor']));
}

describe('the stairs', () => {
  it('have every tread, the distance available, and the marks, in the drawing and in words', () => {
    const svg = stairsFigure(takeoff('takeoff-28')) ?? '';
    expectDrawing(svg);
    const drawn = wordsIn(svg);
    expect(drawn).toContain('830 m available');
    expect(drawn).toContain('771 m required: 59 m to spare');
    expect(drawn.filter((each) => / \u00d7 1\.\d{3}$/.test(each ?? ''))).toHaveLength(3);
    for (const total of ['443.0', '513.5', '616.2', '770.2']) {
      expect(drawn.some((each) => each?.startsWith(total))).toBe(true);
      expect(descriptionOf(svg)).toContain(`${total} m`);
    }
    for (const words of ['771 m', '830 m', 'within limits, 59 m to spare', '286 m, 34 KIAS due', '547 m', '573 m']) {
      expect(descriptionOf(svg)).toContain(words);
    }
  });

  it('hatch what is missing, and say what the approach took', () => {
    const short = stairsFigure(landing('landing-28')) ?? '';
    expectDrawing(short);
    expect(wordsIn(short)).toContain('903 m required: 685 m short');
    expect(wordsIn(short)).toContain('612 m lost on the approach');
    expect(descriptionOf(short)).toContain('outside limits, 685 m short');
    expect(short).toContain('stroke-width="0.8"');
    expect(stairsFigure(takeoff('takeoff-28'))).not.toContain('stroke-width="0.8"');
  });

  it('leave the aiming point out, and hold a point before the threshold at the foot', () => {
    const svg = stairsFigure(landing('landing-10'));
    expect(descriptionOf(svg)).toContain('Latest go-around point 100 m before the threshold.');
    expect(descriptionOf(svg)).not.toContain('Aiming');
  });

  it('are not drawn where the distance is undetermined', () => {
    expect(stairsFigure(takeoff('takeoff-28', { configuration: 'flap-0' }))).toBeUndefined();
  });

  it('call an open verdict by its name', () => {
    const soft: Changes = {
      'runway.surface': { kind: 'grass', condition: 'dry', length: 'up to 20 cm', ground: 'soft' },
      factorSet: 'uk-light-aeroplane-leaflet',
    };
    expect(descriptionOf(stairsFigure(takeoff('takeoff-28', soft)))).toContain('undetermined');
  });
});

describe('the gradients', () => {
  it('have a bar for the pines and a line for the climb', () => {
    const svg = gradientsFigure(takeoff('takeoff-10')) ?? '';
    expectDrawing(svg);
    expect(wordsIn(svg)).toEqual(expect.arrayContaining(['22.5 %', '10.8 %', 'pines', '11.7 short']));
    expect(descriptionOf(svg)).toBe(
      '10.8 % achieved over the ground. pines demands 22.5 %: outside limits, 11.7 percentage points short.',
    );
  });

  it('are not drawn for a landing, without obstacles, without a list, and without a climb', () => {
    expect(gradientsFigure(landing('landing-10'))).toBeUndefined();
    expect(gradientsFigure(takeoff('takeoff-28'))).toBeUndefined();
    expect(gradientsFigure(takeoff('takeoff-10', { 'runway.obstacles': undefined }))).toBeUndefined();
    expect(gradientsFigure(takeoff('takeoff-10', { 'performanceData.climb': [] }))).toBeUndefined();
  });

  it('draw the most demanding and count the others, each of which the description names', () => {
    const names = ['oak', 'barn', 'church', 'mast', 'hill', 'ridge'];
    const svg = gradientsFigure(
      takeoff('takeoff-10', { 'runway.obstacles': names.map((name, i) => obstacle(name, 400 + 500 * i, 20)) }),
    );
    expectDrawing(svg ?? '');
    expect(wordsIn(svg).filter((each) => names.includes(each ?? ''))).toEqual(['oak', 'barn', 'church', 'mast']);
    expect(wordsIn(svg).join('|')).toContain('2 more demand at most');
    for (const name of names) expect(descriptionOf(svg)).toContain(`${name} demands`);
  });

  it('break a bar that leaves the scale', () => {
    const tall = { 'runway.obstacles': [obstacle('tower', 5, 100)] };
    const svg = gradientsFigure(takeoff('takeoff-10', tall)) ?? '';
    expectDrawing(svg);
    expect(svg).toContain('stroke-width="3"');
    expect(gradientsFigure(takeoff('takeoff-10'))).not.toContain('stroke-width="3"');
  });

  it('cannot be broken out of by a name', () => {
    const svg = gradientsFigure(takeoff('takeoff-10', { 'runway.obstacles': [obstacle(hostile, 25, 28)] })) ?? '';
    expectDrawing(svg);
    expect(svg).toContain('&lt;img src=x');
  });
});

describe('the wind rulers', () => {
  it('name each limit by its status, and mark the worst end', () => {
    const svg = windRulersFigure(takeoff('takeoff-28'));
    expectDrawing(svg);
    expect(wordsIn(svg)).toEqual(
      expect.arrayContaining([
        '19 kt demonstrated',
        '18 kt personal',
        '8 kt limitation',
        '5 kt personal',
        '17 kt from the left',
        'used: 4 kt tailwind',
      ]),
    );
    expect(descriptionOf(svg)).toContain('from 7 kt to 17 kt from the left at worst');
    expect(descriptionOf(svg)).toContain('used: 4 kt tailwind');
  });

  it('round a limit down', () => {
    const changes = { 'performanceData.crosswind': [{ speed: { value: 9.79, unit: 'mps' }, status: 'limitation' }] };
    expect(wordsIn(windRulersFigure(takeoff('takeoff-28', changes)))).toContain('9.7 m/s limitation');
  });

  it('say which limit only informs, and stand a report without spread as one line', () => {
    expect(
      wordsIn(windRulersFigure(takeoff('takeoff-28', { 'policies.demonstratedCrosswind': 'information' }))),
    ).toContain('19 kt demonstrated, informs only');
    expectDrawing(windRulersFigure(takeoff('quarry-takeoff-04')));
    const calm = { 'weather.wind.speed.value': 0, 'weather.wind.gust': undefined };
    expect(descriptionOf(windRulersFigure(takeoff('takeoff-28', calm)))).toContain('No crosswind.');
  });

  it('say that no limit is given', () => {
    const none = { 'performanceData.crosswind': [], 'performanceData.tailwind': [], personalLimits: {} };
    const svg = windRulersFigure(takeoff('takeoff-28', none));
    expectDrawing(svg);
    expect(descriptionOf(svg).match(/No limit is given/g)).toHaveLength(2);
  });
});

describe('every figure', () => {
  it('is drawn within its frame whatever the wind, the mass and the length', () => {
    const cases = fc.record({
      from: fc.integer({ min: 1, max: 360 }),
      speed: fc.integer({ min: 0, max: 40 }),
      more: fc.integer({ min: 0, max: 25 }),
      mass: fc.integer({ min: 700, max: 1100 }),
      length: fc.integer({ min: 200, max: 3000 }),
      personal: fc.integer({ min: 0, max: 40 }),
      beyond: fc.integer({ min: 0, max: 4000 }),
      height: fc.integer({ min: 0, max: 200 }),
    });
    fc.assert(
      fc.property(cases, ({ from, speed, more, mass, length, personal, beyond, height }) => {
        const changes: Changes = {
          'weather.wind.from.value': from,
          'weather.wind.speed.value': speed,
          'weather.wind.gust': { value: speed + more, unit: 'kt' },
          'mass.value': mass,
          'runway.length.value': length,
          'runway.ends.0.declaredDistances': {},
          'runway.ends.1.declaredDistances': {},
          'personalLimits.crosswind.value': personal,
          'runway.obstacles': [obstacle('trees', beyond, height)],
        };
        for (const assessment of [takeoff('takeoff-10', changes), landing('landing-28', changes)]) {
          for (const svg of [stairsFigure(assessment), gradientsFigure(assessment), windRulersFigure(assessment)]) {
            if (svg !== undefined) expectDrawing(svg);
          }
        }
      }),
      { numRuns: 80 },
    );
  });
});
