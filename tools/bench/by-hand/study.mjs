// The formulas of `src/study` by hand: arguments in the order of the record's inputs, no checks, the same arithmetic.

export const algebraic = {
  'study.combined-standard-uncertainty': (coefficients, uncertainties) => {
    let sum = 0;
    for (let i = 0; i < coefficients.length; i += 1) sum += (coefficients[i] * uncertainties[i]) ** 2;
    return Math.sqrt(sum);
  },
  'study.rectangular-standard-uncertainty': (halfWidth) => halfWidth / Math.sqrt(3),
};

export const transcendental = {
  'study.lognormal-moments': (standardDeviation) => {
    const variance = standardDeviation ** 2;
    const mean = Math.exp(variance / 2);
    return { mean, standardDeviation: mean * Math.sqrt(Math.expm1(variance)) };
  },
  'study.normal-deviate': (first, second) => Math.sqrt(-2 * Math.log(first)) * Math.cos(2 * Math.PI * second) + 0,
};
