import type { coverCodes } from '../rules/cover/codes.ts';
import type { FindingText } from './texts.ts';

/** What stands between wall and casing. */
export const frenchCover: Readonly<Record<keyof typeof coverCodes, FindingText>> = {
  'pack.bare': {
    title: 'Crépine sans massif filtrant',
    sentence:
      'Le long de la crépine, de {fromM} m à {toM} m, aucun massif n’est noté, mais : {fill}.',
    why: 'Sans massif, le terrain meuble passe par les fentes et use la pompe et la crépine ; l’argile ou le ciment devant les fentes les bouche.',
    todo: 'Mettre ou compléter le massif avant de verser quoi que ce soit dessus. Si l’ouvrage est fini, surveiller le sable et le débit, et reprendre le développement.',
  },
};
