import { plausibilityFindings } from '../../aircraft/index.ts';
import { factorInWords } from '../../distance/index.ts';
import { comparisonDecimals } from '../../units/comparison-step.ts';
import { formatNumber, formatValue, type Measure, measure, roundDown, roundUp } from '../../units/index.ts';
import type { UnitWord } from '../../units/unit-table.ts';
import type { Air, Wind } from '../kernel/air-and-wind.ts';
import type { BreakEven } from '../kernel/break-even.ts';
import type { Chain } from '../kernel/chain.ts';
import { type Judged, limiting, overall, type Verdict } from '../kernel/criterion.ts';
import type { Mark } from '../kernel/mark.ts';
import type { TraceEntry } from '../kernel/step.ts';
import type { Conditions } from '../request/conditions.ts';
import type { Situation } from '../request/situation.ts';
import type { FlownSpeed } from '../request/speeds.ts';
import type {
  BreakEvenFound,
  Criterion,
  MarkFound,
  SpeedFound,
  StairStep,
  Stairs,
  WorkingEntry,
} from './assessment.ts';
import type { Reason } from './reason.ts';
import { type Sentence, sentence } from './sentences.ts';
import type { StepsBehind, Working } from './steps-behind.ts';

const verdictWords: Readonly<Record<Verdict, string>> = {
  within: 'within limits',
  outside: 'outside limits',
  undetermined: 'undetermined',
};

/** A verdict as it is printed. */
export function verdictInWords(verdict: Verdict): string {
  return verdictWords[verdict];
}

export function worded(reasons: readonly Reason[]): Sentence[] {
  return reasons.map(({ code, parameters }) => sentence(code, parameters));
}

/** A plain figure as a measure of a document. */
function figure<U extends UnitWord>(value: number, unit: U): Measure<U> {
  return { value, unit };
}

/** An obstacle before the 50 ft point is the same criterion by the name of a height. */
function subjectOf({ id, subject, quantity, unit }: Judged): string {
  return id === 'obstacle' && unit === 'ftHeight' ? `the ${quantity}` : subject;
}

export function criterionOf(judged: Judged, working: Working, safetySteps: StepsBehind): Criterion {
  const { id, quantity, sense, limitStatus, unit, value, limit, margin, atLeast, atMost, verdict } = judged;
  const steps = working.criterion(id, quantity, safetySteps);
  const reasons = working.worded(worded(judged.reasons));
  const base = { id, subject: subjectOf(judged), quantity, sense, limitStatus, reasons, steps };
  if (verdict !== 'undetermined' && value !== undefined && limit !== undefined && margin !== undefined) {
    return { ...base, verdict, value: figure(value, unit), limit: figure(limit, unit), margin: figure(margin, unit) };
  }
  return {
    ...base,
    verdict: 'undetermined',
    ...(limit === undefined ? {} : { limit: figure(limit, unit) }),
    ...(atLeast === undefined ? {} : { atLeast: figure(atLeast, unit) }),
    ...(atMost === undefined ? {} : { atMost: figure(atMost, unit) }),
  };
}

/** Margins in words: `59 m to spare`, `1 kt short`. */
export function marginInWords(margin: number, unit: UnitWord): string {
  const decimals = comparisonDecimals(unit);
  const size = formatValue(Math.abs(margin), unit, { decimals });
  // A difference of two percentages is not a percentage of either.
  const shown = unit === 'percent' ? `${formatNumber(Math.abs(margin), { decimals })} percentage points` : size;
  return margin < 0 ? `${shown} short` : `${shown} to spare`;
}

/** The head of a worksheet: the verdict, the tightest criterion, the air, and what must be said before any figure is used. */
export function headlineOf(
  situation: Situation,
  conditions: Conditions,
  air: Air,
  chain: Chain,
  judged: readonly Judged[],
  used: Chain['used'],
): Sentence[] {
  const tightest = limiting(judged);
  const subject = `${situation.phase === 'takeoff' ? 'Take-off' : 'Landing'} on ${situation.runway.designator}`;
  const verdict = verdictInWords(overall(judged));
  const { pressure } = conditions;
  const at = { elevation_ft: situation.runway.aerodrome_ft, pressureAltitude_ft: air.pressureAltitude_ft };
  const secondHand = [
    ...new Map(used.filter(({ access }) => access === 'second-hand').map((each) => [each.id, each])).values(),
  ];
  return [
    tightest.margin === undefined
      ? sentence('verdict-undetermined', { subject, verdict, criteria: openSubjects(judged) })
      : sentence('verdict-with-limiting', {
          subject,
          verdict,
          criterion: subjectOf(tightest),
          margin: marginInWords(tightest.margin, tightest.unit),
        }),
    'qnh_hPa' in pressure
      ? sentence('pressure-altitude', { ...at, qnh_hPa: pressure.qnh_hPa })
      : sentence('pressure-altitude-from-qfe', { ...at, qfe_hPa: pressure.qfe_hPa }),
    ...(situation.safety === 'none' ? [sentence('safety-factor-none')] : []),
    ...(situation.safety === 'of the set' && !situation.set.hasSafetyFactor
      ? [sentence('set-without-safety-factor', { set: situation.set.title })]
      : []),
    ...used.flatMap((factor) =>
      situation.confirmations
        .filter(({ factorId }) => factorId === factor.id)
        .map((each) => sentence('confirmed', { ...each, factor: factorInWords(factor) })),
    ),
    ...(secondHand.length === 0 || chain.missing.length > 0
      ? []
      : [sentence('second-hand-factors', { factors: secondHand.map(factorInWords).join('; ') })]),
  ];
}

