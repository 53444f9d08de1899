import { attachmentsEnglish } from './attachmentsEn.ts';
import { issuedEnglish } from './issuedEn.ts';
import { sectionEnglish } from './sectionEn.ts';
import { plotsEnglish } from './plotsEn.ts';
import { mapEnglish } from './mapEn.ts';
import { colophonEnglish } from './colophonEn.ts';
import { tablesEnglish } from './tablesEn.ts';
import { readingEnglish } from './readingEn.ts';
import type { BinderWords } from './words.ts';

/** British English. */
export const english: BinderWords = {
  language: 'en',
  parts: {
    cover: 'Cover',
    contents: 'Contents',
    reading: 'How to read this binder',
    byVillage: 'Index by village',
    byNumber: 'Index by number',
    byYear: 'Index by year',
    map: 'Location map',
    tables: 'Tables',
    plots: 'Plots',
    sections: 'Sections',
    issued: 'Issued papers',
    colophon: 'How this binder was made',
  },
  papers: {
    asBuilt: 'As-built drawing',
    layingOut: 'Laying-out sheet',
    committee: 'Committee sheet',
    attachments: 'Attachments',
  },
  counts: {
    wells: { one: '{n} well', more: '{n} wells' },
    districts: { one: '{n} district', more: '{n} districts' },
    villages: { one: '{n} village', more: '{n} villages' },
    programmes: { one: '{n} programme', more: '{n} programmes' },
    papers: { one: '{n} paper', more: '{n} papers' },
  },
  noDistrict: 'District not recorded',
  noVillage: 'village not recorded',
  noNumber: 'without a number',
  noState: 'state not recorded',
  noYear: 'Year not recorded',
  page: 'page',
  cover: {
    volume: 'Volume {n} of {of}',
    volumePages: 'pages {from} to {to}',
    district: 'District',
    programme: 'Programme',
    wells: 'Wells',
    states: 'of these',
    period: 'Drilled',
    noPeriod: 'no day recorded',
    papers: 'Papers of each well',
    madeOn: 'Made on',
    madeBy: 'Made by',
    caution:
      'This binder tells what was recorded. Nothing here says that the water is safe. That is for the health authority to say.',
  },
  contents: { front: 'Before the wells', wells: 'Wells', back: 'Behind the wells' },
  reading: readingEnglish,
  tables: tablesEnglish,
  colophon: colophonEnglish,
  map: mapEnglish,
  plots: plotsEnglish,
  section: sectionEnglish,
  issued: issuedEnglish,
  attachments: attachmentsEnglish,
  failed: {
    title: 'The papers of this well could not be made.',
    todo: 'Open the well in the program, put right what is named above, and make the binder again.',
  },
};
