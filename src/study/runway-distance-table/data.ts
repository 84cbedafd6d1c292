import type { Sentence, SpeedFound, Verdict } from '../../assessment/index.ts';
import type { Measure } from '../../units/index.ts';
import type { StudySentence } from '../sentences.ts';

/** What one mass or one wind comes to at one temperature. */
export interface RunwayDistanceCell {
  readonly temperature: Measure<'degC'>;
  /** Of the whole assessment, not of the distance alone. */
  readonly verdict: Verdict;
  /** The distance with its safety factor; absent where it is undetermined. */
  readonly required?: Measure<'m'>;
  /** Against this distance. */
  readonly available?: Measure<'m'>;
  /** Negative where it is short. */
  readonly spare?: Measure<'m'>;
  /** The cell in words: the metres to spare, or what keeps it from being within limits. */
  readonly sentence: StudySentence;
}

/** The warmest temperature at which a row is still within limits, by every criterion. */
export interface WarmestTemperature {
  readonly answer: 'value' | 'withinThroughoutRange' | 'outsideThroughoutRange' | 'undetermined';
  /** Rounded down to 1 °C. */
  readonly value?: Measure<'degC'>;
  readonly range: { readonly from: Measure<'degC'>; readonly to: Measure<'degC'> };
  readonly sentence: StudySentence;
}

/** One mass, or one wind along the runway, over all temperatures. */
export interface RunwayDistanceRow {
  /** The mass; or the wind, a headwind positive and a tailwind negative. */
  readonly at: Measure<'kg' | 'lb' | 'kt'>;
  /** The row in words, for its head: `940 kg`, `4 kt tailwind`. */
  readonly words: string;
  /** The same in loading words, where they were given: `two up, full tanks`. */
  readonly loading?: string;
  /** In the order of the columns. */
  readonly cells: readonly RunwayDistanceCell[];
  /** Empty where the data have none for this row. A table has no working, so none of its figures leads to steps. */
  readonly speeds: readonly Omit<SpeedFound, 'steps'>[];
  readonly warmest: WarmestTemperature;
}

/** A pre-worked grid for one aeroplane on one runway. Between two columns the warmer one is read, between two rows the worse one. */
export interface RunwayDistanceTable {
  readonly schema: 'groundroll/runway-distance-table/1';
  readonly version: string;
  readonly phase: 'takeoff' | 'landing';
  /** The aeroplane, the aerodrome and the end of the runway in use, as the request names them. */
  readonly aeroplane: string;
  readonly aerodrome: string;
  readonly designator: string;
  /** The head of the table. */
  readonly title: StudySentence;
  /** In one sentence, everything that the figures hold for. */
  readonly validOnlyIf: StudySentence;
  readonly rowsAlong: 'mass' | 'headwind';
  /** Ascending. */
  readonly temperatures: readonly Measure<'degC'>[];
  /** From the least adverse to the most adverse: light to heavy, headwind to tailwind. */
  readonly rows: readonly RunwayDistanceRow[];
  /** How to read between columns and rows. */
  readonly reading: StudySentence;
  /** What must be said before any figure is used: air, safety factor, second-hand figures. */
  readonly notes: readonly Sentence[];
  readonly notAssessed: readonly string[];
  readonly limitsOfUse: readonly string[];
}
