import { ft, ftElevation, ftHeight, kcas, ktas, m } from '../../../src/units/index.ts';

// What the script must find, and what it must leave alone; see mixed-tags.test.ts.
const length_ft = ft(1000);
const length_m = m(300);
const height = ftHeight(50);
const elevation = ftElevation(1200);
const cas = kcas(67);
const tas = ktas(72);

export const found = [length_ft + length_m, length_ft - ft(1) - length_m, height < elevation, cas >= tas];
export const left = [length_ft + ft(1), length_ft * length_m, length_ft - 3, cas < kcas(60)];
