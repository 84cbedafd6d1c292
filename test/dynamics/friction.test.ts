import { describe, expect, it } from 'vitest';
import { brakingFriction, type Friction, rollingFriction } from '../../src/dynamics/index.ts';

const all: [string, Friction][] = [
  ...Object.entries<Friction>(rollingFriction).map(([surface, x]): [string, Friction] => [`rolling, ${surface}`, x]),
  ...Object.entries<Friction>(brakingFriction).map(([surface, x]): [string, Friction] => [`braking, ${surface}`, x]),
];
const strength = ['read', 'second-hand', 'recalled'];

describe('friction by surface', () => {
  it.each(all)(
    '%s: the band is that of its figures, its access the weakest of them',
    (_surface, { low, high, access, figures }) => {
      expect(low).toBe(Math.min(...figures.map((figure) => figure.low)));
      expect(high).toBe(Math.max(...figures.map((figure) => figure.high)));
      expect(low).toBeGreaterThan(0);
      expect(low).toBeLessThanOrEqual(high);
      for (const figure of figures) expect(figure.low).toBeLessThanOrEqual(figure.high);
      const weakest = Math.max(...figures.map((figure) => strength.indexOf(figure.access)));
      expect(strength.indexOf(access)).toBe(weakest);
      expect(figures.every((figure) => strength.includes(figure.access) && figure.locator !== '')).toBe(true);
    },
  );

  it('differs more than two to one between the sources, even on dry pavement', () => {
    const { low, high } = rollingFriction['dry paved'];
    expect(high / low).toBeGreaterThan(2);
  });

  it('holds nothing known only to us: each recalled figure makes its surface recalled', () => {
    const recalled = all.filter(([, { access }]) => access === 'recalled').map(([surface]) => surface);
    expect(recalled.sort()).toEqual([
      'braking, firm dirt',
      'braking, hard turf',
      'braking, soft turf',
      'braking, wet grass',
      'rolling, firm dirt',
      'rolling, hard turf',
      'rolling, soft turf',
      'rolling, wet grass',
    ]);
  });
});
