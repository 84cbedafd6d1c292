import { surfaceInWords } from '../../distance/index.ts';
import { asGiven } from '../../units/as-given.ts';
import type { Measure } from '../../units/index.ts';
import { type AnyRequest, configurationOf } from '../any-request.ts';
import { factorSetOf } from '../factor-set-of-request.ts';

/** Everything that the figures hold for, in one list. */
export function conditionsInWords(request: AnyRequest, rowsAlong: 'mass' | 'headwind'): string {
  const { performanceData, runway, runwayInUse, weather, safetyFactor } = request;
  const configuration = performanceData.configurations.find(({ id }) => id === configurationOf(request));
  const set = factorSetOf(request);
  const { qnh, qfe, wind } = weather;
  const pressure =
    qnh === undefined ? `QFE is not below ${asGiven(qfe as Measure)}` : `QNH is not below ${asGiven(qnh)}`;
  const from =
    typeof wind.from === 'string'
      ? wind.from === 'variable'
        ? 'variable'
        : 'of no reported direction'
      : asGiven(wind.from);
  const gust = wind.gust === undefined ? '' : ` gusting ${asGiven(wind.gust)}`;
  const safety =
    safetyFactor === 'none'
      ? 'without a safety factor'
      : set.hasSafetyFactor
        ? 'with its safety factor'
        : 'which asks for no safety factor';
  const conditions = [
    `the aeroplane is ${performanceData.identity.name} (${configuration?.name ?? ''})`,
    ...(rowsAlong === 'mass' ? [] : [`its mass is not above ${asGiven(request.mass)}`]),
    `the runway is ${runwayInUse} at ${runway.aerodrome}, ${asGiven(runway.length)} of ${surfaceInWords(runway.surface)}`,
    ...(rowsAlong === 'mass'
      ? [`the wind is ${from} at ${asGiven(wind.speed)}${gust}`]
      : ['the wind is steady along the runway']),
    pressure,
    `the factors are those of ${set.title} (${set.edition}), ${safety}`,
  ];
  return [conditions.slice(0, -1).join(', '), ...conditions.slice(-1)].join(', and ');
}
