import type { AxisQuantity } from './axis.ts';

/** How a table is read. */
export interface ReadingMode {
  /** Off the favourable edge (lighter, lower, colder, more headwind): read at the edge, or refuse. */
  readonly favourableEdge: 'read-at-edge' | 'refuse';
  /** Between printed values: interpolate, or take the next worse printed figure as it stands. */
  readonly between: 'interpolate' | 'next-worse';
  /** Which way the printed figures get worse; decides whether an edge may be read. */
  readonly worse: 'greater' | 'less';
  /** The axes whose high end is the favourable one; the low end is on every other. */
  readonly highIsFavourable: readonly AxisQuantity[];
}
