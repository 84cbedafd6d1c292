/** Ratio of the molar masses of water vapour and dry air. */
export const epsilon = 0.62198;
