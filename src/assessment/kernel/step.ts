import type { Reason } from '../result/reason.ts';

/** A formula called on the way to a result, with what went in and what came out. */
export interface TraceStep {
  readonly kind: 'step';
  readonly label: string;
  /** The id of the formula's record; nothing else of the record is known here. */
  readonly record: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly output: unknown;
}

/** A choice made on the way, that no formula makes. */
export interface TraceDecision extends Reason {
  readonly kind: 'decision';
}

export type TraceEntry = TraceStep | TraceDecision;

/** How an assessment calls its formulas: always through here, so that fast and explained results are one computation. */
export interface Recorder {
  /** Whether anybody will read notes; what only informs is then worked out, and otherwise left. */
  readonly explains: boolean;
  step<I extends object, R>(record: string, label: string, formula: (inputs: I) => R, inputs: I): R;
  decide(code: Reason['code'], parameters: Reason['parameters']): void;
}

/** Calls, and notes nothing. */
export const callThrough: Recorder = {
  explains: false,
  step: (_record, _label, formula, inputs) => formula(inputs),
  decide: () => undefined,
};

/** Calls, and notes every step and decision. Inputs are noted as they are: whoever calls hands over an object of its own. */
export class TraceRecorder implements Recorder {
  readonly explains = true;
  readonly trace: TraceEntry[] = [];

  step<I extends object, R>(record: string, label: string, formula: (inputs: I) => R, inputs: I): R {
    const output = formula(inputs);
    this.trace.push({ kind: 'step', label, record, inputs: inputs as Readonly<Record<string, unknown>>, output });
    return output;
  }

  decide(code: Reason['code'], parameters: Reason['parameters']): void {
    this.trace.push({ kind: 'decision', code, parameters });
  }
}
