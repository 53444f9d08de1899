import type { TableWords } from './tables.ts';

export const tablesPortuguese: TableWords = {
  byDistrict: 'Por distrito',
  depths: 'Profundidades, níveis e estados',
  yields: 'Caudais e bombas',
  heads: {
    number: 'Número',
    village: 'Aldeia',
    district: 'Distrito',
    year: 'Ano',
    state: 'Estado',
    drilled: 'Furado m',
    cased: 'Revest. m',
    screens: 'Filtros m',
    rest: 'Repouso m',
    aquifer: 'Nos filtros',
    yield: 'Caudal m³/h',
    perMetre: 'm³/h por m',
    pump: 'Bomba',
    intake: 'Aspir. m',
    page: 'Página',
    wells: 'Furos',
    water: 'Água',
    dry: 'Secos',
    open: 'Outros',
    metres: 'Soma m',
  },
  median: 'Mediana (furos)',
  all: 'Todos os furos',
  medianSays: 'Atrás de uma mediana está de quantos furos o valor é conhecido.',
  marks:
    'Caudais: caudal de exploração pelos ensaios; t: caudal do último ensaio a caudal constante; p: caudal da bomba em serviço. As medianas dos caudais tomam os três.',
  planned: 'O revestimento e os filtros dos furos previstos e não construídos são projetados.',
  outcomes:
    'Água: furos concluídos. Secos: furos secos. Outros: qualquer outro estado, ou nenhum registado.',
};
