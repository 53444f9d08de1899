import type { ColophonWords } from './colophon.ts';

export const colophonPortuguese: ColophonWords = {
  made: 'Feitura',
  madeSays: 'Feito em {day} com Borefolio {version}.',
  madeBy: 'Por {name}.',
  hash: 'SHA-256 das revisões que entraram: {hash}',
  noHash: 'Não foi tirada nenhuma soma do arquivo.',
  wells: 'Furos',
  filter: 'Pedidos: {filter}.',
  allWells: 'Pedidos: todos os furos do arquivo.',
  counts: 'Furos nesta pasta: {n}. Furos cujos documentos não foi possível fazer: {failed}.',
  revisions:
    'Cada furo é mostrado segundo a sua revisão mais recente no momento em que a pasta foi feita. O que foi escrito depois não está nela.',
  practices: 'Práticas pelas quais os furos foram julgados',
  named: '{name}, versão {version}: {wells}',
  guidelines: 'Valores-guia com que as análises foram comparadas',
  noSamples: 'Nenhum furo desta pasta tem uma análise de água registada.',
  how: 'Como foi feita',
  howSays: [
    'Cada página é desenhada só a partir das fichas. As mesmas fichas dão as mesmas páginas.',
    'Mapa: equirretangular em volta do meio de cada folha, WGS 84; o norte está em cima. A escala é certa no meio.',
    'Cortes: as distâncias são geodésicas sobre WGS 84 de furo em furo, somadas; a linha pode virar em cada furo.',
    'A mediana é o valor do meio; de um número par, a média dos dois do meio.',
    'Geologia de um furo: o material da maior parte do seu perfil. Nos filtros: o material ao longo da maior parte dos filtros.',
  ],
  sources: 'Fontes dos números',
  sourcesSays: [
    'WGS 84: NGA.STND.0036_1.0.0_WGS84.',
    'Comprimentos dos graus: Snyder 1987, Map Projections, USGS Professional Paper 1395.',
    'Grelha: Mercator transversa universal, por Krüger 1912.',
    'Geodésicas: Vincenty 1975, Survey Review 23 (176).',
    'Valores-guia, limites e fatores: as fontes estão nos documentos de cada furo.',
  ],
  failed: 'Furos cujos documentos não foi possível fazer',
};
