import type { SentenceCode } from './sentences.ts';

/** A figure or a word that a sentence is made with. */
export type Parameters = Readonly<Record<string, number | string>>;

/** Why something is as it is: a code and figures for programs; `sentence` makes the words. */
export interface Reason {
  readonly code: SentenceCode;
  readonly parameters: Parameters;
}
