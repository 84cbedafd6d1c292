// Tables of the flight manual with more and more rows, all printing the same straight figures.

/** Values from one end to the other. */
const evenly = (from, to, count) => Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

/** A table over mass, pressure altitude and temperature with so many values along each. */
export function tableOf(count, unit, figure) {
  const masses = evenly(850, 1050, count);
  const altitudes = evenly(0, 4000, count);
  const temperatures = evenly(0, 40, count);
  return {
    axes: [
      { quantity: 'mass', unit: 'kg', values: masses },
      { quantity: 'pressureAltitude', unit: 'ftPA', values: altitudes },
      { quantity: 'temperature', unit: 'degC', values: temperatures },
    ],
    unit,
    cells: masses.map((m) => altitudes.map((h) => temperatures.map((t) => figure(m, h, t)))),
  };
}

/** Performance data whose take-off and climb tables have so many values along each axis. */
export function performanceDataOf(data, count) {
  const [takeoff, ...others] = data.takeoff;
  const roll = tableOf(count, 'm', (m, h, t) => 0.35 * (m - 400) + 0.02 * h + 1.5 * t);
  const distance = tableOf(count, 'm', (m, h, t) => 0.7 * (m - 430) + 0.045 * h + 3 * t);
  const rate = tableOf(count, 'ftPerMin', (m, h, t) => 1700 - m - 0.05 * h - 4 * t);
  const climb = data.climb.map((each) => (each.use === 'initial' ? { ...each, rateOfClimb: rate } : each));
  return { ...data, takeoff: [{ ...takeoff, groundRoll: roll, distance }, ...others], climb, examples: [] };
}
