import { latestTouchdownPoint } from '../../distance/index.ts';
import { latestPathStart } from '../../flight-path/index.ts';
import type { HeightInMetres, Metres, Ratio } from '../../units/index.ts';
import { climbOf, placeOf } from './climb-out.ts';
import type { LandingFigures, LandingSituation } from './landing-kernel.ts';
import type { Mark } from './mark.ts';
import type { Recorder } from './step.ts';

const foot = 0.3048;

/** The latest touchdown point, and the last point from which a go-around clears what stands ahead. */
export function landingMarks(r: Recorder, situation: LandingSituation, figures: LandingFigures): Mark[] {
  const { chain, air, wind } = figures;
  const { runway, policies } = situation;
  const marks: Mark[] = [];
  const share = (at_m: number) => at_m / runway.length_m;
  if (chain.missing.length > 0)
    marks.push({
      id: 'latest-touchdown-point',
      at_m: undefined,
      share: undefined,
      reason: { code: 'mark-not-known', parameters: {} },
    });
  else {
    const at_m = r.step('distance.latest-touchdown-point', 'latest touchdown point', latestTouchdownPoint, {
      distanceAvailable: runway.lda_m as Metres,
      groundRoll: chain.windRoll_m as Metres,
      increments: (chain.distance_m - chain.windDistance_m) as Metres,
    });
    marks.push({ id: 'latest-touchdown-point', at_m: Math.floor(at_m + 1e-9), share: share(at_m) });
  }
  const ahead = runway.ahead ?? [];
  if (ahead.length === 0 || situation.climb === undefined) return marks;
  const climb = climbOf(r, situation, air, wind.used_kt);
  const slope = runway.slope_percent / 100;
  if (climb.gradient === undefined || climb.gradient < 0 || climb.gradient <= slope + 1e-6) {
    return [
      ...marks,
      {
        id: 'latest-go-around-point',
        at_m: undefined,
        share: undefined,
        reason: climb.missing[0] ?? { code: 'mark-none-obstacles', parameters: {} },
      },
    ];
  }
  const gradient = climb.gradient;
  // From the surface itself: a go-around may begin on the wheels.
  const points = ahead.map((obstacle) => {
    const { distance_m, top_m } = placeOf(situation, obstacle);
    const from = r.step(
      'flight-path.latest-path-start',
      `latest go-around point for ${obstacle.name}`,
      latestPathStart,
      {
        obstacleTop: top_m as HeightInMetres,
        clearance: (policies.verticalClearance * foot) as HeightInMetres,
        screenHeight: 0 as HeightInMetres,
        distance: distance_m as Metres,
        gradient: gradient as Ratio,
        slope: slope as Ratio,
      },
    );
    return from - runway.displaced_m;
  });
  const at_m = Math.floor(Math.min(...points) + 1e-9);
  return [...marks, { id: 'latest-go-around-point', at_m, share: share(at_m) }];
}
