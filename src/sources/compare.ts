import { convert, isUnitWord, type UnitEntry, type UnitWord, unitTable } from '../units/unit-table.ts';
import type { CheckValue, ExpectedMeasure } from './check-value.ts';
import type { FormulaRecord } from './formula-record.ts';

/** One published figure beside ours. */
export interface ComparisonRow {
  readonly record: string;
  readonly checkValue: string;
  readonly output: string;
  readonly published: number | string;
  readonly ours: number | string;
  readonly unit: string;
  /** Ours minus published, in the printed unit; directions compare around the circle. */
  readonly residual: number;
  readonly tolerance: number;
  /** Size of the residual as a share of the tolerance: at most 1 is agreement. */
  readonly share: number;
}

/** Runs every check value through the formula of its record; one row per published figure. */
export function compareCheckValues(
  records: readonly FormulaRecord[],
  checkValues: readonly CheckValue[],
): readonly ComparisonRow[] {
  const byId = new Map(records.map((record) => [record.id, record]));
  return checkValues.flatMap((checkValue) => {
    const record = byId.get(checkValue.record);
    if (record === undefined) throw new Error(`check value ${checkValue.id}: no record ${checkValue.record}`);
    return compareOne(record, checkValue);
  });
}

function compareOne(record: FormulaRecord, checkValue: CheckValue): ComparisonRow[] {
  const where = `check value ${checkValue.id}`;
  const inputs = Object.fromEntries(
    Object.entries(checkValue.inputs).map(([name, input]) => [name, argument(record, name, input, where)]),
  );
  const result = record.formula(inputs);
  return Object.entries(checkValue.expected).map(([output, expected]) => {
    const ours = typeof result === 'object' && result !== null ? (result as Record<string, unknown>)[output] : result;
    const row = { record: record.id, checkValue: checkValue.id, output };
    if (typeof expected === 'string') {
      const share = ours === expected ? 0 : Number.POSITIVE_INFINITY;
      return { ...row, published: expected, ours: String(ours), unit: 'text', residual: share, tolerance: 0, share };
    }
    return { ...row, ...compareFigure(ours, expected, record.outputs[output]?.unit, `${where}, ${output}`) };
  });
}

/** A quantity in the unit of the formula's domain; anything else unchanged. */
function argument(record: FormulaRecord, name: string, input: unknown, where: string): unknown {
  if (!isMeasure(input)) return input;
  const wanted = record.domain[name]?.unit;
  if (wanted === undefined) throw new Error(`${where}: ${record.id} has no quantity ${name}`);
  const isDirection = wanted === 'deg' && (input.unit === 'degTrue' || input.unit === 'degMagnetic');
  return isDirection ? input.value : inUnit(input.value, input.unit, wanted, `${where}, ${name}`);
}

function compareFigure(ours: unknown, expected: ExpectedMeasure, unit: string | undefined, where: string) {
  if (typeof ours !== 'number' || unit === undefined) throw new Error(`${where}: the formula has no such output`);
  // A formula that works in the unit of its data, whatever that is, answers in the printed one.
  const inPrintedUnit = unit === 'data' ? ours : inUnit(ours, unit, expected.unit, where);
  const difference = inPrintedUnit - expected.value;
  const { circle }: UnitEntry = unitTable[expected.unit as UnitWord];
  const residual = circle === undefined ? difference : aroundCircle(difference, circle);
  const share = Math.abs(residual) / expected.tolerance;
  const { value: published, tolerance } = expected;
  return { published, ours: inPrintedUnit, unit: expected.unit, residual, tolerance, share };
}

/** The same difference, at most half a circle either way. */
function aroundCircle(difference: number, circle: number): number {
  return ((((difference + circle / 2) % circle) + circle) % circle) - circle / 2;
}

function inUnit(value: number, from: string, to: string, where: string): number {
  const converted = isUnitWord(from) && isUnitWord(to) ? convert(value, from as UnitWord, to as UnitWord) : undefined;
  if (converted === undefined) throw new Error(`${where}: ${from} does not convert to ${to}`);
  return converted;
}

function isMeasure(input: unknown): input is { value: number; unit: string } {
  return typeof input === 'object' && input !== null && 'value' in input && 'unit' in input;
}
