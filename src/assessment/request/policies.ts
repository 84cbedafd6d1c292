/** One choice that no source settles: what is done unless the request says otherwise, and why. */
export interface Policy<T> {
  /** Between which the request chooses, the default among them; none where it gives a figure. */
  readonly options?: readonly T[];
  readonly default: T;
  readonly unit?: string;
  readonly why: string;
}

/**
 * Every policy of the library, its default and its reason. Each is a field of `policies` in a request. They are our
 * own judgement unless the reason names a source; none of them is a rule of an authority by being a default here.
 */
export const policyDefaults = {
  headwindShare: {
    default: 0.5,
    unit: 'ratio',
    why: 'CAT.POL.A.305(c)(6) and .330(c)(2) allow at most half of a reported headwind; the wing sees less than the sensor on its mast.',
  },
  tailwindShare: {
    default: 1.5,
    unit: 'ratio',
    why: 'CAT.POL.A.305(c)(6) and .330(c)(2) ask for at least one and a half times a reported tailwind.',
  },
  demonstratedCrosswind: {
    options: ['limit', 'information'],
    default: 'limit',
    why: 'A demonstrated value is not a limitation, but nobody has shown that more can be held; the cautious reading is the default.',
  },
  favourableSlope: {
    options: ['no credit', 'of the manual'],
    default: 'no credit',
    why: 'Authorities give no credit for a slope that helps; where the manual prints one of its own, taking it is a choice that the working shows.',
  },
  favourableEdge: {
    options: ['read-at-edge', 'refuse'],
    default: 'read-at-edge',
    why: 'A lighter aeroplane or colder air than the table prints needs no more than its first column, where the table gets no better from there.',
  },
  betweenPrintedValues: {
    options: ['interpolate', 'next-worse'],
    default: 'interpolate',
    why: 'Linear interpolation is what the handbooks teach; taking the next worse printed figure is the cautious alternative.',
  },
  humidity: {
    options: ['information', 'virtual temperature'],
    default: 'information',
    why: 'Flight manuals state dry figures; humidity lengthens and never shortens, so it may be read in as a virtual temperature.',
  },
  unreportedGust: {
    options: ['mean', 'mean plus 10 kt'],
    default: 'mean',
    why: 'A gust below the mean plus 10 kt need not be reported (Annex 3). The mean is what the report says; the other choice is the most that it may hide.',
  },
  speedAdditionInDistance: {
    options: ['paid for', 'ignored'],
    default: 'paid for',
    why: 'Every knot above the table speed is kinetic energy that the runway has to take up (derived).',
  },
  verticalClearance: {
    default: 50,
    unit: 'ft',
    why: 'CAT.POL.A.310 asks for 50 ft over obstacles (written for multi-engined aeroplanes).',
  },
  approachClearance: {
    default: 50,
    unit: 'ft',
    why: 'The same height over an approach obstacle as over a departure obstacle.',
  },
  approachAngle: {
    default: 3,
    unit: 'deg',
    why: 'The path for which landing distances are determined: 14 CFR 23.75(a), at most 5.2 %.',
  },
  reactionTime: {
    default: 3,
    unit: 's',
    why: 'Seeing, deciding, closing the throttle and braking take an average pilot about this long.',
  },
  firstPrinciples: {
    options: ['information', 'more adverse'],
    default: 'information',
    why: 'What friction costs by first principles is an estimate beside the factors; by choice it may take a verdict of within away, never give one.',
  },
} as const satisfies Record<string, Policy<number | string>>;

/** A confirmation that the user has compared a recalled factor with the current edition of its source. */
export interface Confirmation {
  readonly factorId: string;
  readonly edition: string;
  /** YYYY-MM-DD. */
  readonly date: string;
}

/** The policies of one assessment, all settled. */
export interface Policies {
  readonly headwindShare: number;
  readonly tailwindShare: number;
  readonly demonstratedCrosswind: 'limit' | 'information';
  readonly favourableSlope: 'no credit' | 'of the manual';
  readonly favourableEdge: 'read-at-edge' | 'refuse';
  readonly betweenPrintedValues: 'interpolate' | 'next-worse';
  readonly humidity: 'information' | 'virtual temperature';
  readonly unreportedGust: 'mean' | 'mean plus 10 kt';
  readonly speedAdditionInDistance: 'paid for' | 'ignored';
  /** ft. */
  readonly verticalClearance: number;
  /** ft. */
  readonly approachClearance: number;
  /** degrees. */
  readonly approachAngle: number;
  /** seconds. */
  readonly reactionTime: number;
  readonly firstPrinciples: 'information' | 'more adverse';
}
