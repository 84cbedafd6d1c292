import { runwayConditionCodes } from '../../distance/index.ts';
import type { Fault } from '../../documents/index.ts';
import { convert } from '../../units/unit-table.ts';
import { topOf } from './placed-obstacle.ts';
import type { Obstacle, Runway, RunwayEnd } from './request.ts';

/** What is wrong with a runway as it is described, and with the end named for use. */
export function runwayFaults(runway: Runway, inUse: string): Fault[] {
  const faults: Fault[] = [];
  const [a, b] = runway.ends;
  const painted = [a.designator, b.designator];
  if (a.designator === b.designator)
    faults.push({ path: 'runway.ends', message: `both ends are painted ${a.designator}` });
  if (!painted.includes(inUse))
    faults.push({ path: 'runwayInUse', message: `${inUse} is not painted at either end (${painted.join(', ')})` });
  faults.push(...reciprocalFaults(a, b), ...conditionCodeFaults(runway.surface));
  const length_m = convert(runway.length.value, runway.length.unit, 'm') as number;
  const elevations = runway.ends.map(
    ({ elevation }) => convert(elevation.value, elevation.unit, 'mElevation') as number,
  );
  const slope = (Math.abs((elevations[1] as number) - (elevations[0] as number)) / length_m) * 100;
  if (slope > 10)
    faults.push({
      path: 'runway.ends',
      message: `the elevations of the ends make a slope of ${slope.toFixed(1)} percent; at most 10 percent`,
    });
  const highest = runway.aerodromeElevation;
  if (
    highest !== undefined &&
    (convert(highest.value, highest.unit, 'mElevation') as number) < Math.max(...elevations) - 0.5
  ) {
    faults.push({
      path: 'runway.aerodromeElevation',
      message: `${highest.value} ${highest.unit} is below an end of the runway; the highest point of the aerodrome is wanted`,
    });
  }
  for (const [i, end] of runway.ends.entries()) faults.push(...declaredFaults(end, `runway.ends[${i}]`, length_m));
  for (const [i, obstacle] of (runway.obstacles ?? []).entries())
    faults.push(
      ...obstacleFaults(obstacle, painted, `runway.obstacles[${i}]`),
      ...topFaults(obstacle, elevations, `runway.obstacles[${i}]`),
    );
  return faults;
}

/** Code 6 is dry and every other code is not. */
function conditionCodeFaults(surface: Runway['surface']): Fault[] {
  if (surface.kind !== 'paved' || surface.conditionCode === undefined) return [];
  const { condition, conditionCode: code } = surface;
  if ((code === 6) === (condition === 'dry')) return [];
  const message = `runway condition code ${code} (${runwayConditionCodes[code].surface}) contradicts "${condition}"`;
  return [{ path: 'runway.surface.conditionCode', message }];
}

function reciprocalFaults(a: RunwayEnd, b: RunwayEnd): Fault[] {
  if (a.direction.unit !== b.direction.unit) {
    return [
      { path: 'runway.ends', message: `one end is stated in ${a.direction.unit}, the other in ${b.direction.unit}` },
    ];
  }
  const apart = Math.abs(((((a.direction.value - b.direction.value) % 360) + 360) % 360) - 180);
  if (apart <= 1) return [];
  return [
    {
      path: 'runway.ends',
      message: `${a.direction.value} and ${b.direction.value} ${a.direction.unit} are not opposite directions`,
    },
  ];
}

function declaredFaults(end: RunwayEnd, path: string, length_m: number): Fault[] {
  const faults: Fault[] = [];
  const metres = (key: 'TORA' | 'TODA' | 'ASDA' | 'LDA') => {
    const declared = end.declaredDistances?.[key];
    return declared === undefined ? undefined : (convert(declared.value, declared.unit, 'm') as number);
  };
  const run = metres('TORA') ?? length_m;
  for (const key of ['TODA', 'ASDA'] as const) {
    const distance = metres(key);
    // As far as the rounding of feet and metres goes they are the same.
    if (distance !== undefined && distance < run - 1) {
      faults.push({
        path: `${path}.declaredDistances.${key}`,
        message: `${distance} m is less than the TORA, ${run} m`,
      });
    }
  }
  if (run > length_m + 1) {
    faults.push({ path: `${path}.declaredDistances.TORA`, message: `${run} m is more than the runway, ${length_m} m` });
  }
  const displaced = end.displacedThreshold === undefined ? 0 : inMetres(end.displacedThreshold);
  if (displaced >= length_m) {
    faults.push({
      path: `${path}.displacedThreshold`,
      message: `${displaced} m is not within the runway of ${length_m} m`,
    });
  }
  const landing = metres('LDA');
  if (landing !== undefined && landing > length_m - displaced + 1) {
    const left = length_m - displaced;
    faults.push({
      path: `${path}.declaredDistances.LDA`,
      message: `${landing} m is more than the runway beyond the threshold, ${left} m`,
    });
  }
  return faults;
}

function inMetres(distance: { value: number; unit: 'm' | 'ft' }): number {
  return convert(distance.value, distance.unit, 'm') as number;
}

function obstacleFaults(obstacle: Obstacle, painted: readonly string[], path: string): Fault[] {
  const faults: Fault[] = [];
  if (!painted.includes(obstacle.end))
    faults.push({
      path: `${path}.end`,
      message: `${obstacle.end} is not painted at either end (${painted.join(', ')})`,
    });
  const byTop = obstacle.topElevation !== undefined;
  const byHeight = obstacle.groundElevation !== undefined && obstacle.height !== undefined;
  const half = obstacle.groundElevation !== undefined || obstacle.height !== undefined;
  if (byTop === byHeight || (byTop && half)) {
    faults.push({
      path,
      message: 'either the elevation of the top, or ground elevation and height together, is needed',
    });
  }
  return faults;
}

/** How far below and above the runway a top may lie; beyond that a digit or a unit slipped. */
const tops_m = { below: 900, above: 2900 };

function topFaults(obstacle: Obstacle, elevations_m: readonly number[], path: string): Fault[] {
  const top_m = topOf(obstacle);
  if (top_m === undefined) return [];
  const above_m = elevations_m.map((each) => top_m - each).find((each) => each < -tops_m.below || each > tops_m.above);
  if (above_m === undefined) return [];
  const lies = `${Math.round(Math.abs(above_m))} m ${above_m < 0 ? 'below' : 'above'} an end of the runway`;
  const message = `the top lies ${lies}, which is not within ${tops_m.below} m below and ${tops_m.above} m above`;
  return [{ path: `${path}.${obstacle.topElevation === undefined ? 'groundElevation' : 'topElevation'}`, message }];
}
