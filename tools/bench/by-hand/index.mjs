// All formulas by hand, by the id of their record.
import * as aircraft from './aircraft.mjs';
import * as airspeed from './airspeed.mjs';
import * as atmosphere from './atmosphere.mjs';
import * as distance from './distance.mjs';
import * as dynamics from './dynamics.mjs';
import * as flightPath from './flight-path.mjs';
import * as magnetism from './magnetism.mjs';
import * as rulesOfThumb from './rules-of-thumb.mjs';
import * as study from './study.mjs';
import * as wind from './wind.mjs';

const folders = [atmosphere, airspeed, magnetism, wind, distance, flightPath, dynamics, rulesOfThumb, aircraft, study];
const together = (part) => new Map(folders.flatMap((folder) => Object.entries(folder[part] ?? {})));

/** Functions without sines, logarithms, powers or the like. */
export const algebraic = together('algebraic');
/** Functions with them. */
export const transcendental = together('transcendental');
/** Formulas for which writing them by hand makes no sense, and why. */
export const notByHand = together('notByHand');
