import fs from 'node:fs';
import { type PerformanceData, readPerformanceData } from '../../src/aircraft/index.ts';

/** One of the invented aeroplanes of the examples, read without faults. */
export function performanceDocument(name: string): PerformanceData {
  const url = new URL(`../../examples/performance-data/${name}.json`, import.meta.url);
  const read = readPerformanceData(JSON.parse(fs.readFileSync(url, 'utf8')));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}
