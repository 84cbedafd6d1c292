import {
  type DistanceData,
  type Figures,
  type PrintedLaw,
  runsAlong,
  type SurfaceCorrection,
} from '../../aircraft/index.ts';
import {
  correctedDistance,
  type FactorKind,
  type FactorOrigin,
  printedLawFactor,
  proRatedFactor,
  rollWithSurface,
  type SteppedRule,
  type Surface,
  slopeFactor,
  surfaceInWords,
  windFactor,
} from '../../distance/index.ts';
import type { Knots, Metres, Percent, Ratio } from '../../units/index.ts';
import { convert, type UnitWord } from '../../units/unit-table.ts';
import { inUnit, type Situation, tableSpeed } from '../request/situation.ts';
import type { Reason } from '../result/reason.ts';
import type { Air } from './air-and-wind.ts';
import { readPrinted } from './read-printed.ts';
import type { Recorder } from './step.ts';
import { type Beside, pointOf } from './table-point.ts';

/** One tread of the stairs in metres, from the manual's figure up to the distance required. */
export interface Stair {
  readonly step:
    | 'manual'
    | 'technique'
    | 'mass'
    | 'elevation'
    | 'temperature'
    | 'wind'
    | 'surface'
    | 'slope'
    | 'speed addition'
    | 'excess height'
    | 'safety factor';
  readonly factor: number;
  readonly total_m: number;
}

/** A distance corrected for the day, with the ground roll in it, before any safety factor. */
export interface Chain {
  readonly stairs: readonly Stair[];
  readonly distance_m: number;
  readonly roll_m: number;
  /** The roll after the wind alone; everything added later lies on the ground. */
  readonly windRoll_m: number;
  readonly windDistance_m: number;
  /** The part of the distance that is flown over because the threshold is passed too high; never on the ground. */
  readonly flownOver_m: number;
  readonly kind: FactorKind | 'no bound';
  readonly used: readonly FactorOrigin[];
  /** Why there is no figure; empty where there is one. */
  readonly missing: readonly Reason[];
}

/** What a break-even holds instead of what the day gives. */
export interface Overrides {
  readonly wind_kt?: number | undefined;
  readonly surfaceFactor?: number | undefined;
  /** How much longer than the manual's figure the pilot takes. */
  readonly techniqueFactor?: number | undefined;
}

/** A factor printed for one step says nothing credible of so many; beyond this there is no figure (policy). */
const mostSteps = 5;

/** Reads the table and corrects it, in the order of the trade: mass, altitude, temperature, wind, surface, slope. */
export function distanceChain(
  r: Recorder,
  situation: Situation,
  air: Air,
  usedWind_kt: number,
  overrides: Overrides = {},
): Chain {
  const chain = new ChainBuilder(r, situation, air);
  const { table } = situation;
  if (table === undefined) {
    chain.miss('no-table', { table: phaseWords[situation.phase], configuration: situation.configuration });
    return chain.result();
  }
  const wind_kt = overrides.wind_kt ?? usedWind_kt;
  if (!chain.read(table)) return chain.result();
  if (overrides.techniqueFactor !== undefined) chain.technique(overrides.techniqueFactor);
  chain.coverMissingAxes(table);
  if (runsAlong(table.distance, 'headwind')) chain.readAgain(table, 'wind', { headwind: wind_kt });
  else chain.wind(table, wind_kt);
  chain.afterWind();
  if (runsAlong(table.distance, 'slope')) chain.slopeOfTable(table);
  chain.surface(table, overrides.surfaceFactor);
  if (!runsAlong(table.distance, 'slope')) chain.slope(table);
  return chain.result();
}

interface RollAndDistance {
  readonly roll_m: Metres;
  readonly distance_m: Metres;
}

class ChainBuilder {
  private readonly stairs: Stair[] = [];
  private readonly used: FactorOrigin[] = [];
  private readonly missing: Reason[] = [];
  private kind: Chain['kind'] = 'value';
  private distance_m = 0 as Metres;
  private roll_m = 0 as Metres;
  private base: RollAndDistance = { roll_m: 0 as Metres, distance_m: 0 as Metres };
  private reading: { headwind?: number; slope?: number } = {};
  private windRoll_m = 0;
  private windDistance_m = 0;

