import interpolateCell from '../aircraft/interpolate-cell.check-values.json' with { type: 'json' };
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
import accelerationCheckSpeed from '../distance/acceleration-check.check-values.json' with { type: 'json' };
import correctedDistance from '../distance/corrected-distance.check-values.json' with { type: 'json' };
import linearFactor from '../distance/linear-factor.check-values.json' with { type: 'json' };
import proRatedFactor from '../distance/pro-rated-factor.check-values.json' with { type: 'json' };
import speedFactor from '../distance/speed-factor.check-values.json' with { type: 'json' };
import landingDistanceLost from '../flight-path/approach-obstacle.check-values.json' with { type: 'json' };
import climbGradient from '../flight-path/climb-gradient.check-values.json' with { type: 'json' };
import obstacleClearance from '../flight-path/obstacle-clearance.check-values.json' with { type: 'json' };
import requiredGradient from '../flight-path/required-gradient.check-values.json' with { type: 'json' };
import northConversion from '../magnetism/conversion.check-values.json' with { type: 'json' };
import magneticVariation from '../magnetism/variation.check-values.json' with { type: 'json' };
import type { CheckValue } from '../sources/index.ts';
import windComponents from '../wind/components.check-values.json' with { type: 'json' };
import reportedWind from '../wind/reported.check-values.json' with { type: 'json' };

// An imported JSON widens every unit word to a text; the files are held to their schema by the tests.
const files: readonly { readonly checkValues: readonly unknown[] }[] = [
  magneticVariation,
  northConversion,
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
  accelerationCheckSpeed,
  correctedDistance,
  linearFactor,
  proRatedFactor,
  speedFactor,
  landingDistanceLost,
  climbGradient,
  obstacleClearance,
  requiredGradient,
  interpolateCell,
];

/** Every published check value of the library. */
export const checkValues = files.flatMap((file) => file.checkValues) as readonly CheckValue[];
