// A page built with Vite. Only what is imported is bundled: no tables, no records, no model of the earth's field.
//   npx vite page

import { DomainError, degTrue, formatAcrossRunway, formatAlongRunway, kt } from 'groundroll/units';
import { windComponents } from 'groundroll/wind';

const figure = (id) => document.getElementById(id).valueAsNumber;

function answer() {
  try {
    const { headwind, crosswind } = windComponents({
      from: degTrue(figure('from')),
      speed: kt(figure('speed')),
      direction: degTrue(figure('direction')),
    });
    return `${formatAlongRunway(headwind)}, ${formatAcrossRunway(crosswind)}.`;
  } catch (error) {
    // An empty field is not a zero: it is refused, like a direction of 400°.
    if (error instanceof DomainError) return `refused: ${error.message}.`;
    throw error;
  }
}

const show = () => {
  document.getElementById('answer').textContent = answer();
};
document.addEventListener('input', show);
show();
