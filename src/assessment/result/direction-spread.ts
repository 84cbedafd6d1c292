import type { Judged } from '../kernel/criterion.ts';
import type { Conditions } from '../request/conditions.ts';
import type { Situation } from '../request/situation.ts';
import { verdictInWords } from './present.ts';
import type { Reason } from './reason.ts';

/**
 * The result with the wind 5° to either side of the report: for a wind near abeam, where the rounding of a report can
 * turn a headwind into a tailwind, and for a runway direction that is only a painted number. It shows the distance, and
 * every other criterion whose verdict changes.
 */
export function directionSpread(
  situation: Situation,
  conditions: Conditions,
  judged: readonly Judged[],
  judgedAt: (conditions: Conditions) => readonly Judged[],
): Reason[] {
  const { from_deg, range_deg } = conditions;
  const { direction_deg, directionFrom } = situation.runway;
  if (from_deg === 'variable' || conditions.speed_kt === 0) {
    return directionFrom === 'designator' ? [{ code: 'direction-only-painted', parameters: {} }] : [];
  }
  const angle_deg = Math.abs(((((from_deg - direction_deg) % 360) + 540) % 360) - 180);
  const isAbeam = angle_deg >= 70 && angle_deg <= 110;
  if (!isAbeam && directionFrom === 'survey') return [];
  const turned = (direction: number, by: number) => (direction + by + 360) % 360 || 360;
  const at = (by: number) => {
    const range = range_deg && { from: turned(range_deg.from, by), to: turned(range_deg.to, by) };
    const there = judgedAt({ ...conditions, from_deg: turned(from_deg, by), range_deg: range });
    const shown = there.filter((each, i) => each.id.endsWith('-distance') || each.verdict !== judged[i]?.verdict);
    return shown.map(inWords).join('; ');
  };
  const parameters = { angle_deg, first: at(-5), second: at(5) };
  return [{ code: directionFrom === 'designator' ? 'direction-from-designator' : 'wind-near-abeam', parameters }];
}

function inWords({ subject, unit, value, verdict }: Judged): string {
  const figure = value === undefined || unit !== 'm' ? '' : `${value} m, `;
  return `${subject} ${figure}${verdictInWords(verdict)}`;
}
