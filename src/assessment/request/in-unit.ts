import { convert, type UnitWord } from '../../units/unit-table.ts';

/** A measure of a request in one unit; the reader has already held its unit against its kind. */
export function inUnit(measured: { value: number; unit: UnitWord }, unit: UnitWord): number {
  return convert(measured.value, measured.unit, unit) as number;
}
