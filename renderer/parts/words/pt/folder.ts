import type { InterfaceWords } from '../catalogue.ts';

export const folder: InterfaceWords['folder'] = {
  label: 'Processo do furo',
  chapters: {
    well: 'Furo',
    site: 'Local',
    ground: 'Terreno',
    completion: 'Construção',
    water: 'Água',
    pump: 'Bomba',
    handover: 'Entrega',
  },
  chapterList: 'Capítulos do processo',
  undo: 'Anular',
  redo: 'Refazer',
  save: 'Guardar',
  untitled: 'Furo sem número',
  opening: 'A abrir o furo …',
};
