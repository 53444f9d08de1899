/** Limits by which methods judge themselves, each with where it comes from. */
export const limits = {
  /** Error of the straight line 2 %. Kruseman and de Ridder; the error is computed. */
  u: 0.05,
  /** Largest storage an aquifer is taken to have, where it is not known. Common practice. */
  largestStorage: 0.2,
  /** Change of the slope along a straight part. Our own. */
  slopeChange: 0.1,
  /** Shortest straight part, log cycles. Our own; common practice asks for one cycle. */
  cycles: 0.5,
  /** Fewest readings of a straight part. Our own. */
  readings: 5,
  /** Fewest readings of a line with its scatter: two for the line, one for the scatter. */
  lineReadings: 3,
  /** Fewest readings of a curve: two unknowns, and two for the scatter. Our own. */
  curveReadings: 4,
  /** Rates that differ less from their mean count as one rate. Common practice. */
  rateSpread: 0.05,
  /** Line of a recovery at t/t′ = 1 beside rest, as a share of its slope. Our own. */
  restShare: 0.3,
  /** Fewest steps that leave a step test anything to check by. */
  steps: 3,
  /** Spread of the one-point estimate to both sides: half to double. Common practice. */
  loganFactor: 2,
  /** T = 1.22 Q/s. Logan 1964, from memory. */
  logan: 1.22,
  /** L of the derivative in ln t. Bourdet and others 1989 give 0.1 to 0.5. */
  smoothing: 0.3,
  /** Slope of a later part over that of an earlier. Our own; a straight barrier gives 2. */
  doublingLeast: 1.7,
  doublingMost: 2.4,
  steeper: 1.4,
  flatter: 0.6,
} as const;
