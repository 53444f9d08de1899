import type { LayingOutWords } from './words.ts';

/** French, with the words of the drilling trade. */
export const french: LayingOutWords = {
  kinds: {
    safest: 'Le plus sûr',
    mostProductive: 'Le plus productif',
    fewestCuts: 'Le moins de coupes',
  },
  why: {
    safest:
      'Parmi les crépines assez longues, la sienne commence le plus bas, à {topM} m, soit {underDryM} m sous le niveau statique le plus bas ; {goodM} m se trouvent dans un terrain perméable. On ne coupe un tube que pour gagner un demi-mètre.',
    mostProductive:
      'C’est lui qui a le plus de crépine dans un terrain perméable et sous le niveau dynamique : {goodM} m, de {topM} à {footM} m.',
    fewestCuts:
      'C’est lui qui demande le moins de coupes ({cuts}) ; {goodM} m de crépine se trouvent dans un terrain perméable, de {topM} à {footM} m.',
    onlyOne:
      'C’est le meilleur à tous égards avec ces tubes : {goodM} m de crépine dans un terrain perméable, de {topM} à {footM} m.',
  },
  obstacles: {
    noConductingGround:
      'La coupe ne signale aucun terrain perméable. Revoyez les échantillons et les venues d’eau, ou poursuivez le forage.',
    groundAboveDryLevel:
      'Le terrain perméable se trouve au-dessus du niveau statique le plus bas, {levelM} m. Approfondissez, ou vérifiez ce niveau.',
    groundAbovePumpingLevel:
      'Il y a trop peu de terrain perméable sous le niveau dynamique, {levelM} m. Approfondissez, ou prévoyez un débit plus faible.',
    tooMuchTightGround:
      'Toute crépine se trouverait dans un terrain imperméable sur plus de {percent} % de sa longueur. Apportez des crépines plus courtes, ou coupez-en une.',
    aquiferTooThin:
      'Aucune crépine n’est assez courte pour le terrain perméable qui peut être capté. Poursuivez le forage, ou apportez des crépines plus courtes.',
    annulusTooNarrow:
      'Les tubes laissent moins de {gapMm} mm jusqu’à la paroi du trou. Alésez le trou, ou apportez des tubes plus minces.',
    holeTooShallowForSump:
      'Sous la crépine, il n’y a pas la place pour un tube à sédiments de {sumpM} m : le trou est ouvert jusqu’à {holeM} m. Nettoyez-le ou approfondissez.',
    noRoomForPackAndSeals:
      'Au-dessus de la crépine, il n’y a pas la place pour {packM} m de massif de gravier, {clayM} m d’argile et le joint sanitaire jusqu’à {sealM} m. Approfondissez, ou captez plus bas.',
    noRoomForPartingSeal:
      'Le terrain entre deux nappes n’a pas la place pour le massif au-dessus de la crépine, {packM} m, et {clayM} m d’argile. Captez la seule nappe supérieure, ou approfondissez dans l’inférieure.',
    screensTooFew:
      'Les crépines sur place sont trop peu nombreuses ou ne conviennent pas : {screenM} m en tout. Apportez-en d’autres, ou d’autres longueurs.',
    plainPipesTooFew:
      'Les tubes pleins sur place sont trop peu nombreux ou ne conviennent pas : {plainM} m en tout. Apportez-en d’autres, ou d’autres longueurs.',
    entranceTooFast:
      'L’eau entrerait à plus de {velocityMs} m/s. Apportez plus de crépine ou une crépine plus ouverte, ou prévoyez un débit plus faible.',
  },
  missing: {
    log: 'coupe géologique',
    boreDepth: 'profondeur du trou',
    boreDiameter: 'diamètre du trou',
    restLevel: 'niveau statique',
    plainPipes: 'tubes pleins sur place, avec leur longueur',
    screenPipes: 'crépines sur place, avec leur longueur',
    pipeLength: 'longueur du tube',
    pipeDiameter: 'diamètre extérieur du tube',
    insertion: 'emboîtement du tube dans la tulipe',
    designRate: 'débit que le forage doit donner',
    drawdown: 'rabattement attendu',
    openArea: 'surface ouverte de la crépine',
  },
  pieces: {
    cap: 'bouchon de fond',
    sump: 'tube à sédiments',
    screen: 'crépine',
    plain: 'tube plein',
  },
  parts: {
    casingTop: 'haut du tubage',
    casingFoot: 'pied du tubage',
    screen: 'crépine',
    fill: 'remplissage',
  },
  edges: { top: 'haut', foot: 'pied' },
};
