import type { WaterWords } from './words.ts';

export const english: WaterWords = {
  quality: {
    states: {
      above: 'above the value',
      below: 'below the value',
      limitTooHigh: 'detection limit too high to tell',
      formUnknown: 'form not written, and it matters',
      unitUnknown: 'unit missing or not convertible',
      notTested: 'not tested',
      within: 'within the value',
    },
    bases: {
      health: 'health',
      provisional: 'health, provisional',
      acceptability: 'taste and use',
      operational: 'operation',
    },
    purposes: {
      faeces: 'a sign of faeces in the water',
      infants: 'for bottle-fed infants above all',
      longUse: 'for those who drink it for years',
      taste: 'taste',
      odour: 'odour',
      stains: 'stains and colour',
      scale: 'scale',
      corrosion: 'corrosion of pump and pipes',
      laxative: 'laxative effect',
      seen: 'seen by the eye',
      chlorination: 'chlorine works well',
      nearbyWaste: 'a sign of waste nearby',
    },
    conditions: { chlorinated: 'where the water is chlorinated' },
    bands: {
      low: 'low',
      intermediate: 'intermediate',
      high: 'high',
      veryHigh: 'very high',
      excellent: 'excellent taste',
      good: 'good taste',
      fair: 'fair taste',
      poor: 'poor taste',
      unacceptable: 'unacceptable taste',
    },
    conversions: {
      unit: 'unit converted',
      form: 'form converted',
      formUnwritten: 'form not written; every form was tried',
      fnuAsNtu: 'FNU taken as NTU',
      mpnAsCount: 'most probable number taken as a count',
      ppmAsMgL: 'ppm taken as mg/l',
    },
    directions: {
      up: 'higher than at first',
      down: 'lower than at first',
      same: 'about as at first',
      unclear: 'not clear, for the detection limits',
    },
    steadily: 'each time',
    balance: {
      good: 'ions balance within 5 %',
      fair: 'ions balance within 10 % only',
      poor: 'ions do not balance; have the analysis looked at again',
      unclear: 'detection limits leave the balance open',
    },
    notes: {
      'sample.undated': 'Nobody wrote when the sample was taken; it counts as the earliest.',
      'sample.late':
        'The bottle reached the laboratory after {hours} h; {mostHours} h is the most. The result may be too low.',
      'sample.aging':
        'The bottle reached the laboratory after {hours} h; good practice is {goodHours} h.',
      'sample.ageUnknown':
        'Days without a time do not tell whether the bottle reached the laboratory within {mostHours} h.',
      'sample.measuredInLaboratory':
        'It changes in the bottle and is measured beside the well; the laboratory’s figure is of little use.',
      'sample.receivedBefore':
        'The laboratory had the bottle before it was filled, by these dates.',
    },
    reservation:
      'Results beside guideline values, no verdict on the water. National standards come first; the health authority decides on its use.',
    bandReservation:
      'A ranking of wells by need for action, no pass mark: any count asks for inspection, disinfection and a new sample.',
  },
  siting: {
    ground: {
      clay: 'clay or tight rock',
      silt: 'silt',
      fineSand: 'fine sand',
      mediumSand: 'medium sand',
      coarseSand: 'coarse sand',
      sandAndGravel: 'sand and gravel',
      gravel: 'gravel',
      anySand: 'sand of unknown grain',
      sandstone: 'sandstone',
      weatheredRock: 'weathered rock',
      fracturedRock: 'fractured rock',
    },
    stands: {
      shorter: 'shorter than {days} days',
      spans: 'shorter or longer than {days} days',
      longer: 'longer than {days} days',
    },
    missing: {
      distance: 'distance',
      ground: 'ground under the water level',
      channels: 'limestone or cavities: water may run in channels at any speed',
    },
    reservation:
      'An order of size from tables, no measurement. It may show that a distance is far too short; it never shows that one is enough.',
  },
  disinfection: {
    missing: {
      restLevel: 'rest level',
      pipeInside: 'inside diameter of the casing',
      hole: 'depth and diameter of the hole under the water',
      packSizes: 'diameters round the gravel pack',
      riser: 'diameter of the riser',
      rate: 'rate of the pump',
    },
    cautions: {
      localRules:
        'Follow the rules of the country, the label of the product and its safety sheet first.',
      protectEyesAndHands:
        'Wear gloves, goggles and old clothes; have clean water at hand to rinse.',
      openAir: 'Mix in the open air, with the wind in the back; do not breathe dust or gas.',
      productIntoWater: 'Put the product into water, never water onto the product.',
      neverMix:
        'Never mix it with acid, fuel, oil, soap or another chlorine product: gas and fire.',
      keepOffWell: 'Do not lean over or climb into a well that is being dosed.',
      storeCoolDry: 'Keep the product cool, dry, closed, away from children, food and metal.',
      strengthFalls:
        'Strength falls with age and heat: take the strength of today, not of the label, for an old tin.',
      clearWaterFirst: 'Pump until the water is clear before dosing: silt uses up chlorine.',
      closeToUsers:
        'Close the pump and post somebody: nobody draws water until the chlorine is pumped off.',
      dischargeAway:
        'Lead the strongly chlorinated water to bare ground, away from streams, ponds, wetlands, crops and latrines.',
      sampleWithoutChlorine: 'Sample for bacteria only when the chlorine is gone.',
    },
    contact: 'Leave it for at least {leastH} h, better {fromH} to {toH} h, overnight.',
    resample:
      'Sample for bacteria {waitDays} d or more after pumping off, with {chlorineMgL} mg/l of free chlorine at the most.',
    reservation:
      'A dose, no assurance: only a sample tells whether it worked, and a well that is fouled again and again has a cause.',
  },
  reckoned: {
    nitrogenRatio: 'nitrate and nitrite together',
    hardnessMgL: 'hardness as CaCO3, from calcium and magnesium',
    dissolvedSolidsMgL: 'dissolved solids, from conductivity',
    cationsMeqL: 'sum of cations',
    anionsMeqL: 'sum of anions',
    ionErrorPercent: 'error of the ion balance',
    travelDays: 'time on the way',
    pipeWaterLitres: 'water in the casing',
    holeWaterLitres: 'water in the open hole',
    packWaterLitres: 'water in the gravel pack',
    riserWaterLitres: 'water in the riser above the rest level',
    waterLitres: 'water to dose',
    productG: 'product, dry',
    productMl: 'product, liquid',
    teaspoons: 'level teaspoons',
    tablespoons: 'level tablespoons',
    stockLitres: 'water to dissolve it in',
    washProductG: 'product for a bucket to wash the walls',
    pumpOffLitres: 'water to pump off, at the least',
    pumpOffMinutes: 'pumping time',
  },
  assumptions: {
    solidsFactor: 'factor from conductivity to dissolved solids',
    solidsFactorMiddle: 'middle factor from conductivity to dissolved solids',
    gradient: 'fall of the water table between 1 and 10 m in a kilometre',
    conductivityByGround: 'hydraulic conductivity from a table, by the kind of ground',
    porosityByGround: 'flowing pores from a table of specific yield',
    porosityOfRock: 'flowing cracks of rock from a textbook',
    fastestGround: 'the quickest ground under the water level, by the log of this well',
    wholeHole: 'no rest level known: the whole log counts',
    evenGround: 'the ground is the same all the way, without cracks or channels',
    straightWay: 'the water takes the straight way',
    noWayDown: 'time through the dry ground above is not counted',
    noPumping: 'the pull of the pump is not counted; near the well it is quicker',
    downhillToo: 'it lies downhill: counted all the same, since pumping may turn the flow',
    packVoids: 'voids of the gravel pack',
    strength: 'available chlorine of granules',
    liquidStrength: 'available chlorine of bleach',
    dose: 'dose',
    liquidByVolume: 'a per cent of bleach is 10 g of chlorine in a litre',
    bulkDensity:
      'a millilitre of loose granules weighs 0.8 to 1.0 g, an estimate; weigh where you can',
    teaspoon: 'level teaspoon',
    tablespoon: 'level tablespoon',
    stock: 'chlorine in the stock, 1 %',
    wash: 'dose for washing walls',
    washBucket: 'bucket',
    riserAsOutside: 'the riser’s outside diameter, a little too much',
    spout: 'height of the spout above ground',
    pumpOffVolumes: 'times the water of the well to pump off',
  },
};
