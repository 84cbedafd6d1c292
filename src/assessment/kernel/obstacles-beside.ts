import { lateralSemiWidth } from '../../flight-path/index.ts';
import { type Metres, roundDown, roundUp } from '../../units/index.ts';
import { inUnit } from '../request/in-unit.ts';
import type { Situation } from '../request/situation.ts';
import type { Reason } from '../result/reason.ts';
import { placeOf } from './climb-out.ts';
import type { Recorder } from './step.ts';

/** What is to be said of obstacles ahead that stand beside the extended centreline; the criteria do not change by it. */
export function obstaclesBeside(r: Recorder, situation: Situation): Reason[] {
  const { runway, data } = situation;
  const wingspan = data.airframe?.wingspan;
  return (runway.ahead ?? []).flatMap((obstacle): Reason[] => {
    const { name, offset_m } = obstacle;
    if (offset_m === undefined || offset_m === 0) return [];
    const stated: Reason = { code: 'obstacle-beside', parameters: { obstacle: name, offset_m: roundDown(offset_m) } };
    if (wingspan === undefined) return [stated];
    const halfWidth = r.step('flight-path.lateral-semi-width', `half-width at ${name}`, lateralSemiWidth, {
      wingspan: inUnit(wingspan, 'm') as Metres,
      distance: Math.max(0, placeOf(situation, obstacle).distance_m - runway.toda_m) as Metres,
    });
    return [stated, { code: 'obstacle-beside-strip', parameters: { obstacle: name, halfWidth_m: roundUp(halfWidth) } }];
  });
}
