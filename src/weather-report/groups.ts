import type { Citation } from '../sources/index.ts';

/** One group of a report that is read: its form, and where this is laid down. */
export interface MetarGroup {
  /** The property of the reading, or the path in it. */
  readonly path: string;
  /** Letters stand as they are printed; small letters are digits. */
  readonly forms: readonly string[];
  readonly meaning: string;
  readonly citations: readonly [Citation, ...Citation[]];
}

const recalled = (locator: string): Citation => ({ source: 'wmo-306', locator, access: 'recalled' });

/** The groups that `readMetar` reads, in the order of a report. */
export const metarGroups: readonly MetarGroup[] = [
  {
    path: 'report',
    forms: ['METAR', 'SPECI'],
    meaning: 'kind of report',
    citations: [recalled('FM 15 and FM 16, identification')],
  },
  { path: 'station', forms: ['CCCC'], meaning: 'location indicator', citations: [recalled('FM 15, identification')] },
  {
    path: 'time',
    forms: ['ddhhmmZ'],
    meaning: 'day of the month, hour and minute, UTC',
    citations: [recalled('FM 15, identification')],
  },
  {
    path: 'wind',
    forms: ['dddffKT', 'dddffGffKT', 'dddffMPS', 'VRBffKT', '00000KT', '/////KT'],
    meaning: 'mean true direction to ten degrees, mean speed, gust; calm; missing',
    citations: [
      recalled('FM 15, surface wind'),
      { source: 'afman-15-111', locator: '7.2.1 and 7.4.1: true, to ten degrees', access: 'read' },
    ],
  },
  {
    path: 'wind.range',
    forms: ['dddVddd'],
    meaning: 'true directions between which the wind varies, clockwise',
    citations: [recalled('FM 15, surface wind')],
  },
  {
    path: 'temperature',
    forms: ['tt/tt', 'Mtt/Mtt', '/////'],
    meaning: 'temperature and dew point to a whole degree Celsius; M is minus',
    citations: [recalled('FM 15, air and dew-point temperature')],
  },
  {
    path: 'qnh',
    forms: ['Qpppp', 'Q////'],
    meaning: 'QNH rounded down to a whole hectopascal',
    citations: [recalled('FM 15, QNH')],
  },
  {
    path: 'altimeterSetting',
    forms: ['Apppp', 'A////'],
    meaning: 'QNH to a hundredth of an inch of mercury',
    citations: [recalled('FM 15, QNH')],
  },
];
