// The examples and the thousand weathers in which assessments are measured.
import fs from 'node:fs';
import { shares } from './harness.mjs';

const agreement = 1e-12;
export const json = (file) => JSON.parse(fs.readFileSync(`examples/${file}`, 'utf8'));

/** An example request with its performance data in place. */
export const exampleRequest = (name) => ({
  ...json(`requests/${name}.json`),
  performanceData: json('performance-data/corran-four.json'),
});

/** Weathers within the manual's tables; every wind has a direction, and some a gust. */
export const weathers = (() => {
  const share = shares(5);
  return Array.from({ length: 1000 }, (_, i) => {
    const speed_kt = 3 + Math.floor(12 * share());
    const gust_kt = i % 3 === 0 ? speed_kt + 10 : speed_kt;
    return {
      from_deg: 1 + Math.floor(360 * share()),
      speed_kt,
      gust_kt,
      gustReported: gust_kt > speed_kt,
      range_deg: undefined,
      temperature_degC: 1 + Math.floor(38 * share()),
      dewPoint_degC: undefined,
      pressure: { qnh_hPa: 980 + Math.floor(45 * share()) },
    };
  });
})();

/** The prepared value, or an error with the faults. */
export function prepared(result) {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

const numbers = ['value', 'limit', 'margin', 'unroundedValue', 'unroundedMargin'];

/** Throws unless both find the same criteria with the same figures in every weather. */
export function demandSameCriteria(compare, byHand) {
  for (const weather of weathers) {
    const ours = compare(weather);
    const hand = byHand(weather);
    const words = ({ verdict, criteria }) => JSON.stringify([verdict, criteria.map((each) => [each.id, each.verdict])]);
    if (words(ours) !== words(hand)) {
      throw new Error(`${JSON.stringify(weather)}: ${words(ours)}, by hand ${words(hand)}`);
    }
    for (const [i, criterion] of ours.criteria.entries()) {
      for (const name of numbers) {
        const [a, b] = [criterion[name], hand.criteria[i][name]];
        if (a === b || Math.abs(a - b) <= agreement * Math.max(1, Math.abs(a))) continue;
        throw new Error(`${JSON.stringify(weather)}: ${criterion.id}, ${name}: ${a}, by hand ${b}`);
      }
    }
  }
}
