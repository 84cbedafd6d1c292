import geomagnetism from 'geomagnetism';

/** The field at one place: at the epoch of the model, and its change in a year. */
export interface FieldAtEpoch {
  readonly north_nT: number;
  readonly east_nT: number;
  readonly down_nT: number;
  readonly northChange_nT: number;
  readonly eastChange_nT: number;
  readonly downChange_nT: number;
}

// The model is linear in time. Two instants one model year apart give the field at its epoch and the change in a year,
// and so every date to the very end of the validity, leap years included, without asking the evaluator for one.
const epoch_ms = Date.UTC(2025, 0, 1);
const yearLater_ms = Date.UTC(2026, 0, 1);

let atEpoch: ReturnType<typeof geomagnetism.model> | undefined;
let atYearLater: ReturnType<typeof geomagnetism.model> | undefined;

/** The field at a place on or above the WGS 84 ellipsoid, in degrees and kilometres. */
export function fieldAtEpoch(latitude: number, longitude: number, height_km: number): FieldAtEpoch {
  atEpoch ??= geomagnetism.model(new Date(epoch_ms));
  atYearLater ??= geomagnetism.model(new Date(yearLater_ms));
  const first = atEpoch.point([latitude, longitude, height_km]);
  const second = atYearLater.point([latitude, longitude, height_km]);
  return {
    north_nT: first.x,
    east_nT: first.y,
    down_nT: first.z,
    northChange_nT: second.x - first.x,
    eastChange_nT: second.y - first.y,
    downChange_nT: second.z - first.z,
  };
}
