import { inputUncertainties, type UncertainInputId } from '../../src/study/index.ts';

/** Every uncertain input left out, for a test to put back the one that it is about. */
export const none = Object.fromEntries(Object.keys(inputUncertainties).map((id) => [id, 'none'])) as Record<
  UncertainInputId,
  'none'
>;
