import { type AnyRequest, isTakeoff, weatherOf } from '../any-request.ts';
import { inUnit, plain, type StudyInput } from './study-input.ts';

/** What is flown above the manual's lift-off or approach speed. */
export function speedAdditionInput(request: AnyRequest): StudyInput {
  const range = { unit: 'kt', min: 0, max: 30, changes: 'request' } as const;
  if (isTakeoff(request)) {
    return {
      ...range,
      id: 'liftOffSpeedAddition',
      quantity: 'addition to the lift-off speed',
      today: request.liftOffSpeedAddition?.value ?? 0,
      at: (value) => ({ ...request, liftOffSpeedAddition: { value, unit: 'kt' } }),
    };
  }
  const { gust_kt, speed_kt } = weatherOf(request);
  return {
    ...range,
    id: 'approachSpeedAddition',
    quantity: 'addition to the approach speed',
    // Half the gust increment where the request says nothing.
    today: request.approachSpeedAddition?.value ?? plain((gust_kt - speed_kt) / 2),
    at: (value) => ({ ...request, approachSpeedAddition: { value, unit: 'kt' } }),
  };
}

/** By how much the threshold is passed too high; a take-off has none. */
export function excessHeightInput(request: AnyRequest): StudyInput | undefined {
  if (isTakeoff(request)) return undefined;
  const unit = request.excessHeight?.unit ?? 'ftHeight';
  return {
    id: 'excessHeight',
    changes: 'request',
    quantity: 'height above that of the table at the threshold',
    unit,
    today: request.excessHeight?.value ?? 0,
    min: 0,
    max: plain(inUnit({ value: 199, unit: 'mHeight' }, unit)),
    at: (value) => ({ ...request, excessHeight: { value, unit } }),
  };
}
