import { type Finding, readPerformanceData } from '../../src/aircraft/index.ts';

export const degrees = [0, 20, 40];
export const feet = [0, 4000];

/** Figures along pressure altitude and temperature. */
export function onTwoAxes(unit: string, cells: unknown) {
  return {
    axes: [
      { quantity: 'pressureAltitude', unit: 'ftPA', values: feet },
      { quantity: 'temperature', unit: 'degC', values: degrees },
    ],
    unit,
    cells,
  };
}
/** One figure for everything. */
export const one = (unit: string, cells: unknown) => ({ axes: [], unit, cells });
export const measure = (value: number, unit: string) => ({ value, unit });

/** An invented aeroplane of one configuration for each phase; a fresh copy for every test to spoil. */
export function document() {
  const common = () => ({
    includes: { safetyFactor: false, windAccountability: 'not stated' },
    associatedConditions: {
      surface: 'paved',
      surfaceCondition: 'dry',
      slope: measure(0, 'percent'),
      mass: measure(900, 'kg'),
    },
    screenHeight: measure(50, 'ftHeight'),
    corrections: {
      headwind: { change: measure(-1, 'percent'), per: measure(1, 'kt'), upTo: measure(15, 'kt') },
      tailwind: { change: measure(5, 'percent'), per: measure(1, 'kt'), upTo: measure(10, 'kt') },
    } as Record<string, unknown>,
  });
  return structuredClone({
    schema: 'groundroll/performance-data/1',
    identity: { name: 'Invented Two' },
    provenance: { document: 'none', edition: 'none', transcribedBy: 'test', transcribedOn: '2026-07-14' },
    masses: { maximumTakeoff: measure(900, 'kg'), maximumLanding: measure(900, 'kg') },
    configurations: [
      { id: 'to', name: 'Take-off', phase: 'takeoff', flap: '10', power: 'full', technique: 'normal' },
      { id: 'ldg', name: 'Landing', phase: 'landing', flap: '30', power: 'idle', technique: 'normal' },
    ],
    stallSpeeds: [
      { name: 'V_S0', flap: '30', speed: measure(40, 'kias'), mass: measure(900, 'kg') },
      { name: 'V_S1', flap: '0', speed: measure(46, 'kias'), mass: measure(900, 'kg') },
    ],
    speeds: [{ name: 'V_X', flap: '10', speed: measure(58, 'kias') }],
    calibrations: [
      {
        flap: '10',
        indicated: { unit: 'kias', values: [40, 50, 60] },
        calibrated: { unit: 'kcas', values: [44, 52, 61] },
      },
    ],
    crosswind: [{ speed: measure(15, 'kt'), status: 'demonstrated' }],
    tailwind: [],
    takeoff: [
      {
        ...common(),
        configuration: 'to',
        groundRoll: onTwoAxes('m', [
          [200, 230, 260],
          [280, 320, 360],
        ]),
        distance: onTwoAxes('m', [
          [380, 430, 490],
          [530, 610, 690],
        ]),
        liftOffSpeed: one('kias', 50),
        speedAtScreenHeight: one('kias', 57),
      },
    ],
    landing: [
      {
        ...common(),
        configuration: 'ldg',
        groundRoll: onTwoAxes('m', [
          [160, 170, 180],
          [180, 190, 200],
        ]),
        distance: onTwoAxes('m', [
          [390, 410, 430],
          [420, 440, 460],
        ]),
        approachSpeed: one('kias', 56),
      },
    ],
    climb: [
      {
        configuration: 'to',
        use: 'initial',
        flap: '10',
        speed: one('kias', 62),
        rateOfClimb: onTwoAxes('ftPerMin', [
          [700, 640, 580],
          [480, 430, 370],
        ]),
      },
    ],
  });
}
export type Document = ReturnType<typeof document>;

/** Sets one place of a document, keys separated by points; undefined takes the key away. */
export function spoil(path: string, value: unknown): unknown {
  const spoilt = document();
  const keys = path.split('.');
  const last = keys.pop() as string;
  let part: unknown = spoilt;
  for (const key of keys) part = (part as Record<string, unknown>)[key];
  if (value === undefined) delete (part as Record<string, unknown>)[last];
  else (part as Record<string, unknown>)[last] = value;
  return spoilt;
}

export function faultsOf(json: unknown): readonly { path: string; message: string }[] {
  const result = readPerformanceData(json);
  return result.ok ? [] : result.faults;
}

export function findingsOf(json: unknown): readonly Finding[] {
  const result = readPerformanceData(json);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.findings;
}
