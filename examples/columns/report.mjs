// What the sweeps print: how long it took, and what was found.

import { verdictWords } from 'groundroll/columns';

/** Adds up verdicts and distances of some rows; `distance` is the column of the distance criterion. */
export function tallied({ verdict, criteria: [distance], refused }) {
  const counts = { undetermined: 0, within: 0, outside: 0 };
  let required_m = 0;
  for (let row = 0; row < verdict.length; row += 1) {
    counts[verdictWords[verdict[row]]] += 1;
    if (distance.hasFigure[row] === 1) required_m += distance.value[row];
  }
  return { evaluations: verdict.length, ...counts, refused: refused.count, required_m };
}

/** The sums of several tallies. */
export function summed(tallies) {
  const sum = {};
  for (const each of tallies) {
    for (const [name, count] of Object.entries(each)) sum[name] = (sum[name] ?? 0) + count;
  }
  return sum;
}

/** Times what follows, in seconds: by the clock, and of all processors together. Making the weather comes before. */
export function stopwatch() {
  const begin = performance.now();
  const used = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(used);
    return { seconds: (performance.now() - begin) / 1000, processorSeconds: (user + system) / 1e6 };
  };
}

/** Prints the result. */
export function report(name, found, { runways, threads, seconds, processorSeconds }, json) {
  const perSecond = Math.round(found.evaluations / seconds);
  if (json) {
    console.log(JSON.stringify({ name, ...found, runways, threads, seconds, processorSeconds, perSecond }));
    return;
  }
  const count = (n) => Math.round(n).toLocaleString('en').replaceAll(',', ' ');
  const share = (n) => `${((100 * n) / found.evaluations).toFixed(1)} %`;
  console.log(`${count(found.evaluations)} take-offs on ${count(runways)} runway ends, ${name} (${threads})`);
  console.log(
    `${share(found.within)} within, ${share(found.outside)} outside, ${share(found.undetermined)} undetermined`,
  );
  console.log(`${count(found.refused)} rows refused; ${count(found.required_m)} m required in all`);
  const times = `${seconds.toFixed(2)} s, of processors ${processorSeconds.toFixed(2)} s`;
  console.log(`${times}; ${count(perSecond)} take-offs a second`);
}
