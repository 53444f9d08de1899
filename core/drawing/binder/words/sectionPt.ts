import type { SectionWords } from './section.ts';

export const sectionPortuguese: SectionWords = {
  title: 'Corte {n}',
  scales:
    'Escala vertical 1 : {down}, horizontal 1 : {across}: as alturas estão desenhadas {times} vezes grandes demais em relação às distâncias.',
  datum: 'Terreno pelas altitudes registadas, acima de: {datum}.',
  noDatum: 'referência não registada',
  datums:
    'As altitudes têm várias referências: as alturas de umas em relação às outras podem estar erradas.',
  flat: 'Nenhuma altitude está registada: todos os terrenos estão a uma só altura, e nada se diz dos declives.',
  assumed:
    'Altitude não registada, desenhado no terreno do furo mais próximo, a tracejado: {wells}.',
  left: 'Não desenhados, por falta de posição: {wells}.',
  absent: 'Escolhidos para o corte mas ausentes desta pasta: {n}.',
  joined:
    'Os tracejados entre furos foram pedidos por uma pessoa: são uma interpretação, não uma medida.',
  notJoined: 'Nada é desenhado entre os furos: não se sabe o que lá está.',
  none: 'Nenhum dos furos escolhidos tem posição registada.',
  heads: {
    elevation: 'Altitude m',
    depth: 'Profundidade m',
    along: 'Distância m',
    ground: 'Terreno m',
  },
};
