import type { FactorSet } from './factor-set.ts';

/** The UK CAA's leaflet for light aeroplanes; advice to private pilots. Its own text was not seen: see each factor's access. */
export const ukLeaflet: FactorSet = {
  id: 'uk-light-aeroplane-leaflet',
  title: 'UK light-aeroplane leaflet',
  edition: 'Safety Sense Leaflet 07, 7c',
  scope: 'light aeroplanes in private flight; figures of the manual without a safety factor',
  takeoff: {
    surfaces: [
      { id: 'uk-leaflet-takeoff-grass-dry', condition: 'dry grass up to 20 cm on firm soil', factor: 1.2, kind: 'value', basis: 'total distance', covers: ['grass'], replaces: [], locator: 'factor table', access: 'second-hand' },
      { id: 'uk-leaflet-takeoff-grass-wet', condition: 'wet grass up to 20 cm on firm soil', factor: 1.3, kind: 'value', basis: 'total distance', covers: ['grass', 'wet'], replaces: ['uk-leaflet-takeoff-grass-dry'], locator: 'factor table', access: 'second-hand' },
      { id: 'uk-leaflet-takeoff-paved-wet', condition: 'wet paved', factor: 1, kind: 'value', basis: 'total distance', covers: ['wet'], only: { kind: 'paved' }, replaces: [], locator: 'factor table, left blank', access: 'recalled' },
      { id: 'uk-leaflet-takeoff-soft', condition: 'soft ground', factor: 1.25, kind: 'at-least', basis: 'total distance', covers: ['soft ground'], replaces: [], locator: 'factor table, 25 % or more', access: 'recalled' },
      { id: 'uk-leaflet-takeoff-snow', condition: 'snow', factor: 1.25, kind: 'at-least', basis: 'total distance', covers: ['snow'], replaces: [], locator: 'factor table, 25 % or more', access: 'recalled' },
    ],
    slope: { id: 'uk-leaflet-takeoff-slope', percentPerPercent: 5, upTo: 2, beyond: 'pro-rated', locator: 'factor table, 10 % for each 2 %', access: 'second-hand' },
    mass: { id: 'uk-leaflet-takeoff-mass', factorPerStep: 1.2, step: 10, locator: 'factor table, each 10 % of mass', access: 'second-hand' },
    elevation: { id: 'uk-leaflet-takeoff-elevation', factorPerStep: 1.1, step: 1000, locator: 'factor table, each 1 000 ft', access: 'second-hand' },
    temperature: { id: 'uk-leaflet-takeoff-temperature', factorPerStep: 1.1, step: 10, locator: 'factor table, each 10 °C', access: 'second-hand' },
    tailwind: { id: 'uk-leaflet-takeoff-tailwind', factorPerStep: 1.2, step: 10, locator: 'factor table, each 10 % of lift-off speed', access: 'second-hand' },
    safety: [
      { needs: 'nothing', tests: [{ id: 'uk-leaflet-takeoff-safety', against: 'TORA', factor: 1.33, locator: 'safety factor on unfactored data', access: 'second-hand' }] },
      { needs: 'clearway', tests: [{ id: 'uk-leaflet-takeoff-safety-clearway', against: 'TODA', factor: 1.33, locator: 'safety factor on unfactored data', access: 'second-hand' }] },
    ],
  },
  landing: {
    surfaces: [
      { id: 'uk-leaflet-landing-grass-dry', condition: 'dry grass up to 20 cm on firm soil', factor: 1.15, kind: 'value', basis: 'total distance', covers: ['grass'], replaces: [], locator: 'factor table', access: 'second-hand' },
      { id: 'uk-leaflet-landing-grass-wet', condition: 'wet grass up to 20 cm on firm soil', factor: 1.35, kind: 'value', basis: 'total distance', covers: ['grass', 'wet'], replaces: ['uk-leaflet-landing-grass-dry'], locator: 'factor table', access: 'second-hand' },
      { id: 'uk-leaflet-landing-very-short-wet-grass', condition: 'very short wet grass on firm subsoil', factor: 1.6, kind: 'at-most', basis: 'total distance', covers: ['grass', 'wet'], only: { kind: 'grass', length: 'very short' }, replaces: ['uk-leaflet-landing-grass-dry', 'uk-leaflet-landing-grass-wet'], locator: 'factor table, up to 60 %', access: 'second-hand' },
      { id: 'uk-leaflet-landing-paved-wet', condition: 'wet paved', factor: 1.15, kind: 'value', basis: 'total distance', covers: ['wet'], only: { kind: 'paved' }, replaces: [], locator: 'factor table', access: 'recalled' },
      { id: 'uk-leaflet-landing-soft', condition: 'soft ground', factor: 1.25, kind: 'at-least', basis: 'total distance', covers: ['soft ground'], replaces: [], locator: 'factor table, 25 % or more', access: 'recalled' },
      { id: 'uk-leaflet-landing-snow', condition: 'snow', factor: 1.25, kind: 'at-least', basis: 'total distance', covers: ['snow'], replaces: [], locator: 'factor table, 25 % or more', access: 'recalled' },
    ],
    slope: { id: 'uk-leaflet-landing-slope', percentPerPercent: 5, upTo: 2, beyond: 'pro-rated', locator: 'factor table, 10 % for each 2 %', access: 'second-hand' },
    mass: { id: 'uk-leaflet-landing-mass', factorPerStep: 1.1, step: 10, locator: 'factor table, each 10 % of mass', access: 'second-hand' },
    elevation: { id: 'uk-leaflet-landing-elevation', factorPerStep: 1.05, step: 1000, locator: 'factor table, each 1 000 ft', access: 'second-hand' },
    temperature: { id: 'uk-leaflet-landing-temperature', factorPerStep: 1.05, step: 10, locator: 'factor table, each 10 °C', access: 'second-hand' },
    tailwind: { id: 'uk-leaflet-landing-tailwind', factorPerStep: 1.2, step: 10, locator: 'factor table, each 10 % of landing speed', access: 'second-hand' },
    safety: { id: 'uk-leaflet-landing-safety', factor: 1.43, locator: 'safety factor on unfactored data', access: 'second-hand' },
  },
};
