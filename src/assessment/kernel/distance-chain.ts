import type { DistanceData, SurfaceCorrection, TablePoint } from '../../aircraft/index.ts';
import {
  correctedDistance,
  type FactorOrigin,
  printedLawFactor,
  proRatedFactor,
  rollWithSurface,
  type SteppedRule,
  slopeFactor,
  surfaceInWords,
  windFactor,
} from '../../distance/index.ts';
import type { Knots, Metres, Percent, Ratio } from '../../units/index.ts';
import { convert } from '../../units/unit-table.ts';
import { inUnit } from '../request/in-unit.ts';
import { phaseWords } from '../request/phase-words.ts';
import type { ReadyFigures } from '../request/ready-figures.ts';
import type { Situation } from '../request/situation.ts';
import { tableSpeed } from '../request/speeds.ts';
import type { StraightLaw, UncoveredAxis } from '../request/uncovered-axes.ts';
import type { Reason } from '../result/reason.ts';
import type { Air } from './air-and-wind.ts';
import type { Chain, Stair } from './chain.ts';
import { readPrinted } from './read-printed.ts';
import type { Recorder } from './step.ts';
import { type Beside, pointOf } from './table-point.ts';

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
  const builder = new ChainBuilder(r, situation, air);
  const { table } = situation;
  const { groundRoll, distance } = situation.ready;
  if (table === undefined || groundRoll === undefined || distance === undefined) {
    builder.miss('no-table', { table: phaseWords[situation.phase], configuration: situation.configuration });
    return builder.chain;
  }
  const wind_kt = overrides.wind_kt ?? usedWind_kt;
  if (!builder.read()) return builder.chain;
  if (overrides.techniqueFactor !== undefined) builder.technique(overrides.techniqueFactor);
  builder.coverMissingAxes();
  builder.beforeWind();
  if (distance.runsAlongHeadwind) builder.readAgain('wind', { headwind: wind_kt });
  else builder.wind(wind_kt);
  builder.afterWind();
  if (distance.runsAlongSlope) builder.slopeOfTable();
  builder.surface(overrides.surfaceFactor);
  if (!distance.runsAlongSlope) builder.slope(table);
  return builder.chain;
}

type Making = { -readonly [K in keyof Chain]: Chain[K] };

/** A chain in the making. */
class ChainBuilder {
  readonly chain: Making = {
    stairs: none,
    used: none,
    missing: none,
    kind: 'value',
    distance_m: 0,
    roll_m: 0,
    calmRoll_m: 0,
    calmDistance_m: 0,
    windRoll_m: 0,
  };
  private reading: AlongAndUphill = calmAndLevel;
  /** As the table has them; what was worked into roll and distance since stays a factor on them. */
  private tableRoll_m = 0;
  private tableDistance_m = 0;

  constructor(
    private readonly r: Recorder,
    private readonly situation: Situation,
    private readonly air: Air,
  ) {}

  /** One more factor that is a bound: two bounds the same way stay one, two opposite ways prove nothing. */
  private bound(kind: Chain['kind']): void {
    if (kind === 'value' || kind === this.chain.kind) return;
    this.chain.kind = this.chain.kind === 'value' ? kind : 'no bound';
  }

  miss(code: Reason['code'], parameters: Reason['parameters']): void {
    this.missReason({ code, parameters });
  }

  private missReason(reason: Reason): void {
    this.chain.missing = [...this.chain.missing, reason];
  }

  /** Lists of the set are taken as they are where nothing came before. */
  private use(factors: readonly FactorOrigin[]): void {
    this.chain.used = this.chain.used.length === 0 ? factors : [...this.chain.used, ...factors];
  }

  /** Noted where somebody reads it; what is multiplied after something was missing belongs to no total. */
  private tread(step: Stair['step'], factor: number): void {
    if (!this.r.explains || this.chain.missing.length > 0) return;
    this.chain.stairs = [...this.chain.stairs, { step, factor, total_m: this.chain.distance_m }];
  }

  read(): boolean {
    if (!this.readTable()) return false;
    this.chain.roll_m = this.tableRoll_m;
    this.chain.distance_m = this.tableDistance_m;
    this.tread('manual', 1);
    return true;
  }

