import { limitsOfUse, type Sentence } from '../../assessment/index.ts';
import { type Fault, faultOfRefusal, type ReadResult } from '../../documents/index.ts';
import { DomainError, formatNumber, type Measure, roundUp } from '../../units/index.ts';
import { type AnyRequest, assessAny, isTakeoff, prepareAny } from '../any-request.ts';
import { numberFaults, objectFaults, strayFaults, wholeFaults } from '../argument-faults.ts';
import { surfaceFactorToday } from '../inputs/surface.ts';
import { type StudySentence, studySentence } from '../sentences.ts';
import { inWords } from '../words.ts';
import { type Distribution, demandDistribution } from './distribution.ts';
import { type Contribution, type Propagation, propagate } from './propagate.ts';
import { inputUncertainties, type UncertainInputId } from './uncertain-inputs.ts';
import { distanceModel, type UncertainInput, type UncertaintiesGiven, uncertainInputsOf } from './uncertain-request.ts';

/** What to compute. */
export interface UncertaintyOptions {
  /** How the inputs may differ from the defaults in `inputUncertainties`; `none` leaves one out. */
  readonly inputs?: UncertaintiesGiven;
  /** How many cases are drawn; 10 000 if not given. */
  readonly cases?: number;
  /** The same seed gives the same cases everywhere; 1 if not given. */
  readonly seed?: number;
  /** The share of the cases that the leading distance covers; 0.95 if not given. */
  readonly share?: number;
  /**
   * `unfactored`, the default: the distance before the safety factor, which is what an uncertainty is to be held against.
   * `factored`: with it, as the assessment compares it; spread and factor then count twice.
   */
  readonly distance?: 'unfactored' | 'factored';
}

/** A distance that a share of the cases does not exceed. */
export interface CoveringDistance {
  readonly share: number;
  /** Rounded up to 1 m; absent where too many cases have no figure. */
  readonly distance?: Measure<'m'>;
  /** Between these in 95 % of repetitions with another seed. */
  readonly between?: { readonly from: Measure<'m'>; readonly to: Measure<'m'> };
}

/** An uncertain input as it entered. */
export interface UncertainInputUsed extends UncertainInput {
  readonly unit: string;
  readonly why: string;
}

/** How sure the distance is. */
export interface Uncertainty {
  /** `undetermined` where the assessment has no distance, or the leading share is not covered by any. */
  readonly answer: 'value' | 'undetermined';
  /** The leading one: `A distance of 698 m covers 95 % of the cases ...`. */
  readonly sentence: StudySentence;
  /** What else is to be said of it. */
  readonly sentences: readonly StudySentence[];
  readonly distance: 'unfactored' | 'factored';
  /** As the assessment has it, rounded up; absent where it is undetermined. */
  readonly assessed?: Measure<'m'>;
  readonly available?: Measure<'m'>;
  /** The leading share first, then 50, 80, 90, 95 and 99 %. */
  readonly coverings: readonly CoveringDistance[];
  /** What the leading distance leaves of the one available; negative where it is more than there is. */
  readonly spare?: Measure<'m'>;
  readonly propagation?: Propagation;
  readonly inputs: readonly UncertainInputUsed[];
  /** Why there is no distance. */
  readonly reasons: readonly Sentence[];
  readonly limitsOfUse: readonly string[];
}

const shareOfCases =
  'The shares count computed cases under the spreads stated, taken as independent of each other. They are no chance of success and none of an accident.';

/**
 * How sure the distance is: the uncertainties of wind, air, mass, technique and surface carried through the assessment,
 * to first order and by drawing cases, led by the distance that covers a chosen share of the cases.
 *
 * @param request - a take-off or a landing request.
 * @param options - other uncertainties, the number of cases, the seed, the share, and which distance.
 * @returns the covering distance with what contributes most, or the faults of the request and of the options.
 *
 * @example
 * uncertainty({ schema: 'groundroll/takeoff-request/1' } as never).ok // => false
 */
export function uncertainty(request: AnyRequest, options: UncertaintyOptions = {}): ReadResult<Uncertainty> {
  const assessed = assessAny(request);
  const faults = [...(assessed.ok ? [] : assessed.faults), ...optionFaults(options)];
  if (faults.length > 0 || !assessed.ok) return { ok: false, faults };
  const { distance = 'unfactored', inputs: given = {}, share = 0.95, cases = 10_000, seed = 1 } = options;
  const read: AnyRequest =
    distance === 'factored' ? assessed.value.request : { ...assessed.value.request, safetyFactor: 'none' };
  const prepared = prepareAny(distanceAlone(read));
  const held = assessAny(read);
  if (!prepared.ok) return prepared;
  if (!held.ok) return held;
  const criterion = held.value.criteria.find(({ id }) => id.endsWith('-distance'));
  const inputs = uncertainInputsOf(read, surfaceFactorToday(read) ?? 1, given);
  const named = { distance, inputs: inputs.map((input) => used(input)), limitsOfUse: [shareOfCases, ...limitsOfUse] };
  if (criterion === undefined || criterion.verdict === 'undetermined') {
    const sentence = studySentence('uncertainty-undetermined', { phase: isTakeoff(read) ? 'take-off' : 'landing' });
    const reasons = criterion?.reasons ?? [];
    return { ok: true, value: { answer: 'undetermined', sentence, sentences: [], coverings: [], reasons, ...named } };
  }
  const shares = [share, ...[0.5, 0.8, 0.9, 0.95, 0.99].filter((each) => each !== share)];
  const propagation = propagate({
    model: distanceModel(read, prepared.value, inputs),
    quantities: inputs,
    cases,
    seed,
    shares,
  });
  const coverings = propagation.monteCarlo.coverings.map(({ share: each, value, from, to }) => ({
    share: each,
    ...(value === undefined ? {} : { distance: metres(roundUp(value)) }),
    ...(from === undefined || to === undefined
      ? {}
      : { between: { from: metres(roundUp(from)), to: metres(roundUp(to)) } }),
  }));
  const [leading] = coverings as [CoveringDistance];
  const available = criterion.limit as Measure<'m'>;
  const spare = leading.distance === undefined ? undefined : available.value - leading.distance.value;
  return {
    ok: true,
    value: {
      answer: leading.distance === undefined ? 'undetermined' : 'value',
      sentence: leadingSentence(leading, cases, criterion.value as Measure<'m'>, available, distance),
      sentences: otherSentences(propagation),
      assessed: criterion.value as Measure<'m'>,
      available,
      coverings,
      ...(spare === undefined ? {} : { spare: metres(spare) }),
      propagation,
      reasons: [],
      ...named,
    },
  };
}

