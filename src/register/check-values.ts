import type { CheckValue } from '../sources/index.ts';
import windComponents from '../wind/components.check-values.json' with { type: 'json' };

/** Every published check value of the library. */
export const checkValues = [windComponents].flatMap((file) => file.checkValues) as unknown as readonly CheckValue[];
