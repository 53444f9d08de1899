import type { WaterWords } from './words.ts';

/** French, in the trade's terms of francophone Africa (from memory). */
export const french: WaterWords = {
  quality: {
    states: {
      above: 'au-dessus de la valeur',
      below: 'en dessous de la valeur',
      limitTooHigh: 'limite de détection trop haute pour conclure',
      formUnknown: 'forme non indiquée, et elle compte',
      unitUnknown: 'unité absente ou non convertible',
      notTested: 'non analysé',
      within: 'respecte la valeur',
    },
    bases: {
      health: 'santé',
      provisional: 'santé, provisoire',
      acceptability: 'goût et usage',
      operational: 'exploitation',
    },
    purposes: {
      faeces: 'signe de matières fécales dans l’eau',
      infants: 'surtout pour les nourrissons au biberon',
      longUse: 'pour ceux qui en boivent pendant des années',
      taste: 'goût',
      odour: 'odeur',
      stains: 'taches et couleur',
      scale: 'entartrage',
      corrosion: 'corrosion de la pompe et des tubes',
      laxative: 'effet laxatif',
      seen: 'visible à l’œil',
      chlorination: 'bonne action du chlore',
      nearbyWaste: 'signe de rejets à proximité',
    },
    conditions: { chlorinated: 'là où l’eau est chlorée' },
    bands: {
      low: 'faible',
      intermediate: 'moyen',
      high: 'élevé',
      veryHigh: 'très élevé',
      excellent: 'goût excellent',
      good: 'bon goût',
      fair: 'goût passable',
      poor: 'mauvais goût',
      unacceptable: 'goût inacceptable',
    },
    conversions: {
      unit: 'unité convertie',
      form: 'forme convertie',
      formUnwritten: 'forme non indiquée ; toutes ont été essayées',
      limitUnwritten: 'sous la limite de détection, qui n’est pas indiquée',
      fnuAsNtu: 'FNU comptées comme NTU',
      mpnAsCount: 'nombre le plus probable compté comme un dénombrement',
      ppmAsMgL: 'ppm comptées comme mg/l',
    },
    directions: {
      up: 'plus haut qu’au début',
      down: 'plus bas qu’au début',
      same: 'à peu près comme au début',
      unclear: 'incertain, à cause des limites de détection',
    },
    steadily: 'à chaque fois',
    balance: {
      good: 'balance ionique à 5 % près',
      fair: 'balance ionique à 10 % près seulement',
      poor: 'la balance ionique ne ferme pas ; faire revoir l’analyse',
      unclear: 'les limites de détection laissent la balance ouverte',
    },
    notes: {
      'sample.undated':
        'Personne n’a noté la date du prélèvement ; il compte comme le plus ancien.',
      'sample.late':
        'Le flacon est arrivé au laboratoire après {hours} h ; {mostHours} h sont le maximum. Le résultat peut être trop bas.',
      'sample.aging':
        'Le flacon est arrivé au laboratoire après {hours} h ; la bonne pratique est de {goodHours} h.',
      'sample.ageUnknown':
        'Des jours sans heure ne disent pas si le flacon est arrivé au laboratoire dans les {mostHours} h.',
      'sample.measuredInLaboratory':
        'Cela change dans le flacon et se mesure près du forage ; le chiffre du laboratoire sert peu.',
      'sample.receivedBefore':
        'D’après ces dates, le laboratoire a reçu le flacon avant qu’il soit rempli.',
    },
    reservation:
      'Des résultats en regard de valeurs guides, pas un jugement sur l’eau. Les normes nationales priment ; l’autorité sanitaire décide de son usage.',
    bandReservation:
      'Un classement des forages par urgence d’agir, pas un seuil d’admission : toute colonie demande une inspection, une désinfection et un nouveau prélèvement.',
  },
  siting: {
    ground: {
      clay: 'argile ou roche serrée',
      silt: 'limon',
      fineSand: 'sable fin',
      mediumSand: 'sable moyen',
      coarseSand: 'sable grossier',
      sandAndGravel: 'sable et gravier',
      gravel: 'gravier',
      fineToMediumSand: 'sable fin à moyen',
      mediumToCoarseSand: 'sable moyen à grossier',
      anySand: 'sable de grain inconnu',
      sandstone: 'grès',
      weatheredRock: 'roche altérée',
      fracturedRock: 'roche fracturée',
    },
    stands: {
      shorter: 'moins de {days} jours',
      spans: 'moins ou plus de {days} jours',
      longer: 'plus de {days} jours',
    },
    missing: {
      distance: 'distance',
      ground: 'terrain sous le niveau de l’eau',
      channels: 'calcaire ou cavités : l’eau peut courir dans des conduits à toute vitesse',
    },
    reservation:
      'Un ordre de grandeur tiré de tables, pas une mesure. Il peut montrer qu’une distance est bien trop courte ; il ne montre jamais qu’elle suffit.',
  },
  disinfection: {
    missing: {
      restLevel: 'niveau statique',
      pipeInside: 'diamètre intérieur du tubage',
      hole: 'profondeur et diamètre du trou sous l’eau',
      packSizes: 'diamètres autour du massif de gravier',
      riser: 'diamètre de la colonne montante',
      rate: 'débit de la pompe',
    },
    cautions: {
      localRules:
        'Suivre d’abord les règles du pays, l’étiquette du produit et sa fiche de sécurité.',
      protectEyesAndHands:
        'Porter gants, lunettes et vieux vêtements ; garder de l’eau propre pour rincer.',
      openAir: 'Mélanger en plein air, le vent dans le dos ; ne respirer ni poussière ni gaz.',
      productIntoWater: 'Verser le produit dans l’eau, jamais l’eau sur le produit.',
      neverMix:
        'Ne jamais le mélanger à un acide, du carburant, de l’huile, du savon ou un autre produit chloré : gaz et feu.',
      keepOffWell: 'Ne pas se pencher sur un puits en cours de traitement, ne pas y descendre.',
      storeCoolDry:
        'Garder le produit au frais, au sec, fermé, loin des enfants, des aliments et du métal.',
      strengthFalls:
        'Le titre baisse avec l’âge et la chaleur : pour une vieille boîte, prendre le titre du jour, pas celui de l’étiquette.',
      clearWaterFirst:
        'Pomper jusqu’à l’eau claire avant de doser : les matières en suspension consomment le chlore.',
      closeToUsers:
        'Fermer la pompe et poster quelqu’un : personne ne puise avant que le chlore soit évacué.',
      dischargeAway:
        'Mener l’eau fortement chlorée sur un sol nu, loin des cours d’eau, mares, zones humides, cultures et latrines.',
      sampleWithoutChlorine: 'Ne prélever pour la bactériologie que lorsque le chlore a disparu.',
    },
    contact: 'Laisser agir au moins {leastH} h, mieux {fromH} à {toH} h, la nuit.',
    resample:
      'Prélever pour la bactériologie {waitDays} j ou plus après l’évacuation, avec {chlorineMgL} mg/l de chlore libre au plus.',
    reservation:
      'Une dose, pas une garantie : seul un prélèvement dit si elle a agi, et un forage contaminé à répétition l’est pour une raison.',
  },
  reckoned: {
    nitrogenRatio: 'nitrates et nitrites ensemble',
    hardnessMgL: 'dureté en CaCO3, d’après calcium et magnésium',
    dissolvedSolidsMgL: 'solides dissous, d’après la conductivité',
    cationsMeqL: 'somme des cations',
    anionsMeqL: 'somme des anions',
    ionErrorPercent: 'erreur de la balance ionique',
    travelDays: 'temps de parcours',
    pipeWaterLitres: 'eau dans le tubage',
    holeWaterLitres: 'eau dans le trou nu',
    packWaterLitres: 'eau dans le massif de gravier',
    riserWaterLitres: 'eau dans la colonne montante au-dessus du niveau statique',
    waterLitres: 'eau à traiter',
    productG: 'produit, sec',
    productMl: 'produit, liquide',
    teaspoons: 'cuillères à café rases',
    tablespoons: 'cuillères à soupe rases',
    stockLitres: 'eau pour le dissoudre',
    washProductG: 'produit pour un seau de lavage des parois',
    pumpOffLitres: 'eau à évacuer, au moins',
    pumpOffMinutes: 'temps de pompage',
  },
  assumptions: {
    solidsFactor: 'facteur de la conductivité aux solides dissous',
    solidsFactorMiddle: 'facteur moyen de la conductivité aux solides dissous',
    gradient: 'pente de la nappe entre 1 et 10 m par kilomètre',
    conductivityByGround: 'conductivité hydraulique d’une table, selon le terrain',
    porosityByGround: 'porosité efficace, d’après une table de porosité de drainage',
    porosityOfRock: 'porosité de fissures, d’après un manuel',
    fastestGround:
      'le terrain le plus rapide sous le niveau de l’eau, d’après la coupe de ce forage',
    wholeHole: 'niveau statique inconnu : toute la coupe compte',
    evenGround: 'le terrain est le même partout, sans fissures ni conduits',
    straightWay: 'l’eau va tout droit',
    noWayDown: 'le temps à travers le terrain sec au-dessus n’est pas compté',
    noPumping: 'l’appel de la pompe n’est pas compté ; près du forage l’eau va plus vite',
    downhillToo: 'à l’aval : compté tout de même, car le pompage peut inverser l’écoulement',
    packVoids: 'vides du massif de gravier',
    strength: 'chlore actif des granulés',
    liquidStrength: 'chlore actif de l’eau de Javel',
    dose: 'dose',
    liquidByVolume: 'un pour cent d’eau de Javel vaut 10 g de chlore par litre',
    bulkDensity:
      'un millilitre de granulés en vrac pèse 0,8 à 1,0 g, une estimation ; peser si possible',
    teaspoon: 'cuillère à café rase',
    tablespoon: 'cuillère à soupe rase',
    stock: 'chlore de la solution mère, 1 %',
    wash: 'dose de lavage des parois',
    washBucket: 'seau',
    riserAsOutside: 'le diamètre extérieur de la colonne, un peu trop',
    spout: 'hauteur du bec au-dessus du sol',
    pumpOffVolumes: 'nombre de volumes du forage à évacuer',
  },
};
