import type { TraceEntry } from '../kernel/step.ts';
import type { Sentence, SentenceCode } from './sentences.ts';

/** The steps that a figure rests on: their places in the trace, in its order. */
export type StepsBehind = readonly number[];

const climb = [
  'rate of climb',
  'true airspeed in the climb',
  'ground speed in the climb',
  'gradient over the ground',
  'true airspeed at the 50 ft point',
  'height given up for speed',
];
const wind = ['wind components', 'wind used'];
const onApproach = ['true airspeed on the approach', 'ground speed on the approach'];

/** Finds in a finished working what stands behind each figure, by the labels that the kernels give their steps. */
export class Working {
  private readonly labels: readonly (string | undefined)[];

  constructor(private readonly trace: readonly TraceEntry[]) {
    this.labels = trace.map((entry) => (entry.kind === 'step' ? entry.label : undefined));
  }

  /** For one tread of the stairs, by its place among them and its total. */
  stair(step: string, stairs: readonly { readonly step: string }[], total_m: number): StepsBehind {
    if (step.endsWith('safety factor')) {
      const factored = this.where(
        (label) => label.startsWith('factored against') || label === 'landing distance factored',
      );
      return factored.filter((i) => this.output(i).toFixed(1) === total_m.toFixed(1)).slice(0, 1);
    }
    const own = this.named(
      `factor for ${step}`,
      `factor for the ${step}`,
      `distance for ${step}`,
      `distance with ${step}`,
      `ground roll with ${step}`,
    );
    const reading = own.length === 0 ? this.reading(step, stairs) : [];
    if (step === 'manual') return sorted([...this.named('pressure altitude', 'virtual temperature'), ...reading]);
    if (step === 'wind')
      return sorted([...this.named('wind components'), ...this.last('wind used'), ...own, ...reading]);
    return sorted([...own, ...reading]);
  }

  criterion(id: string, quantity: string, safety: StepsBehind): StepsBehind {
    if (id === 'crosswind') return this.named('wind components');
    if (id === 'tailwind') return this.named(...wind);
    if (id === 'takeoff-run') return this.where((label) => label.startsWith('ground roll with ')).slice(-1);
    if (id === 'takeoff-distance') return safety;
    if (id === 'landing-distance') return sorted([...this.lostOnApproach(), ...safety]);
    if (id === 'obstacle') return this.obstacle(quantity.replace(/^(gradient|height) over /, ''));
    return [];
  }

  mark(id: string): StepsBehind {
    if (id === 'latest-lift-off') {
      return sorted([...this.starting('latest 50 ft point for '), ...this.named('latest lift-off')]);
    }
    if (id === 'acceleration-check') return this.named('latest lift-off', 'speed due at the mark');
    if (id === 'latest-reject-point') {
      // The estimate works out the same speed once more, after this mark.
      const [end = -1] = this.named('latest reject point');
      const speeds = this.named('latest lift-off', 'true airspeed at lift-off', 'ground speed at lift-off');
      return end < 0 ? [] : [...speeds.filter((i) => i < end), end];
    }
    if (id === 'latest-touchdown-point') return this.named('latest touchdown point');
    if (id === 'aiming-point') return sorted([...this.lostOnApproach(), ...this.named('aiming point')]);
    if (id !== 'latest-go-around-point') return [];
    return sorted([...this.named(...climb), ...this.starting('latest go-around point for ')]);
  }

  /** The approach speed where it is the published one with half the gust increment; one chosen otherwise has no step. */
  speed(name: string, kias: number): StepsBehind {
    const steps = this.named('gust increment', 'approach speed');
    const flown = steps[1];
    return name === 'approach' && flown !== undefined && Math.ceil(this.output(flown) - 1e-9) === kias ? steps : [];
  }

  /** The sentences, each with the steps that its figures come from, where there are any. */
  worded(sentences: readonly Sentence[]): Sentence[] {
    return sentences.map((each) => {
      const steps = this.sentence(each.code, each.parameters);
      return steps.length === 0 ? each : { ...each, steps };
    });
  }

