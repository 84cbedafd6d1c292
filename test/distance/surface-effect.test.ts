import { describe, expect, it } from 'vitest';
import { factorSets, type Surface, surfaceAspects, surfaceEffect, surfaceInWords } from '../../src/distance/index.ts';

const { takeoff } = factorSets['uk-light-aeroplane-leaflet'];
type Grass = Extract<Surface, { kind: 'grass' }>;

function grass(different: Partial<Grass> = {}): Grass {
  return { kind: 'grass', condition: 'dry', length: 'up to 20 cm', ground: 'firm', ...different };
}
const factorsFor = (surface: Surface) => surfaceEffect(takeoff, surface).factors.map(({ factor }) => factor);

describe('surfaceEffect', () => {
  it.each([
    ['dry grass', grass(), [1.2]],
    ['wet grass, which stands instead of dry grass', grass({ condition: 'wet' }), [1.3]],
    ['soft ground, on top of the grass', grass({ ground: 'soft' }), [1.2, 1.25]],
    ['snow', { kind: 'snow' }, [1.25]],
    ['dry paved', { kind: 'paved', condition: 'dry' }, []],
  ] as const)('finds the factors of the leaflet for %s', (_name, surface, factors) => {
    expect(factorsFor(surface)).toEqual(factors);
    expect(surfaceEffect(takeoff, surface).uncovered).toEqual([]);
  });

  it.each([
    ['gravel', { kind: 'gravel', condition: 'dry' }, ['gravel']],
    ['long grass', grass({ length: 'over 20 cm' }), ['long grass']],
  ] as const)(
    'says that the leaflet has no figure for %s, instead of taking it as none',
    (_name, surface, uncovered) => {
      expect(surfaceEffect(takeoff, surface).uncovered).toEqual(uncovered);
    },
  );

  it('keeps that a factor was printed as a least value', () => {
    expect(surfaceEffect(takeoff, grass()).kind).toBe('value');
    expect(surfaceEffect(takeoff, grass({ ground: 'soft' })).kind).toBe('at-least');
  });

  it('knows no bound where a least and a greatest factor multiply', () => {
    const [first, ...others] = takeoff.surfaces;
    if (first === undefined) throw new Error('the set has no surfaces');
    const mixed = { ...takeoff, surfaces: [{ ...first, kind: 'at-most' as const }, ...others] };
    expect(surfaceEffect(mixed, grass()).kind).toBe('at-most');
    expect(surfaceEffect(mixed, grass({ ground: 'soft' })).kind).toBe('no bound');
  });
});

describe('surfaces', () => {
  it.each([
    [{ kind: 'snow' }, 'snow', ['snow']],
    [{ kind: 'paved', condition: 'wet' }, 'wet paved', ['wet']],
    [{ kind: 'gravel', condition: 'dry' }, 'dry gravel', ['gravel']],
    [grass({ length: 'very short', ground: 'soft' }), 'dry very short grass on soft ground', ['grass', 'soft ground']],
    [grass({ condition: 'wet', length: 'over 20 cm' }), 'wet grass over 20 cm on firm ground', ['long grass', 'wet']],
  ] as const)('%o is called %s', (surface, words, aspects) => {
    expect(surfaceInWords(surface)).toBe(words);
    expect(surfaceAspects(surface)).toEqual(aspects);
  });

  // Each of these would otherwise pass for something drier, firmer or shorter than it is.
  it.each([
    [{ kind: 'mud' }, /^kind: "mud" is none of "paved", "gravel", "snow", "grass" \(/],
    [{ kind: 'gravel', condition: 'damp' }, /^condition: "damp" is none of "dry", "wet"/],
    [{ kind: 'paved', condition: 'dry', conditionCode: 7 }, /^conditionCode: "7" is none of "0", "1"/],
    [{ ...grass(), length: 'over 30 cm' }, /^length: "over 30 cm" is none of "very short"/],
    [{ ...grass(), ground: undefined }, /^ground: "undefined" is none of "firm", "soft"/],
  ])('%o is refused by its word', (surface, message) => {
    const wrong = surface as unknown as Surface;
    const { takeoff } = factorSets['part-nco'];
    for (const call of [surfaceAspects, surfaceInWords, (each: Surface) => surfaceEffect(takeoff, each)]) {
      expect(() => call(wrong)).toThrow(message);
    }
  });
});
