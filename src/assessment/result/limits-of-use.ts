/** What stands under every result. */
export const limitsOfUse: readonly string[] = [
  'The flight manual, the local rules and the pilot in command decide. This is advice against stated limits, not permission.',
  'The figures are as good as the performance data, the report and the runway description that were put in.',
];

const always: readonly string[] = [
  'centre of gravity',
  'engine failure',
  'turbulence and sink behind trees',
  'wires and other obstacles that are not listed',
  'runway width',
  'contamination of the wing',
  'pilot recency',
];

/** What no assessment covers, and what this one does not for want of figures. */
export function notAssessed(alsoMissing: readonly string[]): readonly string[] {
  return [...alsoMissing, ...always];
}
