import type { FormulaRecord } from '../sources/index.ts';
import { windComponentsRecord } from '../wind/components.record.ts';

/** Every formula record of the library. */
export const formulaRecords: readonly FormulaRecord[] = [windComponentsRecord];