/** What is undetermined, each once. */
function openSubjects(judged: readonly Judged[]): string {
  return [...new Set(judged.filter(({ verdict }) => verdict === 'undetermined').map(subjectOf))].join(', ');
}

export function stairsOf(
  chain: Chain,
  factor: number,
  available_m: number,
  isFactored: boolean,
  working: Working,
): Stairs | undefined {
  if (chain.missing.length > 0) return undefined;
  const totals = [
    ...chain.stairs,
    { step: isFactored ? 'safety factor' : 'no safety factor', factor, total_m: chain.distance_m * factor },
  ];
  return {
    steps: treads(totals, working),
    required: figure(roundUp(chain.distance_m * factor), 'm'),
    available: figure(roundDown(available_m), 'm'),
  };
}

/** The treads before the first that has no figure; none where the manual has none. */
export function stairsKnownOf({ missing, stairs }: Chain, working: Working): StairStep[] | undefined {
  return missing.length === 0 || stairs.length === 0 ? undefined : treads(stairs, working);
}

function treads(
  totals: readonly { readonly step: string; readonly factor: number; readonly total_m: number }[],
  working: Working,
): StairStep[] {
  const tenth = (metres: number) => figure(Number(metres.toFixed(1)), 'm');
  return totals.map(({ step, factor, total_m }, i) => ({
    step,
    factor,
    added: tenth(i === 0 ? total_m : total_m - (totals[i - 1] as { total_m: number }).total_m),
    total: tenth(total_m),
    steps: working.stair(step, totals, total_m),
  }));
}

export function breakEvenFound(
  situation: Situation,
  { quantity, unit, answer, value, range }: BreakEven,
): BreakEvenFound {
  const between = { from: figure(range.from, unit), to: figure(range.to, unit) };
  const otherLimits = worded(otherLimitsOf(situation, quantity));
  return {
    quantity,
    answer,
    ...(value === undefined ? {} : { value: figure(value, unit) }),
    range: between,
    otherLimits,
  };
}

/** A break-even belongs to the distance alone; what else limits the same quantity is named beside it. */
function otherLimitsOf(situation: Situation, quantity: BreakEven['quantity']): Reason[] {
  const { tailwindLimits, maximumMass, runway, phase } = situation;
  const limits: Reason[] = [];
  if (quantity === 'tailwind') {
    for (const { value, unit, status } of tailwindLimits) {
      limits.push({ code: 'other-limit-tailwind', parameters: { limit: value, unit, status } });
    }
  }
  if (quantity === 'mass') {
    limits.push({ code: 'other-limit-mass', parameters: { limit: maximumMass.value, unit: maximumMass.unit } });
  }
  if (phase === 'takeoff' && (runway.ahead ?? []).length > 0)
    limits.push({ code: 'other-limit-obstacles', parameters: {} });
  return limits;
}

export function markFound({ id, at_m, share, speed_kias, reason }: Mark, steps: StepsBehind): MarkFound {
  return {
    id,
    ...(at_m === undefined ? {} : { at: figure(at_m, 'm') }),
    ...(share === undefined ? {} : { shareOfRunway: figure(roundDown(share * 100), 'percent') }),
    ...(speed_kias === undefined ? {} : { speed: figure(speed_kias, 'kias') }),
    reasons: reason === undefined ? [] : worded([reason]),
    steps: at_m === undefined ? [] : steps,
  };
}

export function speedFound(name: string, speed: FlownSpeed): SpeedFound[] {
  const { kias, kcas } = speed;
  return [
    {
      name,
      speed: figure(kias, 'kias'),
      ...(kcas === undefined ? {} : { calibrated: figure(Number(kcas.toFixed(1)), 'kcas') }),
      steps: [],
    },
  ];
}