  constructor(
    private readonly r: Recorder,
    private readonly situation: Situation,
    private readonly air: Air,
  ) {}

  result(): Chain {
    const { stairs, used, missing, kind, distance_m, roll_m, windRoll_m, windDistance_m } = this;
    return { stairs, used, missing, kind, distance_m, roll_m, windRoll_m, windDistance_m, flownOver_m: 0 };
  }

  /** One more factor that is a bound: two bounds the same way stay one, two opposite ways prove nothing. */
  private bound(kind: Chain['kind']): void {
    if (kind === 'value' || kind === this.kind) return;
    this.kind = this.kind === 'value' ? kind : 'no bound';
  }

  miss(code: Reason['code'], parameters: Reason['parameters']): void {
    this.missing.push({ code, parameters });
  }

  read(table: DistanceData): boolean {
    const figures = this.figures(table, {});
    if (figures === undefined) return false;
    this.roll_m = figures.roll_m;
    this.distance_m = figures.distance_m;
    this.base = figures;
    this.stairs.push({ step: 'manual', factor: 1, total_m: figures.distance_m });
    return true;
  }

  /** A pilot who takes longer than the manual's takes it throughout, on the ground and in the air. */
  technique(factor: number): void {
    this.multiply('technique', factor, 'both');
  }

  /** Reads a table that runs along the wind or the slope itself once more, at today's value. */
  readAgain(table: DistanceData, step: 'wind' | 'slope', at: { headwind?: number; slope?: number }): void {
    this.reading = { ...this.reading, ...at };
    const figures = this.figures(table, this.reading);
    if (figures === undefined) return;
    // What came before as a factor (an axis that the table lacks) stays a factor on the new figures.
    this.roll_m = ((figures.roll_m * this.roll_m) / this.base.roll_m) as Metres;
    const before_m = this.distance_m;
    this.distance_m = ((figures.distance_m * this.distance_m) / this.base.distance_m) as Metres;
    this.base = figures;
    this.stairs.push({ step, factor: this.distance_m / before_m, total_m: this.distance_m });
  }

  /** The figures that increments on the ground are counted from. */
  afterWind(): void {
    this.windRoll_m = this.roll_m;
    this.windDistance_m = this.distance_m;
  }

  private figures(table: DistanceData, at: { headwind?: number; slope?: number }): RollAndDistance | undefined {
    const { headwind, slope } = at;
    const roll_m = this.figure(table.groundRoll, 'ground roll', { headwind, slope, height: 0 });
    const height = this.situation.screen_m;
    const distance_m = this.figure(table.distance, 'distance', { headwind, slope, height });
    return roll_m === undefined || distance_m === undefined ? undefined : { roll_m, distance_m };
  }

  private figure(figures: Figures<'m' | 'ft'>, name: string, beside: Beside): Metres | undefined {
    const point = pointOf(this.r, figures, this.situation.mass_kg, this.air, beside);
    const reading = readPrinted(this.r, figures, point, this.situation.reading.greaterIsWorse, name);
    if (reading.ok) return convert(reading.value, figures.unit, 'm') as Metres;
    this.missing.push(reading.reason);
    return undefined;
  }

