import {
  formatAcrossRunway,
  formatAlongRunway,
  formatSlope,
  formatValue,
  type Knots,
  type Percent,
} from '../../units/index.ts';
import type { UnitWord } from '../../units/unit-table.ts';
import {
  aboveOrBelow,
  asked,
  askedBeyond,
  asPrinted,
  band,
  factorFigure,
  figure,
  figureDown,
  figureUp,
  limited,
  steepSlope,
} from './figures-in-words.ts';
import type { Parameters } from './parameters.ts';

/** One sentence of an assessment, with its code and figures so that an app can translate it. */
export interface Sentence {
  readonly code: SentenceCode;
  readonly parameters: Parameters;
  readonly text: string;
  /** Where its figures come from: places in the trace of the assessment; absent where no formula stands behind it. */
  readonly steps?: readonly number[];
}

/** The words of every reason, decision, hazard and note. One sentence each; figures are worded, never signed. */
const texts = {
  // The air
  'pressure-altitude': (p) =>
    `QNH ${limited(p['qnh_hPa'], 'hPa')} at ${figureUp(p['elevation_ft'])} ft elevation: ${figureUp(p['pressureAltitude_ft'])} ft pressure altitude.`,
  'pressure-altitude-from-qfe': (p) =>
    `QFE ${limited(p['qfe_hPa'], 'hPa')} at ${figureUp(p['elevation_ft'])} ft elevation: ${figureUp(p['pressureAltitude_ft'])} ft pressure altitude.`,
  'density-altitude': (p) => `Density altitude ${figure(p['densityAltitude_ft'])} ft, dry.`,
  'humid-density-altitude': (p) =>
    `With the reported dew point the density altitude is ${figure(p['densityAltitude_ft'])} ft.`,
  'tables-read-dry': () => 'The tables are read dry; humidity informs only.',
  'virtual-temperature-used': (p) =>
    `The tables are read at the virtual temperature ${figure(p['temperature_degC'], 1)} °C, by the policy on humidity.`,
  // The wind
  'wind-components': (p) =>
    `At the reported direction: ${formatAlongRunway(p['headwind_kt'] as Knots)}, ${formatAcrossRunway(p['crosswind_kt'] as Knots)}; in gusts ${formatAcrossRunway(p['crosswindAtGust_kt'] as Knots)}.`,
  'headwind-used': (p) =>
    `Of the headwind ${figure(p['wind_kt'], 2)} kt is used: ${figure((p['share'] as number) * 100)} % of the least mean component.`,
  'tailwind-used': (p) =>
    `A tailwind of ${figure(p['wind_kt'], 2)} kt is used: the greater of ${figure((p['share'] as number) * 100)} % of the mean and the gust.`,
  'no-headwind-law': () => 'The manual gives no headwind correction, so no headwind is used.',
  'headwind-capped': (p) => `The headwind is used up to the manual's last printed wind, ${limited(p['cap_kt'], 'kt')}.`,
  'accountability-included': () =>
    'The manual says that its figures already contain the wind accountability: in its tables the whole component is used; climb and marks keep the share.',
  'accountability-not-stated': () =>
    'The manual does not say what its figures contain; wind accountability and safety factor are applied.',
  'gust-unknown': (p) =>
    `No gust is reported: gusts up to ${figure(p['threshold_kt'])} kt may go unreported. ${figureUp(p['used_kt'])} kt are used as the gust.`,
  'direction-unknown': () =>
    'The wind has no direction: its full speed counts as a tailwind and as a crosswind from either side, gusts included.',
  'north-converted': (p) =>
    `The runway direction ${figure(p['given_deg'])}° ${p['givenNorth']} is ${figure(p['converted_deg'], 1)}° ${p['convertedNorth']} with a variation of ${p['variation']} (${p['source']}).`,
  'wind-near-abeam': (p) =>
    `The wind is ${figure(p['angle_deg'])}° off the runway. Reported directions are rounded to 10°: 5° backed (anticlockwise) ${p['first']}, 5° veered (clockwise) ${p['second']}.`,
  'direction-only-painted': () => 'The runway direction is taken from its painted number, which may be 5° out.',
  'tora-shorter': (p) =>
    `The TORA is ${figure(p['by_m'])} m shorter than the runway. For what stands ahead the missing part is taken to lie at the start, which brings it nearer.`,
  'addition-below-half-gust': (p) =>
    `${figureDown(p['addition_kt'], 1)} kt are added to the approach speed, by choice; half the gust increment is ${figureUp(p['half_kt'], 1)} kt.`,
  'direction-from-designator': (p) =>
    `The runway direction is taken from its painted number, which may be 5° out, as if the wind were: 5° backed (anticlockwise) ${p['first']}, 5° veered (clockwise) ${p['second']}.`,
  // Reading tables
  'read-at-edge': (p) =>
    `The ${p['quantity']} ${asked(p)} is on the favourable side of the ${p['table']} table; it is read at its edge, ${asPrinted(p['edge'], p['unit'])}.`,
  'read-next-worse': () =>
    'The next worse printed figure is taken, without interpolation, by the policy on reading tables.',
  'off-table': (p) =>
    `The ${p['table']} table ends at ${asPrinted(p['min'], p['unit'])} to ${asPrinted(p['max'], p['unit'])} of ${p['quantity']}; ${askedBeyond(p)} is beyond it.`,
  'off-curves': (p) => `The ${p['table']} chart has no curve for today's ${p['quantity']}.`,
  'table-not-monotonic': (p) =>
    `The ${p['table']} table gets better from its first ${p['quantity']}, so its edge is not read for ${asked(p)}.`,
  'blank-cell': (p) =>
    `The ${p['table']} table has a blank cell beside these conditions; a blank is a limit of the aeroplane.`,
  'no-table': (p) => `The data have no ${p['table']} table for the configuration "${p['configuration']}".`,
  'no-calibration': (p) =>
    `The data have no calibration for flap ${p['flap']} at ${figure(p['speed_kias'])} KIAS, so ${p['purpose']} cannot be formed.`,
  // Corrections
  'mass-not-covered': (p) =>
    `The ${p['table']} table holds up to ${limited(p['limit_kg'], 'kg')} and neither the manual nor the factor set says what more mass costs.`,
  'elevation-not-covered': (p) =>
    `The ${p['table']} table holds up to ${limited(p['limit_ft'], 'ftPA')} and neither the manual nor the factor set says what more costs.`,
  'temperature-not-covered': (p) =>
    `The ${p['table']} table holds up to ${limited(p['limit_degC'], 'degC')} and neither the manual nor the factor set says what more costs.`,
  'beyond-pro-rating': (p) =>
    `${figureUp(p['steps'], 1)} steps of a factor printed for one step are beyond the ${figure(p['most'])} that are pro-rated: there is no figure.`,
  'law-of-manual': (p) => `The manual's own law is used for the ${p['quantity']}.`,
  'tailwind-beyond-manual': (p) =>
    `A tailwind of ${figureUp(p['wind_kt'], 1)} kt is beyond the manual's last printed tailwind, ${limited(p['cap_kt'], 'kt')}: there is no figure.`,
  'no-tailwind-law': (p) =>
    `Neither the manual nor the factor set says what a tailwind of ${figureUp(p['wind_kt'], 1)} kt costs.`,
  'surface-of-manual': (p) => `The manual's own figure for ${p['surface']} is used.`,
  'surface-of-set': (p) =>
    `The manual is silent on ${p['surface']}: factor of the set used, ${factorFigure(p['factor'])} (${p['condition']}).`,
  'surface-not-below-manual': (p) =>
    `The manual's own figure for the milder ${p['surface']} asks for more than the set; the manual's is used.`,
  'surface-no-factor': (p) =>
    `Neither the manual nor the factor set has a factor for ${p['aspects']}; an absent factor is not 1.0.`,
  'surface-at-least': (p) =>
    `The factor for ${p['condition']} says "at least ${factorFigure(p['factor'])}"; it can prove outside limits, never within.`,
  'surface-at-most': (p) =>
    `The factor for ${p['condition']} says "at most ${factorFigure(p['factor'])}"; it can prove within limits, never outside.`,
  'slope-no-credit': (p) => `The slope, ${formatSlope(p['slope_percent'] as Percent)}, is favourable: no credit.`,
  'slope-credit-of-manual': (p) =>
    `The slope, ${formatSlope(p['slope_percent'] as Percent)}, is favourable: the manual's own credit is used, by the policy chosen.`,
  'slope-of-manual': (p) =>
    `The manual's own slope correction is used for ${formatSlope(p['slope_percent'] as Percent)}.`,
  'slope-of-set': (p) =>
    `Slope ${formatSlope(p['slope_percent'] as Percent)}: ${asPrinted(p['percentPerPercent'], 'percent')} for each 1 %, of the set.`,
  'slope-no-factor': (p) =>
    `Neither the manual nor the factor set has a factor for the slope, ${formatSlope(p['slope_percent'] as Percent)}.`,
  'slope-beyond-set': (p) =>
    `The slope ${steepSlope(p['slope_percent'])} is beyond the ${limited(p['limit_percent'], 'percent')} that the factor is stated for.`,
  'slope-beyond-manual': (p) =>
    `The slope ${steepSlope(p['slope_percent'])} is beyond the manual's last printed slope, ${limited(p['limit_percent'], 'percent')}.`,
  'speed-addition-paid': (p) =>
    `${figure(p['speed_kias'])} KIAS instead of the table's ${figure(p['table_kias'], 1)} is paid for in distance: (${figure(p['speed_kcas'], 1)} / ${figure(p['table_kcas'], 1)} KCAS)².`,
  'speed-addition-ignored': () => 'The speed addition is not paid for in distance, by the policy chosen.',
  'excess-height-paid': (p) =>
    `Passing the threshold ${figureUp(p['height_ft'])} ft too high at ${figure(p['angle_deg'], 1)}° is paid for in distance flown over, before the safety factor.`,
  'safety-factor-none': () =>
    'No safety factor, by choice: the distance available is compared with the corrected distance itself.',
  'set-without-safety-factor': (p) =>
    `${p['set']} asks for no safety factor: the distance available is compared with the corrected distance itself.`,
  'safety-factor-included': () => 'The manual says that its figures already contain a safety factor; none is applied.',
  'safety-alternative': (p) => `Of the set's ways to satisfy it at take-off, the one with ${p['tests']} is used.`,
  // Verdicts
  'recalled-factor': (p) =>
    `A factor is recalled, not read: ${p['factor']} of ${p['edition']}. Compare it with the current edition, and confirm ${p['factorId']} in the request.`,
  confirmed: (p) =>
    `A factor is recalled by the library and confirmed by the user: ${p['factor']}, compared with ${p['edition']} on ${p['date']}.`,
  'second-hand-factors': (p) =>
    `Second-hand figures are used here: ${p['factors']}. Compare them with the current editions.`,
  'mass-above-maximum': (p) =>
    `${formatValue(p['mass'] as number, p['unit'] as UnitWord, { decimals: 1, rounding: 'up' })} is above the maximum, ${limited(p['limit'], p['unit'])}.`,
  'no-crosswind-limit': (p) =>
    `${figure(p['wind_kt'])} kt of crosswind and no limit that binds: neither the data nor the request give one.`,
  'no-tailwind-limit': (p) =>
    `${figure(p['wind_kt'])} kt of tailwind and no limit: neither the data nor the request give one.`,
  'break-even-surface': (p) => `Within limits as long as the surface costs no more than ${figure(p['factor'], 3)}.`,
  'obstacles-not-assessed': () =>
    'No list of obstacles was given: not assessed. An empty list says that there are none.',
  'no-climb-data': (p) => `The data have no rate of climb for the configuration "${p['configuration']}".`,
  'obstacle-before-screen': (p) =>
    `${p['obstacle']} stands before the 50 ft point, where no height is assumed: the aeroplane is below 50 ft there.`,
  'obstacle-clearance': (p) =>
    `${p['obstacle']}: the path from the factored distance passes ${aboveOrBelow(p['factored_ft'] as number)}, from the unfactored distance ${aboveOrBelow(p['unfactored_ft'] as number)}; ${figureUp(p['clearance_ft'])} ft are asked.`,
  'tightest-test': (p) =>
    `The tightest of its tests: ${factorFigure(p['factor'])} x the distance against the ${p['against']}.`,
  'bound-at-least': () =>
    'A factor says "at least": the figure is a lower bound, which can show that it does not fit and never that it does.',
  'bound-at-most': () =>
    'A factor says "at most": the figure is an upper bound, which can show that it fits and never that it does not.',
  'bounds-both-ways': () => 'One factor says "at least" and another "at most": together they bound nothing.',
  'distance-unknown': () => 'The distance itself is undetermined.',
  'approach-too-flat': (p) =>
    `An approach at ${figure(p['angle_deg'], 1)}° does not meet a surface falling at ${figure(p['slope_percent'], 1)} %.`,
  'obstacle-beside': (p) =>
    `${p['obstacle']} stands ${figure(p['offset_m'])} m beside the extended centreline and is assessed as if it stood on it.`,
  'obstacle-beside-strip': (p) =>
    `For information: the rule for two and more engines (CAT.POL.A.310) looks ${figure(p['halfWidth_m'])} m to either side there, at ${p['obstacle']}.`,
  'approach-rate': (p) =>
    `An approach at ${figure(p['angle_deg'], 1)}° with ${figure(p['groundSpeed_kt'])} kt over the ground takes ${figure(p['rate_ftPerMin'])} ft/min of descent.`,
  'approach-angle-without-loss': (p) =>
    `A path of ${figure(p['angle_deg'], 1)}° (${figure(p['rate_ftPerMin'])} ft/min) would pass every listed obstacle without loss of distance; no landing distance is printed for such a path.`,
  'approach-loss': (p) =>
    `${figure(p['lost_m'])} m of the landing distance available are lost over ${p['obstacle']} at ${figure(p['angle_deg'], 1)}°.`,
  'crosswind-demonstrated-informs': (p) =>
    `${figure(p['crosswind_kt'])} kt of crosswind are above the ${limited(p['limit_kt'], 'kt')} demonstrated; by the policy chosen this informs only.`,
  // Advice
  'choose-another': () => 'The wind is the problem: choose another runway or another aerodrome.',
  'crosswind-against-stall': (p) =>
    `0.2 V_S0 is ${figureDown(p['limit_kt'], 1)} kt, the least crosswind that certification asks a light aeroplane to show; today it is up to ${figure(p['crosswind_kt'])} kt.`,
  'no-stall-speed': () => '0.2 V_S0 cannot be formed: the data have no V_S0 with a calibration for its flap.',
  // Headline
  'verdict-with-limiting': (p) => `${p['subject']}: ${p['verdict']}; tightest is ${p['criterion']}, ${p['margin']}.`,
  'verdict-undetermined': (p) => `${p['subject']}: ${p['verdict']}; not to be determined: ${p['criteria']}.`,
  'factors-of': (p) => `Factors of ${p['set']} (${p['edition']}).`,
  // Hazards
  'hazard-tailwind': () =>
    'A tailwind is in this wind. It lengthens the roll, flattens the climb over the ground, and on base leg it drives the turn to final wide.',
  'hazard-wet-grass': () => 'Wet grass: braking is poor and a rejected take-off may run much further than a dry one.',
  'hazard-soft-ground': () =>
    'Soft ground differs from one step to the next; published figures for it are lower bounds.',
  'hazard-gusts': (p) =>
    `Gusts of ${figureUp(p['increment_kt'])} kt above the mean: expect airspeed and drift to change by as much.`,
  'hazard-gusts-assumed': (p) =>
    `No gust is reported. By the policy chosen gusts of ${figureUp(p['increment_kt'])} kt above the mean are assumed: airspeed and drift may change by as much.`,
  'hazard-obstacles': () => 'Sink and turbulence behind trees and ridges are not modelled.',
  'hazard-steep-slope': (p) =>
    `The slope, ${steepSlope(p['slope_percent'])}, is steeper than published factors are meant for.`,
  'hazard-hydroplaning': (p) =>
    `On water a tyre at ${limited(p['pressure_psi'], 'psi')} may hydroplane above ${figure(p['rolling_kt'])} kt over the ground, at touchdown above ${figure(p['touchdown_kt'])} kt.`,
  'hazard-hydroplaning-unknown': () =>
    'On water the tyres may hydroplane; the data have no tyre pressure, so no speed is given.',
  'hazard-condition-code': (p) =>
    `Runway condition code ${p['code']}: ${p['surface']}; braking action ${p['braking']}.`,
  'hazard-steep-approach': (p) =>
    `An approach at ${figureUp(p['angle_deg'], 1)}° is steeper than 3.5°: the landing may take longer than the manual's figure (AIM 2-1-2).`,
  'hazard-approach-rate': (p) =>
    `${figure(p['rate_ftPerMin'])} ft/min of descent is more than the ${figure(p['limit_ftPerMin'])} ft/min that should not be exceeded below ${figure(p['below_ft'])} ft above the ground.`,
  'hazard-commits-before-threshold': () =>
    'From the threshold on no go-around clears what stands ahead: the decision to land falls before it.',
  'hazard-no-go-around': () =>
    'Obstacles stand ahead and the data have no balked landing climb: whether a go-around clears them is not assessed.',
  'hazard-demonstrated': () =>
    'A demonstrated crosswind says what was shown on a dry paved runway; grass or gusts may take more.',
  // Data notes
  plausibility: (p) => `Performance data, ${p['path']}: ${p['message']}.`,
  'direction-range': (p) =>
    `The wind varies between ${figure(p['from_deg'])}° and ${figure(p['to_deg'])}°; the worst of these directions is used for each figure.`,
  'obstacles-none': () => 'The list of obstacles is empty: none are known.',
  'manual-includes': (p) =>
    `The manual's figures: safety factor ${p['safetyFactor']}, wind accountability ${p['windAccountability']}.`,
  // First principles
  'estimate-surface': (p) =>
    `An estimate: rolling friction of ${band(p['leastFriction'], p['greatestFriction'])} on ${p['surface']} instead of ${band(p['leastKnown'], p['greatestKnown'])} on the manual's surface multiplies the distance by ${band(p['low'], p['high'])}.`,
  'estimate-surface-open': (p) =>
    `An estimate: rolling friction of ${band(p['leastFriction'], p['greatestFriction'])} on ${p['surface']} multiplies the distance by at least ${figureDown(p['low'], 2)}; with the greatest the aeroplane may not reach its lift-off speed at all.`,
  'estimate-surface-stuck': (p) =>
    `An estimate: rolling friction of ${band(p['leastFriction'], p['greatestFriction'])} on ${p['surface']} leaves no acceleration.`,
  'estimate-assumes': () =>
    "It rests on the constant thrust that gives back the manual's own roll in calm air, the same lift-off speed, a level runway and wheels that carry the whole mass, which overstates what friction costs.",
  'estimate-recalled': () => 'Some of its friction figures are recalled, not read.',
  'estimate-more-adverse': (p) =>
    `By first principles the surface may cost ${p['bound']}: by the policy chosen that takes the verdict of within away.`,
  // Marks
  'mark-none-obstacles': () => 'No roll of any length clears the obstacles by the height asked.',
  'mark-none-roll': () => 'The roll expected today is longer than the longest that would still do.',
  'mark-wind-too-strong': () => 'The wind is more than half the lift-off speed: no mark is given.',
  'mark-needs-braking': () => 'A braking coefficient is needed for this mark; there is no default.',
  'mark-not-known': () => 'The figures that this mark needs are undetermined.',
  'mark-lower-bound': () => 'It would rest on a factor that says "at least": no point can be given.',
  'mark-go-around-basis': () =>
    'Holds for a climb that begins on the surface at once: add what deciding, applying power and cleaning up will take.',
  'mark-go-around-throughout': () =>
    'None before the far end of the runway: a climb that begins on the surface at once clears what is listed ahead from there too. Deciding, applying power and cleaning up take their distance besides.',
  'mark-aiming-beyond': () =>
    'The path that clears the obstacles meets the surface beyond the far end of the runway: there is no point to aim at.',
  'mark-aiming-basis': () =>
    'Where the path meets a surface level with the threshold; the flare carries the touchdown farther.',
  'mark-acceleration-basis': () =>
    'Holds for a constant acceleration; the position error of the airspeed indicator is neglected. A real roll accelerates less as it goes on, so reaching the speed at the mark promises nothing; missing it means stop.',
  // Break-evens
  'other-limit-tailwind': (p) => `The tailwind limit (${p['status']}) is ${limited(p['limit'], p['unit'])}.`,
  'other-limit-mass': (p) => `The maximum mass is ${limited(p['limit'], p['unit'])}.`,
  'other-limit-obstacles': () => 'The obstacles ahead are not looked at.',
} as const satisfies Record<string, (p: Parameters) => string>;

/** The code of a sentence. */
export type SentenceCode = keyof typeof texts;

/** Every code, for the schema of the documents that hold sentences; a function, so that no other import pays for it. */
export function sentenceCodes(): [SentenceCode, ...SentenceCode[]] {
  return Object.keys(texts) as [SentenceCode, ...SentenceCode[]];
}

/** Words a reason. */
export function sentence(code: SentenceCode, parameters: Parameters = {}): Sentence {
  const words: (p: Parameters) => string = texts[code];
  return { code, parameters, text: words(parameters) };
}
