import type { casingCodes } from '../rules/casing/codes.ts';
import type { FindingText } from './texts.ts';

/** Pipes and screens. */
export const frenchCasing: Readonly<Record<keyof typeof casingCodes, FindingText>> = {
  'sump.length': {
    title: 'Tube à sédiments de longueur inhabituelle',
    sentence:
      'Colonne {string} : {sumpM} m de tube plein se tiennent sous la crépine la plus basse ; il en faut {leastM} m à {mostM} m.',
    why: 'Le sable qui entre s’y dépose : dans un tube court il recouvre bientôt la crépine, un tube long ne coûte que du tubage et du trou.',
    todo: 'Vérifier le décompte ; avant la pose, mettre sous la crépine un tube de cette longueur.',
  },
  'foot.open': {
    title: 'Pied du tubage non fermé',
    sentence:
      'Colonne {string} : le décompte n’a pas de bouchon de fond à son bout inférieur, à {fromM} m.',
    why: 'Par un pied ouvert, sable et argile remontent dans le tubage jusqu’à la crépine.',
    todo: 'Écrire le bouchon de fond s’il existe ; sinon fermer le pied avant de descendre la colonne.',
  },
  'screened.ground': {
    title: 'Crépine dans un terrain sans eau',
    sentence:
      'Colonne {string} : de la crépine de {fromM} m à {toM} m, {tightM} m sur {screenM} m se tiennent dans un terrain qui ne laisse guère passer l’eau.',
    why: 'De telles fentes ne donnent pas d’eau, et l’argile et le limon passent au travers.',
    todo: 'Vérifier la coupe et le décompte ; avant la pose, mettre là du tube plein, et la crépine dans le sable, le gravier ou la roche fracturée.',
  },
  'screened.dry': {
    title: 'Crépine au-dessus du niveau le plus bas',
    sentence:
      'Colonne {string} : la crépine de {fromM} m à {toM} m ne devrait pas commencer plus haut que {limitM} m ; l’eau au repos descend jusqu’à {levelM} m.',
    why: 'La partie hors de l’eau n’en donne pas ; l’air y entre, et le fer et les boues colmatent les fentes.',
    todo: 'Vérifier les niveaux et le décompte ; avant la pose, mettre la crépine plus bas.',
  },
  'screened.pumping': {
    title: 'Crépine au-dessus du niveau dynamique',
    sentence:
      'Colonne {string} : la crépine de {fromM} m à {toM} m ne devrait pas commencer plus haut que {limitM} m ; pendant le pompage, l’eau est à {levelM} m.',
    why: 'L’eau tombe alors dans le tubage par les fentes du haut avec de l’air, ce qui les colmate et abîme la pompe.',
    todo: 'Pomper moins, ou avant la pose mettre la crépine plus bas.',
  },
  'grain.pack': {
    title: 'Grain du massif mal choisi pour le terrain',
    sentence:
      'Colonne {string}, de {fromM} m à {toM} m : le massif, environ {pack} mm, est {ratio} fois plus gros que le terrain le plus fin, {ground} mm ; il faut {least} à {most} fois (pour les deux : la taille dont 70 % est retenu).',
    why: 'Un massif trop gros laisse toujours passer du sable ; un massif trop fin retient l’eau.',
    todo: 'Vérifier le grain du massif et du terrain ; avant de verser, tamiser un gravier qui va au terrain le plus fin capté. S’il est déjà versé, développer en douceur et surveiller le sable.',
  },
  'slot.pack': {
    title: 'Fentes trop larges pour le massif',
    sentence:
      'Colonne {string} : des fentes de {slot} mm se tiennent dans un massif de {finest} mm à {coarsest} mm ; pour en retenir {keeps} %, elles peuvent avoir {limit} mm.',
    why: 'Par des fentes trop larges, le massif coule dans le forage, et le terrain après lui.',
    todo: 'Vérifier les fentes et le massif ; avant de verser, prendre un gravier plus gros, ou avant la pose une fente plus étroite.',
  },
  'slot.ground': {
    title: 'Fentes trop larges pour un terrain sans massif',
    sentence:
      'Colonne {string} : des fentes de {slot} mm se tiennent dans le terrain nu de {fromM} m à {toM} m ; pour en retenir {keeps} %, elles peuvent avoir {limit} mm.',
    why: 'Sans massif, le terrain doit faire le sien de ce que les fentes retiennent ; sinon le forage donne du sable.',
    todo: 'Vérifier les fentes et la coupe ; avant la pose, prendre une fente plus étroite, ou verser un massif de gravier.',
  },
  'screened.openArea': {
    title: 'Crépine peu ouverte',
    sentence:
      'Colonne {string} : la crépine de {fromM} m à {toM} m est ouverte sur {percent} % de sa surface ; il en faut au moins {least} %.',
    why: 'Par peu de fentes, le massif ne se nettoie pas au développement, et l’eau baisse plus que le terrain ne le demande.',
    todo: 'Vérifier la largeur, l’écart et les rangées des fentes ; avant la pose, en couper plus ou prendre une autre crépine.',
  },
  'screened.velocity': {
    title: 'L’eau entre trop vite dans la crépine',
    sentence:
      '{rate} m³/h à travers {screenM} m de crépine sous le niveau dynamique font {speed} cm/s dans les fentes restées ouvertes ; la limite est de {most} cm/s.',
    why: 'Une eau rapide entraîne du sable, use les fentes et les entartre.',
    todo: 'Pomper moins ; avant la pose, mettre plus de crépine ou une crépine plus ouverte.',
  },
  'collapse.emptied': {
    title: 'Tubage menacé d’écrasement à vide',
    sentence:
      'Colonne {string} : avec l’eau dehors à {restM} m et l’intérieur vidé jusqu’à {emptiedM} m, {load} kPa pressent un tube de {outsideMm} mm à paroi de {wallMm} mm, qui tient {holds} kPa en terrain chaud : {factor} fois la charge, alors qu’il en faut {wanted} fois.',
    why: 'Un tube plastique enfoncé ne se redresse plus, et la pompe peut s’y coincer. Les fentes affaiblissent encore une crépine ; de combien, la formule ne le dit pas.',
    todo: 'Ne jamais baisser l’eau à l’intérieur sous {safeM} m pendant le développement ou le pompage ; avant la pose, prendre un tube à paroi plus épaisse.',
  },
  'collapse.grouted': {
    title: 'Tubage menacé d’écrasement par le coulis',
    sentence:
      'Colonne {string}, de {fromM} m à {toM} m : même plein d’eau, {load} kPa de coulis fluide pressent un tube de {outsideMm} mm à paroi de {wallMm} mm, qui tient {holds} kPa à {warm} °C, chauffé par le ciment : {factor} fois la charge, alors qu’il en faut {wanted} fois.',
    why: 'Le coulis est plus lourd que l’eau à l’intérieur, et sa chaleur ramollit le plastique ; enfoncé, le tube ne se redresse plus.',
    todo: 'Garder le tubage plein d’eau et couler par passes moins hautes, chacune prise avant la suivante ; ou prendre une paroi plus épaisse. S’il est déjà cimenté, y descendre un gabarit à la taille de la pompe.',
  },
  'room.pump': {
    title: 'Peu de place autour de la pompe',
    sentence:
      'La pompe a {bodyMm} mm de large, le tubage {insideMm} mm à l’intérieur là où elle passe : {roomMm} mm de jeu, alors qu’il en faut {leastMm} mm.',
    why: 'Une pompe à l’étroit se coince à un joint ou à un coude, et le sable la bloque quand on la retire.',
    todo: 'Descendre un gabarit à la taille de la pompe jusqu’à sa profondeur avant de la poser, ou prendre une pompe plus mince.',
  },
  'centraliser.spacing': {
    title: 'Tubage non centré dans le massif',
    sentence:
      'Colonne {string} : pas de centreur de {fromM} m à {toM} m, sur {gapM} m ; le plus est ici de {mostM} m.',
    why: 'Un tubage appuyé à la paroi n’a pas de gravier de ce côté, et le sable entre par là.',
    todo: 'Écrire les centreurs posés ; avant la pose, en mettre un à chaque bout de la crépine et entre les deux.',
  },
  'stickUp.height': {
    title: 'Tubage de hauteur inhabituelle',
    sentence:
      'Le haut du tubage se tient à {heightM} m au-dessus du sol ; il faut {leastM} m à {mostM} m.',
    why: 'Par un haut trop bas, l’eau de surface coule dans le forage ; sur un haut trop élevé, le socle de la pompe ne va pas.',
    todo: 'Mesurer de nouveau. Rallonger un tubage trop bas avant de couler la dalle ; couper un tubage trop haut à la mesure du socle.',
  },
};