  /** What a table without an axis does not carry itself: the manual's own law, else pro-rated from the set, else no figure. */
  coverMissingAxes(table: DistanceData): void {
    const { associatedConditions: stated, corrections } = table;
    const { set, phase, mass_kg } = this.situation;
    const { pressureAltitude_ft, tableTemperature_degC } = this.air;
    const named = { table: phaseWords[phase] };
    if (stated.mass !== undefined) {
      const limit_kg = inUnit(stated.mass, 'kg');
      const law = printedLaw(corrections.mass, 'kg', 'kg');
      const parameters = { ...named, limit_kg };
      if (law !== undefined) this.printed('mass', law, mass_kg, limit_kg, 'mass-not-covered', parameters);
      else this.stepped('mass', set[phase].mass, (mass_kg / limit_kg - 1) * 100, 'mass-not-covered', parameters);
    }
    if (stated.pressureAltitude !== undefined) {
      const limit_ft = inUnit(stated.pressureAltitude, 'ftPA');
      const law = printedLaw(corrections.pressureAltitude, 'ftPA', 'ftPA');
      const parameters = { ...named, limit_ft };
      if (law !== undefined)
        this.printed('elevation', law, pressureAltitude_ft, limit_ft, 'elevation-not-covered', parameters);
      else
        this.stepped(
          'elevation',
          set[phase].elevation,
          pressureAltitude_ft - limit_ft,
          'elevation-not-covered',
          parameters,
        );
    }
    if (stated.temperature !== undefined) {
      const limit_degC = inUnit(stated.temperature, 'degC');
      const law = printedLaw(corrections.temperature, 'degCDifference', 'degC');
      const parameters = { ...named, limit_degC };
      if (law !== undefined)
        this.printed('temperature', law, tableTemperature_degC, limit_degC, 'temperature-not-covered', parameters);
      else
        this.stepped(
          'temperature',
          set[phase].temperature,
          tableTemperature_degC - limit_degC,
          'temperature-not-covered',
          parameters,
        );
    }
  }

  /** A law of the manual holds as printed, in a straight line, up to its last value; beyond that there is no figure. */
  private printed(
    step: 'mass' | 'elevation' | 'temperature',
    law: PlainLaw,
    today: number,
    from: number,
    code: Reason['code'],
    parameters: Reason['parameters'],
  ): void {
    if (today <= from) return;
    if (today > law.upTo + 1e-9) {
      this.miss(code, parameters);
      return;
    }
    const inputs = { percentPerStep: law.change as Percent, steps: ((today - from) / law.per) as Ratio };
    this.r.decide('law-of-manual', { quantity: step });
    this.multiply(
      step,
      this.r.step('distance.printed-law-factor', `factor for ${step}`, printedLawFactor, inputs),
      'both',
    );
  }

  private stepped(
    step: 'mass' | 'elevation' | 'temperature' | 'wind',
    rule: SteppedRule | undefined,
    excess: number,
    code: Reason['code'],
    parameters: Reason['parameters'],
  ): void {
    if (excess <= 0) return;
    if (rule === undefined) {
      this.miss(code, parameters);
      return;
    }
    const steps = excess / rule.step;
    if (steps > mostSteps) {
      this.miss('beyond-pro-rating', { steps, most: mostSteps });
      return;
    }
    const inputs = { factorPerStep: rule.factorPerStep as Ratio, steps: steps as Ratio };
    this.multiply(step, this.r.step('distance.pro-rated-factor', `factor for ${step}`, proRatedFactor, inputs), 'both');
    this.used.push(rule);
    this.bound(rule.kind ?? 'value');
  }

  wind(table: DistanceData, wind_kt: number): void {
    const law = wind_kt >= 0 ? table.corrections.headwind : table.corrections.tailwind;
    if (law !== undefined) {
      const cap_kt = inUnit(law.upTo, 'kt');
      const amount = Math.abs(wind_kt);
      if (wind_kt < 0 && amount > cap_kt) this.miss('tailwind-beyond-manual', { wind_kt: amount, cap_kt });
      const inputs = {
        wind: Math.min(amount, cap_kt) as Knots,
        percentPerKnot: (law.change.value / inUnit(law.per, 'kt')) as Percent,
      };
      this.multiply('wind', this.r.step('distance.wind-factor', 'factor for wind', windFactor, inputs), 'both');
    } else if (wind_kt < 0) {
      const { set, phase } = this.situation;
      const speed = this.situation.table === undefined ? undefined : referenceSpeed(this.situation);
      const parameters = { wind_kt: -wind_kt };
      if (speed === undefined) this.miss('no-tailwind-law', parameters);
      else this.stepped('wind', set[phase].tailwind, (-wind_kt / speed) * 100, 'no-tailwind-law', parameters);
    }
  }

