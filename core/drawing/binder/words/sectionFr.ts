import type { SectionWords } from './section.ts';

export const sectionFrench: SectionWords = {
  title: 'Coupe {n}',
  scales:
    'Échelle verticale 1 : {down}, horizontale 1 : {across} : les hauteurs sont dessinées {times} fois trop grandes par rapport aux distances.',
  datum: 'Sol selon les altitudes notées, au-dessus de : {datum}.',
  noDatum: 'référence non notée',
  datums:
    'Les altitudes ont plusieurs références : les hauteurs des unes par rapport aux autres peuvent être fausses.',
  flat: 'Aucune altitude n’est notée : tous les sols sont à une même hauteur, et rien n’est dit des pentes.',
  assumed: 'Altitude non notée, dessiné au sol du forage le plus proche, en tirets : {wells}.',
  left: 'Non dessinés, faute de position : {wells}.',
  absent: 'Choisis pour la coupe mais absents de ce classeur : {n}.',
  joined:
    'Les tirets entre forages ont été demandés par une personne : c’est une interprétation, non une mesure.',
  notJoined: 'Rien n’est dessiné entre les forages : ce qui s’y trouve n’est pas connu.',
  none: 'Aucun des forages choisis n’a de position notée.',
  heads: { elevation: 'Altitude m', depth: 'Profondeur m', along: 'Distance m', ground: 'Sol m' },
};
