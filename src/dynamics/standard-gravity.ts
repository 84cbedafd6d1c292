import type { MetresPerSecondSquared } from '../units/index.ts';

/** Standard acceleration of free fall, 9.80665 m/s² exactly. Textbooks round it: 9.8 or 9.81 m/s², 32.2 ft/s². */
export const standardGravity: MetresPerSecondSquared = 9.80665 as MetresPerSecondSquared;
