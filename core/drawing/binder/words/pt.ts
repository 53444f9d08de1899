import { attachmentsPortuguese } from './attachmentsPt.ts';
import { issuedPortuguese } from './issuedPt.ts';
import { sectionPortuguese } from './sectionPt.ts';
import { plotsPortuguese } from './plotsPt.ts';
import { mapPortuguese } from './mapPt.ts';
import { colophonPortuguese } from './colophonPt.ts';
import { tablesPortuguese } from './tablesPt.ts';
import { readingPortuguese } from './readingPt.ts';
import type { BinderWords } from './words.ts';

export const portuguese: BinderWords = {
  language: 'pt',
  parts: {
    cover: 'Capa',
    contents: 'Índice geral',
    reading: 'Como ler esta pasta',
    byVillage: 'Índice por aldeia',
    byNumber: 'Índice por número',
    byYear: 'Índice por ano',
    map: 'Mapa de localização',
    tables: 'Quadros',
    plots: 'Gráficos',
    sections: 'Cortes',
    issued: 'Documentos emitidos',
    colophon: 'Como esta pasta foi feita',
  },
  papers: {
    asBuilt: 'Corte do furo como construído',
    layingOut: 'Plano de colocação',
    committee: 'Folha do comité',
    attachments: 'Anexos',
  },
  counts: {
    wells: { one: '{n} furo', more: '{n} furos' },
    districts: { one: '{n} distrito', more: '{n} distritos' },
    villages: { one: '{n} aldeia', more: '{n} aldeias' },
    programmes: { one: '{n} programa', more: '{n} programas' },
    papers: { one: '{n} documento', more: '{n} documentos' },
  },
  noDistrict: 'Distrito não registado',
  noVillage: 'aldeia não registada',
  noNumber: 'sem número',
  noState: 'estado não registado',
  noYear: 'Ano não registado',
  page: 'página',
  cover: {
    volume: 'Volume {n} de {of}',
    volumePages: 'páginas {from} a {to}',
    district: 'Distrito',
    programme: 'Programa',
    wells: 'Furos',
    states: 'dos quais',
    period: 'Perfurados',
    noPeriod: 'nenhum dia registado',
    papers: 'Documentos por furo',
    madeOn: 'Feito em',
    madeBy: 'Feito por',
    caution:
      'Esta pasta diz o que foi registado. Nada aqui diz que a água é potável. Isso cabe à autoridade de saúde dizer.',
  },
  contents: { front: 'Antes dos furos', wells: 'Furos', back: 'Depois dos furos' },
  reading: readingPortuguese,
  tables: tablesPortuguese,
  colophon: colophonPortuguese,
  map: mapPortuguese,
  plots: plotsPortuguese,
  section: sectionPortuguese,
  issued: issuedPortuguese,
  attachments: attachmentsPortuguese,
  failed: {
    title: 'Não foi possível fazer os documentos deste furo.',
    todo: 'Abrir o furo no programa, corrigir o que está indicado acima e fazer a pasta de novo.',
  },
};
