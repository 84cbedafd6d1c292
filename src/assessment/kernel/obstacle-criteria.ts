import { obstacleClearance, requiredGradient } from '../../flight-path/index.ts';
import type { HeightInMetres, Metres, Ratio } from '../../units/index.ts';
import { gradientOver, type PlacedObstacle } from '../request/placed-obstacle.ts';
import type { Situation } from '../request/situation.ts';
import type { Reason } from '../result/reason.ts';
import type { Chain } from './chain.ts';
import { type Climb, placeOf, surfaceHeight } from './climb-out.ts';
import { atLeast, type Judged, type Named, named, undetermined } from './criterion.ts';
import type { Recorder } from './step.ts';

const foot = 0.3048;

/** How one obstacle stands to the climb-out path. */
export interface ClimbOutObstacle {
  /** Its place in the list of obstacles ahead. */
  readonly place: number;
  readonly name: string;
  readonly required_percent: number;
  readonly achieved_percent: number;
  readonly factored_ft: number;
  readonly unfactored_ft: number;
}

const nothingAhead: { judged: readonly Judged[]; obstacles: readonly ClimbOutObstacle[] } = {
  judged: [],
  obstacles: [],
};

const notLooked: typeof nothingAhead = {
  judged: [undetermined(gradientOver('obstacles'), 'at least', [{ code: 'obstacles-not-assessed', parameters: {} }])],
  obstacles: [],
};

const distanceUnknown: readonly Reason[] = [{ code: 'distance-unknown', parameters: {} }];

/** The distances after which the climb-out may start. */
export interface ClimbOutStarts {
  readonly factored_m: number;
  readonly unfactored_m: number;
  readonly kind: Chain['kind'];
  readonly missing: readonly Reason[];
}

/** Every obstacle ahead against the path that starts 50 ft above the surface at the end of the factored distance. */
export function obstacleCriteria(
  r: Recorder,
  situation: Situation,
  climb: Climb,
  starts: ClimbOutStarts,
): { readonly judged: readonly Judged[]; readonly obstacles: readonly ClimbOutObstacle[] } {
  const { ahead } = situation.runway;
  if (ahead === undefined) return notLooked;
  if (ahead.length === 0) return nothingAhead;
  const judged: Judged[] = [];
  const obstacles: ClimbOutObstacle[] = [];
  for (let i = 0; i < ahead.length; i += 1) {
    judged.push(judgeObstacle(r, situation, climb, starts, ahead[i] as PlacedObstacle, i, obstacles));
  }
  return { judged, obstacles };
}

function judgeObstacle(
  r: Recorder,
  situation: Situation,
  { gradient, heightLost_m, missing }: Climb,
  starts: ClimbOutStarts,
  obstacle: PlacedObstacle,
  place: number,
  obstacles: ClimbOutObstacle[],
): Judged {
  const { name, words, labels } = obstacle;
  if (gradient === undefined) return undetermined(words, 'at least', missing);
  if (starts.missing.length > 0) return undetermined(words, 'at least', distanceUnknown);
  const { policies } = situation;
  const { distance_m, top_m } = placeOf(situation, obstacle);
  const clearance = (policies.verticalClearance * foot) as HeightInMetres;
  const obstacleTop = top_m as HeightInMetres;
  const distance = (distance_m - starts.factored_m) as Metres;
  if (distance < 1) {
    const asked_ft = (top_m - surfaceHeight(situation, distance_m) + clearance) / foot;
    return beforeScreen(words, asked_ft, starts.kind, name);
  }
  const startHeight = pathStart(situation, heightLost_m, starts.factored_m);
  const required = r.step('flight-path.required-gradient', labels.required, requiredGradient, {
    obstacleTop,
    clearance,
    startHeight,
    distance,
  });
  const factored = r.step('flight-path.obstacle-clearance', labels.factored, obstacleClearance, {
    obstacleTop,
    startHeight,
    distance,
    gradient: gradient as Ratio,
  });
  const unfactored = r.step('flight-path.obstacle-clearance', labels.unfactored, obstacleClearance, {
    obstacleTop,
    startHeight: pathStart(situation, heightLost_m, starts.unfactored_m),
    distance: (distance_m - starts.unfactored_m) as Metres,
    gradient: gradient as Ratio,
  });
  const factored_ft = Math.floor(factored / foot + 1e-9);
  const unfactored_ft = Math.floor(unfactored / foot + 1e-9);
  obstacles.push({
    place,
    name,
    required_percent: required * 100,
    achieved_percent: gradient * 100,
    factored_ft,
    unfactored_ft,
  });
  const parameters = { obstacle: name, factored_ft, unfactored_ft, clearance_ft: policies.verticalClearance };
  return atLeast(words, gradient * 100, required * 100, starts.kind, [{ code: 'obstacle-clearance', parameters }]);
}

/** The height at which the path starts, above where the roll starts; what is given up to gain speed is taken off. */
function pathStart(situation: Situation, heightLost_m: number, start_m: number): HeightInMetres {
  return (situation.screen_m - heightLost_m + surfaceHeight(situation, start_m)) as HeightInMetres;
}

/** Nothing is interpolated before the 50 ft point: an obstacle there is outside if it reaches that height, else unknown. */
function beforeScreen(words: Named, asked_ft: number, kind: Chain['kind'], obstacle: string): Judged {
  const reasons: Reason[] = [{ code: 'obstacle-before-screen', parameters: { obstacle } }];
  if (asked_ft < 50 - 1e-9) return undetermined(words, 'at least', reasons);
  const height = named(words.id, words.subject, `height over ${obstacle}`, 'ftHeight', words.limitStatus);
  // Before that point the aeroplane is lower than 50 ft: in whole feet, rounded down, at best 49. Where the distance is no
  // more than computed, the point may lie before the obstacle after all; that it may lie farther away changes nothing.
  return atLeast(height, 49, asked_ft, kind === 'at-least' ? 'value' : kind, reasons);
}
