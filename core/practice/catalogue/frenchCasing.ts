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
};
