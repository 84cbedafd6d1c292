import type { DistanceData, SurfaceCorrection } from '../../aircraft/index.ts';
import { type Surface, surfaceAspects } from '../../distance/index.ts';

/** The manual's own corrections for a surface. */
export interface OwnSurface {
  /** For the very condition of today; it replaces what the factor set says. */
  readonly exact: SurfaceCorrection | undefined;
  /** For conditions that are no worse than today's: the factor of the set is never below these. */
  readonly least: readonly SurfaceCorrection[];
}

/** What the manual says of today's surface. */
export function ownSurfaceOf(table: DistanceData | undefined, surface: Surface): OwnSurface {
  const own = table?.corrections.surfaces?.filter((each) => each.surface === surface.kind) ?? [];
  return {
    exact: own.find((each) => namesExactly(each, surface)),
    least: own.filter((each) => each.condition === 'dry' || (surface.kind !== 'snow' && surface.condition === 'wet')),
  };
}

/**
 * The manual's figure replaces only for the very condition it names: its wet grass is not very short wet grass, and its
 * wet runway is not one with snow or ice on it.
 */
function namesExactly(correction: SurfaceCorrection, surface: Surface): boolean {
  if (surface.kind === 'snow' || correction.condition !== surface.condition) return false;
  if (surface.kind !== 'grass') return !surfaceAspects(surface).includes('contaminated');
  if (surface.ground !== 'firm' || surface.length === 'over 20 cm') return false;
  return surface.length !== 'very short' || surface.condition === 'dry';
}
