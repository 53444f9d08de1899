import type { PumpWords } from './words.ts';

/** French, in the trade’s terms of francophone Africa (from memory). */
export const french: PumpWords = {
  kinds: {
    suction: 'pompe aspirante',
    directAction: 'pompe à action directe',
    ropeAndWasher: 'pompe à corde',
    deepwellOpenTop: 'pompe à levier pour puits profond, piston relevé par la colonne',
    deepwellPlastic: 'pompe à levier pour puits profond, colonne montante en PVC',
    deepwellLever: 'pompe à levier pour puits profond, galvanisée (IS 15500)',
    extraDeepLever: 'pompe à levier de grande profondeur, galvanisée (IS 15500)',
    solarSubmersible: 'pompe solaire immergée',
    electricSubmersible: 'pompe électrique immergée',
    bucketAndWindlass: 'seau et treuil',
  },
  verdicts: {
    possible: 'possible',
    doubtful: 'sous réserve',
    cantSay: 'impossible à dire',
    ruledOut: 'à écarter',
  },
  reasons: {
    liftWithin: 'La hauteur d’élévation en saison sèche, {liftM} m, reste dans ses {mostM} m.',
    liftNearMost:
      'La hauteur d’élévation en saison sèche, {liftM} m, dépasse les {wellM} m jusqu’où elle travaille bien ; sa limite est de {mostM} m.',
    liftBeyond: 'La hauteur d’élévation, {liftM} m ou plus, dépasse ses {mostM} m.',
    flowReckoned:
      'Aucun débit n’est publié pour une hauteur de {liftM} m ; {flow} m³/h est calculé à partir du plus proche.',
    needMet:
      'Le besoin des usagers demande {hours} h de pompage par jour, dans la limite de {most} h.',
    longHours:
      'Le besoin des usagers demande {hours} h de pompage par jour, soit plus de {most} h.',
    flowTooLow: 'Le besoin des usagers demanderait {hours} h de pompage par jour.',
    longQueue:
      'Aux heures de pointe on attend jusqu’à {minutes} min, soit plus de {most} min : moins d’usagers, ou un second point d’eau.',
    usersWithin: '{users} usagers restent dans les {most} qu’une pompe dessert.',
    usersAboveAdvised:
      '{users} usagers dépassent les {advised} conseillés ; jusqu’à {most} sont rapportés.',
    usersAboveMost:
      '{users} usagers dépassent les {most} qu’une seule dessert ; il en faudrait {pumps}.',
    lightType: 'Le modèle léger dessert au plus {light} usagers : demander le modèle lourd.',
    wellGivesLess:
      'Elle élève {flow} m³/h, plus que les {rate} m³/h de l’essai du forage : le niveau peut descendre jusqu’à l’aspiration, et les usagers attendent alors.',
    wellShort:
      'Aux {rate} m³/h de l’essai du forage, le besoin des usagers demande {hours} h par jour, soit plus de {most} h, quelle que soit la pompe.',
    casingFits:
      'Le tubage, {insideMm} mm intérieur, est assez large pour elle ({leastMm} mm au moins).',
    casingTight:
      'Le tubage, {insideMm} mm intérieur, est juste ; {easyMm} mm donne de la place. Comparer au diamètre du fabricant.',
    casingAtLimit:
      'Le tubage, {insideMm} mm intérieur, est à sa limite de {leastMm} mm, qui n’a pas été vérifiée : mesurer le corps de pompe.',
    casingNarrow:
      'Le tubage, {insideMm} mm intérieur, est plus étroit que les {leastMm} mm qu’elle demande.',
    corrosionProof:
      'Ce qui est dans l’eau est en plastique et en acier inoxydable, et ne se corrode pas.',
    phHolds: 'Le pH de {ph} n’est pas sous {least}, où le tube galvanisé se corrode vite.',
    phCorrodes:
      'Le pH de {ph} est sous {least} : tubes et tringles galvanisés se corrodent, et le fer passe dans l’eau.',
    repairThere: 'Sa réparation demande {needs} : disponible sur place.',
    repairBeyond: 'Sa réparation demande {needs} ; le mieux sur place est {there}.',
    intakeFits: 'L’aspiration peut être placée en tube plein, de {fromM} m à {toM} m.',
    intakeInScreen:
      'L’aspiration ne peut être placée que dans la crépine, de {fromM} m à {toM} m : garder un débit faible et surveiller le sable.',
    intakeInOpenHole:
      'L’aspiration ne peut être placée que dans le trou nu, de {fromM} m à {toM} m : seulement si la roche tient.',
    intakeNoRoom:
      'Entre le niveau dynamique, {levelM} m, et le fond, {footM} m, il n’y a pas place pour {underM} m d’eau au-dessus de l’aspiration et {aboveM} m au-dessous.',
    closed: 'Elle est fermée, et tient les mains et la saleté loin de l’eau.',
    notClosed: 'Elle n’est pas tout à fait fermée : le capot et la dalle doivent rester entiers.',
    priming: 'Il faut l’amorcer, ce qui introduit de l’eau sale dans le forage.',
    lastResort:
      'Le forage reste ouvert, et le seau et la corde y portent des germes : dernier recours.',
    noMains: 'Il n’y a pas d’alimentation électrique.',
  },
  cautions: {
    licensedElectrician:
      'Seul un électricien agréé raccorde pompe, panneaux ou alimentation, avec mise à la terre et disjoncteur différentiel selon la réglementation locale. Couper avant de toucher quoi que ce soit : les panneaux sont sous tension tant qu’il fait jour.',
    dryRunGuard: 'Monter une protection qui arrête la pompe avant la marche à sec.',
    dipTube:
      'Poser un tube guide-sonde de 19 mm ou plus à côté de la colonne, pour lire les niveaux.',
    coolingFlow:
      'À cette profondeur l’eau ne passe pas d’elle-même devant le moteur : monter une chemise de refroidissement, ou placer la pompe au-dessus des fentes.',
    storageTank: 'Prévoir un réservoir pour les nuits et les jours sans soleil ou sans courant.',
    makersCurve:
      'Choisir la pompe sur la courbe du fabricant, pour ce débit et cette hauteur totale.',
    liftingGear:
      'Relever la colonne demande un trépied, des colliers et plusieurs personnes : personne ne se tient dessous.',
    cleanHands:
      'Ne pas poser tubes et tringles à terre, et désinfecter le forage après la pose de la pompe.',
    cover: 'Garder la tête couverte, la dalle et la rigole entières.',
    localRules:
      'Les règles locales et les types normalisés du pays passent avant : les pièces de rechange les suivent.',
  },
  missing: {
    restLevel: 'niveau statique',
    dryLevel: 'niveau d’eau en saison sèche, ou battement annuel',
    drawdown: 'rabattement en pompage',
    safeRate: 'débit éprouvé du forage',
    users: 'nombre d’usagers',
    casingInside: 'diamètre intérieur du tubage',
    ph: 'pH de l’eau',
    repair: 'ce qui peut être réparé sur place',
    wellFoot: 'profondeur du fond du forage',
    strings: 'relevé des tubes',
    mains: 'présence d’électricité',
    sunHours: 'heures de plein soleil du mois le plus pauvre',
  },
  inputs: {
    safeRateM3h: 'débit éprouvé du forage, m³/h',
    drawdownM: 'rabattement en pompage, m',
    seasonalSwingM: 'battement annuel du niveau statique, m',
    lowMonths: 'mois du niveau le plus bas',
    users: 'usagers',
    litresPerPersonDay: 'litres par personne et par jour',
    hoursMost: 'heures de pompage par jour, au plus',
    casingInsideMm: 'diamètre intérieur du tubage, mm',
    ph: 'pH',
    repair: 'le mieux qui peut réparer sur place',
    mains: 'il y a de l’électricité',
    sunHours: 'heures de plein soleil par jour, mois le plus pauvre',
    outletM: 'sortie au-dessus du sol, m',
    deliveryInsideMm: 'diamètre intérieur de la conduite, mm',
    deliveryM: 'conduite du forage au réservoir, m',
  },
  quantities: {
    needLitresDay: 'besoin en eau',
    liftM: 'hauteur d’élévation en saison sèche',
    flowM3h: 'débit à cette hauteur',
    hoursDay: 'pompage',
    fillMinutes: 'temps pour remplir 20 l',
    queueMinutes: 'attente la plus longue',
    peopleServed: 'personnes desservies',
    frictionM: 'pertes de charge',
    totalHeadM: 'hauteur manométrique totale',
    hydraulicW: 'puissance hydraulique',
    electricW: 'puissance électrique',
    energyKwhDay: 'énergie',
    panelW: 'panneaux solaires, puissance crête',
  },
  units: {
    'l/d': 'l par jour',
    m: 'm',
    'm³/h': 'm³/h',
    'h/d': 'h par jour',
    min: 'min',
    '1': '',
    W: 'W',
    'kWh/d': 'kWh par jour',
  },
  assumptions: {
    litresPerPersonDay: 'litres par personne et par jour',
    hoursMost: 'heures de pompage par jour, au plus',
    outletM: 'sortie au-dessus du sol',
    deliveryInsideMm: 'diamètre intérieur de la conduite',
    deliveryM: 'conduite du forage au réservoir',
    peakShare: 'part de l’eau du jour aux heures de pointe',
    peakHours: 'heures de pointe',
    queueMost: 'attente la plus longue admise',
    containerLitres: 'récipient',
    suctionLossPerM: 'aspiration perdue par mètre au-dessus de la mer',
    casingDoubtShare: 'doute sur une limite de tubage non vérifiée',
    fittingsShare: 'raccords, en part des pertes de charge du tuyau',
    roughnessMm: 'rugosité du tuyau plastique',
    viscosityM2s: 'viscosité de l’eau',
    pumpEfficiency: 'rendement de la pompe et du moteur',
    panelDerating: 'déclassement des panneaux',
    motorM: 'moteur sous l’aspiration',
    pipeM: 'longueur d’un tube ou d’une tringle',
    washerSpacingM: 'écart des rondelles',
    ropeOverM: 'corde au-delà de la colonne',
    cableOverM: 'câble au-delà de la colonne',
  },
  parts: {
    riserPipe: 'tubes de la colonne montante',
    pumpRod: 'tringles',
    rope: 'boucle de corde',
    washers: 'rondelles',
    cable: 'câble immergé',
    safetyRope: 'corde de sécurité',
    bucketRope: 'corde du seau',
  },
  repairs: {
    caretaker: 'un responsable de pompe avec outils à main',
    areaMechanic: 'un artisan réparateur avec engins de levage',
    workshop: 'un atelier avec électricien',
  },
  places: { plain: 'tube plein', screen: 'crépine', openHole: 'trou nu' },
  disclaimer:
    'Classement de types génériques d’après ce que dit la fiche. Qui répond du forage choisit, selon les règles locales ; rien n’y dit si l’eau peut être bue.',
};
