import type { Fault } from '../../documents/index.ts';
import { asGiven } from '../../units/as-given.ts';
import type { Measure } from '../../units/index.ts';
import type { AnyRequest } from '../any-request.ts';
import { objectFaults, strayFaults } from '../argument-faults.ts';
import { alongRunway } from '../inputs/wind.ts';

/** The rows and columns of a table: masses, or winds along the runway, over temperatures. */
export interface RunwayDistanceAxes {
  /** Ascending, each with its loading in words where that helps. Not beside headwinds. */
  readonly masses?: readonly { readonly mass: Measure<'kg' | 'lb'>; readonly loading?: string }[];
  /** Steady winds along the runway in place of the reported one, a headwind positive; descending. */
  readonly headwinds?: readonly Measure<'kt'>[];
  /** Ascending. */
  readonly temperatures: readonly Measure<'degC'>[];
}

/** One row as it will be assessed. */
export interface RowAsked {
  readonly at: Measure<'kg' | 'lb' | 'kt'>;
  readonly words: string;
  readonly loading?: string;
  readonly request: AnyRequest;
  readonly path: 'masses' | 'headwinds';
}

/** Every row with its request. */
export function rowsAsked(request: AnyRequest, { masses, headwinds = [] }: RunwayDistanceAxes): RowAsked[] {
  if (masses === undefined) {
    return headwinds.map((at) => ({
      at,
      words: alongInWords(at.value),
      request: alongRunway(request, at.value),
      path: 'headwinds',
    }));
  }
  return masses.map(({ mass, loading }) => ({
    at: mass,
    words: asGiven(mass),
    ...(loading === undefined ? {} : { loading }),
    request: { ...request, mass },
    path: 'masses',
  }));
}

function alongInWords(headwind_kt: number): string {
  if (headwind_kt === 0) return 'calm';
  return `${asGiven({ value: Math.abs(headwind_kt), unit: 'kt' })} ${headwind_kt > 0 ? 'headwind' : 'tailwind'}`;
}

/** Rows and columns in order, none empty, one kind of row. */
export function axisFaults(axes: RunwayDistanceAxes): Fault[] {
  const unreadable = objectFaults('axes', axes);
  if (unreadable.length > 0) return unreadable;
  const { masses, headwinds, temperatures } = axes;
  if ((masses === undefined) === (headwinds === undefined))
    return [{ path: 'axes', message: 'one of masses and headwinds is needed' }];
  return [
    ...strayFaults('axes', axes, ['masses', 'headwinds', 'temperatures']),
    ...(masses === undefined ? [] : loadingFaults(masses)),
    ...(masses === undefined ? [] : axisListFaults('axes.masses', masses, ({ mass }) => mass, ['kg', 'lb'], 1)),
    ...(headwinds === undefined ? [] : axisListFaults('axes.headwinds', headwinds, (each) => each, ['kt'], -1)),
    ...axisListFaults('axes.temperatures', temperatures, (each) => each, ['degC'], 1),
  ];
}

/** What is no list, and what is no object in it, is refused with its measures. */
function loadingFaults(masses: NonNullable<RunwayDistanceAxes['masses']>): Fault[] {
  if (!Array.isArray(masses)) return [];
  return masses.flatMap((each: unknown, i) => {
    const path = `axes.masses[${i}]`;
    if (objectFaults(path, each).length > 0) return [];
    const { loading } = each as { loading?: unknown };
    const isText = loading === undefined || typeof loading === 'string';
    return [
      ...strayFaults(path, each as object, ['mass', 'loading']),
      ...(isText ? [] : [{ path: `${path}.loading`, message: `${loading} is not a text` }]),
    ];
  });
}

function axisListFaults<T>(
  path: string,
  list: readonly T[],
  measureOf: (each: T) => Measure | undefined,
  units: readonly string[],
  direction: 1 | -1,
): Fault[] {
  if (!Array.isArray(list) || list.length === 0 || list.length > 20)
    return [{ path, message: 'a list of 1 to 20 entries is needed' }];
  const measures = list.map((each) => (typeof each === 'object' && each !== null ? measureOf(each) : undefined));
  const faults = measures.flatMap((measured, i) => {
    if (typeof measured?.value !== 'number' || !Number.isFinite(measured.value))
      return [{ path: `${path}[${i}]`, message: 'a value with its unit is needed' }];
    const isFirst = measured.unit === measures[0]?.unit;
    return units.includes(measured.unit) && isFirst
      ? []
      : [{ path: `${path}[${i}]`, message: `${measured.unit} is not ${units.join(' or ')} throughout` }];
  });
  if (faults.length > 0) return faults;
  const values = measures.map((measured) => (measured as Measure).value * direction);
  return values.flatMap((value, i) =>
    i > 0 && value <= (values[i - 1] as number)
      ? [{ path: `${path}[${i}]`, message: `is not in ${direction > 0 ? 'ascending' : 'descending'} order` }]
      : [],
  );
}
