import type { PageState } from './state.ts';

/** The surface of a request, of what holds for that kind. */
export function surfaceOf({
  surface: kind,
  condition,
  grassLength: length,
  ground,
  conditionCode,
}: PageState['values']): Readonly<Record<string, unknown>> {
  if (kind === 'snow') return { kind };
  if (kind === 'grass') return { kind, condition, length, ground };
  if (kind === 'gravel' || conditionCode === 'none') return { kind, condition };
  return { kind, condition, conditionCode: Number(conditionCode) };
}
