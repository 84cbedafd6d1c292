import type { AnyRequest } from '../any-request.ts';
import { pressureInput, temperatureInput } from './air.ts';
import { massInput } from './loading.ts';
import { obstacleDistanceInput, obstacleHeightInput, obstaclesThatCount } from './obstacles.ts';
import { lineUpLossInput, runwayLengthInput, slopeInput } from './runway.ts';
import { excessHeightInput, speedAdditionInput } from './speeds.ts';
import type { StudyInput } from './study-input.ts';
import { surfaceFactorInput } from './surface.ts';
import { gustInput, windDirectionInput, windSpeedInput } from './wind.ts';

/** Every input of a request that has a value today. */
export function inputsOf(request: AnyRequest): StudyInput[] {
  const inputs = [
    massInput(request),
    temperatureInput(request),
    pressureInput(request),
    windSpeedInput(request),
    gustInput(request),
    windDirectionInput(request),
    surfaceFactorInput(request),
    slopeInput(request),
    runwayLengthInput(request),
    lineUpLossInput(request),
    ...obstaclesThatCount(request).flatMap((obstacle) => [
      obstacleHeightInput(request, obstacle),
      obstacleDistanceInput(request, obstacle),
    ]),
    speedAdditionInput(request),
    excessHeightInput(request),
  ];
  return inputs.filter((input): input is StudyInput => input?.today !== undefined);
}
