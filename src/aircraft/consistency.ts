import type { Fault } from '../documents/index.ts';
import { convert } from '../units/unit-table.ts';
import type { AxisQuantity } from './axis.ts';
import { climbProgressFaults } from './climb-progress-faults.ts';
import { type Figures, printedRanges } from './figures.ts';
import type { DistanceData, PerformanceData, StallSpeed, TakeoffData } from './performance-data.ts';
import { rollAtEachDistance } from './roll-and-distance.ts';
import { figureReader, samplesOf } from './samples.ts';

/** What no schema of single values can see: references between the parts, and figures that contradict each other. */
export function consistencyFaults(data: PerformanceData): Fault[] {
  return [
    ...configurationFaults(data),
    ...repetitionFaults(data),
    ...massFaults(data),
    ...calibrationFaults(data),
    ...stallSpeedFaults(data),
    ...data.takeoff.flatMap((table, i) => [
      ...distanceFaults(table, `takeoff[${i}]`),
      ...takeoffSpeedFaults(data, table, `takeoff[${i}]`),
    ]),
    ...data.landing.flatMap((table, i) => distanceFaults(table, `landing[${i}]`)),
    ...(data.climbProgress ?? []).flatMap((progress, i) => climbProgressFaults(progress, `climbProgress[${i}]`)),
  ];
}

function configurationFaults(data: PerformanceData): Fault[] {
  const faults: Fault[] = [];
  const phaseOf = new Map(data.configurations.map(({ id, phase }) => [id, phase]));
  if (phaseOf.size < data.configurations.length)
    faults.push({ path: 'configurations', message: 'two configurations have one id' });
  for (const phase of ['takeoff', 'landing'] as const) {
    const seen = new Set<string>();
    for (const [i, { configuration }] of data[phase].entries()) {
      const path = `${phase}[${i}].configuration`;
      if (phaseOf.get(configuration) !== phase)
        faults.push({ path, message: `"${configuration}" is not a ${phase} configuration of these data` });
      if (seen.has(configuration)) faults.push({ path, message: `a second table for "${configuration}"` });
      seen.add(configuration);
    }
  }
  for (const [i, { configuration }] of data.climb.entries()) {
    if (!phaseOf.has(configuration)) {
      faults.push({
        path: `climb[${i}].configuration`,
        message: `"${configuration}" is not a configuration of these data`,
      });
    }
  }
  return faults;
}

/** Two figures for one thing: nobody can say which is meant. */
function repetitionFaults(data: PerformanceData): Fault[] {
  const twice = (path: string, keys: readonly string[]): Fault[] =>
    keys.flatMap((key, i) =>
      keys.indexOf(key) < i ? [{ path: `${path}[${i}]`, message: `a second entry for ${key}` }] : [],
    );
  const surfaces = (phase: 'takeoff' | 'landing') =>
    data[phase].flatMap(({ corrections }, i) =>
      twice(
        `${phase}[${i}].corrections.surfaces`,
        (corrections.surfaces ?? []).map((each) => `${each.condition} ${each.surface}`),
      ),
    );
  return [
    ...twice(
      'calibrations',
      data.calibrations.map(({ flap }) => `flap ${flap}`),
    ),
    ...twice(
      'climb',
      data.climb.map(({ configuration, use }) => `${configuration}, ${use}`),
    ),
    ...twice(
      'climbProgress',
      (data.climbProgress ?? []).map(({ name }) => `"${name}"`),
    ),
    ...twice(
      'stallSpeeds',
      data.stallSpeeds.map(({ name, flap }) => `${name}, flap ${flap}`),
    ),
    ...surfaces('takeoff'),
    ...surfaces('landing'),
  ];
}

function massFaults({ masses }: PerformanceData): Fault[] {
  const [takeoff, landing] = [masses.maximumTakeoff, masses.maximumLanding].map(
    ({ value, unit }) => convert(value, unit, 'kg') as number,
  );
  if ((landing as number) <= (takeoff as number) * (1 + 1e-9)) return [];
  return [
    {
      path: 'masses.maximumLanding',
      message: `${masses.maximumLanding.value} ${masses.maximumLanding.unit} is above the maximum take-off mass`,
    },
  ];
}

function calibrationFaults(data: PerformanceData): Fault[] {
  return data.calibrations.flatMap(({ indicated, calibrated }, i) => {
    const path = `calibrations[${i}]`;
    if (indicated.values.length !== calibrated.values.length || indicated.values.length < 2) {
      return [
        {
          path,
          message: `${indicated.values.length} indicated against ${calibrated.values.length} calibrated speeds; as many of both, at least 2, are needed`,
        },
      ];
    }
    const rises = (values: readonly number[]) =>
      values.every((value, k) => k === 0 || value > (values[k - 1] as number));
    return rises(indicated.values) && rises(calibrated.values)
      ? []
      : [{ path, message: 'indicated and calibrated speeds must rise' }];
  });
}

/** A cleaner wing stalls faster: V_S0 is below V_S1 where both are printed in one reference. */
function stallSpeedFaults(data: PerformanceData): Fault[] {
  const of = (name: StallSpeed['name']) => data.stallSpeeds.filter((stall) => stall.name === name);
  return of('V_S0').flatMap((landing) =>
    of('V_S1')
      .filter((clean) => clean.speed.unit === landing.speed.unit && clean.speed.value <= landing.speed.value)
      .map((clean) => ({
        path: 'stallSpeeds',
        message: `V_S0 ${landing.speed.value} ${landing.speed.unit} is not below V_S1 ${clean.speed.value} ${clean.speed.unit}`,
      })),
  );
}

