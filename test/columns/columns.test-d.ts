import { describe, expectTypeOf, it } from 'vitest';
import {
  type Column,
  densityAltitudeColumn,
  type PreparedColumns,
  verdictWords,
  windComponentsColumns,
} from '../../src/columns/index.ts';
import { degC, degMagnetic, degTrue, ft, ftPA, kt, ktas } from '../../src/units/index.ts';

declare const fromTrue: Column<'degTrue'>;
declare const fromMagnetic: Column<'degMagnetic'>;
declare const speed: Column<'kt'>;
declare const metresPerSecond: Column<'mps'>;
declare const temperature: Column<'degC'>;
declare const prepared: PreparedColumns;

describe('columns', () => {
  it('of winds are against one north', () => {
    windComponentsColumns({ from: fromTrue, speed, direction: degTrue(280) });
    windComponentsColumns({ from: fromMagnetic, speed, direction: fromMagnetic });
    // @ts-expect-error: two norths
    windComponentsColumns({ from: fromTrue, speed, direction: degMagnetic(280) });
    // @ts-expect-error: two norths
    windComponentsColumns({ from: fromTrue, speed, direction: fromMagnetic });
  });

  it('are in the unit of the formula', () => {
    windComponentsColumns({ from: fromTrue, speed: kt(7), direction: fromTrue });
    // @ts-expect-error: m/s
    windComponentsColumns({ from: fromTrue, speed: metresPerSecond, direction: fromTrue });
    // @ts-expect-error: an airspeed
    windComponentsColumns({ from: fromTrue, speed: ktas(7), direction: fromTrue });
    densityAltitudeColumn({ pressureAltitude: ftPA(1000), temperature });
    // @ts-expect-error: a length
    densityAltitudeColumn({ pressureAltitude: ft(1000), temperature });
  });

  it('of weather are in the units of a comparison', () => {
    prepared.compare({
      weather: { from: fromTrue, speed, temperature: degC(15), qnh: { unit: 'hPa', values: speed.values } },
    });
    // @ts-expect-error: a pressure in kt
    prepared.compare({ weather: { from: fromTrue, speed, temperature, qnh: speed } });
    // @ts-expect-error: no temperature
    prepared.compare({ weather: { from: fromTrue, speed } });
  });

  it('of verdicts have words', () => {
    expectTypeOf(verdictWords).toEqualTypeOf<readonly ['undetermined', 'within', 'outside']>();
  });
});