/** The manual's named speeds that belong to no table. */
export function namedSpeeds(situation: Situation): SpeedFound[] {
  return situation.data.speeds
    .filter(({ name }) => name === 'V_X' || name === 'V_Y')
    .map(({ name, flap, speed }) => ({
      name: `${name}, flap ${flap}`,
      speed: measure(speed.value as never, 'kias'),
      steps: [],
    }));
}

/** What to beware of today, whatever the phase. */
export function commonHazards(situation: Situation, conditions: Conditions, wind: Wind): Reason[] {
  const { surface, slope_percent, ahead, behind } = situation.runway;
  const hazards: Reason[] = [];
  const add = (condition: boolean, code: Reason['code'], parameters: Reason['parameters'] = {}) => {
    if (condition) hazards.push({ code, parameters });
  };
  const increment_kt = conditions.gust_kt - conditions.speed_kt;
  add(wind.used_kt < 0, 'hazard-tailwind');
  add(surface.kind === 'grass' && surface.condition === 'wet', 'hazard-wet-grass');
  add((surface.kind === 'grass' && surface.ground === 'soft') || surface.kind === 'snow', 'hazard-soft-ground');
  add(increment_kt > 0, conditions.gustReported ? 'hazard-gusts' : 'hazard-gusts-assumed', { increment_kt });
  add((ahead ?? []).length + (behind ?? []).length > 0, 'hazard-obstacles');
  add(Math.abs(slope_percent) > (situation.set[situation.phase].slope?.upTo ?? 2), 'hazard-steep-slope', {
    slope_percent,
  });
  add(
    situation.data.crosswind.some(({ status }) => status === 'demonstrated'),
    'hazard-demonstrated',
  );
  return hazards;
}

/** What to know about the figures. */
export function commonNotes(situation: Situation, conditions: Conditions, air: Air, wind: Wind): Reason[] {
  const { components } = wind;
  const { includes } = situation.table ?? {};
  const notes: Reason[] = [...situation.notes];
  const add = (condition: boolean, code: Reason['code'], parameters: Reason['parameters'] = {}) => {
    if (condition) notes.push({ code, parameters });
  };
  add(conditions.from_deg === 'variable', 'direction-unknown');
  add(conditions.from_deg !== 'variable', 'wind-components', {
    headwind_kt: components.headwind,
    crosswind_kt: components.crosswind,
    crosswindAtGust_kt: components.crosswindAtGust,
  });
  add(conditions.range_deg !== undefined, 'direction-range', {
    from_deg: conditions.range_deg?.from ?? 0,
    to_deg: conditions.range_deg?.to ?? 0,
  });
  add(!conditions.gustReported && conditions.speed_kt > 0, 'gust-unknown', {
    threshold_kt: Math.ceil(conditions.speed_kt + 10),
    used_kt: conditions.gust_kt,
  });
  if (air.densityAltitude_ft !== undefined)
    add(true, 'density-altitude', { densityAltitude_ft: roundUp(air.densityAltitude_ft) });
  if (air.humidDensityAltitude_ft !== undefined) {
    add(true, 'humid-density-altitude', { densityAltitude_ft: roundUp(air.humidDensityAltitude_ft) });
    add(situation.policies.humidity === 'information', 'tables-read-dry');
  }
  add(includes !== undefined, 'manual-includes', {
    safetyFactor: words(includes?.safetyFactor),
    windAccountability: words(includes?.windAccountability),
  });
  add(true, 'factors-of', { set: situation.set.title, edition: situation.set.edition });
  add(situation.runway.toraShorter_m > 0 && (situation.runway.ahead ?? []).length > 0, 'tora-shorter', {
    by_m: roundUp(situation.runway.toraShorter_m),
  });
  add(situation.runway.ahead?.length === 0 && situation.runway.behind?.length === 0, 'obstacles-none');
  for (const { path, message } of plausibilityFindings(situation.data)) add(true, 'plausibility', { path, message });
  return notes;
}

function words(included: boolean | 'not stated' | undefined): string {
  if (included === true) return 'included';
  return included === false ? 'not included' : 'not stated';
}

export function workingOf(trace: readonly TraceEntry[], working: Working): WorkingEntry[] {
  return trace.flatMap((entry): WorkingEntry[] =>
    entry.kind === 'step'
      ? [entry]
      : working
          .worded([sentence(entry.code, entry.parameters)])
          .map((decision) => ({ kind: 'decision' as const, ...decision })),
  );
}