  surface(table: DistanceData, override: number | undefined): void {
    if (override !== undefined) {
      this.multiply('surface', override, 'ground');
      return;
    }
    const { runway } = this.situation;
    const { surface } = runway;
    const own = table.corrections.surfaces?.filter((each) => each.surface === surface.kind) ?? noSurfaces;
    const ownFactor = (correction: (typeof own)[number]) => {
      const share = correction.increase.value / 100;
      return 1 + (correction.percentOf === 'distance' ? share : (share * this.roll_m) / this.distance_m);
    };
    const exact = own.find((each) => namesExactly(each, surface));
    if (exact !== undefined) {
      if (this.r.explains) this.r.decide('surface-of-manual', { surface: surfaceInWords(surface) });
      this.multiply('surface', ownFactor(exact), 'ground');
      return;
    }
    const effect = this.situation.surfaceEffect;
    if (effect.uncovered.length > 0) {
      this.miss('surface-no-factor', { aspects: effect.uncovered.join(', ') });
      return;
    }
    let factor = 1;
    for (const each of effect.factors) {
      factor *= each.factor;
      this.used.push(each);
      if (!this.r.explains) continue;
      const shown = { factor: each.factor, condition: each.condition };
      this.r.decide('surface-of-set', { surface: surfaceInWords(surface), ...shown });
      if (each.kind !== 'value')
        this.r.decide(each.kind === 'at-least' ? 'surface-at-least' : 'surface-at-most', shown);
    }
    const least = own
      .filter((each) => each.condition === 'dry' || (surface.kind !== 'snow' && surface.condition === 'wet'))
      .reduce((most, each) => Math.max(most, ownFactor(each)), 1);
    const isRaised = factor < least;
    if (isRaised) this.r.decide('surface-not-below-manual', { surface: surface.kind });
    // A bound from above that the manual's milder figure exceeds is no longer one: what is left is a bound from below.
    this.bound(isRaised && effect.kind !== 'value' ? 'at-least' : effect.kind);
    if (effect.factors.length > 0 || least > 1) this.multiply('surface', Math.max(factor, least), 'ground');
  }

  /** A table with an axis of slope is read at today's slope where that is adverse, and at level where it would help, unless chosen. */
  slopeOfTable(table: DistanceData): void {
    const { slope_percent } = this.situation.runway;
    const isAdverse = this.situation.phase === 'takeoff' ? slope_percent > 0 : slope_percent < 0;
    const isCredited = slope_percent !== 0 && this.situation.policies.favourableSlope === 'of the manual';
    if (isAdverse || isCredited) this.readAgain(table, 'slope', { slope: slope_percent });
    if (isAdverse || slope_percent === 0) return;
    this.r.decide(isCredited ? 'slope-credit-of-manual' : 'slope-no-credit', { slope_percent });
  }

  slope(table: DistanceData): void {
    const { set, phase, runway } = this.situation;
    const adverse = phase === 'takeoff' ? runway.slope_percent : -runway.slope_percent;
    if (adverse <= 0) {
      if (adverse < 0) this.favourableSlope(table, -adverse);
      return;
    }
    const manual = table.corrections.adverseSlope;
    const rule = set[phase].slope;
    const limit_percent = manual === undefined ? rule?.upTo : inUnit(manual.upTo, 'percent');
    if (limit_percent === undefined) {
      this.miss('slope-no-factor', { slope_percent: runway.slope_percent });
      return;
    }
    const shown = { slope_percent: runway.slope_percent, limit_percent };
    if (adverse > limit_percent && (manual !== undefined || rule?.beyond === 'no figure')) {
      this.miss(manual === undefined ? 'slope-beyond-set' : 'slope-beyond-manual', shown);
      return;
    }
    const percentPerPercent = (
      manual === undefined ? rule?.percentPerPercent : manual.change.value / manual.per.value
    ) as Percent;
    if (manual === undefined && rule !== undefined) this.used.push(rule);
    this.r.decide(manual === undefined ? 'slope-of-set' : 'slope-of-manual', {
      slope_percent: runway.slope_percent,
      percentPerPercent,
    });
    const factor =
      adverse <= limit_percent
        ? this.r.step('distance.slope-factor', 'factor for slope', slopeFactor, {
            slope: adverse as Percent,
            percentPerPercent,
          })
        : this.r.step('distance.pro-rated-factor', 'factor for slope', proRatedFactor, {
            factorPerStep: (1 + (percentPerPercent * limit_percent) / 100) as Ratio,
            steps: (adverse / limit_percent) as Ratio,
          });
    this.multiply('slope', manual?.percentOf === 'ground roll' ? this.onDistance(factor) : factor, 'ground');
  }

