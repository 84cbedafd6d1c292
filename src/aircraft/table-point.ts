import type { AxisQuantity } from './axis.ts';

/** Where a table is read: a value for each axis it has, in the reading unit of that quantity. */
export type TablePoint = { readonly [Q in AxisQuantity]?: number | undefined };