  /** A pilot who takes longer than the manual's takes it throughout, on the ground and in the air. */
  technique(factor: number): void {
    this.multiply(treads.technique, factor, 'both');
  }

  /** Reads a table that runs along the wind or the slope itself once more, at today's value. */
  readAgain(step: 'wind' | 'slope', at: AlongAndUphill): void {
    this.reading = { ...this.reading, ...at };
    const [roll_m, distance_m] = [this.tableRoll_m, this.tableDistance_m];
    if (!this.readTable()) return;
    // What came before as a factor (an axis that the table lacks) stays a factor on the new figures.
    this.chain.roll_m = ((this.tableRoll_m * this.chain.roll_m) / roll_m) as Metres;
    const before_m = this.chain.distance_m;
    this.chain.distance_m = ((this.tableDistance_m * this.chain.distance_m) / distance_m) as Metres;
    this.tread(step, this.chain.distance_m / before_m);
  }

  beforeWind(): void {
    this.chain.calmRoll_m = this.chain.roll_m;
    this.chain.calmDistance_m = this.chain.distance_m;
  }

  /** The roll that increments on the ground are counted from. */
  afterWind(): void {
    this.chain.windRoll_m = this.chain.roll_m;
  }

  private readTable(): boolean {
    const { ready, screen_m } = this.situation;
    const groundRoll = ready.groundRoll as ReadyFigures;
    const distance = ready.distance as ReadyFigures;
    const { headwind, slope } = this.reading;
    const onGround = this.point(groundRoll, { headwind, slope, height: 0 });
    const isSamePlace =
      !distance.runsAlongHeight && groundRoll.runsAlongIsaDeviation === distance.runsAlongIsaDeviation;
    const atScreen = isSamePlace ? onGround : this.point(distance, { headwind, slope, height: screen_m });
    const roll_m = this.figure(groundRoll, onGround);
    const distance_m = this.figure(distance, atScreen);
    if (roll_m === undefined || distance_m === undefined) return false;
    this.tableRoll_m = roll_m;
    this.tableDistance_m = distance_m;
    return true;
  }

  private point(ready: ReadyFigures, beside: Beside): TablePoint {
    return pointOf(this.r, ready, this.situation.mass_kg, this.air, beside);
  }

  private figure(ready: ReadyFigures, point: TablePoint): Metres | undefined {
    const reading = readPrinted(this.r, ready, point);
    if (typeof reading === 'number') return convert(reading, ready.figures.unit, 'm') as Metres;
    this.missReason(reading);
    return undefined;
  }

  /** What a table without an axis does not carry itself: the manual's own law, else pro-rated from the set, else no figure. */
  coverMissingAxes(): void {
    for (const axis of this.situation.uncoveredAxes) {
      const { quantity, holdsFor, law, rule, notCovered } = axis;
      const today = this.today(quantity);
      if (today <= holdsFor) continue;
      if (law !== undefined) this.printed(axis, law, today);
      else if (rule === undefined) this.missReason(notCovered);
      else this.stepped(treads[quantity], rule, quantity === 'mass' ? (today / holdsFor - 1) * 100 : today - holdsFor);
    }
  }

  private today(quantity: UncoveredAxis['quantity']): number {
    if (quantity === 'mass') return this.situation.mass_kg;
    return quantity === 'elevation' ? this.air.pressureAltitude_ft : this.air.tableTemperature_degC;
  }

  /** A law of the manual holds as printed, in a straight line, up to its last value; beyond that there is no figure. */
  private printed({ quantity, holdsFor, notCovered }: UncoveredAxis, law: StraightLaw, today: number): void {
    if (today > law.upTo + 1e-9) {
      this.missReason(notCovered);
      return;
    }
    const inputs = { percentPerStep: law.change as Percent, steps: ((today - holdsFor) / law.per) as Ratio };
    this.r.decide('law-of-manual', { quantity });
    const tread = treads[quantity];
    this.multiply(tread, this.r.step('distance.printed-law-factor', tread.factor, printedLawFactor, inputs), 'both');
  }

