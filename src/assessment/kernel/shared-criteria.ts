import { stallSpeedMultiple } from '../../airspeed/index.ts';
import type { FactorOrigin } from '../../distance/index.ts';
import { type CalibratedAirspeed, type Ratio, roundUp } from '../../units/index.ts';
import { convert } from '../../units/unit-table.ts';
import { inUnit } from '../request/in-unit.ts';
import type { Situation } from '../request/situation.ts';
import { calibrated } from '../request/speeds.ts';
import { crosswindCriterion, tailwindCriterion, type WindCriterion } from '../request/wind-limits.ts';
import type { Reason } from '../result/reason.ts';
import type { Wind } from './air-and-wind.ts';
import { atMost, type Judged, type Named, undetermined } from './criterion.ts';
import type { Recorder } from './step.ts';

/** Adds crosswind and tailwind against every limit, each with its status; a wind that no limit stands against is undetermined. */
export function addWindCriteria(judged: Judged[], { windCriteria }: Situation, wind: Wind): void {
  addAgainstLimits(judged, wind.worstCrosswind_kt, windCriteria.crosswind, crosswindWithoutLimit);
  addAgainstLimits(judged, Math.max(0, -wind.used_kt), windCriteria.tailwind, tailwindWithoutLimit);
}

const crosswindWithoutLimit = crosswindCriterion('kt', 'none given');
const tailwindWithoutLimit = tailwindCriterion('kt', 'none given');

function addAgainstLimits(
  judged: Judged[],
  wind_kt: number,
  limits: readonly WindCriterion[],
  withoutLimit: Named,
): void {
  if (limits.length === 0 && roundUp(wind_kt) > 0) {
    const code = withoutLimit.id === 'crosswind' ? 'no-crosswind-limit' : 'no-tailwind-limit';
    judged.push(undetermined(withoutLimit, 'at most', [{ code, parameters: { wind_kt: roundUp(wind_kt) } }]));
  }
  for (const { words, value, unit } of limits)
    judged.push(atMost(words, convert(wind_kt, 'kt', unit) as number, value));
}

/** What crosswinds say beside the criteria: advice, and figures that only inform. */
export function windAdvice(r: Recorder, situation: Situation, wind: Wind, judged: readonly Judged[]): Reason[] {
  const advice: Reason[] = [];
  if (judged.some(({ id, verdict }) => (id === 'crosswind' || id === 'tailwind') && verdict === 'outside')) {
    advice.push({ code: 'choose-another', parameters: {} });
  }
  const crosswind_kt = roundUp(wind.worstCrosswind_kt);
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
  if (stall_kcas === undefined) return [...advice, { code: 'no-stall-speed', parameters: {} }];
  const limit_kt = r.step('airspeed.stall-speed-multiple', '0.2 V_S0', stallSpeedMultiple, {
    stallSpeed: stall_kcas as CalibratedAirspeed,
    multiple: 0.2 as Ratio,
  });
  advice.push({ code: 'crosswind-against-stall', parameters: { limit_kt, crosswind_kt } });
  return advice;
}

/** Why a verdict that rests on these factors is to be withheld: one is recalled and nobody has confirmed it. */
export function notConfirmed({ unconfirmed }: Situation, used: readonly FactorOrigin[]): readonly Reason[] {
  if (unconfirmed.size === 0) return none;
  return used.flatMap(({ id }) => unconfirmed.get(id) ?? []);
}

const none: readonly never[] = [];
