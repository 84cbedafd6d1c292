// Node, CommonJS: a whole assessment of a request file. The performance data stand in a file of their own.
//   node assessment.cjs takeoff-28.json corran-four.json

const { readFileSync } = require('node:fs');
const { assessTakeoff } = require('groundroll');

const json = (file) => JSON.parse(readFileSync(file, 'utf8'));
const [request, performanceData] = process.argv.slice(2).map(json);

const assessed = assessTakeoff({ ...request, performanceData });
if (assessed.ok) {
  for (const { text } of assessed.value.headline) console.log(text);
  for (const text of assessed.value.limitsOfUse) console.log(text);
} else {
  for (const { path, message } of assessed.faults) console.error(`${path}: ${message}`);
  process.exitCode = 2;
}
