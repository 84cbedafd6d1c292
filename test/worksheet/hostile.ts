import type { Changes } from '../assessment/scenario.ts';

/** One name wherever a request brings one along. */
export const namedThroughout = (name: string): Changes => ({
  'performanceData.identity.name': name,
  'performanceData.provenance.document': name,
  'performanceData.configurations.0.name': name,
  'runway.aerodrome': name,
  'runway.obstacles.0.name': name,
  'variation.source': name,
});
