import { type DistanceData, type Figures, printedRange, type TablePoint } from '../../aircraft/index.ts';
import { isaDeviation } from '../../atmosphere/index.ts';
import type { Air } from './air-and-wind.ts';
import type { Recorder } from './step.ts';

/** Where a table is read today, in calm air on a level surface; the deviation from standard only where an axis asks for it. */
export function pointOf(r: Recorder, figures: Figures, mass_kg: number, air: Air): TablePoint {
  const needsDeviation = printedRange(figures, 'isaDeviation') !== undefined;
  const { pressureAltitude_ft, tableTemperature_degC } = air;
  return {
    mass: mass_kg,
    pressureAltitude: pressureAltitude_ft,
    densityAltitude: air.tableDensityAltitude_ft,
    temperature: tableTemperature_degC,
    headwind: 0,
    slope: 0,
    ...(needsDeviation
      ? {
          isaDeviation: r.step('atmosphere.isa-deviation', 'deviation from standard', isaDeviation, {
            temperature: tableTemperature_degC,
            pressureAltitude: pressureAltitude_ft,
          }),
        }
      : {}),
  };
}

/** Whether the distances of a table run along a quantity themselves, so that no other law may be applied for it. */
export function runsAlong({ distance }: DistanceData, quantity: 'headwind' | 'slope'): boolean {
  return printedRange(distance, quantity) !== undefined;
}
