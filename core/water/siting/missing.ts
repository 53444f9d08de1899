/** What an estimate of travel time cannot be made without. */
export const missingForEstimates = ['distance', 'ground', 'channels'] as const;
export type MissingForEstimate = (typeof missingForEstimates)[number];
