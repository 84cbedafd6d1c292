import { landingAdditionOf, landingSituationOf } from '../../src/assessment/assess-landing.ts';
import { takeoffSituationOf } from '../../src/assessment/assess-takeoff.ts';
import type { Conditions, LandingRequest, TakeoffRequest } from '../../src/assessment/index.ts';
import type { Chain } from '../../src/assessment/kernel/chain.ts';
import { type Judged, overall } from '../../src/assessment/kernel/criterion.ts';
import { landingFigures } from '../../src/assessment/kernel/landing-kernel.ts';
import { callThrough } from '../../src/assessment/kernel/step.ts';
import { takeoffFigures } from '../../src/assessment/kernel/takeoff-kernel.ts';
import type { Surface } from '../../src/distance/index.ts';
import { type Changes, example, performanceData } from './scenario.ts';

/** What a worsening changes; everything else of the day stays. */
export interface Day extends Aerodrome {
  readonly mass_kg: number;
  readonly surface: Surface;
  /** Positive where it costs: uphill at take-off, downhill at landing. */
  readonly adverseSlope_percent: number;
  readonly conditions: Conditions;
}

interface Aerodrome {
  readonly phase: 'takeoff' | 'landing';
  readonly aeroplane: keyof typeof aeroplanes;
  readonly factorSet: 'easa-class-b' | 'uk-light-aeroplane-leaflet';
  readonly length_m: number;
  readonly clearway_m: number;
  readonly stopway_m: number;
  readonly elevation_m: number;
  /** Of the landing threshold. */
  readonly displaced_m: number;
  readonly obstacle: { readonly beyond_m: number; readonly height_m: number } | undefined;
  readonly changes: Changes;
}

export const aeroplanes = {
  'corran-four': { takeoff: 'flap-15', landing: 'flap-35', lightest_kg: 850, heaviest_kg: 1050 },
  'skerry-two': { takeoff: 'takeoff', landing: 'landing', lightest_kg: 700, heaviest_kg: 900 },
} as const;

/** The direction of use, about which the winds of a day are turned. */
export const runway_deg = 292;

export const figure = (value: number, unit: string) => ({ value, unit });

/** The request of a day, as a document. */
export function requestOf(day: Day): TakeoffRequest | LandingRequest {
  const { phase, aeroplane, factorSet, length_m, clearway_m, stopway_m, displaced_m, elevation_m, obstacle } = day;
  const { mass_kg, surface, adverseSlope_percent } = day;
  const rise_m = (length_m * adverseSlope_percent * (phase === 'takeoff' ? 1 : -1)) / 100;
  // What stands ahead rides on the far end; what stands on the approach stays with the threshold.
  const foot_m = phase === 'takeoff' ? elevation_m + rise_m : elevation_m;
  return example(`${phase}-28`, {
    performanceData: performanceData(aeroplane),
    configuration: aeroplanes[aeroplane][phase],
    factorSet,
    mass: figure(mass_kg, 'kg'),
    'runway.length': figure(length_m, 'm'),
    'runway.surface': surface,
    'runway.aerodromeElevation': figure(elevation_m + 80, 'mElevation'),
    'runway.ends.0.elevation': figure(elevation_m + rise_m, 'mElevation'),
    'runway.ends.1.elevation': figure(elevation_m, 'mElevation'),
    'runway.ends.0.declaredDistances': undefined,
    'runway.ends.1.declaredDistances': {
      TORA: figure(length_m, 'm'),
      TODA: figure(length_m + clearway_m, 'm'),
      ASDA: figure(length_m + stopway_m, 'm'),
      LDA: figure(length_m - displaced_m, 'm'),
    },
    'runway.ends.1.displacedThreshold': figure(displaced_m, 'm'),
    'runway.obstacles':
      obstacle === undefined
        ? []
        : [
            {
              name: 'pines',
              end: phase === 'takeoff' ? '10' : '28',
              beyond: figure(obstacle.beyond_m, 'm'),
              groundElevation: figure(foot_m, 'mElevation'),
              height: figure(obstacle.height_m, 'mHeight'),
            },
          ],
    ...day.changes,
  }) as TakeoffRequest | LandingRequest;
}

/** What a weather gives: every criterion, and the distances on the way to them, unrounded. */
export interface Found {
  readonly verdict: Judged['verdict'];
  readonly criteria: readonly Judged[];
  /** None where the corrections have no figure. */
  readonly corrected_m: number | undefined;
  readonly factored_m: number | undefined;
}

/** A day without its weather, waiting for weathers. */
export function prepared(day: Day): (conditions: Conditions) => Found {
  const request = requestOf(day);
  return request.schema === 'groundroll/takeoff-request/1' ? takeoffOf(request) : landingOf(request);
}

export const foundOn = (day: Day): Found => prepared(day)(day.conditions);

function takeoffOf(request: TakeoffRequest): (conditions: Conditions) => Found {
  const situation = takeoffSituationOf(request);
  return (conditions) => {
    const { judged, chain, safety } = takeoffFigures(callThrough, situation, conditions);
    return found(judged, chain, safety.factored_m);
  };
}

function landingOf(request: LandingRequest): (conditions: Conditions) => Found {
  const situation = landingSituationOf(request);
  const addition_kt = landingAdditionOf(request);
  return (conditions) => {
    const { judged, chain, factor } = landingFigures(callThrough, situation, conditions, addition_kt);
    return found(judged, chain, chain.distance_m * factor);
  };
}

function found(criteria: readonly Judged[], { distance_m, missing }: Chain, factored_m: number): Found {
  const hasFigure = missing.length === 0;
  return {
    verdict: overall(criteria),
    criteria,
    corrected_m: hasFigure ? distance_m : undefined,
    factored_m: hasFigure ? factored_m : undefined,
  };
}

/** What got better although the day got worse; nothing where all is well. */
export function improvements(before: Found, after: Found): string[] {
  const better: string[] = [];
  if (after.verdict === 'within' && before.verdict !== 'within') better.push(`overall: ${before.verdict} to within`);
  const earlier = named(before);
  for (const [name, now] of named(after)) {
    const was = earlier.get(name);
    if (was !== undefined && was.verdict !== 'within' && now.verdict === 'within')
      better.push(`${name}: ${was.verdict} to within`);
    const hasSameLimit =
      was?.unit === now.unit && was.limit === now.limit && was?.margin !== undefined && now.margin !== undefined;
    if (hasSameLimit && (now.margin as number) > (was.margin as number))
      better.push(`${name}: margin ${was.margin} to ${now.margin}`);
  }
  for (const distance of ['corrected_m', 'factored_m'] as const) {
    const [less, more] = [before[distance], after[distance]];
    if (less === undefined && more !== undefined) better.push(`${distance}: a figure where there was none`);
    // Within the guard of the comparisons two figures are one.
    if (less !== undefined && more !== undefined && more < less * (1 - 1e-9)) {
      better.push(`${distance}: ${less} to ${more}`);
    }
  }
  return better;
}

/** The criteria by id and subject, several limits of one quantity by their place among these. */
function named({ criteria }: Found): Map<string, Judged> {
  const byName = new Map<string, Judged>();
  for (const each of criteria) {
    const name = `${each.id}, ${each.subject}`;
    const others = criteria.filter(({ id, subject }) => id === each.id && subject === each.subject);
    byName.set(`${name}, ${others.indexOf(each) + 1} of ${others.length}`, each);
  }
  return byName;
}
