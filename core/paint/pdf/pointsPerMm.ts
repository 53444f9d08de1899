/** PDF measures in points of 1/72 inch. */
export const pointsPerMm = 72 / 25.4;
