// Bounds that the formulas of the base-to-final turn share. Named one by one: an object spread from another one would be
// carried by every app that imports anything of this folder.

export const trueAirspeed = { unit: 'ktas', min: 20, max: 300, source: 'library range' } as const;

export const headwind = { unit: 'kt', min: -200, max: 200, source: 'library range' } as const;

export const crosswind = { unit: 'kt', min: -200, max: 200, source: 'library range' } as const;

export const startDistance = { unit: 'm', min: 1, max: 20000, source: 'library range' } as const;