  private stepped(tread: Multiplied, rule: SteppedRule, excess: number): void {
    const steps = excess / rule.step;
    if (steps > mostSteps) {
      this.miss('beyond-pro-rating', { steps, most: mostSteps });
      return;
    }
    const inputs = { factorPerStep: rule.factorPerStep as Ratio, steps: steps as Ratio };
    this.multiply(tread, this.r.step('distance.pro-rated-factor', tread.factor, proRatedFactor, inputs), 'both');
    this.use([rule]);
    this.bound(rule.kind ?? 'value');
  }

  wind(wind_kt: number): void {
    const { windLaws } = this.situation;
    const law = wind_kt >= 0 ? windLaws.headwind : windLaws.tailwind;
    if (law !== undefined) {
      const { cap_kt, percentPerKnot } = law;
      const amount = Math.abs(wind_kt);
      if (wind_kt < 0 && amount > cap_kt) this.miss('tailwind-beyond-manual', { wind_kt: amount, cap_kt });
      const inputs = { wind: Math.min(amount, cap_kt) as Knots, percentPerKnot: percentPerKnot as Percent };
      this.multiply(treads.wind, this.r.step('distance.wind-factor', treads.wind.factor, windFactor, inputs), 'both');
    } else if (wind_kt < 0) {
      const { set, phase } = this.situation;
      const { tailwind } = set[phase];
      const speed = referenceSpeed(this.situation);
      if (speed === undefined || tailwind === undefined) this.miss('no-tailwind-law', { wind_kt: -wind_kt });
      else this.stepped(treads.wind, tailwind, (-wind_kt / speed) * 100);
    }
  }

  surface(override: number | undefined): void {
    if (override !== undefined) {
      this.multiply(treads.surface, override, 'ground');
      return;
    }
    const { runway, ownSurface, surfaceEffect: effect } = this.situation;
    const { surface } = runway;
    if (ownSurface.exact !== undefined) {
      if (this.r.explains) this.r.decide('surface-of-manual', { surface: surfaceInWords(surface) });
      this.multiply(treads.surface, this.ownFactor(ownSurface.exact), 'ground');
      return;
    }
    if (effect.uncovered.length > 0) {
      this.miss('surface-no-factor', { aspects: effect.uncovered.join(', ') });
      return;
    }
    let factor = 1;
    this.use(effect.factors);
    for (const each of effect.factors) {
      factor *= each.factor;
      if (!this.r.explains) continue;
      const shown = { factor: each.factor, condition: each.condition };
      this.r.decide('surface-of-set', { surface: surfaceInWords(surface), ...shown });
      if (each.kind !== 'value')
        this.r.decide(each.kind === 'at-least' ? 'surface-at-least' : 'surface-at-most', shown);
    }
    let least = 1;
    for (const each of ownSurface.least) least = Math.max(least, this.ownFactor(each));
    const isRaised = factor < least;
    if (isRaised) this.r.decide('surface-not-below-manual', { surface: surface.kind });
    // A bound from above that the manual's milder figure exceeds is no longer one: what is left is a bound from below.
    this.bound(isRaised && effect.kind !== 'value' ? 'at-least' : effect.kind);
    if (effect.factors.length > 0 || least > 1) this.multiply(treads.surface, Math.max(factor, least), 'ground');
  }

  /** A correction of the manual as a factor on the distance. */
  private ownFactor({ increase, percentOf }: SurfaceCorrection): number {
    const share = increase.value / 100;
    return 1 + (percentOf === 'distance' ? share : (share * this.chain.roll_m) / this.chain.distance_m);
  }

