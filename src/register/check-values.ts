import gustAddition from '../airspeed/gust-addition.check-values.json' with { type: 'json' };
import loadFactor from '../airspeed/load-factor.check-values.json' with { type: 'json' };
import stallSpeed from '../airspeed/stall-speed.check-values.json' with { type: 'json' };
import trueAirspeed from '../airspeed/true-airspeed.check-values.json' with { type: 'json' };
import densityAltitude from '../atmosphere/density-altitude.check-values.json' with { type: 'json' };
import humidAir from '../atmosphere/humid-air.check-values.json' with { type: 'json' };
import pressureAltitude from '../atmosphere/pressure-altitude.check-values.json' with { type: 'json' };
import speedOfSound from '../atmosphere/speed-of-sound.check-values.json' with { type: 'json' };
import standardPressure from '../atmosphere/standard-pressure.check-values.json' with { type: 'json' };
import standardTemperature from '../atmosphere/standard-temperature.check-values.json' with { type: 'json' };
import vapourPressure from '../atmosphere/vapour-pressure.check-values.json' with { type: 'json' };
import type { CheckValue } from '../sources/index.ts';
import windComponents from '../wind/components.check-values.json' with { type: 'json' };
import reportedWind from '../wind/reported.check-values.json' with { type: 'json' };

// An imported JSON widens every unit word to a text; the files are held to their schema by the tests.
const files: readonly { readonly checkValues: readonly unknown[] }[] = [
  densityAltitude,
  humidAir,
  pressureAltitude,
  speedOfSound,
  standardPressure,
  standardTemperature,
  vapourPressure,
  gustAddition,
  loadFactor,
  stallSpeed,
  trueAirspeed,
  windComponents,
  reportedWind,
];

/** Every published check value of the library. */
export const checkValues = files.flatMap((file) => file.checkValues) as readonly CheckValue[];
