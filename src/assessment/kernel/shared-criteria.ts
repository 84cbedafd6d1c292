import { stallSpeedMultiple } from '../../airspeed/index.ts';
import type { FactorOrigin } from '../../distance/index.ts';
import type { CalibratedAirspeed, Ratio } from '../../units/index.ts';
import { calibrated, inUnit, type Situation } from '../request/situation.ts';
import type { Reason } from '../result/reason.ts';
import type { Wind } from './air-and-wind.ts';
import { atMost, type Judged, type LimitStatus, withheld } from './criterion.ts';
import type { Recorder } from './step.ts';

/** The mass against its maximum. */
export function massCriterion(situation: Situation): Judged {
  const { mass_kg, maximumMass_kg } = situation;
  const named = {
    id: 'mass',
    subject: 'mass',
    quantity: `${situation.phase === 'takeoff' ? 'take-off' : 'landing'} mass`,
    unit: 'kg',
    limitStatus: 'limitation',
  } as const;
  const reasons: Reason[] =
    mass_kg > maximumMass_kg ? [{ code: 'mass-above-maximum', parameters: { mass_kg, limit_kg: maximumMass_kg } }] : [];
  return atMost(named, mass_kg, maximumMass_kg, 'value', reasons);
}

const across = (limitStatus: LimitStatus) =>
  ({ id: 'crosswind', subject: 'crosswind', quantity: 'crosswind in gusts', unit: 'kt', limitStatus }) as const;
const along = (limitStatus: LimitStatus) =>
  ({ id: 'tailwind', subject: 'tailwind', quantity: 'tailwind used', unit: 'kt', limitStatus }) as const;

/** Crosswind and tailwind against every limit, each with its status. */
export function windCriteria(situation: Situation, wind: Wind): Judged[] {
  const { data, policies, personalCrosswind_kt, personalTailwind_kt } = situation;
  const tail = Math.max(0, -wind.used_kt);
  const judged: Judged[] = [];
  for (const { speed, status } of data.crosswind) {
    const limit = inUnit(speed, 'kt');
    const criterion = atMost(across(status), wind.worstCrosswind_kt, limit);
    const informs = status === 'demonstrated' && policies.demonstratedCrosswind === 'information';
    if (!informs) judged.push(criterion);
  }
  if (personalCrosswind_kt !== undefined)
    judged.push(atMost(across('personal'), wind.worstCrosswind_kt, personalCrosswind_kt));
  for (const { speed, status } of data.tailwind) judged.push(atMost(along(status), tail, inUnit(speed, 'kt')));
  if (personalTailwind_kt !== undefined) judged.push(atMost(along('personal'), tail, personalTailwind_kt));
  return judged;
}

/** What crosswinds say beside the criteria: advice, and figures that only inform. */
export function windAdvice(r: Recorder, situation: Situation, wind: Wind, judged: readonly Judged[]): Reason[] {
  const advice: Reason[] = [];
  if (judged.some(({ id, verdict }) => (id === 'crosswind' || id === 'tailwind') && verdict === 'outside')) {
    advice.push({ code: 'choose-another', parameters: {} });
  }
  const crosswind_kt = Math.ceil(wind.worstCrosswind_kt - 1e-9);
  for (const { speed, status } of situation.data.crosswind) {
    const limit_kt = inUnit(speed, 'kt');
    if (
      status === 'demonstrated' &&
      situation.policies.demonstratedCrosswind === 'information' &&
      crosswind_kt > limit_kt
    ) {
      advice.push({ code: 'crosswind-demonstrated-informs', parameters: { crosswind_kt, limit_kt } });
    }
  }
  const stall = situation.data.stallSpeeds.find(({ name }) => name === 'V_S0');
  const stall_kcas =
    stall === undefined
      ? undefined
      : stall.speed.unit === 'kcas'
        ? stall.speed.value
        : calibrated(situation, stall.flap, stall.speed.value);
  if (stall_kcas !== undefined) {
    const limit_kt = r.step('airspeed.stall-speed-multiple', '0.2 V_S0', stallSpeedMultiple, {
      stallSpeed: stall_kcas as CalibratedAirspeed,
      multiple: 0.2 as Ratio,
    });
    advice.push({ code: 'crosswind-against-stall', parameters: { limit_kt, crosswind_kt } });
  }
  return advice;
}

/** Withholds a verdict that rests on a recalled factor nobody has confirmed. */
export function withholdRecalled(situation: Situation, judged: Judged, used: readonly FactorOrigin[]): Judged {
  const open = used.filter(({ id, access }) => access === 'recalled' && !situation.confirmed.has(id));
  if (open.length === 0) return judged;
  return withheld(
    judged,
    open.map(({ id }) => ({
      code: 'recalled-factor' as const,
      parameters: { factorId: id, edition: situation.set.edition },
    })),
  );
}
