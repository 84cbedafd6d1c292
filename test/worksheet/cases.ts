import { landing, takeoff } from '../assessment/scenario.ts';

export const soft = {
  'runway.surface': { kind: 'grass', condition: 'dry', length: 'up to 20 cm', ground: 'soft' },
  factorSet: 'uk-light-aeroplane-leaflet',
};
/** One assessment of each kind that a worksheet may have to print. */
export const cases = [
  ['take-off on 28', takeoff('takeoff-28')],
  ['take-off on 10', takeoff('takeoff-10')],
  ['landing on 10', landing('landing-10')],
  ['landing on 28', landing('landing-28')],
  ['take-off from the quarry', takeoff('quarry-takeoff-04')],
  ['landing in the quarry', landing('quarry-landing-04')],
  ['take-off without a table', takeoff('takeoff-28', { configuration: 'flap-0' })],
  ['take-off on soft ground', takeoff('takeoff-28', soft)],
  ['take-off without a list of obstacles', takeoff('takeoff-28', { 'runway.obstacles': undefined })],
  ['landing with a variable wind', landing('landing-10', { 'weather.wind.from': 'variable' })],
] as const;
