import { rollingFriction } from '../../dynamics/index.ts';
import { manualSurface, type SurfaceEstimate } from '../kernel/surface-estimate.ts';
import type { Reason } from './reason.ts';

/** An estimate with its friction figures and what it assumes; nothing where there is none. */
export function estimateReasons(estimate: SurfaceEstimate | undefined): Reason[] {
  if (estimate === undefined) return [];
  const { surface, low, high } = estimate;
  const [other, known] = [rollingFriction[surface], rollingFriction[manualSurface]];
  const friction = { surface, leastFriction: other.low, greatestFriction: other.high };
  const band = { ...friction, leastKnown: known.low, greatestKnown: known.high };
  const found: Reason =
    low === undefined
      ? { code: 'estimate-surface-stuck', parameters: friction }
      : high === undefined
        ? { code: 'estimate-surface-open', parameters: { ...friction, low } }
        : { code: 'estimate-surface', parameters: { ...band, low, high } };
  const isRecalled = [other, known].some(({ access }: { access: string }) => access === 'recalled');
  return [
    found,
    { code: 'estimate-assumes', parameters: {} },
    ...(isRecalled ? [{ code: 'estimate-recalled', parameters: {} } as const] : []),
  ];
}