  /** No credit, unless the request chooses the manual's own; never more than for the last slope that it prints. */
  private favourableSlope({ corrections }: DistanceData, favourable: number): void {
    const { policies, runway } = this.situation;
    const law = corrections.favourableSlope;
    const shown = { slope_percent: runway.slope_percent };
    if (law === undefined || policies.favourableSlope === 'no credit') {
      this.r.decide('slope-no-credit', shown);
      return;
    }
    this.r.decide('slope-credit-of-manual', shown);
    const factor = this.r.step('distance.slope-factor', 'factor for slope', slopeFactor, {
      slope: Math.min(favourable, inUnit(law.upTo, 'percent')) as Percent,
      percentPerPercent: (law.change.value / law.per.value) as Percent,
    });
    this.multiply('slope', law.percentOf === 'ground roll' ? this.onDistance(factor) : factor, 'both');
  }

  /** A factor in percent of the ground roll changes both by the same metres: as a factor on the distance, that share. */
  private onDistance(factor: number): number {
    return 1 + ((factor - 1) * this.roll_m) / this.distance_m;
  }

  /** A factor on roll and distance alike, or one whose whole increment lies on the ground. */
  private multiply(step: Stair['step'], factor: number, on: 'both' | 'ground'): void {
    const before = this.distance_m;
    this.distance_m = this.r.step('distance.corrected-distance', `distance with ${step}`, correctedDistance, {
      distance: before,
      factors: [factor as Ratio],
    });
    this.roll_m =
      on === 'both'
        ? this.r.step('distance.corrected-distance', `ground roll with ${step}`, correctedDistance, {
            distance: this.roll_m,
            factors: [factor as Ratio],
          })
        : this.r.step('distance.roll-with-surface', `ground roll with ${step}`, rollWithSurface, {
            groundRoll: this.roll_m,
            distance: before,
            factor: factor as Ratio,
          });
    if (this.r.explains) this.stairs.push({ step, factor, total_m: this.distance_m });
  }
}

const noSurfaces: readonly SurfaceCorrection[] = [];

const phaseWords = { takeoff: 'take-off', landing: 'landing' } as const;

interface PlainLaw {
  readonly change: number;
  readonly per: number;
  readonly upTo: number;
}

/** A law of the manual in the units of the kernel. */
function printedLaw(
  law: PrintedLaw<UnitWord, UnitWord> | undefined,
  per: UnitWord,
  upTo: UnitWord,
): PlainLaw | undefined {
  return law && { change: law.change.value, per: inUnit(law.per, per), upTo: inUnit(law.upTo, upTo) };
}

/** The manual's figure replaces only for the very condition it names: its wet grass is not very short wet grass. */
function namesExactly(correction: SurfaceCorrection, surface: Surface): boolean {
  if (surface.kind === 'snow' || correction.condition !== surface.condition) return false;
  if (surface.kind !== 'grass') return true;
  if (surface.ground !== 'firm' || surface.length === 'over 20 cm') return false;
  return surface.length !== 'very short' || surface.condition === 'dry';
}

/** The speed that a tailwind is measured against under a set: the lift-off or approach speed of the table. */
function referenceSpeed(situation: Situation): number | undefined {
  const { table } = situation;
  if (table === undefined) return undefined;
  const speeds = 'liftOffSpeed' in table ? table.liftOffSpeed : table.approachSpeed;
  const reading = tableSpeed(situation, speeds, 'reference speed');
  return reading.ok ? reading.kias : undefined;
}
