import { type Surface, type SurfaceAspect, surfaceAspects } from '../surface.ts';
import type { FactorKind, PhaseCorrections, SurfaceFactor } from './factor-set.ts';

/** What a set says about one surface: the factors that apply, and what about the surface it has no figure for. */
export interface SurfaceEffect {
  readonly factors: readonly SurfaceFactor[];
  readonly uncovered: readonly SurfaceAspect[];
  /** What their product says: that much, at least or at most that much, or neither when both kinds are mixed. */
  readonly kind: FactorKind | 'no bound';
}

/**
 * Finds the factors of a set for a surface: the harsher of a declared chain replaces the milder, the rest multiply.
 *
 * @example
 * const { takeoff } = factorSets['uk-light-aeroplane-leaflet'];
 * const { factors } = surfaceEffect(takeoff, { kind: 'grass', condition: 'wet', length: 'up to 20 cm', ground: 'firm' });
 * factors.map(({ factor }) => factor) // => [1.3]
 * surfaceEffect(takeoff, { kind: 'gravel', condition: 'dry' }).uncovered // => ['gravel']
 */
export function surfaceEffect(corrections: PhaseCorrections, surface: Surface): SurfaceEffect {
  const aspects = surfaceAspects(surface);
  const applicable = corrections.surfaces.filter((candidate) => applies(candidate, surface, aspects));
  const replaced = new Set(applicable.flatMap((candidate) => candidate.replaces));
  const factors = applicable.filter((candidate) => !replaced.has(candidate.id));
  const covered = new Set(factors.flatMap((candidate) => candidate.covers));
  const uncovered = aspects.filter((aspect) => !covered.has(aspect));
  return { factors, uncovered, kind: productKind(factors) };
}

function applies(candidate: SurfaceFactor, surface: Surface, aspects: readonly SurfaceAspect[]): boolean {
  const { covers, only } = candidate;
  if (!covers.every((aspect) => aspects.includes(aspect))) return false;
  if (only?.kind !== undefined && surface.kind !== only.kind) return false;
  return only?.length === undefined || (surface.kind === 'grass' && surface.length === only.length);
}

function productKind(factors: readonly SurfaceFactor[]): SurfaceEffect['kind'] {
  const kinds = new Set(factors.map(({ kind }) => kind));
  if (kinds.has('at-least') && kinds.has('at-most')) return 'no bound';
  if (kinds.has('at-least')) return 'at-least';
  return kinds.has('at-most') ? 'at-most' : 'value';
}
