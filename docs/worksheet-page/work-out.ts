import { assessLanding, assessTakeoff, type Fault, type LandingAssessment, type TakeoffAssessment } from 'groundroll';
import { weatherFromMetar } from 'groundroll/assessment';
import { readMetar } from 'groundroll/weather-report';
import { type PlacedFault, placedFaults } from './faults.ts';
import { designatorAt, type EndPlace, requestOf } from './request.ts';
import type { PageState } from './state.ts';

export type Assessment = TakeoffAssessment | LandingAssessment;

/** One end of the runway worked out, or refused. */
export interface WorkedEnd {
  readonly place: EndPlace;
  /** As its column is headed. */
  readonly name: string;
  readonly assessment?: Assessment;
}

export interface WorkedOut {
  readonly ends: readonly [WorkedEnd, WorkedEnd];
  readonly faults: readonly PlacedFault[];
}

/** The aeroplane of the page: its data, or why there are none. */
export type Aeroplane =
  | { readonly ok: true; readonly data: unknown }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Works out both ends; whatever is refused is a fault in its sentence. */
export function workOut(state: PageState, aeroplane: Aeroplane): WorkedOut {
  const refused: Fault[] = [];
  const weather = state.values.weather === 'METAR' ? weatherOfReport(state, refused) : undefined;
  const ofAeroplane = aeroplane.ok
    ? []
    : aeroplane.faults.map((message) => ({ sentence: 'aeroplane' as const, field: 'own-file', message }));
  const known = aeroplane.ok && refused.length === 0;
  const ends = ([0, 1] as const).map((place): WorkedEnd => {
    const name = designatorAt(state, place) || `end ${place + 1}`;
    if (!known) return { place, name };
    const assessed = assess(state, requestOf(state, place, aeroplane.data, weather));
    if (assessed.ok) return { place, name, assessment: assessed.value };
    refused.push(...assessed.faults);
    return { place, name };
  });
  return { ends: ends as [WorkedEnd, WorkedEnd], faults: [...ofAeroplane, ...placedFaults(refused, state)] };
}

function assess({ values }: PageState, request: unknown) {
  return values.job === 'takeoff' ? assessTakeoff(request as never) : assessLanding(request as never);
}

function weatherOfReport({ values }: PageState, refused: Fault[]): unknown {
  const report = readMetar(values.metar.trim());
  const weather = report.ok ? weatherFromMetar(report.value) : report;
  if (weather.ok) return weather.value;
  refused.push(...weather.faults.map(({ message }) => ({ path: 'metar', message })));
  return undefined;
}
