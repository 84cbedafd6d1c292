import { factorInWords, factorSets } from 'groundroll/distance';
import { sentenceHtml, textHtml } from 'groundroll/worksheet';
import { configurationsOf } from './aeroplanes.ts';
import type { SentenceId } from './fields.ts';
import { clause, Inputs } from './inputs.ts';
import { areCompared, namesOfRecalled, recalledToday } from './recalled.ts';
import type { PageState } from './state.ts';

const unitWords = {
  kg: 'kg',
  lb: 'lb',
  m: 'm',
  ft: 'ft',
  kt: 'kt',
  mph: 'mph',
  mps: 'm/s',
  hPa: 'hPa',
  inHg: 'inHg',
  degC: '°C',
  degF: '°F',
};
const unitsOf = (...units: (keyof typeof unitWords)[]) =>
  Object.fromEntries(units.map((unit) => [unit, unitWords[unit]]));
const norths = { true: 'true', magnetic: 'magnetic' };
const setTitles = Object.fromEntries(Object.entries(factorSets).map(([id, { title }]) => [id, title]));

/** The designator of an end, kept as it is typed elsewhere. */
const end = (n: 1 | 2) => `<span data-end="${n}"></span>`;

/** The sentences of a state, as markup with their fields in them. */
export function sentencesOf(state: PageState, data: unknown, ownFile: string | undefined): Record<SentenceId, string> {
  const f = new Inputs(state);
  const { values: v } = state;
  const isTakeoff = v.job === 'takeoff';
  return {
    aeroplane: aeroplane(f, state, data, ownFile),
    runway: `The runway at ${f.words('aerodrome', 12)} is ${f.figure('length')} ${f.choice('distanceUnit', unitsOf('m', 'ft'))} long and painted ${f.words('designator1', 3)} at one end and ${f.words('designator2', 3)} at the other. It leads ${f.figure('direction1', 3)}° from ${end(1)} and ${f.figure('direction2', 3)}° from ${end(2)}, ${f.choice('runwayNorth', norths)}, ${f.choice('directionFrom', { survey: 'as surveyed', designator: 'as painted, for want of a bearing' })}.`,
    air: air(f, state),
    wind: wind(f, state),
    surface: surface(f, state),
    slope: `The ground lies at ${f.figure('elevation1')} ${f.choice('elevationUnit', unitsOf('ft', 'm'))} at the ${end(1)} end and at ${f.figure('elevation2')} ${unitWords[v.elevationUnit as 'ft' | 'm']} at the ${end(2)} end.`,
    speed: isTakeoff
      ? `I lift off at the manual's speed${clause(` and ${f.figure('liftOffSpeedAddition', 2)} kt`, 'nothing more')}.`
      : `I fly the approach at the manual's speed${clause(` and ${f.figure('approachSpeedAddition', 2)} kt`, 'half of what the gusts are above the mean')}, and pass the threshold at the manual's height${clause(` and ${f.figure('excessHeight', 2)} ft`, 'nothing more')}.`,
    factors: factors(f, state),
    distances: distances(f, state),
    obstacles: obstacles(f, state),
    limits: `My own limits are${clause(` ${f.figure('crosswindLimit', 2)} kt of crosswind`, 'none')}${clause(`, ${f.figure('tailwindLimit', 2)} kt of tailwind`, 'none')}.${isTakeoff ? clause(` If I have to stop, the brakes hold with a coefficient of ${f.figure('brakingCoefficient', 3)}.`, 'not known') : ''}`,
    policies: policies(f, state),
  };
}

function aeroplane(f: Inputs, { values: v }: PageState, data: unknown, ownFile: string | undefined): string {
  const key = v.job === 'takeoff' ? 'takeoffConfiguration' : 'landingConfiguration';
  const configurations = Object.fromEntries(configurationsOf(data, v.job).map(({ id, name }) => [id, name]));
  const chooser =
    v.aeroplane === 'own'
      ? ` <span class="own"><label for="own-file">The performance data file:</label> <input type="file" id="own-file" accept=".json,application/json">${ownFile === undefined ? '' : ` <span>${textHtml(ownFile)}</span>`}</span>`
      : '';
  const names = {
    'corran-four': 'the invented Corran Four',
    'linnet-two': 'the invented Linnet Two',
    'plover-two': 'the invented Plover Two',
    'skerry-two': 'the invented Skerry Two',
    own: 'the aeroplane of my own performance data file',
  };
  return `I want to ${f.choice('job', { takeoff: 'take off', landing: 'land' })} with ${f.choice('aeroplane', names)}, ${f.choice(key, configurations)}, at a mass of ${f.figure('mass')} ${f.choice('massUnit', unitsOf('kg', 'lb'))}.${chooser}`;
}

