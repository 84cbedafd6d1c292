import type { Measure } from '../units/index.ts';

/** A group that the report has, but filled with solidi: the station measured nothing. */
export type Missing = 'missing';
/** A group that the report does not have. */
export type Absent = 'absent';

/** When a report was made, UTC. A report has no month and no year, and none is guessed. */
export interface MetarTime {
  /** Day of the month, 1 to 31. */
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

/** The wind of a report; its directions are true. */
export interface MetarWind {
  /** Mean direction the wind blows from, whole tens of degrees, north being 360. */
  readonly from: Measure<'degTrue'> | 'variable' | Missing;
  /** Mean speed. */
  readonly speed: Measure<'kt' | 'mps'> | Missing;
  /** Greatest speed; a report gives it only where it exceeds the mean by enough, so that absent does not mean none. */
  readonly gust: Measure<'kt' | 'mps'> | Absent;
  /** The directions between which the wind varies, clockwise. */
  readonly range: { readonly from: Measure<'degTrue'>; readonly to: Measure<'degTrue'> } | Missing | Absent;
}

/** What stands at the head of every report. */
export interface MetarHeading {
  /** `not stated` where the text begins with the station. */
  readonly report: 'METAR' | 'SPECI' | 'not stated';
  /** Location indicator, four characters. */
  readonly station: string;
  readonly time: MetarTime;
  /** The report corrects an earlier one of the same time. */
  readonly corrected: boolean;
  /** No person took part in the observation. */
  readonly automatic: boolean;
}

/** A report that says that there is none. */
export interface MetarNil extends MetarHeading {
  readonly kind: 'nil';
}

/** The groups of a report that matter to performance. Everything is stated, also that it is missing or absent. */
export interface MetarObservation extends MetarHeading {
  readonly kind: 'observation';
  readonly wind: MetarWind | 'calm' | Missing | Absent;
  /** To a whole degree. */
  readonly temperature: Measure<'degC'> | Missing | Absent;
  /** To a whole degree. */
  readonly dewPoint: Measure<'degC'> | Missing | Absent;
  /** By the Q group, to a whole hectopascal. */
  readonly qnh: Measure<'hPa'> | Missing | Absent;
  /** The same pressure by the A group, to a hundredth of an inch. */
  readonly altimeterSetting: Measure<'inHg'> | Missing | Absent;
  /** The other groups, as they stand: visibility, weather and cloud, and everything from the trend or the remarks on. */
  readonly notRead: readonly string[];
}

/** A METAR or SPECI, after it has been asked whether there is an observation in it. */
export type Metar = MetarObservation | MetarNil;
