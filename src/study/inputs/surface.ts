import type { LandingData, TakeoffData } from '../../aircraft/index.ts';
import type { SurfaceFactor } from '../../distance/index.ts';
import { type AnyRequest, assessAny, isTakeoff } from '../any-request.ts';
import { factorSetOf, underFactorSet } from '../factor-set-of-request.ts';
import { plain, type StudyInput } from './study-input.ts';

/** What the surface costs today as a factor on the distance; none where the distance has no figure. */
export function surfaceFactorToday(request: AnyRequest): number | undefined {
  const assessed = assessAny(request);
  if (!assessed.ok || assessed.value.stairs === undefined) return undefined;
  return assessed.value.stairs.steps.find(({ step }) => step === 'surface')?.factor ?? 1;
}

/** The factor for the surface, whatever the manual and the factor set say of today's. */
export function surfaceFactorInput(request: AnyRequest): StudyInput {
  const today = surfaceFactorToday(request);
  return {
    id: 'surfaceFactor',
    changes: 'request',
    quantity: 'surface factor',
    unit: 'ratio',
    today: today === undefined ? undefined : plain(today),
    min: 1,
    max: 3,
    at: (factor) => withSurfaceFactor(request, factor),
  };
}

/** A surface that the request's own set gives this factor for, and that nothing else in the request has a figure for. */
function withSurfaceFactor(request: AnyRequest, factor: number): AnyRequest {
  const set = factorSetOf(request);
  const phase = isTakeoff(request) ? 'takeoff' : 'landing';
  const asked: SurfaceFactor = {
    id: 'surface-asked-about',
    condition: 'the surface asked about',
    factor,
    kind: 'value',
    basis: 'total distance',
    covers: ['wet'],
    replaces: [],
    locator: 'the question itself',
    access: 'policy',
  };
  const factorSet = { ...set, [phase]: { ...set[phase], surfaces: [asked] } };
  const { performanceData } = request;
  const silent = <T extends TakeoffData | LandingData>(table: T): T => {
    const { surfaces: _, ...corrections } = table.corrections;
    return { ...table, corrections };
  };
  return {
    ...underFactorSet(request, factorSet, [set]),
    performanceData: {
      ...performanceData,
      takeoff: performanceData.takeoff.map(silent),
      landing: performanceData.landing.map(silent),
    },
    runway: { ...request.runway, surface: { kind: 'paved', condition: 'wet' } },
  };
}
