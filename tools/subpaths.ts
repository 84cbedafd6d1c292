/** The folders of `src` that are published, one subpath export each; `index` is the root barrel. */
export const subpaths: Record<string, string> = {
  index: 'src/index.ts',
  units: 'src/units/index.ts',
  sources: 'src/sources/index.ts',
  atmosphere: 'src/atmosphere/index.ts',
  airspeed: 'src/airspeed/index.ts',
  magnetism: 'src/magnetism/index.ts',
  wind: 'src/wind/index.ts',
  distance: 'src/distance/index.ts',
  'flight-path': 'src/flight-path/index.ts',
  dynamics: 'src/dynamics/index.ts',
  'weather-report': 'src/weather-report/index.ts',
  aircraft: 'src/aircraft/index.ts',
  assessment: 'src/assessment/index.ts',
  study: 'src/study/index.ts',
  worksheet: 'src/worksheet/index.ts',
  register: 'src/register/index.ts',
};
