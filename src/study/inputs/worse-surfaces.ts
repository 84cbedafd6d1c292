import type { Surface } from '../../distance/index.ts';

/** A surface one step worse, and what has to happen for it in words: `the grass wets`. */
export interface WorseSurface {
  readonly surface: Surface;
  readonly words: string;
}

/**
 * Every surface that is one step worse than this one. "Worse" is ordered only along such steps: wet after dry, soft
 * after firm, long after short; nothing is said of gravel against grass.
 */
export function worseSurfaces(surface: Surface): WorseSurface[] {
  if (surface.kind === 'snow') return [];
  const worse: WorseSurface[] = [];
  if (surface.condition === 'dry') {
    const words =
      surface.kind === 'grass' ? 'the grass wets' : surface.kind === 'gravel' ? 'the gravel wets' : 'the runway wets';
    worse.push({ surface: wetted(surface), words });
  } else if (surface.kind === 'paved' && (surface.conditionCode ?? 5) === 5) {
    worse.push({ surface: { ...surface, conditionCode: 4 }, words: 'anything more than wetness lies on the runway' });
  }
  if (surface.kind !== 'grass') return worse;
  if (surface.ground === 'firm') worse.push({ surface: { ...surface, ground: 'soft' }, words: 'the ground softens' });
  // Very short wet grass is the most slippery of all: growing does not make it worse.
  if (surface.length === 'up to 20 cm' || (surface.length === 'very short' && surface.condition === 'dry'))
    worse.push({ surface: { ...surface, length: 'over 20 cm' }, words: 'the grass stands above 20 cm' });
  return worse;
}

/** A code of 6 is dry and no other is: a wet runway needs one of its own. */
function wetted(surface: Exclude<Surface, { kind: 'snow' }>): Surface {
  if (surface.kind === 'paved' && surface.conditionCode !== undefined)
    return { ...surface, condition: 'wet', conditionCode: 5 };
  return { ...surface, condition: 'wet' };
}
