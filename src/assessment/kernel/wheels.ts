import { hydroplaningSpeed, hydroplaningSpeedAtTouchdown, runwayConditionCodes } from '../../distance/index.ts';
import { type PoundsPerSquareInch, roundDown } from '../../units/index.ts';
import { inUnit } from '../request/in-unit.ts';
import type { Situation } from '../request/situation.ts';
import type { Reason } from '../result/reason.ts';
import type { Recorder } from './step.ts';

/** What water and contamination on a paved runway do to wheels: the speeds above which tyres may ride up on water. */
export function wheelHazards(r: Recorder, { data, runway }: Situation): Reason[] {
  const { surface } = runway;
  if (surface.kind !== 'paved') return [];
  const { condition, conditionCode: code } = surface;
  const hazards: Reason[] = [];
  if (code !== undefined && code < 6) {
    const { surface: words, braking } = runwayConditionCodes[code];
    hazards.push({ code: 'hazard-condition-code', parameters: { code, surface: words, braking } });
  }
  if (condition === 'dry') return hazards;
  const pressure = data.airframe?.mainTyrePressure;
  if (pressure === undefined) return [...hazards, { code: 'hazard-hydroplaning-unknown', parameters: {} }];
  const tyrePressure = inUnit(pressure, 'psi') as PoundsPerSquareInch;
  const rolling = r.step('distance.hydroplaning-speed', 'hydroplaning speed', hydroplaningSpeed, { tyrePressure });
  const touchdown = r.step(
    'distance.hydroplaning-speed-at-touchdown',
    'hydroplaning speed at touchdown',
    hydroplaningSpeedAtTouchdown,
    { tyrePressure },
  );
  const parameters = {
    pressure_psi: tyrePressure,
    rolling_kt: roundDown(rolling),
    touchdown_kt: roundDown(touchdown),
  };
  return [...hazards, { code: 'hazard-hydroplaning', parameters }];
}
