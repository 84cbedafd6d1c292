import mathml from './mathml.json' with { type: 'json' };

/**
 * Every equation and symbol of the formula records as MathML, by its TeX; `worksheetHtml` prints formulas with it. Made
 * by `tools/mathml.mjs`, so that a page of formulas needs neither a renderer nor fonts of its own.
 */
export const formulaMathml: Readonly<Record<string, string>> = mathml;
