import { readFileSync } from 'node:fs';
import type { LandingRequest, TakeoffRequest } from '../../src/assessment/index.ts';
import { type Changes, landingRequest, takeoffRequest } from '../assessment/scenario.ts';

const texts = new Map<string, string>();

function data(name: string): unknown {
  const url = new URL(`../../examples/performance-data/${name}.json`, import.meta.url);
  const text = texts.get(name) ?? readFileSync(url, 'utf8');
  texts.set(name, text);
  return JSON.parse(text);
}

/** The other invented aeroplanes at a mass at which they fly, on the field of the demo. */
const others = {
  'linnet-two': { mass: { value: 680, unit: 'kg' }, takeoff: 'takeoff', landing: 'landing' },
  'plover-two': { mass: { value: 1450, unit: 'lb' }, takeoff: 'takeoff', landing: 'landing' },
  'skerry-two': { mass: { value: 820, unit: 'kg' }, takeoff: 'takeoff', landing: 'landing' },
} as const;

type Aeroplane = 'corran-four' | keyof typeof others;

function changesFor(aeroplane: Aeroplane, phase: 'takeoff' | 'landing'): Changes {
  if (aeroplane === 'corran-four') return {};
  const { mass, [phase]: configuration } = others[aeroplane];
  return { performanceData: data(aeroplane), mass, configuration };
}

export function takeoffOf(aeroplane: Aeroplane, changes: Changes = {}): TakeoffRequest {
  return takeoffRequest('takeoff-28', { ...changesFor(aeroplane, 'takeoff'), ...changes });
}

export function landingOf(aeroplane: Aeroplane, changes: Changes = {}): LandingRequest {
  return landingRequest('landing-10', { ...changesFor(aeroplane, 'landing'), ...changes });
}

export const aeroplanes = ['corran-four', 'linnet-two', 'plover-two', 'skerry-two'] as const satisfies Aeroplane[];

/** A light steady wind, 30° off the nose on 28: something is within limits for every aeroplane. */
export const lightWind: Changes = {
  'weather.wind': {
    source: 'METAR',
    from: { value: 260, unit: 'degTrue' },
    speed: { value: 8, unit: 'kt' },
  },
};
