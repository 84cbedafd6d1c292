/** Whether a direction lies on the arc clockwise from one end to the other. */
export function isBetween(direction: number, from: number, to: number): boolean {
  const clockwise = (angle: number) => (((angle - from) % 360) + 360) % 360;
  return clockwise(direction) <= clockwise(to);
}
