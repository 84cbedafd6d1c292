// The example scenario worked a second time with arithmetic and tables of its own. Nothing is imported.

const foot_m = 0.3048;
const feetPerMinuteInAKnot = 6076.115485564304 / 60;
const mass_kg = 940;
const temperature_degC = 26;
const qnh_hPa = 1006;
const dewPoint_degC = 16;
const length_m = 830;
const west_ft = 387;
const east_ft = 438;
const treeHeight_m = 28;
const treeDistance_m = 25;

const masses = [850, 950, 1050];
const altitudes = [0, 2000, 4000];
const temperatures = [0, 10, 20, 30, 40];

type Block = readonly (readonly number[])[];

const rollBlocks: readonly Block[] = [
  [
    [145, 155, 165, 180, 190],
    [165, 180, 195, 210, 225],
    [195, 210, 225, 245, 260],
  ],
  [
    [180, 190, 205, 220, 240],
    [210, 225, 240, 260, 280],
    [245, 265, 285, 305, 330],
  ],
  [
    [215, 235, 255, 270, 295],
    [255, 275, 295, 320, 345],
    [300, 325, 350, 380, 410],
  ],
];
const distanceBlocks: readonly Block[] = [
  [
    [280, 300, 325, 350, 375],
    [325, 350, 380, 410, 445],
    [385, 415, 455, 490, 535],
  ],
  [
    [345, 375, 405, 440, 475],
    [410, 445, 485, 525, 575],
    [490, 535, 585, 640, 705],
  ],
  [
    [430, 465, 510, 555, 600],
    [510, 560, 615, 670, 735],
    [620, 680, 755, 835, 925],
  ],
];
const climbBlocks: readonly Block[] = [
  [
    [900, 850, 800, 760, 720],
    [800, 760, 710, 670, 630],
    [710, 660, 620, 580, 540],
  ],
  [
    [780, 730, 690, 650, 600],
    [690, 640, 600, 550, 510],
    [590, 550, 500, 460, 420],
  ],
  [
    [660, 620, 580, 540, 500],
    [570, 530, 490, 450, 410],
    [480, 440, 400, 360, 320],
  ],
];
const landingRoll: Block = [
  [130, 135, 140, 145, 145],
  [140, 145, 150, 150, 155],
  [150, 155, 160, 165, 170],
];
const landingDistance: Block = [
  [360, 365, 375, 380, 390],
  [375, 385, 390, 400, 410],
  [390, 400, 410, 420, 430],
];

