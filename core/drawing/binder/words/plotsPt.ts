import type { PlotWords } from './plots.ts';

export const plotsPortuguese: PlotWords = {
  spread: 'Gráficos: profundidades e caudais',
  success: 'Gráficos: o que a perfuração encontrou',
  quality: 'Gráficos: qualidade da água',
  depths: 'Profundidades furadas',
  safeYields: 'Caudais de exploração pelos ensaios',
  otherYields: 'Outros caudais: do último ensaio, ou da bomba em serviço',
  known: 'Conhecido de {n} de {of} furos.',
  median: 'Linha de traços e pontos: a mediana, {value}.',
  byYear: 'Por ano',
  byGeology: 'Por terreno',
  noLog: 'sem perfil',
  outcomes: {
    water: 'furo concluído',
    dry: 'furo seco',
    open: 'nem um nem outro, ou não registado',
  },
  share: '{water} de {decided} com água ({share} %)',
  openCount: '{open} outros',
  successSays:
    'Terreno: o material da maior parte de cada perfil. Os furos só previstos ficam de fora. A parte conta os furos concluídos entre furos concluídos e furos secos. Poucos furos dizem pouco, e não foram colocados ao acaso: estas partes nada predizem do próximo.',
  qualitySays:
    'Um ponto para o último resultado de cada furo em que o parâmetro foi procurado; um anel onde ficou abaixo do limite de deteção, nesse limite. Traços cheios: valores assentes na saúde; tracejados: todos os outros. Resultados fora do eixo estão na ponta dele.',
  set: '{name}: análises de {n} de {of} furos',
  results: 'resultados: {n}',
  above: 'acima de {value}: {n} de {of}',
  under: 'abaixo de {value}: {n} de {of}',
  untold: 'não dito: {n}',
};
