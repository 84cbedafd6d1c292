/** What a sentence calls the two. */
export const phaseWords = { takeoff: 'take-off', landing: 'landing' } as const;
