// The formulas of `src/magnetism` by hand: arguments in the order of the record's inputs, no checks.

const onCompass = (angle_deg) => {
  const turned = angle_deg % 360;
  return turned <= 0 ? turned + 360 : turned;
};

export const algebraic = {
  'magnetism.true-from-magnetic': (magnetic, variation) => onCompass(magnetic + variation),
  'magnetism.magnetic-from-true': (trueDirection, variation) => onCompass(trueDirection - variation),
};

export const transcendental = {};

export const notByHand = {
  'magnetism.variation': 'a spherical harmonic model: see the topic variation',
  'magnetism.field': 'a spherical harmonic model: see the topic variation',
  'magnetism.nearest-designators': 'makes text of a number: not arithmetic',
  'magnetism.designator-direction': 'takes a text apart: not arithmetic',
};