/** Which axes settle what the distance depends on: a density altitude holds both pressure and temperature. */
const coveredBy: Readonly<Record<'mass' | 'pressureAltitude' | 'temperature', readonly AxisQuantity[]>> = {
  mass: ['mass'],
  pressureAltitude: ['pressureAltitude', 'densityAltitude'],
  temperature: ['temperature', 'isaDeviation', 'densityAltitude'],
};

function distanceFaults(table: DistanceData, path: string): Fault[] {
  const faults: Fault[] = [];
  const along = (figures: Figures) =>
    printedRanges(figures)
      .map(({ quantity }) => quantity)
      .sort()
      .join(', ');
  if (along(table.groundRoll) !== along(table.distance)) {
    faults.push({
      path: `${path}.groundRoll.axes`,
      message: 'ground roll and distance must run along the same quantities',
    });
  }
  for (const quantity of ['mass', 'pressureAltitude', 'temperature'] as const) {
    const hasAxis = printedRanges(table.distance).some((range) => coveredBy[quantity].includes(range.quantity));
    const isStated = table.associatedConditions[quantity] !== undefined;
    if (hasAxis && isStated) {
      faults.push({
        path: `${path}.associatedConditions.${quantity}`,
        message: `the table has an axis of ${quantity}; a value beside it contradicts that`,
      });
    }
    if (!hasAxis && !isStated) {
      faults.push({
        path: `${path}.associatedConditions.${quantity}`,
        message: `a table without an axis of ${quantity} must state the ${quantity} it holds for`,
      });
    }
  }
  const { headwind, tailwind } = table.corrections;
  const change = `${path}.corrections`;
  if (headwind !== undefined && headwind.change.value > 0) {
    faults.push({
      path: `${change}.headwind.change`,
      message: `a headwind does not lengthen: ${headwind.change.value} percent`,
    });
  }
  if (headwind !== undefined && (headwind.change.value * headwind.upTo.value) / headwind.per.value <= -80) {
    faults.push({
      path: `${change}.headwind`,
      message: `${headwind.upTo.value} kt of headwind would leave less than 20 % of the distance`,
    });
  }
  const { favourableSlope } = table.corrections;
  const credit =
    favourableSlope && (favourableSlope.change.value * favourableSlope.upTo.value) / favourableSlope.per.value;
  if (credit !== undefined && credit <= -50) {
    faults.push({
      path: `${change}.favourableSlope`,
      message: `${favourableSlope?.upTo.value} percent of slope would leave less than half of the distance`,
    });
  }
  if (tailwind !== undefined && tailwind.change.value < 0) {
    faults.push({
      path: `${change}.tailwind.change`,
      message: `a tailwind does not shorten: ${tailwind.change.value} percent`,
    });
  }
  for (const key of ['headwind', 'tailwind', 'adverseSlope', 'favourableSlope'] as const) {
    const law = table.corrections[key];
    const perUnit = law === undefined ? 0 : Math.abs(law.change.value / law.per.value);
    if (perUnit > 25)
      faults.push({
        path: `${change}.${key}`,
        message: `${perUnit.toFixed(1)} percent for each ${key.endsWith('Slope') ? 'percent' : 'knot'} is more than 25`,
      });
  }
  for (const key of ['mass', 'pressureAltitude', 'temperature'] as const) {
    if (table.corrections[key] !== undefined && table.associatedConditions[key] === undefined) {
      faults.push({
        path: `${change}.${key}`,
        message: `there is nothing for it to start from: associatedConditions.${key} is missing`,
      });
    }
  }
  for (const { placeOf, cell, roll } of rollAtEachDistance(table)) {
    if (roll >= cell)
      faults.push({
        path: `${path}.distance.${placeOf()}`,
        message: `${oneDecimal(cell)} ${table.distance.unit} is not longer than the ground roll, ${oneDecimal(roll)} ${table.distance.unit}`,
      });
  }
  return faults;
}

/** A figure between printed ones, as it is worth printing. */
function oneDecimal(figure: number): number {
  return Number(figure.toFixed(1));
}

/** Lift-off is faster than the landing stall and slower than the speed at the screen height, at every printed mass. */
function takeoffSpeedFaults(data: PerformanceData, table: TakeoffData, path: string): Fault[] {
  const faults: Fault[] = [];
  const liftOffAt = figureReader(table.liftOffSpeed);
  const atScreenAt = figureReader(table.speedAtScreenHeight);
  for (const { place, point } of samplesOf(table.liftOffSpeed)) {
    const liftOff = liftOffAt(point) as number;
    const atScreen = atScreenAt(point);
    if (atScreen !== undefined && atScreen <= liftOff) {
      faults.push({
        path: `${path}.liftOffSpeed.${place}`,
        message: `${liftOff} kias is not below the speed at the screen height, ${atScreen} kias`,
      });
    }
    for (const stall of data.stallSpeeds) {
      if (stall.name === 'V_S0' && stall.speed.unit === 'kias' && liftOff <= stall.speed.value) {
        faults.push({
          path: `${path}.liftOffSpeed.${place}`,
          message: `${liftOff} kias is not above V_S0 ${stall.speed.value} kias`,
        });
      }
    }
  }
  return faults;
}
