import type { TablePoint } from '../../aircraft/index.ts';
import { isaDeviation } from '../../atmosphere/index.ts';
import type { ReadyFigures } from '../request/ready-figures.ts';
import type { Air } from './air-and-wind.ts';
import type { Recorder } from './step.ts';

/** Where figures are read beside mass and air: calm, level and at no height where not stated. */
export interface Beside {
  readonly headwind?: number | undefined;
  readonly slope?: number | undefined;
  readonly height?: number | undefined;
}

const calmAndLevel: Beside = {};

/** Where a table is read today; the deviation from standard only where an axis asks for it. */
export function pointOf(
  r: Recorder,
  { runsAlongIsaDeviation }: ReadyFigures,
  mass_kg: number,
  air: Air,
  { headwind = 0, slope = 0, height = 0 }: Beside = calmAndLevel,
): TablePoint {
  const { pressureAltitude_ft: pressureAltitude, tableTemperature_degC: temperature } = air;
  return {
    mass: mass_kg,
    pressureAltitude,
    densityAltitude: air.tableDensityAltitude_ft,
    temperature,
    isaDeviation: runsAlongIsaDeviation
      ? r.step('atmosphere.isa-deviation', 'deviation from standard', isaDeviation, { temperature, pressureAltitude })
      : undefined,
    headwind,
    slope,
    height,
  };
}
