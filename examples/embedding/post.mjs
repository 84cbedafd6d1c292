// Posts a request, its performance data with it, and prints the answer.
//   node post.mjs http://localhost:8080 takeoff-28.json corran-four.json

import { readFileSync } from 'node:fs';

const [address, ...files] = process.argv.slice(2);
const [request, performanceData] = files.map((file) => JSON.parse(readFileSync(file, 'utf8')));

const response = await fetch(address, { method: 'POST', body: JSON.stringify({ ...request, performanceData }) });
const answer = await response.json();
console.log(response.status, answer.verdict ?? answer.faults);
