import { latestTouchdownPoint } from '../../distance/index.ts';
import { latestPathStart } from '../../flight-path/index.ts';
import type { HeightInMetres, Metres, Ratio } from '../../units/index.ts';
import type { Reason } from '../result/reason.ts';
import { climbOf, climbSpeedOf, placeOf } from './climb-out.ts';
import type { LandingFigures } from './landing-kernel.ts';
import type { LandingSituation } from './landing-situation.ts';
import type { Mark } from './mark.ts';
import type { Recorder } from './step.ts';

const foot = 0.3048;

/** The latest touchdown point, and the last point from which a go-around clears what stands ahead. */
export function landingMarks(r: Recorder, situation: LandingSituation, figures: LandingFigures): Mark[] {
  const { chain, air, wind } = figures;
  const { runway, policies } = situation;
  const share = (at_m: number) => (at_m + runway.displaced_m) / runway.length_m;
  const mark = (id: Mark['id'], at_m: number): Mark => {
    const whole_m = Math.floor(at_m + 1e-9);
    return { id, at_m: whole_m, share: share(whole_m) };
  };
  const none = (id: Mark['id'], reason: Reason): Mark => ({ id, at_m: undefined, share: undefined, reason });
  const marks = [touchdownMark()];
  const ahead = runway.ahead ?? [];
  if (ahead.length === 0 || situation.climb === undefined) return marks;
  const { approach } = figures;
  const start = approach.ok ? { ok: true as const, ...approach.flown, edges: approach.edges } : approach;
  const climb = climbOf(r, situation, air, wind.used_kt, start, climbSpeedOf(situation));
  const slope = runway.slope_percent / 100;
  const { gradient } = climb;
  if (gradient === undefined || gradient < 0 || gradient <= slope + 1e-6) {
    return [
      ...marks,
      none('latest-go-around-point', climb.missing[0] ?? { code: 'mark-none-obstacles', parameters: {} }),
    ];
  }
  // From the surface itself: a go-around may begin on the wheels.
  const points = ahead.map((obstacle) => {
    const { distance_m, top_m } = placeOf(situation, obstacle);
    const from = r.step(
      'flight-path.latest-path-start',
      `latest go-around point for ${obstacle.name}`,
      latestPathStart,
      {
        // What is given up to gain the climb speed counts as if the obstacle stood that much taller.
        obstacleTop: (top_m + climb.heightLost_m) as HeightInMetres,
        clearance: (policies.verticalClearance * foot) as HeightInMetres,
        screenHeight: 0 as HeightInMetres,
        distance: distance_m as Metres,
        gradient: gradient as Ratio,
        slope: slope as Ratio,
      },
    );
    return from + runway.offset_m - runway.displaced_m;
  });
  const latest_m = Math.min(...points);
  // Beyond the far end there is no surface on which to begin, nor a place that anybody could find.
  if (latest_m > runway.length_m - runway.displaced_m) {
    return [...marks, none('latest-go-around-point', { code: 'mark-go-around-throughout', parameters: {} })];
  }
  const basis: Reason = { code: 'mark-go-around-basis', parameters: {} };
  return [...marks, { ...mark('latest-go-around-point', latest_m), reason: basis }];

  function touchdownMark(): Mark {
    const id = 'latest-touchdown-point';
    if (chain.missing.length > 0) return none(id, { code: 'mark-not-known', parameters: {} });
    if (chain.kind === 'at-least' || chain.kind === 'no bound')
      return none(id, { code: 'mark-lower-bound', parameters: {} });
    // A credit for the slope shortens the roll itself; what it takes off the part in the air is no room on the ground.
    const roll_m = Math.min(chain.windRoll_m, chain.roll_m);
    const at_m = r.step('distance.latest-touchdown-point', 'latest touchdown point', latestTouchdownPoint, {
      distanceAvailable: runway.lda_m as Metres,
      groundRoll: roll_m as Metres,
      increments: (chain.roll_m - roll_m) as Metres,
    });
    return mark(id, at_m);
  }
}
