/** The closed lists of what analyses say. `words/` has a text for each, in each language. */

export const methodIds = [
  'specificCapacity',
  'logan',
  'cooperJacob',
  'theis',
  'theisRecovery',
  'hantushBierschenk',
  'edenHazel',
] as const;
export type MethodId = (typeof methodIds)[number];

export const quantityIds = [
  'transmissivity',
  'storage',
  'slope',
  'specificCapacity',
  'aquiferLoss',
  'wellLoss',
  'laminarShare',
  'rateByDrawdown',
  'safeRate',
  'drawdown',
  'pumpingLevel',
  'intake',
] as const;
export type QuantityId = (typeof quantityIds)[number];

export const intervalBases = [
  /** Student's t about the slope or intercept of a least-squares line. */
  'regression',
  /** Student's t about the logarithm, from the covariance linearised at the best fit. */
  'linearised',
  /** First-order propagation of the covariance of B and C. */
  'propagated',
  /** Spread that the method has by experience, from no reading of this test. */
  'spread',
  /** Both ends of the intervals of what goes in, taken together. */
  'worstCase',
] as const;
export type IntervalBasis = (typeof intervalBases)[number];

export const leftOutCodes = [
  'noMinutes',
  'noReading',
  'notAfterStart',
  'aboveRest',
  'belowIntake',
  'outOfOrder',
  'noRate',
] as const;
export type LeftOutCode = (typeof leftOutCodes)[number];

/** What is said at a row of readings or of a series as a whole; values behind each. */
export const seriesNoteCodes = [
  ...leftOutCodes,
  'atRest',
  'rateNil',
  'rateNilBefore',
  'rateNilStands',
  'lacksRestLevel',
  'lacksRate',
  'lacksMinutesPumped',
  /** Values: count, least. */
  'fewForLine',
  /** Values: count, least. */
  'fewForCurve',
  /** Values: count, least. */
  'fewSteps',
] as const;
export type SeriesNoteCode = (typeof seriesNoteCodes)[number];

export const missingCodes = [
  'series',
  'restLevel',
  'rate',
  'minutesPumped',
  'steps',
  'enoughReadings',
  'pumpingTest',
  'drySeasonLevel',
  'screenOrIntake',
] as const;
export type MissingCode = (typeof missingCodes)[number];

export const checkCodes = [
  /** Values: first, last, limit. */
  'uSmall',
  /** Values: first, last, limit. */
  'bendSeen',
  /** Values: first, minutes. */
  'afterCasingStorage',
  /** Values: change, limit; per cent. */
  'straight',
  /** Values: cycles, limit. */
  'longEnough',
  /** Values: atZero, limit. */
  'recoveryToRest',
  /** Values: value. */
  'lossPositive',
  /** Values: steps, limit. */
  'stepsEnough',
  /** Values: lowest, highest. */
  'stepsRise',
  /** Values: tested, rate. */
  'withinTested',
  /** Values: available. */
  'waterAvailable',
  /** Values: asked, safe. */
  'askedWithinSafe',
  /** Values: intake, least. */
  'intakeDeepEnough',
] as const;
export type CheckCode = (typeof checkCodes)[number];

export const hintCodes = ['slopeDoubling', 'slopeSteeper', 'flattening', 'stabilised'] as const;
export type HintCode = (typeof hintCodes)[number];

export const assumptionCodes = [
  /** The aquifer is wide, even and confined, the well reaches through it. */
  'idealAquifer',
  'independentResiduals',
  'storageNotReported',
  /** Values: storage, radius. */
  'uByLargestStorage',
  /** Values: radius. */
  'riserIgnored',
  'casingUnknown',
  /** Values: rate in m³/h, spread in per cent. */
  'rateAveraged',
  'ratesSuperposed',
  /** Values: minutes. */
  'delayedStart',
  /** Values: level. */
  'restFromLevels',
  'restFromSeries',
  'restFromPumpingTest',
  'rateFromPumpingTest',
  'pumpedFromPumpingTest',
  'minutesRunOn',
  'stepsByRate',
  /** Values: minutes. */
  'stepsFreedOfTails',
  'stepEndsAsRead',
  'unequalSteps',
  'nearSteady',
  'wellLossIgnored',
  'wellLossInStorage',
  'automaticWindow',
  'handWindow',
  /** Values: days, hours. */
  'pumpedSoLong',
  'noRecharge',
  'noBoundary',
  'slopesOfAllMethods',
  'lateSlope',
  /** Values: C. */
  'lossFromSteps',
  'lossInLine',
  /** Values: level. */
  'drySeasonFromLevels',
  'drySeasonSaid',
  'drySeasonEstimated',
  /** Values: margin. */
  'marginOverScreen',
  /** Values: margin. */
  'marginOverIntake',
] as const;
export type AssumptionCode = (typeof assumptionCodes)[number];

/** What sets the deepest pumping level. */
export const limitCodes = ['screen', 'intake'] as const;
export type LimitCode = (typeof limitCodes)[number];

export const sourceIds = [
  'theis1935',
  'cooperJacob1946',
  'hantushBierschenk',
  'edenHazel1973',
  'birsoySummers1980',
  'logan1964',
  'bourdet1989',
  'common',
] as const;
export type SourceId = (typeof sourceIds)[number];
