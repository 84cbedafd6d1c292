import { consistencyFaults } from '../../aircraft/index.ts';
import { type FactorSet, factorSets, factorsOf } from '../../distance/index.ts';
import type { Fault } from '../../documents/index.ts';
import { convert } from '../../units/unit-table.ts';
import { northOfRunway, northOfWind } from './north.ts';
import type { LandingRequest, TakeoffRequest } from './request.ts';
import { runwayFaults } from './runway-faults.ts';
import { weatherFaults } from './weather-faults.ts';

/** What no schema of single values can see in a request; all of it at once. */
export function requestFaults(request: TakeoffRequest | LandingRequest): Fault[] {
  const { performanceData, runway, weather } = request;
  return [
    ...consistencyFaults(performanceData).map(({ path, message }) => ({ path: `performanceData.${path}`, message })),
    ...configurationFaults(request),
    ...runwayFaults(runway, request.runwayInUse),
    ...weatherFaults(weather).map(({ path, message }) => ({ path: `weather.${path}`, message })),
    ...northFaults(request),
    ...confirmationFaults(request),
    ...designatorFaults(request),
    ...choiceFaults(request),
  ];
}

function configurationFaults(request: TakeoffRequest | LandingRequest): Fault[] {
  const phase = phaseOf(request);
  const ofPhase = request.performanceData.configurations
    .filter((candidate) => candidate.phase === phase)
    .map(({ id }) => id);
  const { configuration } = request;
  const choices = ofPhase.map((id) => `"${id}"`).join(', ');
  if (configuration === undefined) {
    if (ofPhase.length === 1) return [];
    return [
      { path: 'configuration', message: `none is named, and the data have ${ofPhase.length} for ${phase}: ${choices}` },
    ];
  }
  if (ofPhase.includes(configuration)) return [];
  return [
    { path: 'configuration', message: `"${configuration}" is not a ${phase} configuration of these data: ${choices}` },
  ];
}

/** The phase of flight that a request is about. */
export function phaseOf(request: TakeoffRequest | LandingRequest): 'takeoff' | 'landing' {
  return request.schema === 'groundroll/takeoff-request/1' ? 'takeoff' : 'landing';
}

/** A wind and a runway against different norths need the variation between them; nothing is converted without one. */
function northFaults(request: TakeoffRequest | LandingRequest): Fault[] {
  const { weather, variation } = request;
  const windNorth = northOfWind(weather.wind);
  const runwayNorth = northOfRunway(request);
  if (windNorth === undefined || windNorth === runwayNorth || variation !== undefined) return [];
  return [
    {
      path: 'variation',
      message: `the wind is in ${windNorth} and the runway in ${runwayNorth}; the variation between them is needed`,
    },
  ];
}

/** A confirmation of a factor that the set does not have would be lost silently. */
function confirmationFaults(request: TakeoffRequest | LandingRequest): Fault[] {
  const set: FactorSet = typeof request.factorSet === 'string' ? factorSets[request.factorSet] : request.factorSet;
  const ids = new Set([...factorsOf(set.takeoff), ...factorsOf(set.landing)].map(({ id }) => id));
  return (request.policies?.confirmations ?? []).flatMap(({ factorId }, i) =>
    ids.has(factorId)
      ? []
      : [
          {
            path: `policies.confirmations[${i}].factorId`,
            message: `"${factorId}" is not a factor of ${set.title}`,
          },
        ],
  );
}

/**
 * A painted number that contradicts the direction: both ends exchanged, or another runway. Against a known north the
 * number may be 30° out (parallel runways, old paint); against true north alone the variation is not known.
 */
function designatorFaults({ runway, variation }: TakeoffRequest | LandingRequest): Fault[] {
  return runway.ends.flatMap(({ designator, direction }, i) => {
    const painted = Number.parseInt(designator, 10) * 10;
    const other = variation?.value.value ?? 0;
    const readings = [direction.value, direction.value - other, direction.value + other];
    const apart = Math.min(...readings.map((reading) => Math.abs(((((reading - painted) % 360) + 540) % 360) - 180)));
    const most = direction.unit === 'degTrue' && variation === undefined ? 90 : 30;
    if (apart <= most) return [];
    return [
      {
        path: `runway.ends[${i}].direction`,
        message: `${direction.value} ${direction.unit} contradicts the painted number ${designator}; at most ${most}° apart`,
      },
    ];
  });
}

/** Choices that need something beside them. */
function choiceFaults(request: TakeoffRequest | LandingRequest): Fault[] {
  const faults: Fault[] = [];
  if (request.policies?.humidity === 'virtual temperature' && request.weather.dewPoint === undefined) {
    faults.push({ path: 'weather.dewPoint', message: 'is needed to read the tables at the virtual temperature' });
  }
  if ('lineUpLoss' in request && request.lineUpLoss !== undefined) {
    const end = request.runway.ends.find(({ designator }) => designator === request.runwayInUse);
    const run = end?.declaredDistances?.TORA ?? request.runway.length;
    const loss_m = convert(request.lineUpLoss.value, request.lineUpLoss.unit, 'm') as number;
    const run_m = convert(run.value, run.unit, 'm') as number;
    if (loss_m >= run_m) faults.push({ path: 'lineUpLoss', message: `${loss_m} m is not within the TORA, ${run_m} m` });
  }
  return faults;
}
