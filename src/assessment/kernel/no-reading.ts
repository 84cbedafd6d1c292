import {
  axisFacts,
  type NoChartReading,
  type NoReading,
  type TableAxis,
  type TablePoint,
} from '../../aircraft/index.ts';
import { convert } from '../../units/unit-table.ts';
import type { Reason } from '../result/reason.ts';

/** Why a table has no figure, as a reason. */
export function noReading(reading: NoReading, table: string): Reason {
  if (reading.reason === 'blank') return { code: 'blank-cell', parameters: { table } };
  const { axis } = reading;
  const min = axis.values[0] as number;
  const max = axis.values[axis.values.length - 1] as number;
  const given = reading.reason === 'axis-missing' ? 0 : reading.at;
  const parameters = { table, quantity: axisFacts[axis.quantity].words, given, min, max, unit: axis.unit };
  return { code: reading.reason === 'not-monotonic' ? 'table-not-monotonic' : 'off-table', parameters };
}

/** Why a chart has no figure, as a reason. */
export function noChartReading({ reason, scale, at, min, max }: NoChartReading, chart: string): Reason {
  const parameters = { table: chart, quantity: axisFacts[scale.quantity].words, given: at, min, max, unit: scale.unit };
  if (reason === 'off-curves')
    return { code: 'off-curves', parameters: { table: chart, quantity: parameters.quantity } };
  return { code: reason === 'not-monotonic' ? 'table-not-monotonic' : 'off-table', parameters };
}

/** The axes on which a table was read at its favourable edge, as reasons. */
export function edgeReasons(atEdge: readonly TableAxis[], point: TablePoint, table: string): Reason[] {
  return atEdge.map(({ quantity, unit, values }) => {
    const given = convert(point[quantity] as number, axisFacts[quantity].readingUnit, unit) as number;
    return {
      code: 'read-at-edge',
      parameters: { table, quantity: axisFacts[quantity].words, given, edge: nearestOf(values, given), unit },
    };
  });
}

/** The end of an axis that a value beyond it is nearest to. */
function nearestOf(values: readonly number[], beyond: number): number {
  const [first, last] = [values[0], values[values.length - 1]] as [number, number];
  return beyond < first ? first : last;
}
