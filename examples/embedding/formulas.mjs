// Node, ES module: single formulas. Each import costs a few hundred bytes, and a wrong unit does not compile.

import { densityAltitude, pressureAltitude } from 'groundroll/atmosphere';
import { DomainError, degC, degTrue, formatAcrossRunway, formatQuantity, ftElevation, hPa, kt } from 'groundroll/units';
import { windComponents } from 'groundroll/wind';

const field = pressureAltitude({ elevation: ftElevation(438), qnh: hPa(1006) });
console.log(formatQuantity(densityAltitude({ pressureAltitude: field, temperature: degC(26) }), 'ftDA'));

const { crosswind } = windComponents({ from: degTrue(190), speed: kt(17), direction: degTrue(112) });
console.log(formatAcrossRunway(crosswind));

// Nothing is guessed or clamped: what is out of range is refused, with everything a message needs.
try {
  densityAltitude({ pressureAltitude: field, temperature: degC(99) });
} catch (error) {
  if (!(error instanceof DomainError)) throw error;
  const { parameter, received, min, max, unit } = error.detail;
  console.log(`refused: ${parameter} ${received}, ${min} to ${max} ${unit}`);
}
