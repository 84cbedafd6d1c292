// Asks the worker about one request, from the command line.
//   deno run --allow-read --node-modules-dir=manual worker/ask.mjs takeoff-28.json corran-four.json

import { readFileSync } from 'node:fs';
import { verdictsByTemperature } from './main.js';

const [request, performanceData] = process.argv.slice(2).map((file) => JSON.parse(readFileSync(file, 'utf8')));
const rows = await verdictsByTemperature({ ...request, performanceData }, [20, 30, 40]);
for (const { temperature, verdict } of rows) console.log(`${temperature} °C: ${verdict}`);
