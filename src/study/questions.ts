import { type PrintedRange, printedRange } from '../aircraft/index.ts';
import type { UnitWord } from '../units/index.ts';
import { type AnyRequest, tableOf } from './any-request.ts';
import { temperatureInput } from './inputs/air.ts';
import { massInput, maximumMass } from './inputs/loading.ts';
import { runwayLengthInput } from './inputs/runway.ts';
import { inUnit, plain } from './inputs/study-input.ts';
import { surfaceFactorInput } from './inputs/surface.ts';
import { crosswindInput, tailwindInput } from './inputs/wind.ts';
import type { Question } from './solve.ts';

/** What the manual's distances are printed to along a quantity. */
function printed(request: AnyRequest, quantity: 'mass' | 'temperature' | 'headwind'): PrintedRange | undefined {
  const table = tableOf(request);
  return table === undefined ? undefined : printedRange(table.distance, quantity);
}

function endIn(range: PrintedRange, end: 'from' | 'to', unit: UnitWord): number {
  return plain(inUnit({ value: range[end], unit: range.unit }, unit));
}

/** From the lightest mass printed, or half the maximum where none is, up to the maximum mass. */
export function massQuestion(request: AnyRequest): Question {
  const input = massInput(request);
  const adverse = maximumMass(request);
  const range = printed(request, 'mass');
  return { request, input, favourable: range === undefined ? adverse / 2 : endIn(range, 'from', input.unit), adverse };
}

/** Over the temperatures that the manual prints; over all that a request takes where its figures have no such axis. */
export function temperatureQuestion(request: AnyRequest): Question {
  const input = temperatureInput(request);
  const range = printed(request, 'temperature');
  if (range === undefined) return { request, input, favourable: input.min, adverse: input.max };
  const adverse = Math.min(input.max, endIn(range, 'to', input.unit));
  return {
    request,
    input,
    favourable: Math.min(adverse, Math.max(input.min, endIn(range, 'from', input.unit))),
    adverse,
  };
}

/** Up to the manual's last printed tailwind; beyond it there are no figures. */
export function tailwindQuestion(request: AnyRequest): Question {
  const input = tailwindInput(request);
  const axis = printed(request, 'headwind');
  const law = tableOf(request)?.corrections.tailwind;
  const last =
    axis !== undefined && axis.from < 0 ? -axis.from : law === undefined ? undefined : plain(inUnit(law.upTo, 'kt'));
  return { request, input, favourable: 0, adverse: Math.min(input.max, last ?? 20), step: 0.1 };
}

export function crosswindQuestion(request: AnyRequest): Question {
  const input = crosswindInput(request);
  return { request, input, favourable: 0, adverse: input.max };
}

/** From 3 000 m down. */
export function runwayLengthQuestion(request: AnyRequest): Question {
  const input = runwayLengthInput(request);
  const long = plain(inUnit({ value: 3000, unit: 'm' }, input.unit));
  return { request, input, favourable: Math.max(long, input.today ?? long), adverse: Math.ceil(input.min) };
}

export function surfaceFactorQuestion(request: AnyRequest): Question {
  return { request, input: surfaceFactorInput(request), favourable: 1, adverse: 3 };
}