function line(axis: readonly number[], values: readonly number[], x: number): number {
  let i = 0;
  while (i < axis.length - 2 && x >= (axis[i + 1] as number)) i += 1;
  const [x0, x1, y0, y1] = [axis[i], axis[i + 1], values[i], values[i + 1]] as [number, number, number, number];
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

const plane = (block: Block, pa_ft: number, t_degC: number) =>
  line(
    altitudes,
    block.map((row) => line(temperatures, row, t_degC)),
    pa_ft,
  );

const solid = (blocks: readonly Block[], m_kg: number, pa_ft: number, t_degC: number) =>
  line(
    masses,
    blocks.map((block) => plane(block, pa_ft, t_degC)),
    m_kg,
  );

/** The printed tables at any point inside them, for scenarios beside the first. */
export const printed = {
  takeoffDistance: (m_kg: number, pa_ft: number, t_degC: number) => solid(distanceBlocks, m_kg, pa_ft, t_degC),
  landingDistance: (pa_ft: number, t_degC: number) => plane(landingDistance, pa_ft, t_degC),
};

const up = (x: number) => Math.ceil(x - 1e-9);
const down = (x: number) => Math.floor(x + 1e-9);

// The air: the standard atmosphere in feet, and density as a ratio.
const layer_ft = 145442.156;
export const pressureAltitude_ft = east_ft + layer_ft * (1 - (qnh_hPa / 1013.25) ** 0.1902631);
const delta = (1 - pressureAltitude_ft / layer_ft) ** 5.25588;
const densityAltitudeAt = (t_kelvin: number) => layer_ft * (1 - ((delta * 288.15) / t_kelvin) ** 0.234969);
export const densityAltitude_ft = densityAltitudeAt(temperature_degC + 273.15);

/** Moist air weighs as dry air at T / (1 - 0.378 e / p); e of the dew point after Magnus, here with Bolton's constants. */
export function humidDensityAltitude(): number {
  const e_hPa = 6.112 * Math.exp((17.67 * dewPoint_degC) / (dewPoint_degC + 243.5));
  return densityAltitudeAt((temperature_degC + 273.15) / (1 - (0.378 * e_hPa) / (1013.25 * delta)));
}

const sigma = (delta * 288.15) / (temperature_degC + 273.15);
const slopeOn10 = ((east_ft - west_ft) * foot_m) / length_m;

/** The wind along and across, and the part of it that is used: half of a headwind, the worse of 1.5 mean tail and gust. */
export function wind(runway_deg: number, from_deg = 190) {
  const angle = ((from_deg - runway_deg) * Math.PI) / 180;
  const head = { mean: 7 * Math.cos(angle), gust: 17 * Math.cos(angle) };
  const used = head.mean >= 0 && head.gust >= 0 ? head.mean / 2 : Math.min(1.5 * head.mean, head.gust);
  return { head, crosswindAtGust: 17 * Math.sin(angle), used };
}

const takeoffWindFactor = (used: number) => (used >= 0 ? 1 - 0.01 * used : 1 - 0.045 * used);
const landingWindFactor = (used: number) => (used >= 0 ? 1 - 0.009 * used : 1 - 0.04 * used);

/** One end of the runway: its true direction and its slope in the direction of use. */
const ends = { '10': { direction_deg: 112, slope: slopeOn10 }, '28': { direction_deg: 292, slope: -slopeOn10 } };

export type End = keyof typeof ends;

const distance50 = solid(distanceBlocks, mass_kg, pressureAltitude_ft, temperature_degC);

/** The stairs of a take-off, its ground roll, and the distances and margins that are compared. */
export function takeoff(end: End, from_deg = 190) {
  const { direction_deg, slope } = ends[end];
  const { used } = wind(direction_deg, from_deg);
  const manual = distance50;
  const withWind = manual * takeoffWindFactor(used);
  const onGrass = withWind * 1.2;
  const onSlope = onGrass * (1 + 5 * Math.max(0, slope));
  const required = onSlope * 1.25;
  const rollInWind = solid(rollBlocks, mass_kg, pressureAltitude_ft, temperature_degC) * takeoffWindFactor(used);
  // What grass and slope add lies on the ground.
  const roll = rollInWind + (onSlope - withWind);
  return {
    stairs: { manual, wind: withWind, surface: onGrass, ...(slope > 0 ? { slope: onSlope } : {}), required },
    corrected: onSlope,
    roll,
    used,
    required: up(required),
    margin: length_m - up(required),
    runRequired: up(roll * 1.25),
  };
}

/** The climb-out on 10 from where a distance ends, 50 ft above the surface there. */
export function climbOut(from_m: number, used: number) {
  const tas_kt = 57.8 / Math.sqrt(sigma);
  const rate_ftPerMin = solid(climbBlocks, mass_kg, pressureAltitude_ft, temperature_degC);
  const gradient = rate_ftPerMin / ((tas_kt - used) * feetPerMinuteInAKnot);
  const top_m = length_m * slopeOn10 + treeHeight_m;
  const distance_m = length_m + treeDistance_m - from_m;
  const start_m = from_m * slopeOn10 + 50 * foot_m;
  return {
    achieved_percent: 100 * gradient,
    required_percent: (100 * (top_m + 50 * foot_m - start_m)) / distance_m,
    clearance_ft: (start_m + gradient * distance_m - top_m) / foot_m,
  };
}

/** The marks of the take-off on 28, where nothing stands in the way: 48 KIAS lift-off is 50.4 KCAS. */
export function marksOn28() {
  const { head, used } = wind(292);
  const { corrected, roll } = takeoff('28');
  const latest = length_m - (corrected - roll);
  const due_kt = Math.max(0.7 * 48, head.mean + (48 - head.mean) * Math.sqrt(0.5));
  const lift_mps = ((50.4 / Math.sqrt(sigma) - used) * 1852) / 3600;
  const acceleration = lift_mps ** 2 / (2 * latest);
  const stopsAt = (x: number) => {
    const v = Math.sqrt(2 * acceleration * x);
    return x + 3 * v + v ** 2 / (2 * 0.2 * 9.80665);
  };
  let [low, high] = [0, latest];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (stopsAt(middle) <= length_m) low = middle;
    else high = middle;
  }
  return {
    latestLiftOff: down(latest),
    accelerationCheck: down(latest / 2),
    speedDue: up(due_kt),
    latestReject: down(low),
    shares_percent: [latest, latest / 2, low].map((x) => down((100 * x) / length_m)),
  };
}

