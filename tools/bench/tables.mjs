// Reading one figure of a table, as the table grows, against the search and the arithmetic by hand.
import { interpolateTable } from 'groundroll/aircraft';
import { below } from './by-hand/below.mjs';
import { inPortions, interleaved, ratio, shares, spread } from './harness.mjs';
import { tableOf } from './table-sizes.mjs';

const sizes = [3, 5, 9, 17, 33];
const agreement = 1e-9;

const share = shares(11);
const points = Array.from({ length: 1000 }, () => ({
  mass: 850 + 200 * share(),
  pressureAltitude: 4000 * share(),
  temperature: 40 * share(),
}));

/** The reading by hand: a binary search on each axis and straight lines between the eight figures around the point. */
function readByHand(table) {
  const [masses, altitudes, temperatures] = table.axes.map(({ values }) => Float64Array.from(values));
  const cells = Float64Array.from(table.cells.flat(2));
  const along = temperatures.length;
  const across = along * altitudes.length;
  const part = (values, i, value) => (value - values[i]) / (values[i + 1] - values[i]);
  return ({ mass, pressureAltitude, temperature }) => {
    const i = below(masses, mass);
    const j = below(altitudes, pressureAltitude);
    const k = below(temperatures, temperature);
    const p = part(altitudes, j, pressureAltitude);
    const t = part(temperatures, k, temperature);
    const row = (corner) => cells[corner] + (cells[corner + 1] - cells[corner]) * t;
    const face = (corner) => row(corner) + (row(corner + along) - row(corner)) * p;
    const corner = i * across + j * along + k;
    const light = face(corner);
    return light + (face(corner + across) - light) * part(masses, i, mass);
  };
}

const over = (read) => inPortions(points, read, 64);

/** Times the reading of tables of several sizes, all in turn. */
export function measureTables({ rounds }) {
  const readings = sizes.map((size) => {
    const table = tableOf(size, 'm', (m, h, t) => m + h / 10 + t);
    const ours = (at) => interpolateTable({ table, at, worse: 'greater' });
    const byHand = readByHand(table);
    for (const point of points) {
      if (Math.abs(ours(point) - byHand(point)) > agreement) throw new Error(`${size}: ${JSON.stringify(point)}`);
    }
    return { size, ours, byHand };
  });
  const work = readings.flatMap(({ ours, byHand }) => [over(ours), over(byHand), over(byHand)]);
  const times = interleaved(work, { rounds });
  const first = times[0];
  return {
    sizes: readings.map(({ size }, i) => {
      const [ours, hand, control] = times.slice(3 * i, 3 * i + 3);
      return {
        valuesAlongAnAxis: size,
        cells: size ** 3,
        ns: spread(ours),
        byHand_ns: spread(hand),
        ratio: ratio(ours, hand),
        control: ratio(control, hand),
        toSmallest: ratio(ours, first),
      };
    }),
  };
}