function air(f: Inputs, { values: v }: PageState): string {
  const source = f.choice('weather', { figures: 'my own figures', METAR: 'a report in code' });
  if (v.weather === 'METAR') return `I take the weather from ${source}, METAR or SPECI: ${f.report()}`;
  const degrees = unitWords[v.temperatureUnit as 'degC' | 'degF'];
  return `I take the weather from ${source}. It is ${f.figure('temperature', 3)} ${f.choice('temperatureUnit', unitsOf('degC', 'degF'))}${clause(`, the dew point ${f.figure('dewPoint', 3)} ${degrees}`, 'not known')}, and the ${f.choice('pressureKind', { qnh: 'QNH', qfe: 'QFE' })} is ${f.figure('pressure')} ${f.choice('pressureUnit', unitsOf('hPa', 'inHg'))}.`;
}

function wind(f: Inputs, { values: v }: PageState): string {
  const variation = clause(
    `The magnetic variation is ${f.figure('variation', 3)}° ${f.choice('variationSide', { east: 'east', west: 'west' })} by ${f.words('variationSource', 12)}.`,
    'not known',
  );
  if (v.weather === 'METAR') return `The wind is that of the report<span data-report-wind></span>. ${variation}`;
  const sources = ['METAR', 'TAF', 'FAA tower', 'FAA ATIS', 'ICAO ATIS'].map((name) => [name, name]);
  const source = f.choice('windSource', { ...Object.fromEntries(sources), observed: 'what I see myself' });
  const kind = f.choice('windKind', {
    from: 'blows from',
    variable: 'is variable',
    'not reported': 'has no direction reported',
  });
  const from = v.windKind === 'from' ? ` ${f.figure('windFrom', 3)}°` : ',';
  return `The wind, by ${source}, ${kind}${from} ${f.choice('windNorth', norths)}, at ${f.figure('windSpeed', 2)} ${f.choice('windUnit', unitsOf('kt', 'mph', 'mps'))}${clause(`, gusting ${f.figure('windGust', 2)} ${unitWords[v.windUnit as 'kt']}`, 'none reported')}${clause(`, varying from ${f.figure('rangeFrom', 3)}° clockwise to ${f.figure('rangeTo', 3)}°`, 'not reported as varying')}. ${variation}`;
}

function surface(f: Inputs, { values: v }: PageState): string {
  const kind = f.choice('surface', { grass: 'grass', paved: 'paved', gravel: 'gravel', snow: 'snow' });
  if (v.surface === 'snow') return `The surface is ${kind}.`;
  const condition = f.choice('condition', { dry: 'dry', wet: 'wet' });
  if (v.surface === 'grass') {
    const length = f.choice('grassLength', {
      'very short': 'very short',
      'up to 20 cm': 'up to 20 cm long',
      'over 20 cm': 'over 20 cm long',
    });
    return `The surface is ${condition} ${kind}, ${length}, on ${f.choice('ground', { firm: 'firm', soft: 'soft' })} ground.`;
  }
  if (v.surface === 'gravel') return `The surface is ${condition} ${kind}.`;
  const code = f.choice('conditionCode', {
    none: 'not reported',
    ...Object.fromEntries(['6', '5', '4', '3', '2', '1', '0'].map((each) => [each, each])),
  });
  return `The surface is ${condition} and ${kind}; the runway condition code is ${code}.`;
}

function factors(f: Inputs, state: PageState): string {
  const ofSet = `What the manual leaves out I take from ${f.choice('factorSet', setTitles)}, ${f.choice('safetyFactor', { 'of the set': 'with its safety factor', none: 'without a safety factor' })}.`;
  const recalled = recalledToday(state);
  if (recalled.length === 0) return ofSet;
  const names = namesOfRecalled(state);
  const isCompared = areCompared(state);
  const words = { '': 'have not compared', [names]: 'have compared' };
  const how = f.choice('compared', words, isCompared ? names : '');
  const when = isCompared
    ? `: ${f.words('comparedEdition', 16)}, on ${f.words('comparedDate', 10)} <span class="hint">(year-month-day)</span>`
    : '';
  return `${ofSet} The library only recalls ${sentenceHtml(recalled.map(factorInWords).join(' and '))}, which I ${how} with a printed edition${when}.`;
}

