import type { Parameters } from './parameters.ts';
import type { SentenceCode } from './sentences.ts';

/** Why something is as it is: a code and figures for programs; `sentence` makes the words. */
export interface Reason {
  readonly code: SentenceCode;
  readonly parameters: Parameters;
}
