// Timing for benchmarks: pieces of work take turns, so that whatever else the machine does meets all of them alike.

/** The value below which this share of the sorted values lies. */
const quantile = (sorted, share) => sorted[Math.round(share * (sorted.length - 1))];

/** Median, and between which values the middle eight tenths lie. */
export function spread(values) {
  const sorted = [...values].sort((a, b) => a - b);
  return { median: quantile(sorted, 0.5), low: quantile(sorted, 0.1), high: quantile(sorted, 0.9) };
}

/** Work that was left out by the compiler costs nothing; results are summed up here, and this is looked at in the end. */
let sink = 0;

export function demandFigures() {
  if (!Number.isFinite(sink)) throw new Error('a result of the work was not a number');
}

const leastTime_ns = 100_000;
/** How long each piece runs before it is timed, by the clock and in computing: the engine compiles beside it. */
const warmUp_ns = 40_000_000;

function timeOnce({ run, per = 1 }, repetitions) {
  const start = process.hrtime.bigint();
  for (let i = 0; i < repetitions; i += 1) sink += run();
  return Number(process.hrtime.bigint() - start) / (repetitions * per);
}

/** Runs a piece until it is warm; gives how often it must run to last long enough for the clock. */
function warmedUp(piece) {
  const before = process.cpuUsage();
  for (let repetitions = 1, ran_ns = 0; ; ) {
    const took_ns = timeOnce(piece, repetitions) * repetitions * (piece.per ?? 1);
    ran_ns += took_ns;
    const { user, system } = process.cpuUsage(before);
    if (took_ns < leastTime_ns) repetitions *= 2;
    else if (Math.min(ran_ns, 1000 * (user + system)) >= warmUp_ns) return repetitions;
  }
}

/**
 * Nanoseconds for one of the `per` things that each run does, one figure a round for each piece of work. The pieces take
 * turns, in another order each round: what runs after its like finds its data nearer.
 */
export function interleaved(pieces, { rounds }) {
  const times = pieces.map(() => []);
  const repetitions = pieces.map(warmedUp);
  const share = shares(23);
  const order = pieces.map((_, i) => i);
  for (let round = 0; round < rounds; round += 1) {
    for (let last = order.length - 1; last > 0; last -= 1) {
      const other = Math.floor(share() * (last + 1));
      [order[last], order[other]] = [order[other], order[last]];
    }
    for (const i of order) times[i].push(timeOnce(pieces[i], repetitions[i]));
  }
  return times;
}

/**
 * Work over a list, a few entries a run and on from there in the next. A run that is short is seldom interrupted by what
 * else the machine does.
 */
export function inPortions(list, work, size = Math.min(16, list.length)) {
  let next = 0;
  return {
    per: size,
    run: () => {
      let sum = 0;
      for (let i = 0; i < size; i += 1) {
        sum += work(list[next]);
        next = next + 1 === list.length ? 0 : next + 1;
      }
      return sum;
    },
  };
}

/**
 * Nanoseconds for each entry where so many are worked through in one go, the list over and over, one figure a go: the
 * portions above make room for each other, and each begins among what the others left.
 */
export function inOneGo(list, work, count, goes) {
  const repetitions = Math.ceil(count / list.length);
  const run = () => {
    let sum = 0;
    for (let i = 0; i < list.length; i += 1) sum += work(list[i]);
    return sum;
  };
  return Array.from({ length: goes }, () => timeOnce({ run, per: list.length }, repetitions));
}

/** The ratio of two pieces that took turns, round by round. */
export const ratio = (times, base) => spread(times.map((time, round) => time / base[round]));

/** The difference of two pieces that took turns, round by round. */
export const difference = (times, base) => spread(times.map((time, round) => time - base[round]));

/** Numbers from 0 to 1 that are the same in every run. */
export function shares(seed = 1) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
}
