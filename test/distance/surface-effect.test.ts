import { describe, expect, it } from 'vitest';
import {
  factorInWords,
  factorSets,
  factorsOf,
  type PhaseCorrections,
  type Surface,
  surfaceAspects,
  surfaceEffect,
  surfaceInWords,
} from '../../src/distance/index.ts';

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
    [
      { kind: 'paved', condition: 'wet', conditionCode: 5 },
      'paved with runway condition code 5 (frost, wet, or up to 3 mm of slush, dry snow or wet snow)',
      ['wet'],
    ],
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

describe('a runway condition code', () => {
  const paved = (conditionCode: 0 | 1 | 2 | 3 | 4 | 5 | 6) =>
    surfaceAspects({ kind: 'paved', condition: 'wet', conditionCode });

  it('below 5 is more than wet', () => {
    expect(([0, 1, 2, 3, 4] as const).map(paved)).toEqual(new Array(5).fill(['contaminated']));
    expect(([5, 6] as const).map(paved)).toEqual([['wet'], ['wet']]);
  });
});

describe('a factor that is printed for one surface', () => {
  const { takeoff: classB, landing } = factorSets['easa-class-b'];
  const ids = (corrections: PhaseCorrections, surface: Surface) =>
    surfaceEffect(corrections, surface).factors.map(({ id }) => id);

  it('of one kind applies to no other', () => {
    const wet = 'easa-b-takeoff-paved-wet';
    expect(ids(classB, { kind: 'paved', condition: 'wet' })).toEqual([wet]);
    expect(ids(classB, { kind: 'gravel', condition: 'wet' })).not.toContain(wet);
    expect(surfaceEffect(classB, { kind: 'gravel', condition: 'wet' }).uncovered).toContain('wet');
  });

  it('of one length applies to no other', () => {
    const slippery = 'easa-b-landing-very-short-wet-grass';
    expect(ids(landing, grass({ condition: 'wet', length: 'very short' }))).toEqual([slippery]);
    expect(ids(landing, grass({ condition: 'wet' }))).not.toContain(slippery);
  });
});

describe('a factor in words', () => {
  it('names what it is for, its figure and where it stands', () => {
    const words = [...takeoff.surfaces, takeoff.slope, takeoff.mass].map((each) => factorInWords(each as never));
    expect(words[0]).toMatch(/^dry grass.* x 1\.20 \(.+\)$/);
    expect(words.at(-2)).toMatch(/^slope 5 % for each 1 % \(.+\)$/);
    expect(words.at(-1)).toMatch(/^x 1\.20 a step \(.+\)$/);
    const margin = factorSets['uk-light-aeroplane-leaflet'].landing.safety as { factor: number };
    expect(factorInWords(margin as never)).toMatch(/^safety factor x 1\.43 \(.+\)$/);
    expect(factorInWords({ id: 'a', locator: 'Table 1', access: 'read' })).toBe('Table 1');
  });

  it('says where the figure is a bound', () => {
    const printed = { id: 'a', locator: 'Table 1', access: 'read' as const, condition: 'soft ground', factor: 1.25 };
    expect(factorInWords({ ...printed, kind: 'at-least' } as never)).toBe('soft ground at least x 1.25 (Table 1)');
    expect(factorInWords({ ...printed, kind: 'at-most' } as never)).toBe('soft ground at most x 1.25 (Table 1)');
  });
});

describe('the factors of a phase', () => {
  it('are all that it lists, the safety factors last', () => {
    const { takeoff: steps, landing } = factorSets['uk-light-aeroplane-leaflet'];
    const listed = factorsOf(steps).map(({ id }) => id);
    expect(listed.slice(0, steps.surfaces.length)).toEqual(steps.surfaces.map(({ id }) => id));
    expect(listed).toContain(steps.slope?.id);
    expect(listed).toContain(steps.mass?.id);
    expect(listed.at(-1)).toBe(steps.safety.at(-1)?.tests.at(-1)?.id);
    expect(new Set(listed).size).toBe(listed.length);
    expect(factorsOf(landing).at(-1)).toBe(landing.safety);
    expect(factorsOf(factorSets['part-nco'].takeoff).map(({ id }) => id)).toEqual(['part-nco-takeoff']);
  });
});