const metres = (value: number): Measure<'m'> => ({ value, unit: 'm' });

/** The request without what its distance does not depend on; ten thousand cases need not climb over obstacles. */
function distanceAlone(request: AnyRequest): AnyRequest {
  const { performanceData, runway } = request;
  return { ...request, performanceData: { ...performanceData, climb: [] }, runway: { ...runway, obstacles: [] } };
}

function used(input: UncertainInput): UncertainInputUsed {
  const { unit, why } = inputUncertainties[input.name];
  return { ...input, unit, why };
}

function leadingSentence(
  { share, distance }: CoveringDistance,
  cases: number,
  assessed: Measure<'m'>,
  available: Measure<'m'>,
  which: 'unfactored' | 'factored',
): StudySentence {
  const figures = {
    percent: percentInWords(share),
    cases: formatNumber(cases),
    assessed: inWords(assessed),
    available: inWords(available),
    basis: which === 'unfactored' ? 'before its safety factor' : 'with its safety factor',
  };
  if (distance === undefined) return studySentence('uncertainty-not-covered', figures);
  return studySentence('uncertainty-covering', { ...figures, distance: inWords(distance) });
}

function otherSentences({ firstOrder, monteCarlo }: Propagation): StudySentence[] {
  const { cases, withoutResult } = monteCarlo;
  const open =
    withoutResult === 0
      ? []
      : [
          studySentence('uncertainty-without-figure', {
            open: formatNumber(withoutResult),
            cases: formatNumber(cases),
          }),
        ];
  if (firstOrder === undefined) return open;
  const { standardUncertainty, contributions } = firstOrder;
  const [first, second] = contributions.filter(({ contribution }) => contribution > 0).map(shareInWords);
  return [
    studySentence('uncertainty-first-order', {
      standardUncertainty: `${formatNumber(standardUncertainty, { rounding: 'up' })} m`,
      contributions: [first, second].filter((each) => each !== undefined).join(', then '),
    }),
    ...open,
  ];
}

function shareInWords({ name, shareOfVariance }: Contribution): string {
  return `${inputWords[name as UncertainInputId]} (${formatNumber(shareOfVariance * 100)} % of the variance)`;
}

const inputWords: Readonly<Record<UncertainInputId, string>> = {
  windDirection: 'the wind direction',
  windSpeed: 'the wind speed',
  gust: 'the gusts',
  unreportedGust: 'gusts that are not reported',
  temperature: 'the temperature',
  pressure: 'the pressure',
  mass: 'the mass',
  technique: 'the technique',
  surfaceIncrease: 'what the surface adds',
  runwayLength: 'the runway length',
};

function percentInWords(share: number): string {
  const percent = share * 100;
  return formatNumber(percent, {
    decimals: Math.abs(percent - Math.round(percent)) < 1e-9 ? 0 : 1,
    rounding: 'down',
  });
}

const choices: readonly (keyof UncertaintyOptions)[] = ['inputs', 'cases', 'seed', 'share', 'distance'];

function optionFaults(options: UncertaintyOptions): Fault[] {
  const unreadable = objectFaults('options', options);
  if (unreadable.length > 0) return unreadable;
  const { inputs = {}, cases = 10_000, seed = 1, share = 0.95, distance } = options;
  const isDistance = distance === undefined || distance === 'unfactored' || distance === 'factored';
  return [
    ...strayFaults('options', options, choices),
    ...objectFaults('options.inputs', inputs),
    ...wholeFaults('options.cases', cases, 100, 1_000_000),
    ...wholeFaults('options.seed', seed, -(2 ** 31), 2 ** 31 - 1),
    ...numberFaults('options.share', share, 0.5, 0.999),
    ...(isDistance ? [] : [{ path: 'options.distance', message: `"${distance}" is not unfactored or factored` }]),
    ...Object.entries(inputs ?? {}).flatMap(([id, given]) => inputFaults(`options.inputs.${id}`, id, given)),
  ];
}

function inputFaults(path: string, id: string, given: Distribution | 'none'): Fault[] {
  if (!Object.hasOwn(inputUncertainties, id)) return [{ path, message: 'is not an uncertain input' }];
  if (given === 'none') return [];
  try {
    demandDistribution(path, given);
    return [];
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return [faultOfRefusal(error)];
  }
}