  private sentence(code: SentenceCode, parameters: Sentence['parameters']): StepsBehind {
    const about = String(parameters['obstacle'] ?? '');
    switch (code) {
      case 'pressure-altitude':
      case 'pressure-altitude-from-qfe':
        return this.named('pressure altitude');
      case 'density-altitude':
        return this.named('density altitude');
      case 'humid-density-altitude':
        return this.named('density altitude with humidity');
      case 'virtual-temperature-used':
        return this.named('virtual temperature');
      case 'wind-components':
      case 'direction-unknown':
      case 'direction-range':
        return this.named('wind components');
      case 'headwind-used':
      case 'tailwind-used':
        return this.named(...wind);
      case 'obstacle-clearance':
        return this.obstacle(about);
      case 'approach-loss':
        return this.named(`landing distance lost over ${about}`);
      case 'approach-rate':
        return this.named(...onApproach, 'rate of descent on the approach');
      case 'approach-angle-without-loss':
        return sorted([...this.starting('path angle over '), ...this.named('rate of descent without loss')]);
      case 'obstacle-beside-strip':
        return this.named(`half-width at ${about}`);
      case 'estimate-surface':
      case 'estimate-surface-open':
      case 'estimate-surface-stuck':
        return this.estimate();
      case 'crosswind-against-stall':
        return this.named('0.2 V_S0');
      case 'hazard-hydroplaning':
        return this.named('hydroplaning speed', 'hydroplaning speed at touchdown');
      default:
        return [];
    }
  }

  private obstacle(name: string): StepsBehind {
    const over = [
      `gradient required over ${name}`,
      `clearance over ${name}, factored`,
      `clearance over ${name}, unfactored`,
    ];
    return this.named(...climb, ...over);
  }

  private lostOnApproach(): StepsBehind {
    return this.starting('landing distance lost over ');
  }

  /** From the thrust on; the speed before it may stand behind a mark as well. */
  private estimate(): StepsBehind {
    const thrust = this.named("thrust that gives back the manual's roll")[0];
    if (thrust === undefined) return [];
    const ratio = this.where(
      (label) => label.startsWith('ground roll on ') && label.endsWith(' over that of the manual'),
    );
    return sorted([thrust - 1, thrust, ...ratio, ...this.named('estimate as a factor on the distance')]);
  }

  /**
   * The readings of the manual's figures: the first of roll and distance are the manual's own tread, later ones belong to
   * the treads that a table runs along itself, in their order.
   */
  private reading(step: string, stairs: readonly { readonly step: string }[]): StepsBehind {
    const groups: number[][] = [];
    let deviations: number[] = [];
    let isOpen = false;
    this.labels.forEach((label, i) => {
      const isRoll = label === 'ground roll' || label?.startsWith('ground roll, panel of ') === true;
      const isDistance = label === 'distance' || label?.startsWith('distance, panel of ') === true;
      if (label === 'deviation from standard') deviations.push(i);
      else if (isRoll || isDistance) {
        if (isRoll && !isOpen) groups.push([]);
        isOpen = isRoll;
        groups.at(-1)?.push(...deviations, i);
        deviations = [];
      } else if (label !== undefined) deviations = [];
    });
    const read = stairs.filter((each) => this.named(`distance with ${each.step}`).length === 0);
    return groups[read.findIndex((each) => each.step === step)] ?? [];
  }

  private named(...labels: readonly string[]): number[] {
    return this.where((label) => labels.includes(label));
  }

  private last(label: string): number[] {
    return this.named(label).slice(-1);
  }

  private starting(words: string): number[] {
    return this.where((label) => label.startsWith(words));
  }

  private where(isWanted: (label: string) => boolean): number[] {
    return this.labels.flatMap((label, i) => (label !== undefined && isWanted(label) ? [i] : []));
  }

  private output(i: number): number {
    const entry = this.trace[i];
    return entry?.kind === 'step' && typeof entry.output === 'number' ? entry.output : Number.NaN;
  }
}

function sorted(steps: readonly number[]): number[] {
  return [...new Set(steps)].sort((a, b) => a - b);
}
