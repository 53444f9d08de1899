export const folder = {
  label: 'Well folder',
  chapters: {
    well: 'Well',
    site: 'Site',
    ground: 'Ground',
    completion: 'Completion',
    water: 'Water',
    pump: 'Pump',
    handover: 'Handover',
  },
  chapterList: 'Chapters of the well folder',
  undo: 'Undo',
  redo: 'Redo',
  save: 'Save',
  untitled: 'Well without a number',
  opening: 'Opening the well …',
};
