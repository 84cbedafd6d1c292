/** The place in a list of printed values below which a value lies; the last but one for the last value. */
export function below(values, value) {
  let low = 0;
  let high = values.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (values[middle] <= value) low = middle;
    else high = middle;
  }
  return low;
}
