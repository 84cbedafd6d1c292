import { describe, expect, it } from 'vitest';
import { worseSurfaces } from '../../src/study/inputs/worse-surfaces.ts';

const words = (surface: Parameters<typeof worseSurfaces>[0]) => worseSurfaces(surface).map((each) => each.words);
const grass = { kind: 'grass', condition: 'dry', length: 'up to 20 cm', ground: 'firm' } as const;

describe('one step worse', () => {
  it('along every declared chain', () => {
    expect(words(grass)).toEqual(['the grass wets', 'the ground softens', 'the grass stands above 20 cm']);
    expect(words({ kind: 'gravel', condition: 'dry' })).toEqual(['the gravel wets']);
    expect(words({ kind: 'paved', condition: 'dry' })).toEqual(['the runway wets']);
  });

  it('has an end', () => {
    expect(words({ ...grass, condition: 'wet', length: 'over 20 cm', ground: 'soft' })).toEqual([]);
    expect(words({ kind: 'gravel', condition: 'wet' })).toEqual([]);
    expect(words({ kind: 'paved', condition: 'wet', conditionCode: 3 })).toEqual([]);
    expect(words({ kind: 'snow' })).toEqual([]);
  });

  it('takes very short wet grass as the most slippery there is', () => {
    const short = { ...grass, length: 'very short' } as const;
    expect(words(short)).toContain('the grass stands above 20 cm');
    expect(words({ ...short, condition: 'wet' })).toEqual(['the ground softens']);
  });

  it('gives a wet runway a code of its own', () => {
    expect(worseSurfaces({ kind: 'paved', condition: 'dry', conditionCode: 6 })).toEqual([
      { surface: { kind: 'paved', condition: 'wet', conditionCode: 5 }, words: 'the runway wets' },
    ]);
  });
});
