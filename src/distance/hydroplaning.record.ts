import type { FormulaRecord } from '../sources/index.ts';
import {
  hydroplaningSpeed,
  hydroplaningSpeedAtTouchdown,
  hydroplaningSpeedDomain,
  hydroplaningSpeedEarlierHandbook,
} from './hydroplaning.ts';

const inputs = { tyrePressure: { symbol: 'p', meaning: 'tyre pressure' } } as const;

export const hydroplaningSpeedRecord = {
  id: 'distance.hydroplaning-speed',
  title: 'Hydroplaning speed of a rolling tyre',
  equation: 'V = 9.0\\sqrt{p}',
  formula: hydroplaningSpeed,
  domain: hydroplaningSpeedDomain,
  inputs,
  outputs: { result: { symbol: 'V', unit: 'ktGS', meaning: 'ground speed above which the tyre may hydroplane' } },
  citations: [{ source: 'faa-phak', locator: 'A, p. 10-13: nine times the root of the tyre pressure', access: 'read' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof hydroplaningSpeed>;

export const hydroplaningSpeedAtTouchdownRecord = {
  id: 'distance.hydroplaning-speed-at-touchdown',
  title: 'Hydroplaning speed of a tyre that does not turn yet',
  equation: 'V = 7.7\\sqrt{p}',
  formula: hydroplaningSpeedAtTouchdown,
  domain: hydroplaningSpeedDomain,
  inputs,
  outputs: { result: { symbol: 'V', unit: 'ktGS', meaning: 'ground speed above which the tyre may hydroplane' } },
  citations: [{ source: 'nasa-tm-85652', locator: 'spin-up of an unrotating tyre, as quoted', access: 'second-hand' }],
  homogeneous: false,
  checkValues: { nonePublished: 'the source seen prints the coefficient and no example' },
} satisfies FormulaRecord<typeof hydroplaningSpeedAtTouchdown>;

export const hydroplaningSpeedEarlierHandbookRecord = {
  id: 'distance.hydroplaning-speed-earlier-handbook',
  title: 'Hydroplaning speed by an earlier handbook',
  equation: 'V = 8.6\\sqrt{p}',
  formula: hydroplaningSpeedEarlierHandbook,
  domain: hydroplaningSpeedDomain,
  inputs,
  outputs: { result: { symbol: 'V', unit: 'ktGS', meaning: 'ground speed above which the tyre may hydroplane' } },
  citations: [
    { source: 'faa-afh', locator: 'an edition before C, dynamic hydroplaning, as copied in 2008', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof hydroplaningSpeedEarlierHandbook>;
