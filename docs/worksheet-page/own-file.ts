import { readPerformanceData } from 'groundroll';
import type { Aeroplane } from './work-out.ts';

/** A file of one's own as it was read; it stays in the memory of the page. */
export type OwnFile = Aeroplane & { readonly name: string };

export const noFile: Aeroplane = {
  ok: false,
  faults: ['no file is chosen; it stays on this page, so an address cannot bring it along'],
};

/** Reads the text of a performance data file: its data, or every fault with its place. */
export function readOwnFile(name: string, text: string): OwnFile {
  const json = parsed(text);
  if (!json.ok) return { name, ok: false, faults: [`${name} is not JSON: ${json.message}`] };
  const read = readPerformanceData(json.value);
  if (read.ok) return { name, ok: true, data: read.value };
  return {
    name,
    ok: false,
    faults: read.faults.map(({ path, message }) => (path === '' ? message : `${path}: ${message}`)),
  };
}

function parsed(text: string): { ok: true; value: unknown } | { ok: false; message: string } {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch (error) {
    return { ok: false, message: (error as Error).message };
  }
}