/** The stairs of a landing at 62 KIAS (63.3 KCAS) against a table for 57 (59.1), and the latest touchdown point. */
export function landing(end: End, from_deg = 190) {
  const { direction_deg, slope } = ends[end];
  const { used } = wind(direction_deg, from_deg);
  const manual = plane(landingDistance, pressureAltitude_ft, temperature_degC);
  const withWind = manual * landingWindFactor(used);
  const onGrass = withWind * 1.15;
  const onSlope = onGrass * (1 + 5 * Math.max(0, -slope));
  const withSpeed = onSlope * (63.3 / 59.1) ** 2;
  const required = withSpeed / 0.7;
  const roll = plane(landingRoll, pressureAltitude_ft, temperature_degC) * landingWindFactor(used);
  const tangent = Math.tan((3 * Math.PI) / 180);
  const over = treeHeight_m + 30 * foot_m - 50 * foot_m - treeDistance_m * tangent;
  const lost = end === '28' ? Math.max(0, over / (tangent - slopeOn10)) : 0;
  const available = down(length_m - lost);
  return {
    stairs: {
      manual,
      wind: withWind,
      surface: onGrass,
      ...(slope < 0 ? { slope: onSlope } : {}),
      'speed addition': withSpeed,
      required,
    },
    required: up(required),
    available,
    margin: available - up(required),
    lost: up(lost),
    latestTouchdown: down(length_m - (roll + withSpeed - withWind)),
  };
}

/** The required distance on 28 with one thing changed, and the greatest such thing that still fits. */
function requiredOn28(change: { tailwind?: number; surface?: number; mass?: number; temperature?: number }): number {
  const factor = takeoffWindFactor(change.tailwind === undefined ? wind(292).used : -change.tailwind);
  const { mass = mass_kg, temperature = temperature_degC, surface = 1.2 } = change;
  return solid(distanceBlocks, mass, pressureAltitude_ft, temperature) * factor * surface * 1.25;
}

function greatest(fits: (x: number) => boolean, from: number, to: number, step: number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return Number((Math.floor(low / step + 1e-6) * step).toFixed(3));
}

/** Where the departure on 28 turns. Required distances count in whole metres, rounded up. */
export function breakEvensOn28() {
  const fits = (change: Parameters<typeof requiredOn28>[0]) => up(requiredOn28(change)) <= length_m;
  return {
    tailwind: greatest((tailwind) => fits({ tailwind }), 0, 8, 0.1),
    'surface factor': greatest((surface) => fits({ surface }), 1, 3, 0.001),
    mass: greatest((mass) => fits({ mass }), 850, 1050, 1),
    temperature: greatest((temperature) => fits({ temperature }), 0, 40, 1),
  };
}
