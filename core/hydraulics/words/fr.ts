import type { HydraulicsWords } from './words.ts';

/** French, in the trade's terms of francophone Africa (from memory). */
export const french: HydraulicsWords = {
  methods: {
    specificCapacity: 'Débit spécifique',
    logan: 'Estimation en un point (Logan)',
    cooperJacob: 'Droite de Cooper et Jacob',
    theis: 'Ajustement de la courbe de Theis',
    theisRecovery: 'Remontée (Theis)',
    hantushBierschenk: 'Essai par paliers (Hantush et Bierschenk)',
    edenHazel: 'Tous les paliers ensemble (Eden et Hazel)',
  },
  quantities: {
    transmissivity: 'transmissivité T',
    storage: 'coefficient d’emmagasinement S',
    slope: 'pente par cycle logarithmique',
    specificCapacity: 'débit spécifique Q/s',
    aquiferLoss: 'pertes linéaires B',
    wellLoss: 'pertes quadratiques C',
    laminarShare: 'part des pertes linéaires au plus grand débit',
    rateByDrawdown: 'débit qui épuise le rabattement',
    safeRate: 'débit d’exploitation en saison sèche',
    drawdown: 'rabattement à la fin de la durée',
    pumpingLevel: 'niveau dynamique sous le sol',
    intake: 'profondeur minimale de l’aspiration',
  },
  bases: {
    regression: 't de Student autour de la droite',
    linearised: 't de Student autour du logarithme, linéarisé au meilleur ajustement',
    propagated: 'd’après la covariance de B et C, au premier ordre',
    spread: 'dispersion de la méthode par expérience',
    worstCase: 'd’après les deux bornes de tout ce qui entre en compte',
  },
  leftOut: {
    noMinutes: 'pas de temps',
    noReading: 'pas de niveau',
    notAfterStart: 'pas après le début',
    aboveRest: 'au niveau statique ou au-dessus',
    belowIntake: 'sous l’aspiration de la pompe d’essai',
    outOfOrder: 'temps dans le désordre',
    noRate: 'pas de débit pour son palier',
  },
  seriesNotes: {
    noMinutes: 'Le temps manque : la mesure n’est pas utilisée.',
    noReading: 'Le niveau manque : la mesure n’est pas utilisée.',
    notAfterStart:
      'D’après les débits relevés, la pompe ne tournait pas encore : la mesure n’est pas utilisée.',
    aboveRest:
      'Le niveau, {readM} m, est au-dessus du niveau statique de {restM} m : la mesure n’est pas utilisée.',
    atRest:
      'Le niveau, {readM} m, est le niveau statique : la mesure n’a pas de rabattement et n’est pas utilisée.',
    belowIntake:
      'Le niveau est sous l’aspiration de la pompe d’essai, {intakeM} m : la mesure n’est pas utilisée.',
    outOfOrder: 'Le temps, {minutes} min, est dans le désordre : la mesure n’est pas utilisée.',
    noRate: 'Aucun débit n’est connu pour ce palier : la mesure n’est pas utilisée.',
    rateNil: 'Le débit est nul : il est ignoré et ne compte pas dans le débit de l’essai.',
    rateNilBefore:
      'Le débit est nul : le pompage est supposé commencer après, et la mesure n’est pas utilisée.',
    rateNilStands: 'Le débit est nul : la pompe est supposée arrêtée depuis la mesure précédente.',
    lacksRestLevel:
      'Aucun niveau statique n’est connu : ces mesures ne donnent pas de rabattement.',
    lacksRate: 'Aucun débit non nul n’est connu : ces mesures ne disent rien du terrain.',
    lacksMinutesPumped:
      'La durée du pompage précédent n’est pas connue : la remontée ne peut pas être interprétée.',
    fewForLine:
      'Mesures utilisables : {count}. Une droite avec son intervalle en demande {least} ou plus.',
    fewForCurve: 'Mesures utilisables : {count}. La courbe en demande {least} ou plus.',
    fewSteps:
      'Paliers utilisables : {count}. B et C avec leurs intervalles en demandent {least} ou plus.',
  },
  missing: {
    series: 'mesures de l’essai',
    restLevel: 'niveau statique avant pompage',
    rate: 'débit de pompage',
    minutesPumped: 'minutes pompées avant la remontée',
    steps: 'deux paliers ou plus à des débits différents',
    enoughReadings: 'assez de mesures pour une droite qui monte',
    pumpingTest: 'un essai à débit constant ou par paliers qui puisse être interprété',
    drySeasonLevel: 'niveau statique en saison sèche',
    screenOrIntake: 'profondeur de la crépine ou de l’aspiration',
  },
  checks: {
    uSmall: {
      holds: 'u descend de {first} à {last}, sans dépasser {limit} : la droite est valable.',
      fails: 'u vaut {first} à la première mesure, plus de {limit} : trop tôt pour une droite.',
    },
    bendSeen: {
      holds: 'u descend de {first} à {last} : la courbure a été observée.',
      fails:
        'u vaut {first} à la première mesure, pas plus de {limit} : la courbure n’a pas été observée, S est mal fixé.',
    },
    afterCasingStorage: {
      holds: 'La première mesure, à {first} min, vient après l’eau du tubage ({minutes} min).',
      fails:
        'La première mesure, à {first} min, vient avant {minutes} min : l’eau du tubage compte encore.',
    },
    straight: {
      holds:
        'La pente change de {change} % d’un bout à l’autre ; ce qui dépasse {limit} % reste dans la dispersion.',
      fails:
        'La pente change de {change} % d’un bout à l’autre, plus de {limit} % : les mesures ne sont pas alignées.',
    },
    longEnough: {
      holds: 'La droite couvre {cycles} cycles logarithmiques.',
      fails:
        'La droite couvre {cycles} cycles logarithmiques, moins de {limit} : c’est court pour une pente.',
    },
    recoveryToRest: {
      holds: 'La droite arrive à moins de {limit} m du niveau statique à t/t′ = 1.',
      fails:
        'La droite passe à {atZero} m du niveau statique à t/t′ = 1, plus de {limit} m : recharge, nappe limitée ou niveau statique qui a bougé.',
    },
    lossPositive: {
      holds: 'C n’est pas négatif.',
      fails:
        'C vaut {value} j²/m⁵, il est négatif : le forage s’est développé pendant l’essai, ou un débit ou un niveau est faux.',
    },
    stepsEnough: {
      holds: '{steps} paliers.',
      fails: '{steps} paliers, moins de {limit} : rien ne reste pour juger de la dispersion.',
    },
    stepsRise: {
      holds: 'Les débits vont de {lowest} à {highest} m³/h.',
      fails: 'Les débits vont seulement de {lowest} à {highest} m³/h : B et C se séparent mal.',
    },
    withinTested: {
      holds:
        'Le débit qui épuise le rabattement, {rate} m³/h, reste dans ce qui a été essayé ({tested} m³/h).',
      fails:
        'Le rabattement permettrait {rate} m³/h, mais {tested} m³/h est le plus grand débit essayé : le débit d’exploitation s’arrête là.',
    },
    waterAvailable: {
      holds: '{available} m de rabattement sont disponibles en saison sèche.',
      fails:
        'Aucun rabattement n’est disponible en saison sèche ({available} m) : les marges dépassent l’eau.',
    },
    askedWithinSafe: {
      holds: 'Le débit demandé, {asked} m³/h, reste dans le débit d’exploitation de {safe} m³/h.',
      fails: 'Le débit demandé, {asked} m³/h, dépasse le débit d’exploitation de {safe} m³/h.',
    },
    intakeDeepEnough: {
      holds: 'L’aspiration à {intake} m est assez profonde ; {least} m suffiraient.',
      fails: 'L’aspiration à {intake} m n’est pas assez profonde ; il faut {least} m.',
    },
  },
  hints: {
    slopeDoubling:
      'La pente tardive vaut {ratio} fois la première : ce peut être une limite étanche, comme une faille ou un mur d’argile ; ou le débit a augmenté.',
    slopeSteeper:
      'La pente tardive vaut {ratio} fois la première : ce peut être un terrain moins perméable plus loin, une couche dénoyée ou un débit qui a augmenté.',
    flattening:
      'La pente tardive vaut {ratio} fois la première : ce peut être l’eau d’un cours d’eau, d’une couche au-dessus ou de l’égouttage du terrain ; ou le débit a baissé.',
    stabilised:
      'La pente reste la même sur {cycles} cycles logarithmiques, comme dans un terrain vaste et régulier.',
  },
  assumptions: {
    idealAquifer: 'La nappe est vaste, régulière et captive, et le forage la traverse entièrement.',
    independentResiduals:
      'L’intervalle ne contient que la dispersion des mesures, chacune supposée d’erreur indépendante ; pas l’écart du terrain à l’idéal.',
    storageNotReported:
      'Aucun emmagasinement n’est donné : le rayon efficace d’un forage pompé n’est pas connu.',
    uByLargestStorage:
      'u est calculé avec le plus grand emmagasinement, {storage}, et un rayon de {radius} m : il est plutôt trop grand.',
    riserIgnored:
      'Effet de capacité par 25 rc²/T (Papadopulos et Cooper 1967, de mémoire) avec rc {radius} m ; la colonne de refoulement n’est pas déduite, le temps est donc plutôt trop long.',
    casingUnknown:
      'L’intérieur du tubage n’est pas connu : aucune mesure du début n’est écartée pour l’effet de capacité.',
    rateAveraged: 'Un seul débit, {rate} m³/h ; les mesures restent à {spread} % de leur moyenne.',
    ratesSuperposed: 'Les changements de débit sont superposés.',
    delayedStart: 'Le pompage a commencé {minutes} min après le chronomètre.',
    restFromLevels:
      'L’essai ne donne pas de niveau statique ; le dernier lu au repos avant lui est pris, {level} m sous le sol.',
    restFromSeries: 'Le niveau statique est la mesure à 0 min.',
    restFromPumpingTest: 'Le niveau statique est celui du pompage qui précède.',
    rateFromPumpingTest: 'Le débit est celui du pompage qui précède.',
    pumpedFromPumpingTest: 'La durée de pompage est celle du pompage qui précède.',
    minutesRunOn: 'Les minutes continuent d’un palier à l’autre.',
    stepsByRate: 'Les paliers sont reconnus par débit et temps, faute de numéros.',
    stepsFreedOfTails:
      'Les rabattements en fin de palier sont libérés de la traîne des paliers précédents, ramenés à {minutes} min chacun.',
    stepEndsAsRead:
      'Les rabattements en fin de palier sont pris comme lus ; les derniers portent encore les précédents et C sort plutôt trop grand.',
    unequalSteps: 'Les paliers sont de durées inégales.',
    nearSteady:
      'Le niveau ne baisse presque plus, et un rapport habituel du rayon d’action au rayon du forage est pris.',
    wellLossIgnored:
      'Les pertes de charge du forage ne sont pas déduites : T sort plutôt trop faible dans un forage à fortes pertes.',
    wellLossInStorage:
      'L’ajustement met les pertes de charge du forage dans l’emmagasinement ; T en est libre.',
    automaticWindow: 'La plus longue partie droite a été choisie par le programme.',
    handWindow: 'Les mesures ont été choisies à la main.',
    pumpedSoLong: '{days} jours de pompage, {hours} heures par jour.',
    noRecharge: 'Aucune pluie n’atteint la nappe pendant ce temps.',
    noBoundary: 'Aucune limite n’est atteinte que l’essai n’ait pas vue.',
    lateSlope:
      'Le rabattement devient plus raide vers la fin de l’essai ; il est prolongé par les dernières mesures.',
    slopesOfAllMethods:
      'L’intervalle prolonge le rabattement par la pente la plus faible et la plus forte de toutes les méthodes.',
    lossFromSteps: 'Pertes quadratiques C {C} j²/m⁵ d’après l’essai par paliers.',
    lossInLine:
      'Aucun essai par paliers ne donne les pertes du forage : le rabattement est supposé croître comme le débit, ce qui est trop peu au-delà du débit essayé.',
    drySeasonFromLevels:
      'Personne n’a donné de niveau de saison sèche ; le plus profond lu au repos est pris, {level} m sous le sol.',
    drySeasonSaid: 'Le niveau de saison sèche est celui qui a été donné.',
    drySeasonEstimated:
      'Le niveau de saison sèche est estimé d’après le dernier niveau statique et le battement annuel indiqué.',
    marginOverScreen: 'Le niveau dynamique reste {margin} m au-dessus du haut de la crépine.',
    marginOverIntake: 'Le niveau dynamique reste {margin} m au-dessus de l’aspiration.',
  },
  limits: { screen: 'haut de la crépine', intake: 'aspiration de la pompe' },
  sources: {
    theis1935: 'Theis 1935',
    cooperJacob1946: 'Cooper et Jacob 1946',
    hantushBierschenk: 'Jacob 1947, Hantush 1964, Bierschenk 1963',
    edenHazel1973: 'Eden et Hazel 1973 (de mémoire)',
    birsoySummers1980: 'Birsoy et Summers 1980 (de mémoire)',
    logan1964: 'Logan 1964 (de mémoire)',
    bourdet1989: 'Bourdet, Ayoub et Pirard 1989 (de mémoire)',
    common: 'usage courant du métier',
  },
};
