import {
  type Changes,
  type Comparison,
  type Conditions,
  conditionsOf,
  type LandingRequest,
  type North,
  policyDefaults,
  prepareLanding,
  prepareTakeoff,
  type TakeoffRequest,
  type Weather,
} from '../assessment/index.ts';
import { faultOfRefusal, type ReadResult } from '../documents/index.ts';
import { DomainError, demandNames } from '../units/index.ts';
import { at, type PerRow } from './column.ts';
import {
  type Allocate,
  type ComparisonColumns,
  type CriterionId,
  demandCount,
  demandPlaces,
  newComparisonColumns,
  type PlacedCriterion,
  placedCriteria,
  writeRow,
} from './criterion-columns.ts';
import { noRefusals, noteRefusal, type RefusedRows } from './refused-rows.ts';
import { conditionsAt, rowsOfWeather, type WeatherColumns } from './weather.ts';

/** Inputs of `columns`. */
export interface NewComparisonColumnsInputs {
  readonly rows: number;
  /** The criteria whose figures are wanted; all where not given. The verdict of a row is always that of all. */
  readonly criteria?: readonly CriterionId[] | undefined;
  /** Where the memory comes from; memory of this thread alone where not given. */
  readonly allocate?: Allocate | undefined;
}

/** Inputs of `compare`. */
export interface CompareColumnsInputs {
  readonly weather: WeatherColumns;
  /** Instead of the mass of the request. */
  readonly mass?: PerRow<'kg'> | undefined;
  /** Columns to write to instead of new ones: those of `columns`, of an earlier call, or of other memory of that shape. */
  readonly into?: ComparisonColumns | undefined;
}

/** A prepared take-off or landing that goes through columns of weather. */
export interface PreparedColumns {
  /** The north against which columns of directions must be: that of the wind of the request, else of its runway. */
  readonly north: North;
  /** Columns for the results of so many rows. */
  columns(x: NewComparisonColumnsInputs): ComparisonColumns;
  /**
   * The comparison of each row, as `compare` of the prepared take-off or landing gives it. Throws {@link DomainError} when
   * columns differ in length, are of another class, or have another unit or north; never for a figure in a row: that row is
   * refused, undetermined and counted.
   */
  compare(x: CompareColumnsInputs): ComparisonColumns & { readonly refused: RefusedRows };
}

/**
 * Prepares a take-off for columns of weather: for each row the verdicts and figures of {@link prepareTakeoff}.
 *
 * @param request - a take-off request; its weather says against which north winds are, and is else not used.
 * @returns the prepared take-off, or the faults of the request.
 *
 * @example
 * prepareTakeoffColumns({ schema: 'groundroll/takeoff-request/1' } as never).ok // => false
 */
export function prepareTakeoffColumns(request: TakeoffRequest): ReadResult<PreparedColumns> {
  return preparedColumns(request, prepareTakeoff(request));
}

/**
 * Prepares a landing for columns of weather: for each row the verdicts and figures of {@link prepareLanding}.
 *
 * @param request - a landing request; its weather says against which north winds are, and is else not used.
 * @returns the prepared landing, or the faults of the request.
 *
 * @example
 * prepareLandingColumns({ schema: 'groundroll/landing-request/1' } as never).ok // => false
 */
export function prepareLandingColumns(request: LandingRequest): ReadResult<PreparedColumns> {
  return preparedColumns(request, prepareLanding(request));
}

interface Comparable {
  readonly north: North;
  compare(conditions: Conditions, changes?: Changes): Comparison;
}

/** A weather that every criterion can be seen in: a variable wind is across and from behind. */
const anyWeather: Conditions = {
  from_deg: 'variable',
  speed_kt: 10,
  gust_kt: 10,
  gustReported: false,
  range_deg: undefined,
  temperature_degC: 15,
  dewPoint_degC: 5,
  pressure: { qnh_hPa: 1013.25 },
};

function preparedColumns(
  request: TakeoffRequest | LandingRequest,
  prepared: ReadResult<Comparable>,
): ReadResult<PreparedColumns> {
  if (!prepared.ok) return prepared;
  const { value: comparable } = prepared;
  const { north } = comparable;
  const { criteria, refused } = comparable.compare(anyWeather);
  if (refused !== undefined) return { ok: false, faults: [faultOfRefusal(new DomainError(refused))] };
  const placed = placedCriteria(criteria);
  const increment_kt = unreportedGustIncrement(request);
  return {
    ok: true,
    value: {
      north,
      columns: (x) => {
        demandNames('columns', x, ['rows', 'criteria', 'allocate']);
        const { rows, criteria: ids, allocate } = x;
        demandCount('rows', rows, 0, Number.MAX_SAFE_INTEGER);
        return newComparisonColumns(placed, rows, ids, allocate);
      },
      compare: (x) => {
        demandNames('compare', x, ['weather', 'mass', 'into']);
        const { weather, mass, into } = x;
        const rows = rowsOfWeather(weather, north, mass);
        const columns = into ?? newComparisonColumns(placed, rows, undefined, undefined);
        const places = demandPlaces(columns, placed, rows);
        const found = compareRows(comparable, { weather, mass, increment_kt }, columns, places, rows);
        return { verdict: columns.verdict, criteria: columns.criteria, refused: found };
      },
    },
  };
}

interface Given {
  readonly weather: WeatherColumns;
  readonly mass: PerRow<'kg'> | undefined;
  readonly increment_kt: number;
}

function compareRows(
  comparable: Comparable,
  { weather, mass, increment_kt }: Given,
  into: ComparisonColumns,
  places: readonly PlacedCriterion[],
  rows: number,
): RefusedRows {
  const refused = noRefusals();
  for (let row = 0; row < rows; row += 1) {
    const conditions = conditionsAt(weather, row, increment_kt);
    const comparison =
      mass === undefined ? comparable.compare(conditions) : comparable.compare(conditions, { mass_kg: at(mass, row) });
    if (comparison.refused !== undefined) noteRefusal(refused, row, comparison.refused);
    writeRow(into, places, row, comparison);
  }
  return refused;
}

/** What the policy of the request puts on a wind without a reported gust, as the assessment of such a wind says. */
function unreportedGustIncrement({ policies }: TakeoffRequest | LandingRequest): number {
  const unreportedGust = policies?.unreportedGust ?? policyDefaults.unreportedGust.default;
  const speed_kt = 1;
  const weather: Weather = {
    wind: { source: 'METAR', from: 'variable', speed: { value: speed_kt, unit: 'kt' } },
    temperature: { value: 15, unit: 'degC' },
    qnh: { value: 1013, unit: 'hPa' },
  };
  return conditionsOf(weather, { unreportedGust }).gust_kt - speed_kt;
}
