import type { FactorOrigin, FactorSet } from './factor-set.ts';

/**
 * Every factor of a set for one phase of flight: surfaces, slope, what is pro-rated, and last the safety factors. A
 * confirmation names one of these.
 *
 * @example
 * factorsOf(factorSets['part-nco'].landing).map(({ id }) => id) // => ['part-nco-landing']
 */
export function factorsOf(corrections: FactorSet['takeoff' | 'landing']): readonly FactorOrigin[] {
  const { surfaces, slope, mass, elevation, temperature, tailwind, safety } = corrections;
  const prorated = [slope, mass, elevation, temperature, tailwind].filter((each) => each !== undefined);
  const safetyFactors = 'locator' in safety ? [safety] : safety.flatMap(({ tests }) => tests);
  return [...surfaces, ...prorated, ...safetyFactors];
}
