/** The figures and words that a sentence is made with. */
export type Parameters = Readonly<Record<string, number | string>>;
