import {
  type ClimbData,
  type Figures,
  isChart,
  type LandingData,
  type PreparedTable,
  prepareTable,
  type ReadingMode,
  runsAlong,
  type Table,
  type TakeoffData,
} from '../../aircraft/index.ts';

/** Figures of the manual with all that readings in many weathers have in common. */
export interface ReadyFigures {
  readonly name: string;
  readonly figures: Figures;
  readonly mode: ReadingMode;
  /** None for a chart, which is read as it is drawn. */
  readonly table: PreparedTable | undefined;
  readonly runsAlongHeadwind: boolean;
  readonly runsAlongSlope: boolean;
  readonly runsAlongHeight: boolean;
  readonly runsAlongIsaDeviation: boolean;
  readonly runsAlongDensityAltitude: boolean;
}

/** Speeds printed by mass: read as the request chooses, and interpolated. */
export interface ReadySpeeds {
  readonly name: string;
  readonly asChosen: PreparedTable;
  readonly interpolated: PreparedTable;
}

/** Everything that an assessment reads; what the data lack is undefined. */
export interface ReadyData {
  readonly groundRoll: ReadyFigures | undefined;
  readonly distance: ReadyFigures | undefined;
  readonly rateOfClimb: ReadyFigures | undefined;
  readonly liftOffSpeed: ReadySpeeds | undefined;
  readonly speedAtScreenHeight: ReadySpeeds | undefined;
  readonly approachSpeed: ReadySpeeds | undefined;
  readonly climbSpeed: ReadySpeeds | undefined;
}

/** How tables are read: distances and speeds, which are worse when they are greater, and rates of climb. */
export interface ReadingModes {
  readonly greaterIsWorse: ReadingMode;
  readonly lessIsWorse: ReadingMode;
}

/** Makes the data of one configuration ready. */
export function readyData(
  table: TakeoffData | LandingData | undefined,
  climb: ClimbData | undefined,
  { greaterIsWorse, lessIsWorse }: ReadingModes,
): ReadyData {
  const speeds = (name: string, printed: Table<'kias'> | undefined) =>
    printed === undefined ? undefined : readySpeeds(name, printed, greaterIsWorse);
  const takeoff = table !== undefined && 'liftOffSpeed' in table ? table : undefined;
  const landing = table !== undefined && 'approachSpeed' in table ? table : undefined;
  const groundRoll = readyFigures('ground roll', table?.groundRoll, greaterIsWorse);
  return {
    groundRoll,
    distance: readyFigures('distance', table?.distance, greaterIsWorse, groundRoll?.table),
    rateOfClimb: readyFigures('rate of climb', climb?.rateOfClimb, lessIsWorse),
    liftOffSpeed: speeds('lift-off speed', takeoff?.liftOffSpeed),
    speedAtScreenHeight: speeds('50 ft speed', takeoff?.speedAtScreenHeight),
    approachSpeed: speeds('approach speed', landing?.approachSpeed),
    climbSpeed: speeds('climb speed', climb?.speed),
  };
}

function readyFigures(
  name: string,
  figures: Figures | undefined,
  mode: ReadingMode,
  like?: PreparedTable,
): ReadyFigures | undefined {
  if (figures === undefined) return undefined;
  return {
    name,
    figures,
    mode,
    table: isChart(figures) ? undefined : prepareTable(figures, mode, like),
    runsAlongHeadwind: runsAlong(figures, 'headwind'),
    runsAlongSlope: runsAlong(figures, 'slope'),
    runsAlongHeight: runsAlong(figures, 'height'),
    runsAlongIsaDeviation: runsAlong(figures, 'isaDeviation'),
    runsAlongDensityAltitude: runsAlong(figures, 'densityAltitude'),
  };
}

function readySpeeds(name: string, printed: Table<'kias'>, mode: ReadingMode): ReadySpeeds {
  return {
    name,
    asChosen: prepareTable(printed, mode),
    interpolated: prepareTable(printed, { ...mode, between: 'interpolate' }),
  };
}
