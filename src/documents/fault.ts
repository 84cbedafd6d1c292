/** One thing wrong with a document, at one place in it. */
export interface Fault {
  /** Where, from the top of the document: `weather.wind.gust.value`; empty for the document itself. */
  readonly path: string;
  /** What is wrong, in one sentence with the value received, the bounds and the unit where they apply. */
  readonly message: string;
}

/** What reading a document gives: the document, or everything that is wrong with it. */
export type ReadResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** A fault as a line of text. */
export function faultLine(fault: Fault): string {
  return fault.path === '' ? fault.message : `${fault.path}: ${fault.message}`;
}
