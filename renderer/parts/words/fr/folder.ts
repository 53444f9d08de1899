import type { InterfaceWords } from '../catalogue.ts';

export const folder: InterfaceWords['folder'] = {
  label: 'Dossier du forage',
  chapters: {
    well: 'Forage',
    site: 'Site',
    ground: 'Terrain',
    completion: 'Équipement',
    water: 'Eau',
    pump: 'Pompe',
    handover: 'Remise',
  },
  chapterList: 'Chapitres du dossier',
  undo: 'Annuler',
  redo: 'Rétablir',
  save: 'Enregistrer',
  untitled: 'Forage sans numéro',
  opening: 'Ouverture du forage …',
};
