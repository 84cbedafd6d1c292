import type { Parameters } from '../assessment/index.ts';

/** The words of every result of a study. One sentence each; figures are worded, never signed. */
const texts = {
  // Limits solved backwards
  'limit-value': (p) => `${p['quantity']}: within limits ${p['way']} ${p['value']}; beyond that ${p['turning']}.`,
  'limit-within-throughout': (p) => `${p['quantity']}: within limits throughout the range, ${p['from']} to ${p['to']}.`,
  'limit-outside-throughout': (p) =>
    `${p['quantity']}: outside limits throughout the range, ${p['from']} to ${p['to']}: ${p['turning']}.`,
  'limit-undetermined': (p) =>
    `${p['quantity']}: not within limits anywhere in the range, ${p['from']} to ${p['to']}: ${p['turning']}.`,
  'surface-last-within': (p) =>
    `${p['last']} is the last of the surfaces given that is within limits; on ${p['next']} ${p['turning']}.`,
  'surface-all-within': (p) => `Within limits on all of the surfaces given. The last: ${p['last']}.`,
  'surface-none-within': (p) => `None of the surfaces given is within limits; on ${p['next']} ${p['turning']}.`,
  // Sensitivities
  sensitivity: (p) =>
    `${p['quantity']}, ${p['change']} ${p['moved']}: takes ${p['eaten']} from the ${p['margin']} that ${p['subject']} has to spare${p['percent'] === undefined ? '' : ` (${p['percent']} %)`}.`,
  'sensitivity-undetermined': (p) =>
    `${p['quantity']}, ${p['change']} ${p['moved']}: ${p['subject']}, undetermined: there is no figure.`,
  'sensitivity-no-margin': (p) =>
    `${p['quantity']}, ${p['change']} ${p['moved']}: ${p['eaten']} more where ${p['subject']} has nothing to spare.`,
  'sensitivity-none': (p) => `${p['quantity']}, ${p['change']} more or less: takes nothing off any margin.`,
  // What calls for another assessment
  triggers: (p) => `Assess again if ${p['triggers']}.`,
  'triggers-none': () => 'Nothing within the ranges searched turns the verdict while everything else stays.',
  'triggers-not-within': (p) => `${p['verdict']} as it stands: there is no verdict of within limits to hold.`,
  'trigger-backs': (p) => `the wind backs beyond ${p['value']}`,
  'trigger-veers': (p) => `the wind veers beyond ${p['value']}`,
  'trigger-wind-above': (p) => `the ${p['quantity']} rises above ${p['value']}`,
  'trigger-wind-below': (p) => `the ${p['quantity']} falls below ${p['value']}`,
  'trigger-gust': (p) => `gusts rise above ${p['value']}`,
  'trigger-above': (p) => `the ${p['quantity']} is above ${p['value']}`,
  'trigger-below': (p) => `the ${p['quantity']} is below ${p['value']}`,
  'trigger-surface': (p) => `${p['words']}`,
  // Uncertainty
  'uncertainty-covering': (p) =>
    `A distance of ${p['distance']} covers ${p['percent']} % of the ${p['cases']} cases; the assessment has ${p['assessed']} ${p['basis']}, and ${p['available']} are available.`,
  'uncertainty-not-covered': (p) =>
    `No distance covers ${p['percent']} % of the ${p['cases']} cases: too many have no figure. The assessment has ${p['assessed']} ${p['basis']}.`,
  'uncertainty-undetermined': (p) =>
    `The ${p['phase']} distance is undetermined, so nothing can be said of how sure it is.`,
  'uncertainty-first-order': (p) =>
    `To first order the standard uncertainty is ${p['standardUncertainty']}${p['contributions'] === '' ? '' : `; most of it comes from ${p['contributions']}`}.`,
  'uncertainty-without-figure': (p) =>
    `Cases without a figure, beyond what the manual prints: ${p['open']} of ${p['cases']}. No distance counts as covering them.`,
  // Comparison of runways
  'runway-row': (p) => `${p['end']}: ${p['verdict']}${p['rest']}.`,
  'runway-row-undetermined': (p) => `${p['end']}: ${p['verdict']}; not to be determined: ${p['open']}${p['rest']}.`,
  // Departure and arrival
  'both-ends': (p) => `${p['first']}, then ${p['second']}: ${p['verdict']}.`,
  'mass-less-burn': (p) =>
    `Landing mass ${p['landing']}: the take-off mass ${p['takeoff']} less ${p['burn']} of fuel burnt.`,
  'mass-without-burn': (p) => `No fuel burnt is stated: the landing mass is the take-off mass, ${p['takeoff']}.`,
  'mass-of-departure-kept': (p) =>
    `No other mass is stated for the departure: it is the landing mass, ${p['landing']}.`,
  'mass-of-departure': (p) => `The departure is assessed at ${p['takeoff']}, the landing at ${p['landing']}.`,
  'departure-temperature': (p) =>
    `The departure is assessed at ${p['later']}, the landing at ${p['now']}; the rest of the weather stays as reported.`,
  'in-but-not-out': (p) =>
    `The field takes the landing, and the departure is ${p['verdict']}: landing now may mean staying.`,
  // Runway distance table
  'table-title': (p) => `${p['phase']} on ${p['designator']} at ${p['aerodrome']}, ${p['aeroplane']}.`,
  'table-valid-only-if': (p) => `Valid only if ${p['conditions']}.`,
  'table-reading-mass': () => 'Between two columns use the next warmer, between two rows the next heavier.',
  'table-reading-headwind': () =>
    'Between two columns use the next warmer, between two rows the one with less headwind or more tailwind.',
  'cell-within': (p) => `${p['margin']}.`,
  'cell-not-within': (p) => `${p['verdict']}: ${p['what']}.`,
  'warmest-value': (p) => `${p['row']}: within limits up to ${p['temperature']}.`,
  'warmest-throughout': (p) => `${p['row']}: within limits throughout the temperatures searched, up to ${p['to']}.`,
  'warmest-none': (p) => `${p['row']}: not within limits at any temperature from ${p['from']} to ${p['to']}.`,
} as const satisfies Record<string, (p: Parameters) => string>;

/** The code of a sentence of a study. */
export type StudySentenceCode = keyof typeof texts;

/** One sentence of a study, with its code and figures so that an app can translate it. */
export interface StudySentence {
  readonly code: StudySentenceCode;
  readonly parameters: Parameters;
  readonly text: string;
}

/** Words what a study found. */
export function studySentence(code: StudySentenceCode, parameters: Parameters = {}): StudySentence {
  const words: (p: Parameters) => string = texts[code];
  return { code, parameters, text: words(parameters) };
}
