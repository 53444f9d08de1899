import { attachmentsFrench } from './attachmentsFr.ts';
import { issuedFrench } from './issuedFr.ts';
import { sectionFrench } from './sectionFr.ts';
import { plotsFrench } from './plotsFr.ts';
import { mapFrench } from './mapFr.ts';
import { colophonFrench } from './colophonFr.ts';
import { tablesFrench } from './tablesFr.ts';
import { readingFrench } from './readingFr.ts';
import type { BinderWords } from './words.ts';

export const french: BinderWords = {
  language: 'fr',
  parts: {
    cover: 'Couverture',
    contents: 'Sommaire',
    reading: 'Comment lire ce classeur',
    byVillage: 'Index par village',
    byNumber: 'Index par numéro',
    byYear: 'Index par année',
    map: 'Carte de situation',
    tables: 'Tableaux',
    plots: 'Graphiques',
    sections: 'Coupes',
    issued: 'Documents émis',
    colophon: 'Comment ce classeur a été fait',
  },
  papers: {
    asBuilt: 'Coupe de récolement',
    layingOut: 'Plan de pose',
    committee: 'Fiche du comité',
    attachments: 'Pièces jointes',
  },
  counts: {
    wells: { one: '{n} forage', more: '{n} forages' },
    districts: { one: '{n} district', more: '{n} districts' },
    villages: { one: '{n} village', more: '{n} villages' },
    programmes: { one: '{n} programme', more: '{n} programmes' },
    papers: { one: '{n} document', more: '{n} documents' },
  },
  noDistrict: 'District non noté',
  noVillage: 'village non noté',
  noNumber: 'sans numéro',
  noState: 'état non noté',
  noYear: 'Année non notée',
  page: 'page',
  cover: {
    volume: 'Volume {n} sur {of}',
    volumePages: 'pages {from} à {to}',
    district: 'District',
    programme: 'Programme',
    wells: 'Forages',
    states: 'dont',
    period: 'Forés',
    noPeriod: 'aucun jour noté',
    papers: 'Documents par forage',
    madeOn: 'Fait le',
    madeBy: 'Fait par',
    caution:
      'Ce classeur rapporte ce qui a été noté. Rien ici ne dit que l’eau est potable. C’est à l’autorité sanitaire de le dire.',
  },
  contents: { front: 'Avant les forages', wells: 'Forages', back: 'Après les forages' },
  reading: readingFrench,
  tables: tablesFrench,
  colophon: colophonFrench,
  map: mapFrench,
  plots: plotsFrench,
  section: sectionFrench,
  issued: issuedFrench,
  attachments: attachmentsFrench,
  failed: {
    title: 'Les documents de ce forage n’ont pas pu être faits.',
    todo: 'Ouvrir le forage dans le programme, corriger ce qui est nommé ci-dessus et refaire le classeur.',
  },
};
