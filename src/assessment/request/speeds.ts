import { bracketPrepared, interpolateCell, isChart, type PreparedTable, printedRange } from '../../aircraft/index.ts';
import { roundUp } from '../../units/index.ts';
import { edgeReasons, noReading } from '../kernel/no-reading.ts';
import type { Reason } from '../result/reason.ts';
import { inUnit } from './in-unit.ts';
import type { ReadySpeeds } from './ready-figures.ts';
import type { Situation } from './situation.ts';

/** A speed, calibrated where the data allow; one that is flown is rounded up to a whole knot first. */
export interface FlownSpeed {
  readonly kias: number;
  readonly kcas: number | undefined;
}

/** A speed, or why the data have none for this mass. */
export type SpeedReading =
  | ({ readonly ok: true; readonly edges: readonly Reason[] } & FlownSpeed)
  | { readonly ok: false; readonly reason: Reason };

/** The speed printed for this mass, rounded up to a whole knot, with an addition before rounding. */
export function flownSpeed(
  situation: Situation,
  speeds: ReadySpeeds,
  addition_kt = 0,
  flap = situation.flap,
): SpeedReading {
  const printed = printedSpeed(situation, speeds);
  if (!printed.ok) return printed;
  const kias = roundUp(printed.kias + addition_kt);
  return { ok: true, kias, kcas: calibrated(situation, flap, kias), edges: printed.edges };
}

/** The speed printed for this mass, unrounded. */
export function printedSpeed(situation: Situation, { name, asChosen }: ReadySpeeds): SpeedReading {
  return speedAt(situation, asChosen, name, situation.mass_kg);
}

/**
 * The speed that today's reading of the distance table belongs to, unrounded. Always interpolated: of two speeds the
 * slower is the worse one to pay an addition from.
 */
export function tableSpeed(situation: Situation, { name, interpolated }: ReadySpeeds): SpeedReading {
  return speedAt(situation, interpolated, name, massOfTable(situation));
}

/** The mass that the distance table is read at, where that is more than today's: stated, the first printed, or the next worse. */
function massOfTable({ table, mass_kg, policies }: Situation): number {
  if (table === undefined) return mass_kg;
  const { distance, associatedConditions } = table;
  if (associatedConditions.mass !== undefined) return Math.max(mass_kg, inUnit(associatedConditions.mass, 'kg'));
  const range = printedRange(distance, 'mass');
  if (range === undefined) return mass_kg;
  const inKilograms = (value: number) => inUnit({ value, unit: range.unit }, 'kg');
  if (policies.betweenPrintedValues === 'interpolate' || isChart(distance))
    return Math.max(mass_kg, inKilograms(range.from));
  const printed = distance.axes.find(({ quantity }) => quantity === 'mass')?.values ?? [];
  return printed.map(inKilograms).find((each) => each >= mass_kg) ?? mass_kg;
}

function speedAt(situation: Situation, speeds: PreparedTable, name: string, mass_kg: number): SpeedReading {
  const point = { mass: mass_kg };
  const reading = bracketPrepared(speeds, point);
  if (!reading.ok) return { ok: false, reason: noReading(reading, name) };
  const kias = interpolateCell(reading.cell);
  const edges = edgeReasons(reading.atEdge, point, name);
  return { ok: true, kias, kcas: calibrated(situation, situation.flap, kias), edges };
}

/** An indicated airspeed through the data's own calibration for that flap; none without one. */
export function calibrated({ calibrations }: Situation, flap: string, kias: number): number | undefined {
  const calibration = calibrations.get(flap);
  if (calibration === undefined) return undefined;
  const reading = bracketPrepared(calibration, { indicatedAirspeed: kias });
  return reading.ok ? interpolateCell(reading.cell) : undefined;
}
