// Three days worked through: soft grass in spring, a short runway between trees in summer, gusts across a paved runway.
// For each the worksheets, and what would have to be different. The page docs/guides/worked-cases.md tells them.

import { readFile } from 'node:fs/promises';
import { assessLanding, assessTakeoff } from 'groundroll';
import { greatestCrosswind, greatestSurfaceFactor, performanceLimitedMass, reassessTriggers } from 'groundroll/study';
import { worksheetText } from 'groundroll/worksheet';

const readJson = async (file) => JSON.parse(await readFile(new URL(file, import.meta.url), 'utf8'));

async function requestOf(name) {
  const request = await readJson(`requests/case-${name}.json`);
  return { ...request, performanceData: await readJson(`requests/${request.performanceData}`) };
}

/** The value of a result; faults end the example. */
function known(result) {
  if (result.ok) return result.value;
  throw new Error(result.faults.map(({ path, message }) => `${path}: ${message}`).join('\n'));
}

function title(text) {
  console.log(`${'_'.repeat(88)}\n\n${text}\n`);
}

function work(request) {
  const assess = request.schema === 'groundroll/takeoff-request/1' ? assessTakeoff : assessLanding;
  console.log(worksheetText(known(assess(request))));
}

/** What studies of a request say, a sentence each. */
function teach(heading, request, studies) {
  console.log(`${heading}:`);
  for (const study of studies) console.log(`  ${known(study(request)).sentence.text}`);
  console.log();
}

title('Soft grass in spring');
const soft = await requestOf('soft-spring-takeoff');
work(soft);
teach('What the strip may cost, and whether less mass would settle it', soft, [
  greatestSurfaceFactor,
  performanceLimitedMass,
]);
const { runway } = soft;
const firm = { ...soft, runway: { ...runway, surface: { ...runway.surface, ground: 'firm' } } };
teach('The same take-off once the ground is firm', firm, [reassessTriggers]);

title('A short runway between trees in summer');
const out = await requestOf('summer-trees-takeoff');
const into = await requestOf('summer-trees-landing');
work(into);
teach('The landing holds as long as this does', into, [reassessTriggers]);
work(out);
teach('What would let it out again', out, [performanceLimitedMass]);

title('Gusts across a paved runway');
const gusty = {
  takeoff: await requestOf('gusty-crosswind-takeoff'),
  landing: await requestOf('gusty-crosswind-landing'),
};
work(gusty.takeoff);
work(gusty.landing);
teach('What is not the problem, and what is', gusty.landing, [performanceLimitedMass, greatestCrosswind]);
const { weather } = gusty.landing;
const { range, ...mean } = weather.wind;
const narrower = { ...mean, range: { ...range, to: mean.from } };
const calmer = known(assessLanding({ ...gusty.landing, weather: { ...weather, wind: narrower } }));
console.log('The same landing once the wind no longer veers beyond its mean direction:');
console.log(`  ${calmer.headline[0].text}`);
