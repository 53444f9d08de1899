import type { AttachmentWords } from './attachments.ts';

export const attachmentsFrench: AttachmentWords = {
  title: 'Pièces jointes',
  heads: {
    file: 'Fichier',
    shows: 'Ce qu’il montre',
    kind: 'Genre',
    size: 'Taille',
    day: 'Jour',
    why: 'Non montré',
    hash: 'Début du SHA-256',
  },
  document: 'un document',
  leftOut: 'écarté des feuilles à la main',
  states: { absent: 'absent de cette archive', changed: 'modifié hors du programme' },
  filesSay:
    'Les fichiers énumérés ici sont gardés avec le dossier du forage dans l’archive. SHA-256 : les 16 premiers chiffres, sur le fichier tel qu’il a été donné.',
};
