export const sheet = {
  title: 'As-built sheet',
  toolbar: 'Sheet',
  viewport: (page: number, pages: number) =>
    `As-built sheet, page ${page} of ${pages}. Plus and minus zoom, 0 shows the whole page, arrows move, Page Up and Page Down turn. Every part shown here can also be reached in the tables.`,
  paper: 'Paper',
  layingOut: 'Laying-out sheet',
  language: 'Language of the sheet',
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
};
