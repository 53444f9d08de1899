/** Every text of the interface in British English. Texts of the sheets stand with the sheets. */
export const english = {
  language: 'en-GB',
  program: 'Borefolio',
  archive: {
    title: 'Archive',
    back: 'Archive',
    search: 'Search number, name or place',
    newWell: 'New well',
    columns: {
      number: 'Number',
      name: 'Name',
      village: 'Village',
      district: 'District',
      state: 'State',
      depth: 'Depth (m)',
      changed: 'Last change',
    },
    count: (n: number) => (n === 1 ? '1 well' : `${n} wells`),
    noneFound: (search: string) =>
      `No well fits “${search}”. Try a part of its number, name or place.`,
    empty: 'This archive holds no well yet. Make the first one with “New well”.',
    noNumber: 'no number',
    reading: 'Reading the archive …',
  },
  folder: {
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
  },
  saving: {
    saved: (time: string, revision: number) => `Saved at ${time}, revision ${revision}`,
    waiting: 'Not saved yet',
    saving: 'Saving …',
    notSaved: (sentence: string) => `Not saved: ${sentence}`,
    unread: (n: number) =>
      n === 1
        ? 'One entry cannot be read yet and is not part of the record.'
        : `${n} entries cannot be read yet and are not part of the record.`,
    loadNewer: 'Load the newer revision',
    loadNewerHint: 'What you typed comes back with Undo.',
    keepMine: 'Save mine as a newer revision',
    stale: (revision: number) =>
      `Not saved: revision ${revision} of this well was saved elsewhere after you opened it. Choose which to go on with; nothing that you typed is lost.`,
    again: 'Try again',
    leave: 'Leave without saving',
    stays: 'This window stays open, since not all that was typed is saved.',
    close: 'Close all the same',
    changedElsewhere: (revision: number) =>
      `This well was changed elsewhere: revision ${revision} is newer than the one open here.`,
    troubles: (n: number) => (n === 1 ? 'Saved with one trouble:' : `Saved with ${n} troubles:`),
  },
  findings: {
    title: 'Findings',
    none: 'None on what is recorded so far.',
    count: (errors: number, warnings: number, notes: number) =>
      `${errors} wrong, ${warnings} to look at, ${notes} to know`,
    severity: { error: 'Wrong', warning: 'Look again', note: 'Note' },
    go: 'Go to the field',
  },
  table: {
    rowHead: 'Row',
    newRow: 'Next row',
    row: (n: number) => `Row ${n}`,
    more: (n: number) => `More of row ${n}`,
    moreNew: 'More of the next row',
    moveUp: 'Move up',
    moveDown: 'Move down',
    remove: 'Delete row',
    sort: 'Put in order of depth',
    cell: (label: string, row: number) => `${label}, row ${row}`,
    keys: 'Enter goes on. Ctrl with Enter opens the rest of the row, Escape leads back. Alt with arrow up or down moves the row, Ctrl with Delete removes it. Rows from a spreadsheet can be pasted.',
    removeItem: (title: string) => `Delete ${title}`,
    choose: '–',
  },
  reading: {
    number: (text: string) => `“${text}” is not a number. Write it like 12.5 or 12,5.`,
    twoMarks: (text: string) =>
      `“${text}” has more than one decimal mark. Write it like 1250.5, without a mark for thousands.`,
    whole: (text: string) => `“${text}” is not a whole number. Write it like 3.`,
    least: (text: string, least: number) =>
      `${text} is too small: ${least} is the least that fits here.`,
    most: (text: string, most: number) =>
      `${text} is too large: ${most} is the most that fits here.`,
    choice: (text: string) => `“${text}” is not in the list. Choose one of the words offered.`,
    several: (text: string, words: string) => `“${text}” may be ${words}. Write it out.`,
    day: (text: string) => `“${text}” is not a day. Write it like 2025-03-09, year first.`,
    moment: (text: string) =>
      `“${text}” is not a date with a time. Write it like 2025-03-09 14:05.`,
    list: (text: string) =>
      `“${text}” is not a list of numbers. Write them like 0.5; 2.0, with semicolons between.`,
    needed: 'This cannot be left empty. Write a value, or delete the row.',
    at: (label: string, sentence: string) => `${label}: ${sentence}`,
  },
  sheet: {
    title: 'As-built sheet',
    toolbar: 'Sheet',
    viewport: (page: number, pages: number) =>
      `As-built sheet, page ${page} of ${pages}. Plus and minus zoom, 0 shows the whole page, arrows move, Page Up and Page Down turn. Every part shown here can also be reached in the tables.`,
    paper: 'Paper',
    zoomIn: 'Zoom in',
    zoomOut: 'Zoom out',
    fitWidth: 'Fit width',
    fitPage: 'Fit page',
    previous: 'Previous page',
    next: 'Next page',
    page: (page: number, pages: number) => `Page ${page} of ${pages}`,
    export: 'Export PDF',
    exporting: 'Making the PDF …',
    exported: (name: string) => `${name} was made.`,
    exportFailed: (sentence: string) => `No PDF was made: ${sentence}`,
    broken:
      'The sheet cannot be drawn with what was typed last. What is shown is the sheet before that.',
    selected: 'Selected',
    splitter: 'Width of the tables',
  },
  defect: (words: string) =>
    `Something went wrong in the program (${words}). What was shown as saved is safe. Load the page again.`,
} as const;
