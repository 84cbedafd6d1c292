export { compareFactorSets, type FactorSetRow } from './compare-factor-sets.ts';