  /** A table with an axis of slope is read at today's slope where that is adverse, and at level where it would help, unless chosen. */
  slopeOfTable(): void {
    const { slope_percent } = this.situation.runway;
    const isAdverse = this.situation.phase === 'takeoff' ? slope_percent > 0 : slope_percent < 0;
    const isCredited = slope_percent !== 0 && this.situation.policies.favourableSlope === 'of the manual';
    if (isAdverse || isCredited) this.readAgain('slope', { slope: slope_percent });
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
    if (manual === undefined && rule !== undefined) this.use([rule]);
    this.r.decide(manual === undefined ? 'slope-of-set' : 'slope-of-manual', {
      slope_percent: runway.slope_percent,
      percentPerPercent,
    });
    const factor =
      adverse <= limit_percent
        ? this.r.step('distance.slope-factor', treads.slope.factor, slopeFactor, {
            slope: adverse as Percent,
            percentPerPercent,
          })
        : this.r.step('distance.pro-rated-factor', treads.slope.factor, proRatedFactor, {
            factorPerStep: (1 + (percentPerPercent * limit_percent) / 100) as Ratio,
            steps: (adverse / limit_percent) as Ratio,
          });
    this.multiply(treads.slope, manual?.percentOf === 'ground roll' ? this.onDistance(factor) : factor, 'ground');
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
    const factor = this.r.step('distance.slope-factor', treads.slope.factor, slopeFactor, {
      slope: Math.min(favourable, inUnit(law.upTo, 'percent')) as Percent,
      percentPerPercent: (law.change.value / law.per.value) as Percent,
    });
    this.multiply(treads.slope, law.percentOf === 'ground roll' ? this.onDistance(factor) : factor, 'both');
  }

  /** A factor in percent of the ground roll changes both by the same metres: as a factor on the distance, that share. */
  private onDistance(factor: number): number {
    return 1 + ((factor - 1) * this.chain.roll_m) / this.chain.distance_m;
  }

  /** A factor on roll and distance alike, or one whose whole increment lies on the ground. */
  private multiply(tread: Multiplied, factor: number, on: 'both' | 'ground'): void {
    const before = this.chain.distance_m as Metres;
    const factors = [factor as Ratio];
    this.chain.distance_m = this.r.step('distance.corrected-distance', tread.distance, correctedDistance, {
      distance: before,
      factors,
    });
    this.chain.roll_m =
      on === 'both'
        ? this.r.step('distance.corrected-distance', tread.roll, correctedDistance, {
            distance: this.chain.roll_m as Metres,
            factors,
          })
        : this.r.step('distance.roll-with-surface', tread.roll, rollWithSurface, {
            groundRoll: this.chain.roll_m as Metres,
            distance: before,
            factor: factor as Ratio,
          });
    this.tread(tread.step, factor);
  }
}

/** Where figures are read beside mass and air. */
interface AlongAndUphill {
  readonly headwind?: number;
  readonly slope?: number;
}

const none: readonly never[] = [];

const calmAndLevel: AlongAndUphill = {};

/** A tread that multiplies, with what its formulas are called in the working. */
interface Multiplied {
  readonly step: Exclude<Stair['step'], 'manual' | 'speed addition' | 'excess height' | 'safety factor'>;
  readonly factor: string;
  readonly distance: string;
  readonly roll: string;
}

/** Written out, because every assessment of a sweep would put them together anew. */
const treads = {
  technique: {
    step: 'technique',
    factor: 'factor for technique',
    distance: 'distance with technique',
    roll: 'ground roll with technique',
  },
  mass: { step: 'mass', factor: 'factor for mass', distance: 'distance with mass', roll: 'ground roll with mass' },
  elevation: {
    step: 'elevation',
    factor: 'factor for elevation',
    distance: 'distance with elevation',
    roll: 'ground roll with elevation',
  },
  temperature: {
    step: 'temperature',
    factor: 'factor for temperature',
    distance: 'distance with temperature',
    roll: 'ground roll with temperature',
  },
  wind: { step: 'wind', factor: 'factor for wind', distance: 'distance with wind', roll: 'ground roll with wind' },
  surface: {
    step: 'surface',
    factor: 'factor for surface',
    distance: 'distance with surface',
    roll: 'ground roll with surface',
  },
  slope: { step: 'slope', factor: 'factor for slope', distance: 'distance with slope', roll: 'ground roll with slope' },
} as const satisfies Record<string, Multiplied>;

/** The speed that a tailwind is measured against under a set: the lift-off or approach speed of the table. */
function referenceSpeed(situation: Situation): number | undefined {
  const speeds = situation.ready.liftOffSpeed ?? situation.ready.approachSpeed;
  if (speeds === undefined) return undefined;
  const reading = tableSpeed(situation, speeds);
  return reading.ok ? reading.kias : undefined;
}
