import type { NoReading, TableAxis, TablePoint } from '../../aircraft/index.ts';
import { convert } from '../../units/unit-table.ts';
import type { Reason } from '../result/reason.ts';

const words = {
  mass: 'mass',
  pressureAltitude: 'pressure altitude',
  temperature: 'temperature',
  indicatedAirspeed: 'indicated airspeed',
} as const;

const readingUnit = { mass: 'kg', pressureAltitude: 'ftPA', temperature: 'degC', indicatedAirspeed: 'kias' } as const;

/** Why a table has no figure, as a reason. */
export function noReading(reading: NoReading, table: string): Reason {
  if (reading.reason === 'blank') return { code: 'blank-cell', parameters: { table } };
  const { axis } = reading;
  const min = axis.values[0] as number;
  const max = axis.values[axis.values.length - 1] as number;
  const given = reading.reason === 'axis-missing' ? 0 : reading.at;
  const parameters = { table, quantity: words[axis.quantity], given, min, max, unit: axis.unit };
  return { code: reading.reason === 'not-monotonic' ? 'table-not-monotonic' : 'off-table', parameters };
}

/** The axes on which a table was read at its favourable edge, as reasons. */
export function edgeReasons(atEdge: readonly TableAxis[], point: TablePoint, table: string): Reason[] {
  return atEdge.map(({ quantity, unit, values }) => {
    const given = convert(point[quantity] as number, readingUnit[quantity], unit) as number;
    return {
      code: 'read-at-edge',
      parameters: { table, quantity: words[quantity], given, edge: values[0] as number, unit },
    };
  });
}
