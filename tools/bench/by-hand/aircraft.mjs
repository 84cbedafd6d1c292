// The formulas of `src/aircraft` by hand: arguments in the order of the record's inputs, no checks. Those of tables and
// charts are read in two axes, and on a chart between two curves, by straight lines.

export const algebraic = {
  'aircraft.climb-increment': (atLower, atUpper, factor) => factor * (atUpper - atLower),
  'aircraft.interpolate-cell': ([x1, y1], [x2, y2], [x, y], [a, b, c, d]) => {
    const alongY = y2 === y1 ? 0 : (y - y1) / (y2 - y1);
    const alongX = x2 === x1 ? 0 : (x - x1) / (x2 - x1);
    const lower = a + (b - a) * alongY;
    return lower + (c + (d - c) * alongY - lower) * alongX;
  },
  'aircraft.interpolate-curves': (along, at, lower, upper) => {
    const on = ({ from, to }) => from[1] + ((to[1] - from[1]) * (along - from[0])) / (to[0] - from[0]);
    const onLower = on(lower);
    return onLower + ((on(upper) - onLower) * (at - lower.at)) / (upper.at - lower.at);
  },
};

export const transcendental = {};
