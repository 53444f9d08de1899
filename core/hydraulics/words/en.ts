import type { HydraulicsWords } from './words.ts';

export const english: HydraulicsWords = {
  methods: {
    specificCapacity: 'Specific capacity',
    logan: 'One-point estimate (Logan)',
    cooperJacob: 'Straight line (Cooper and Jacob)',
    theis: 'Curve fit (Theis)',
    theisRecovery: 'Recovery (Theis)',
    hantushBierschenk: 'Step test (Hantush and Bierschenk)',
    edenHazel: 'All steps at once (Eden and Hazel)',
  },
  quantities: {
    transmissivity: 'transmissivity T',
    storage: 'storage coefficient S',
    slope: 'slope over a log cycle',
    specificCapacity: 'specific capacity Q/s',
    aquiferLoss: 'linear loss B',
    wellLoss: 'well loss C',
    laminarShare: 'share of the linear loss at the highest rate',
    rateByDrawdown: 'rate that uses up the drawdown',
    safeRate: 'safe rate in the dry season',
    drawdown: 'drawdown at the end of the time',
    pumpingLevel: 'pumping level below ground',
    intake: 'least depth of the intake',
  },
  bases: {
    regression: 'Student’s t about the line',
    linearised: 'Student’s t about the logarithm, linearised at the best fit',
    propagated: 'from the covariance of B and C, to first order',
    spread: 'spread of the method by experience',
    worstCase: 'from both ends of all that goes in',
  },
  leftOut: {
    noMinutes: 'no time',
    noReading: 'no level',
    notAfterStart: 'not after the start',
    aboveRest: 'at or above the rest level',
    belowIntake: 'below the intake of the test pump',
    outOfOrder: 'time out of order',
    noRate: 'no rate for its step',
  },
  seriesNotes: {
    noMinutes: 'No time stands here: the reading is not used.',
    noReading: 'No level stands here: the reading is not used.',
    notAfterStart: 'By the rates that were read the pump did not run yet: the reading is not used.',
    aboveRest:
      'The level, {readM} m, lies above the rest level of {restM} m: the reading is not used.',
    atRest: 'The level, {readM} m, is the rest level: the reading has no drawdown and is not used.',
    belowIntake:
      'The level lies below the intake of the test pump, {intakeM} m: the reading is not used.',
    outOfOrder: 'The time, {minutes} min, is out of order: the reading is not used.',
    noRate: 'No rate is known for this step: the reading is not used.',
    rateNil: 'The rate is nil: it is passed over, and does not count in the rate of the test.',
    rateNilBefore:
      'The rate is nil: pumping is taken to begin after this, and the reading is not used.',
    rateNilStands: 'The rate is nil: the pump is taken to stand still since the reading before.',
    lacksRestLevel: 'No rest level is known: these readings tell no drawdown.',
    lacksRate: 'No rate above nil is known: these readings tell nothing of the ground.',
    lacksMinutesPumped:
      'It is not known how long was pumped before: the recovery cannot be analysed.',
    fewForLine:
      'Readings that can be used: {count}. A line with its interval takes {least} or more.',
    fewForCurve: 'Readings that can be used: {count}. The curve takes {least} or more.',
    fewSteps: 'Steps that can be used: {count}. B and C with their intervals take {least} or more.',
  },
  missing: {
    series: 'readings of the test',
    restLevel: 'rest level before pumping',
    rate: 'pumping rate',
    minutesPumped: 'minutes pumped before the recovery',
    steps: 'two steps or more at different rates',
    enoughReadings: 'readings enough for a rising line',
    pumpingTest: 'a constant-rate or step test that can be analysed',
    drySeasonLevel: 'rest level in the dry season',
    screenOrIntake: 'depth of the screen or of the intake',
  },
  checks: {
    uSmall: {
      holds: 'u falls from {first} to {last}, not above {limit}: the straight line holds.',
      fails: 'u is {first} at the first reading, above {limit}: too early for a straight line.',
    },
    bendSeen: {
      holds: 'u falls from {first} to {last}: the bend of the curve was seen.',
      fails:
        'u is {first} at the first reading, not above {limit}: the bend of the curve was missed, S is weakly held.',
    },
    afterCasingStorage: {
      holds:
        'The first reading, at {first} min, comes after the casing’s own water ({minutes} min).',
      fails:
        'The first reading, at {first} min, comes before {minutes} min: the casing’s own water still tells.',
    },
    straight: {
      holds:
        'The slope changes by {change} % from end to end; what is above {limit} % lies within the scatter.',
      fails:
        'The slope changes by {change} % from end to end, above {limit} %: the readings are not straight.',
    },
    longEnough: {
      holds: 'The line goes over {cycles} log cycles.',
      fails: 'The line goes over {cycles} log cycles, under {limit}: short for a slope.',
    },
    recoveryToRest: {
      holds: 'The line comes within {limit} m of rest at t/t′ = 1.',
      fails:
        'The line is {atZero} m off rest at t/t′ = 1, more than {limit} m: recharge, a bounded aquifer, or a rest level that moved.',
    },
    lossPositive: {
      holds: 'C is not below nil.',
      fails:
        'C is {value} d²/m⁵, below nil: the well cleared up during the test, or a rate or level is wrong.',
    },
    stepsEnough: {
      holds: '{steps} steps.',
      fails: '{steps} steps, under {limit}: nothing is left to tell the scatter.',
    },
    stepsRise: {
      holds: 'Rates go from {lowest} to {highest} m³/h.',
      fails: 'Rates go from {lowest} to {highest} m³/h only: B and C are hard to tell apart.',
    },
    withinTested: {
      holds:
        'The rate that uses up the drawdown, {rate} m³/h, lies within what was tested ({tested} m³/h).',
      fails:
        'The drawdown would allow {rate} m³/h, but {tested} m³/h is the most that was tested: that is where the safe rate ends.',
    },
    waterAvailable: {
      holds: '{available} m of drawdown are available in the dry season.',
      fails:
        'No drawdown is available in the dry season ({available} m): the margins reach above the water.',
    },
    askedWithinSafe: {
      holds: 'The rate asked for, {asked} m³/h, lies within the safe rate of {safe} m³/h.',
      fails: 'The rate asked for, {asked} m³/h, is above the safe rate of {safe} m³/h.',
    },
    intakeDeepEnough: {
      holds: 'The intake at {intake} m is deep enough; {least} m would do.',
      fails: 'The intake at {intake} m is not deep enough; it needs {least} m.',
    },
  },
  hints: {
    slopeDoubling:
      'The late slope is {ratio} times the early one: it may be a tight boundary, as of a fault or a clay wall; or the rate rose.',
    slopeSteeper:
      'The late slope is {ratio} times the early one: it may be tighter ground farther out, a layer that ran dry, or a rate that rose.',
    flattening:
      'The late slope is {ratio} times the early one: it may be water from a stream, from a layer above or from drainage of the ground; or the rate fell.',
    stabilised: 'The slope stays the same over {cycles} log cycles, as in wide and even ground.',
  },
  assumptions: {
    idealAquifer: 'The aquifer is wide, even and confined, and the well reaches through it.',
    independentResiduals:
      'The interval holds the scatter of the readings alone, each taken to err by itself; not what makes the ground differ from the ideal.',
    storageNotReported: 'No storage is given: the radius that acts in a pumped well is not known.',
    uByLargestStorage:
      'u is reckoned with the largest storage, {storage}, and a radius of {radius} m: it is rather too large.',
    riserIgnored:
      'Casing storage by 25 rc²/T (Papadopulos and Cooper 1967, from memory) with rc {radius} m; the riser pipe inside is left out, so that the time is rather too long.',
    casingUnknown:
      'The inside of the casing is not known, so that no early readings are masked for casing storage.',
    rateAveraged: 'One rate, {rate} m³/h; single readings lie within {spread} % of their mean.',
    ratesSuperposed: 'Changes of the rate are superposed.',
    delayedStart: 'Pumping began {minutes} min after the clock.',
    restFromLevels:
      'The test tells no rest level; that of the last level at rest before it is taken, {level} m below ground.',
    restFromSeries: 'The rest level is the reading at 0 min.',
    restFromPumpingTest: 'The rest level is that of the pumping before.',
    rateFromPumpingTest: 'The rate is that of the pumping before.',
    pumpedFromPumpingTest: 'The minutes pumped are those of the pumping before.',
    minutesRunOn: 'The minutes run on from step to step.',
    stepsByRate: 'The steps are told by rate and time, since no numbers are given.',
    stepsFreedOfTails:
      'Drawdowns at the ends of steps are freed of the tails of the steps before, to {minutes} min each.',
    stepEndsAsRead:
      'Drawdowns at the ends of steps are taken as read, so that later ones still carry the steps before: C comes out rather too large.',
    unequalSteps: 'The steps are of unequal length.',
    nearSteady: 'The level hardly falls any more, and a usual ratio of reach to radius is taken.',
    wellLossIgnored:
      'The well loss is not taken off, so that T comes out rather too low in a lossy well.',
    wellLossInStorage: 'The fit takes the well loss into its storage; T is free of it.',
    automaticWindow: 'The longest straight part was chosen by the program.',
    handWindow: 'The readings were chosen by hand.',
    pumpedSoLong: '{days} days of pumping, {hours} hours a day.',
    noRecharge: 'No rain reaches the aquifer in that time.',
    noBoundary: 'No boundary is met that the test did not see.',
    lateSlope: 'The drawdown gets steeper late in the test; it is drawn out by the last readings.',
    slopesOfAllMethods:
      'The interval draws the drawdown out by the flattest and the steepest slope of all methods.',
    lossFromSteps: 'Well loss C {C} d²/m⁵ from the step test.',
    lossInLine:
      'No step test tells the well loss: the drawdown is taken to grow in step with the rate, which is too little above the tested rate.',
    drySeasonFromLevels:
      'Nobody gave a level of the dry season; the deepest that was read at rest is taken, {level} m below ground.',
    drySeasonSaid: 'The level of the dry season is as it was given.',
    drySeasonEstimated:
      'The level of the dry season is estimated from the last level at rest and the swing of the year, as it was told.',
    marginOverScreen: 'The pumping level stays {margin} m above the top of the screen.',
    marginOverIntake: 'The pumping level stays {margin} m above the intake.',
  },
  limits: { screen: 'top of the screen', intake: 'intake of the pump' },
  sources: {
    theis1935: 'Theis 1935',
    cooperJacob1946: 'Cooper and Jacob 1946',
    hantushBierschenk: 'Jacob 1947, Hantush 1964, Bierschenk 1963',
    edenHazel1973: 'Eden and Hazel 1973 (from memory)',
    birsoySummers1980: 'Birsoy and Summers 1980 (from memory)',
    logan1964: 'Logan 1964 (from memory)',
    bourdet1989: 'Bourdet, Ayoub and Pirard 1989 (from memory)',
    common: 'common practice',
  },
};