function distances(f: Inputs, { values: v }: PageState): string {
  const isTakeoff = v.job === 'takeoff';
  const unit = unitWords[v.distanceUnit as 'm' | 'ft'];
  const declared = (n: 1 | 2) =>
    (['TORA', 'TODA', 'ASDA', 'LDA'] as const).map((name) => `${name} ${f.figure(`${name}${n}`)}`).join(', ');
  const from = (n: 1 | 2) =>
    `from ${end(n)}, ${declared(n)} ${unit}${clause(`, the threshold displaced by ${f.figure(`displaced${n}`, 3)} ${unit}`, 'not displaced')}`;
  const lineUp = clause(` Lining up uses ${f.figure('lineUpLoss', 3)} ${unit}.`, 'nothing');
  return `Declared are, ${from(1)}; ${from(2)}. <span class="hint">A distance left empty is not published: the length of the runway stands in for it.</span>${isTakeoff ? lineUp : ''}`;
}

function obstacles(f: Inputs, state: PageState): string {
  const { values: v } = state;
  const looked = f.choice('obstacles', {
    listed: 'looked',
    'not looked for': 'not looked',
  });
  const clearance =
    v.job === 'takeoff'
      ? `I want ${f.figure('verticalClearance', 3)} ft to spare over each after take-off.`
      : `I want ${f.figure('approachClearance', 3)} ft to spare over each on the approach, which I fly at ${f.figure('approachAngle', 3)}°, and ${f.figure('verticalClearance', 3)} ft when going around.`;
  if (v.obstacles !== 'listed') return `I have ${looked} for obstacles. ${clearance}`;
  const [ground, along] = [unitWords[v.elevationUnit as 'ft' | 'm'], unitWords[v.distanceUnit as 'ft' | 'm']];
  const height = (i: number) =>
    i === 0 ? f.choice('heightUnit', unitsOf('m', 'ft')) : unitWords[v.heightUnit as 'ft' | 'm'];
  const items = state.obstacles.map(
    (_, i) =>
      `<li>${f.obstacle(i, 'name', 8)}, ${f.obstacle(i, 'beyond', 4)} ${along} beyond the ${f.obstacle(i, 'end', 3)} end${clause(`, ${f.obstacle(i, 'height', 3)} ${height(i)} high`, 'by its top')}${clause(` on ground at ${f.obstacle(i, 'ground', 4)} ${ground}`, 'by its top')}${clause(`, its top at ${f.obstacle(i, 'top', 4)} ${ground}`, 'by its height')}${clause(`, ${f.obstacle(i, 'aside', 3)} ${along} beside the extended centreline`, 'on it')}. <button type="button" class="plain" data-remove="${i}" aria-label="Remove obstacle ${i + 1}">Remove</button></li>`,
  );
  const list = items.length === 0 ? '' : `<ul class="obstacles">${items.join('')}</ul>`;
  return `I have ${looked} for obstacles${items.length === 0 ? ' and there are none' : '; these are all'}. ${clearance}${list} <button type="button" class="plain" id="add-obstacle">Add an obstacle</button>`;
}

function policies(f: Inputs, { values: v }: PageState): string {
  const isTakeoff = v.job === 'takeoff';
  const of = {
    crosswind: f.choice('demonstratedCrosswind', { limit: 'a limit', information: 'information only' }),
    slope: f.choice('favourableSlope', {
      'no credit': 'gets no credit',
      'of the manual': "gets the manual's own credit",
    }),
    edge: f.choice('favourableEdge', { 'read-at-edge': 'it is read at the edge', refuse: 'there is no figure' }),
    between: f.choice('betweenPrintedValues', {
      interpolate: 'I interpolate',
      'next-worse': 'I take the next worse figure',
    }),
    humidity: f.choice('humidity', {
      information: 'informs only',
      'virtual temperature': 'is read in as a virtual temperature',
    }),
    gust: f.choice('unreportedGust', { mean: 'the mean', 'mean plus 10 kt': 'the mean plus 10 kt' }),
    addition: f.choice('speedAdditionInDistance', { 'paid for': 'is paid for in distance', ignored: 'is ignored' }),
    physics: f.choice('firstPrinciples', { information: 'inform only', 'more adverse': 'may take a verdict away' }),
  };
  const share = `Of a headwind I use the share ${f.figure('headwindShare', 3)}, of a tailwind ${f.figure('tailwindShare', 3)} (empty: as by default, half and one and a half)${isTakeoff ? `; stopping begins ${f.figure('reactionTime', 2)} s after the decision (empty: 3 s)` : ''}.`;
  return `A demonstrated crosswind is ${of.crosswind}. A favourable slope ${of.slope}. Between printed figures ${of.between}; beyond the favourable edge of a table ${of.edge}. Humidity ${of.humidity}. A gust that is not reported is ${of.gust}. A speed addition ${of.addition}. First principles ${of.physics}. ${share}`;
}
