import { demandWord } from '../units/index.ts';
import { type RunwayConditionCode, runwayConditionCodes } from './runway-condition-code.ts';

/** A runway surface and its condition, in words that every factor set can be mapped to. */
export type Surface =
  | {
      readonly kind: 'paved';
      readonly condition: 'dry' | 'wet';
      /** The lowest of the reported thirds; such codes exist for paved runways only. */
      readonly conditionCode?: RunwayConditionCode;
    }
  | { readonly kind: 'gravel'; readonly condition: 'dry' | 'wet' }
  | { readonly kind: 'snow' }
  | {
      readonly kind: 'grass';
      readonly condition: 'dry' | 'wet';
      /** `very short` is close-mown, as slippery when wet as it looks. */
      readonly length: 'very short' | 'up to 20 cm' | 'over 20 cm';
      /** `firm`: wheels leave an impression but no rut. */
      readonly ground: 'firm' | 'soft';
    };

/** What about a surface costs distance; a factor covers one or more of these, and none may stay uncovered. */
export type SurfaceAspect = 'grass' | 'long grass' | 'wet' | 'contaminated' | 'soft ground' | 'gravel' | 'snow';

/** Refuses what no surface is told by: a word that is not known would pass for dry, firm and paved. */
function demandKnown(surface: Surface): void {
  demandWord('kind', surface.kind, ['paved', 'gravel', 'snow', 'grass'], 'the surfaces that factor sets know');
  if (surface.kind === 'snow') return;
  demandWord('condition', surface.condition, ['dry', 'wet'], 'the conditions of a surface');
  if (surface.kind === 'paved' && surface.conditionCode !== undefined)
    demandWord(
      'conditionCode',
      String(surface.conditionCode),
      Object.keys(runwayConditionCodes),
      'runway condition codes',
    );
  if (surface.kind !== 'grass') return;
  demandWord('length', surface.length, ['very short', 'up to 20 cm', 'over 20 cm'], 'the lengths of grass');
  demandWord('ground', surface.ground, ['firm', 'soft'], 'the ground under grass');
}

/**
 * Everything about a surface that differs from hard, dry and paved.
 *
 * @throws {@link DomainError} for a word that no surface is told by.
 *
 * @example
 * surfaceAspects({ kind: 'gravel', condition: 'wet' }) // => ['gravel', 'wet']
 * surfaceAspects({ kind: 'paved', condition: 'wet', conditionCode: 3 }) // => ['contaminated']
 */
export function surfaceAspects(surface: Surface): SurfaceAspect[] {
  demandKnown(surface);
  if (surface.kind === 'snow') return ['snow'];
  const wet: SurfaceAspect[] = surface.condition === 'wet' ? ['wet'] : [];
  if (surface.kind === 'paved') return isContaminated(surface.conditionCode) ? ['contaminated'] : wet;
  if (surface.kind === 'gravel') return ['gravel', ...wet];
  const grass: SurfaceAspect = surface.length === 'over 20 cm' ? 'long grass' : 'grass';
  const soft: SurfaceAspect[] = surface.ground === 'soft' ? ['soft ground'] : [];
  return [grass, ...wet, ...soft];
}

/** Code 5 is frost or wet; below it lies something that no factor for a wet runway is meant for. */
function isContaminated(code: RunwayConditionCode | undefined): boolean {
  return code !== undefined && code < 5;
}

/**
 * A surface in words.
 *
 * @throws {@link DomainError} for a word that no surface is told by.
 *
 * @example
 * surfaceInWords({ kind: 'grass', condition: 'wet', length: 'up to 20 cm', ground: 'firm' }) // => 'wet grass up to 20 cm on firm ground'
 */
export function surfaceInWords(surface: Surface): string {
  demandKnown(surface);
  if (surface.kind === 'snow') return 'snow';
  if (surface.kind === 'paved' && surface.conditionCode !== undefined) {
    const { conditionCode: code } = surface;
    return `paved with runway condition code ${code} (${runwayConditionCodes[code].surface})`;
  }
  if (surface.kind !== 'grass') return `${surface.condition} ${surface.kind}`;
  const length = surface.length === 'very short' ? 'very short grass' : `grass ${surface.length}`;
  return `${surface.condition} ${length} on ${surface.ground} ground`;
}
