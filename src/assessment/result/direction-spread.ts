import type { Judged } from '../kernel/criterion.ts';
import type { Conditions } from '../request/conditions.ts';
import type { Situation } from '../request/situation.ts';
import { verdictInWords } from './present.ts';
import type { Reason } from './reason.ts';

/**
 * The distance criterion with the wind 5° to either side of the report: for a wind near abeam, where the rounding of
 * a report can turn a headwind into a tailwind, and for a runway direction that is only a painted number.
 */
export function directionSpread(
  situation: Situation,
  conditions: Conditions,
  distanceAt: (conditions: Conditions) => Judged,
): Reason[] {
  const { from_deg } = conditions;
  if (from_deg === 'variable' || conditions.speed_kt === 0) return [];
  const { direction_deg, directionFrom } = situation.runway;
  const angle_deg = Math.abs(((((from_deg - direction_deg) % 360) + 540) % 360) - 180);
  const isAbeam = angle_deg >= 70 && angle_deg <= 110;
  if (!isAbeam && directionFrom === 'survey') return [];
  const at = (by: number) => {
    const judged = distanceAt({ ...conditions, from_deg: (from_deg + by + 360) % 360 });
    const figure = judged.value === undefined ? '' : `${judged.value} m, `;
    return `${judged.subject} ${figure}${verdictInWords(judged.verdict)}`;
  };
  const parameters = { angle_deg, first: at(-5), second: at(5) };
  return [{ code: directionFrom === 'designator' ? 'direction-from-designator' : 'wind-near-abeam', parameters }];
}
