import type { InferOutput } from 'valibot';
import { describe, expectTypeOf, it } from 'vitest';
import type { Cells, PerformanceData } from '../../src/aircraft/index.ts';
import type { performanceDataSchema } from '../../src/aircraft/performance-data-schema.ts';
import type {
  Criterion,
  LandingAssessment,
  LandingRequest,
  TakeoffAssessment,
  TakeoffRequest,
} from '../../src/assessment/index.ts';
import type { landingRequestSchema, takeoffRequestSchema } from '../../src/assessment/request/request-schema.ts';
import type {
  landingAssessmentSchema,
  takeoffAssessmentSchema,
} from '../../src/assessment/result/assessment-schema.ts';
import type { Worksheet } from '../../src/worksheet/index.ts';
import type { worksheetSchema } from '../../src/worksheet/worksheet-schema.ts';

/** The documented interfaces are read-only; what a schema infers is not. Everything else must be equal. */
type Writable<T> = [Cells] extends [T]
  ? 'cells' // They nest without end, which the compiler would follow.
  : T extends readonly unknown[] | object
    ? { -readonly [K in keyof T]: Writable<T[K]> }
    : T;

describe('documented interfaces and schemas', () => {
  it('are equal for performance data', () => {
    expectTypeOf<Writable<InferOutput<typeof performanceDataSchema>>>().toEqualTypeOf<Writable<PerformanceData>>();
  });

  it('are equal for requests', () => {
    expectTypeOf<Writable<InferOutput<typeof takeoffRequestSchema>>>().toEqualTypeOf<Writable<TakeoffRequest>>();
    expectTypeOf<Writable<InferOutput<typeof landingRequestSchema>>>().toEqualTypeOf<Writable<LandingRequest>>();
  });

  it('are equal for results', () => {
    expectTypeOf<Writable<InferOutput<typeof takeoffAssessmentSchema>>>().toEqualTypeOf<Writable<TakeoffAssessment>>();
    expectTypeOf<Writable<InferOutput<typeof landingAssessmentSchema>>>().toEqualTypeOf<Writable<LandingAssessment>>();
    expectTypeOf<Writable<InferOutput<typeof worksheetSchema>>>().toEqualTypeOf<Writable<Worksheet>>();
  });
});

describe('a criterion', () => {
  it('has a margin only after its verdict was asked', () => {
    const read = (criterion: Criterion) => {
      // @ts-expect-error an undetermined criterion has no margin
      criterion.margin;
      return criterion.verdict === 'undetermined' ? criterion.reasons : criterion.margin;
    };
    expectTypeOf(read).parameter(0).toEqualTypeOf<Criterion>();
  });
});
