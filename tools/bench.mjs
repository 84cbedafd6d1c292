// `npm run bench`: how long the things take that a planner does often. A benchmark, not a test: nothing here passes or
// fails. Each figure is the median of interleaved rounds, and the A/A line (the same work twice) says how far two equal
// figures may differ on this machine today. Build first.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import { prepareLanding, prepareTakeoff, readTakeoffRequest } from 'groundroll';
import { densityAltitude } from 'groundroll/atmosphere';
import { variationAt } from 'groundroll/magnetism';
import { uncertainty } from 'groundroll/study';
import { usabilityFactor, windComponents } from 'groundroll/wind';

const json = (file) => JSON.parse(fs.readFileSync(`examples/${file}`, 'utf8'));
const requestOf = (name) => ({
  ...json(`requests/${name}.json`),
  performanceData: json('performance-data/corran-four.json'),
});
const takeoff = prepareTakeoff(requestOf('takeoff-28'));
const landing = prepareLanding(requestOf('landing-10'));
if (!takeoff.ok || !landing.ok) throw new Error('the examples have faults');

const many = Array.from({ length: 1000 }, (_, i) => ({
  from_deg: 1 + ((i * 7) % 360),
  speed_kt: 3 + (i % 12),
  gust_kt: 3 + (i % 12) + (i % 5),
  gustReported: true,
  range_deg: undefined,
  temperature_degC: i % 35,
  dewPoint_degC: undefined,
  pressure: { qnh_hPa: 990 + (i % 40) },
}));
const angles = many.map(({ from_deg: from, speed_kt: speed }) => ({ from, speed, direction: 112 }));
const air = many.map((each, i) => ({ pressureAltitude: (i * 9) % 9000, temperature: each.temperature_degC }));
const at = variationAt({ latitude: 62.3, longitude: 29.5 });
const hours = 87_600;
const observed = {
  directions: { unit: 'degTrue', values: Float64Array.from({ length: hours }, (_, i) => 10 + ((i * 130) % 360)) },
  speeds: { unit: 'kt', values: Float64Array.from({ length: hours }, (_, i) => i % 25) },
};

/** Results are summed up, so that no engine may leave the work out. */
let sink = 0;
const request = requestOf('takeoff-28');
/** @type {readonly { name: string, per: number, run: () => number }[]} */
const work = [
  { name: 'wind components', per: 1000, run: () => sum(angles, (each) => windComponents(each).headwind) },
  { name: 'density altitude', per: 1000, run: () => sum(air, densityAltitude) },
  { name: 'variation, a further date at one place', per: 1000, run: () => sum(many, (_, i) => declination(i)) },
  {
    name: 'prepared take-off, compared',
    per: 1000,
    run: () => sum(many, (each) => takeoff.value.compare(each).criteria.length),
  },
  {
    name: 'prepared take-off, compared (A/A)',
    per: 1000,
    run: () => sum(many, (each) => takeoff.value.compare(each).criteria.length),
  },
  {
    name: 'prepared landing, compared',
    per: 1000,
    run: () => sum(many, (each) => landing.value.compare(each).criteria.length),
  },
  { name: 'one request read', per: 1, run: () => Number(readTakeoffRequest(request).ok) },
  {
    name: 'ten thousand cases of a take-off',
    per: 1,
    run: () => Number(uncertainty(request, { cases: 10_000, seed: 1 }).ok),
  },
  { name: 'usability factor, ten years of hours, two directions', per: 1, run: usability },
];

function declination(i) {
  const found = at({ date: 2026 + i / 1000 });
  return found.zone === 'blackout' ? 0 : found.variation;
}

function usability() {
  const runways = [
    { name: '10', direction: 112 },
    { name: '28', direction: 292 },
  ];
  const limits = { crosswindLimit: 15, tailwindLimit: 5, tailwindShare: 1 };
  return usabilityFactor({ ...observed, ...limits, runways }).counted;
}

function sum(inputs, formula) {
  let total = 0;
  for (let i = 0; i < inputs.length; i += 1) total += formula(inputs[i], i);
  return total;
}

const rounds = Number(process.argv[2] ?? 30);
const times = work.map(() => []);
for (let round = -3; round < rounds; round += 1) {
  for (const [i, { run, per }] of work.entries()) {
    const start = process.hrtime.bigint();
    sink += run();
    const took = Number(process.hrtime.bigint() - start) / per;
    // The first rounds warm the engine up.
    if (round >= 0) times[i].push(took);
  }
}

const shown = (ns) => {
  if (ns < 1e3) return `${ns.toFixed(0)} ns`;
  return ns < 1e6 ? `${(ns / 1e3).toFixed(1)} µs` : `${(ns / 1e6).toFixed(1)} ms`;
};
const of = (sorted, share) => sorted[Math.floor(share * (sorted.length - 1))];
const commit = execFileSync('git', ['rev-parse', '--short', 'HEAD'], { encoding: 'utf8' }).trim();
console.log(`${os.cpus()[0]?.model}, Node ${process.version}, commit ${commit}, ${rounds} rounds`);
for (const [i, { name }] of work.entries()) {
  const sorted = times[i].sort((a, b) => a - b);
  console.log(
    `${name.padEnd(54)}${shown(of(sorted, 0.5)).padStart(10)}   10 to 90 %: ${shown(of(sorted, 0.1))} to ${shown(of(sorted, 0.9))}`,
  );
}
if (!Number.isFinite(sink)) throw new Error('a result was not a number');
