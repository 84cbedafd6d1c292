import { describe, expect, it } from 'vitest';
import { worseSurfaces } from '../../src/study/inputs/worse-surfaces.ts';

const grass = { kind: 'grass', condition: 'dry', length: 'up to 20 cm', ground: 'firm' } as const;

describe('a surface one step worse', () => {
  it('differs in the one thing that got worse, and keeps everything else', () => {
    expect(worseSurfaces(grass)).toEqual([
      { surface: { ...grass, condition: 'wet' }, words: 'the grass wets' },
      { surface: { ...grass, ground: 'soft' }, words: 'the ground softens' },
      { surface: { ...grass, length: 'over 20 cm' }, words: 'the grass stands above 20 cm' },
    ]);
    expect(worseSurfaces({ kind: 'gravel', condition: 'dry' })).toEqual([
      { surface: { kind: 'gravel', condition: 'wet' }, words: 'the gravel wets' },
    ]);
  });

  it('is no longer grass than long grass', () => {
    expect(worseSurfaces({ ...grass, length: 'over 20 cm' }).map(({ words }) => words)).toEqual([
      'the grass wets',
      'the ground softens',
    ]);
  });

  it('has no runway condition code where none was reported', () => {
    expect(worseSurfaces({ kind: 'paved', condition: 'dry' })).toEqual([
      { surface: { kind: 'paved', condition: 'wet' }, words: 'the runway wets' },
    ]);
    expect(worseSurfaces({ kind: 'paved', condition: 'wet', conditionCode: 5 })).toEqual([
      {
        surface: { kind: 'paved', condition: 'wet', conditionCode: 4 },
        words: 'anything more than wetness lies on the runway',
      },
    ]);
  });
});
