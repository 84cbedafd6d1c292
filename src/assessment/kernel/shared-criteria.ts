import { stallSpeedMultiple } from '../../airspeed/index.ts';
import type { FactorOrigin } from '../../distance/index.ts';
import { type CalibratedAirspeed, type Ratio, roundUp } from '../../units/index.ts';
import { convert } from '../../units/unit-table.ts';
import { calibrated, inUnit, type Situation, type WindLimit } from '../request/situation.ts';
import type { Reason } from '../result/reason.ts';
import type { Wind } from './air-and-wind.ts';
import { atMost, type Judged, undetermined, withheld } from './criterion.ts';
import type { Recorder } from './step.ts';

/** The mass against its maximum, in the unit in which the data state that. */
export function massCriterion(situation: Situation): Judged {
  const { mass_kg, maximumMass, phase } = situation;
  const { value: limit, unit } = maximumMass;
  const named = {
    id: 'mass',
    subject: 'mass',
    quantity: `${phase === 'takeoff' ? 'take-off' : 'landing'} mass`,
    unit,
    limitStatus: 'limitation',
  } as const;
  const mass = convert(mass_kg, 'kg', unit) as number;
  const judged = atMost(named, mass, limit);
  if (judged.verdict === 'within') return judged;
  return { ...judged, reasons: [{ code: 'mass-above-maximum', parameters: { mass, limit, unit } }] };
}

type WindKind = Pick<Judged, 'id' | 'subject' | 'quantity'>;

const across: WindKind = { id: 'crosswind', subject: 'crosswind', quantity: 'crosswind in gusts' };
const along: WindKind = { id: 'tailwind', subject: 'tailwind', quantity: 'tailwind used' };

/** Crosswind and tailwind against every limit, each with its status; a wind that no limit stands against is undetermined. */
export function windCriteria(situation: Situation, wind: Wind): Judged[] {
  const { crosswindLimits, tailwindLimits, policies } = situation;
  const binding = crosswindLimits.filter(
    ({ status }) => status !== 'demonstrated' || policies.demonstratedCrosswind === 'limit',
  );
  return [
    ...againstLimits(across, wind.worstCrosswind_kt, binding, 'no-crosswind-limit'),
    ...againstLimits(along, Math.max(0, -wind.used_kt), tailwindLimits, 'no-tailwind-limit'),
  ];
}

function againstLimits(
  { id, subject, quantity }: WindKind,
  wind_kt: number,
  limits: readonly WindLimit[],
  withoutLimit: Reason['code'],
): Judged[] {
  if (limits.length === 0 && roundUp(wind_kt) > 0) {
    const named = { id, subject, quantity, unit: 'kt', limitStatus: 'none given' } as const;
    return [undetermined(named, 'at most', [{ code: withoutLimit, parameters: { wind_kt: roundUp(wind_kt) } }])];
  }
  return limits.map(({ value, unit, status }) =>
    atMost({ id, subject, quantity, unit, limitStatus: status }, convert(wind_kt, 'kt', unit) as number, value),
  );
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
  if (stall_kcas === undefined) return [...advice, { code: 'no-stall-speed', parameters: {} }];
  const limit_kt = r.step('airspeed.stall-speed-multiple', '0.2 V_S0', stallSpeedMultiple, {
    stallSpeed: stall_kcas as CalibratedAirspeed,
    multiple: 0.2 as Ratio,
  });
  advice.push({ code: 'crosswind-against-stall', parameters: { limit_kt, crosswind_kt } });
  return advice;
}

/** Withholds a verdict that rests on a recalled factor nobody has confirmed. */
export function withholdRecalled(situation: Situation, judged: Judged, used: readonly FactorOrigin[]): Judged {
  if (!used.some(({ access }) => access === 'recalled')) return judged;
  const confirmed = new Set(situation.confirmations.map(({ factorId }) => factorId));
  const open = used.filter(({ id, access }) => access === 'recalled' && !confirmed.has(id));
  if (open.length === 0) return judged;
  return withheld(
    judged,
    open.map(({ id }) => ({
      code: 'recalled-factor' as const,
      parameters: { factorId: id, edition: situation.set.edition },
    })),
  );
}
