import type { Access } from '../../sources/index.ts';
import type { SurfaceAspect } from '../surface.ts';

/** Where one factor of a set stands, and how it is known to us. */
export interface FactorOrigin {
  /** Unique among all sets; confirmations name it. */
  readonly id: string;
  readonly locator: string;
  readonly access: Access;
}

/** What a printed number says: that much, at least that much, or at most that much. */
export type FactorKind = 'value' | 'at-least' | 'at-most';

/** A correction factor for a surface, on the total distance to or from 50 ft. */
export interface SurfaceFactor extends FactorOrigin {
  /** In words, for a reader. */
  readonly condition: string;
  readonly factor: number;
  readonly kind: FactorKind;
  readonly basis: 'total distance';
  /** Applies where the surface has every one of these ... */
  readonly covers: readonly SurfaceAspect[];
  /** ... and, where stated, is of this kind or length. */
  readonly only?: { readonly kind?: 'paved' | 'grass'; readonly length?: 'very short' };
  /** The milder factors that this one stands instead of. */
  readonly replaces: readonly string[];
}

/** A correction for an adverse slope, linear in the slope. */
export interface SlopeRule extends FactorOrigin {
  readonly percentPerPercent: number;
  /** The greatest slope that the rule is stated for, in percent. */
  readonly upTo: number;
  /** What a steeper slope is under this set. */
  readonly beyond: 'no figure' | 'pro-rated';
}

/** A correction printed in steps, for what a table does not carry itself. */
export interface SteppedRule extends FactorOrigin {
  readonly factorPerStep: number;
  /** What the number says; a value where not stated. */
  readonly kind?: FactorKind;
  /** One step: 10 % of mass, 1 000 ft, 10 °C, or 10 % of the lift-off or landing speed. */
  readonly step: number;
}

/** One comparison of a multiple of the take-off distance with a declared distance. */
export interface SafetyTest extends FactorOrigin {
  readonly against: 'TORA' | 'TODA' | 'ASDA';
  readonly factor: number;
}

/** A way to satisfy the set at take-off; satisfying one is enough, and all tests within one must pass. */
export interface SafetyAlternative {
  readonly needs: 'nothing' | 'clearway' | 'stopway or clearway';
  readonly tests: readonly SafetyTest[];
}

/** The corrections of a set for one phase of flight. */
export interface PhaseCorrections {
  readonly surfaces: readonly SurfaceFactor[];
  readonly slope?: SlopeRule;
  readonly mass?: SteppedRule;
  readonly elevation?: SteppedRule;
  readonly temperature?: SteppedRule;
  readonly tailwind?: SteppedRule;
}

/** The factors of one authority or publication. Sets are alternatives: one is named per assessment, none is mixed in. */
export interface FactorSet {
  readonly id: string;
  readonly title: string;
  readonly edition: string;
  readonly scope: string;
  /** Whether the set asks for a safety factor at all; where it does not, the result says so at its head. */
  readonly hasSafetyFactor: boolean;
  readonly takeoff: PhaseCorrections & { readonly safety: readonly SafetyAlternative[] };
  readonly landing: PhaseCorrections & { readonly safety: FactorOrigin & { readonly factor: number } };
}
