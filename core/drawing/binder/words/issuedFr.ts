import type { IssuedWords } from './issued.ts';

export const issuedFrench: IssuedWords = {
  heads: {
    number: 'Numéro',
    name: 'Nom',
    paper: 'Document',
    revision: 'Révision',
    day: 'Émis',
    signers: 'Signé par',
    hash: 'Début du SHA-256',
    page: 'Page',
  },
  newer: '{n} ({newest} depuis)',
  unsigned: 'non signé',
  noName: 'nom illisible',
  states: {
    addedTo: 'quelque chose a été ajouté après',
    changed: 'ne tient pas : le fichier a été modifié',
    unreadable: 'ne peut être vérifiée',
  },
  beside: 'Les documents eux-mêmes se trouvent à côté de ce classeur, dans le dossier {folder}.',
  notBound:
    'Les documents énumérés ici ont été émis : ils sont gardés tels qu’ils étaient alors. Ils ne sont pas reliés, car un PDF modifié de quelque façon rompt ses sceaux ; le classeur montre la dernière révision de chaque forage, dessinée de nouveau. Lorsqu’un forage en a une plus récente que celle du document, elle est indiquée derrière par « depuis ».',
  hashSays:
    'SHA-256 : les 16 premiers chiffres, sur tout le fichier avec toutes ses signatures, tel que l’archive le gardait quand ce classeur a été fait. Un fichier qui a d’autres chiffres n’est pas le même.',
  sealSays:
    'Une signature sans remarque tenait quand ce classeur a été fait. Si un certificat appartient bien à la personne qu’il nomme, c’est au lecteur de s’en assurer par son empreinte.',
};
