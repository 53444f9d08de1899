import type { hands as english } from '../en/hands.ts';

/** Pegar no desenho. */
export const hands: typeof english = {
  edges: 'Limites no desenho',
  keys: 'Cima e Baixo movem o limite 0,01 m, com Shift 0,1 m, com Ctrl 0,5 m, Page Up e Page Down 1 m. Com Alt, uma parte move-se sozinha. Esquerda e Direita vão ao limite seguinte, Enter à sua linha, Esc desfaz o movimento.',
  whileHeld: 'Passos de 0,01 m; Shift 0,1 m, Ctrl 0,5 m. Alt ou A: uma parte sozinha. Esc: voltar.',
  at: (name, depth) => `${name} a ${depth}`,
  boundary: (above, below) => `Limite entre ${above} e ${below}`,
  top: (part) => `Topo: ${part}`,
  foot: (part) => `Base: ${part}`,
  layer: 'camada',
  section: (diameter) => `furo Ø ${diameter}`,
  holeFoot: 'Fundo do furo',
  level: 'Nível da água',
  levels: {
    static: 'Nível da água em repouso',
    pumping: 'Nível da água em bombagem',
    recovering: 'Nível da água em recuperação',
  },
  strike: (number) => `Entrada de água ${number}`,
  rise: (number) => `Subida da entrada de água ${number}`,
  intake: 'Aspiração da bomba',
  cylinder: 'Topo do cilindro da bomba',
  stringTop: (label) => `Topo da coluna ${label}`,
  stringFoot: (label) => `Base da coluna ${label}`,
  joint: (label) => `Junta da coluna ${label}`,
  long: (part, length) => `${part} ${length}`,
  read: (reading) => `leitura ${reading}`,
  footAt: (depth) => `base ${depth}`,
  stickUp: (height) => `acima do solo ${height}`,
  computed:
    'Uma junta resulta da lista de tubos e não se move sozinha. Mude os comprimentos na lista, ou mova toda a coluna pelo topo ou pela base.',
  screen: {
    tool: 'Tubo-ralo',
    toolSays:
      'Acrescentar um tubo-ralo a uma coluna: traçá-lo sobre tubo liso ou escrever as profundidades',
    how: 'Trace sobre o tubo liso, do topo à base do ralo, ou escreva as duas profundidades.',
    whileDrawn:
      'Passos de 0,01 m; Shift 0,1 m, Ctrl 0,5 m. Perto de uma junta, o limite fica nela. Esc: voltar.',
    string: 'Coluna',
    stringName: (label) => `Coluna ${label}`,
    from: 'De (m)',
    to: 'Até (m)',
    put: 'Colocar o ralo',
    close: 'Fechar',
    made: (from, to, length) => `ralo ${from}–${to}, ${length}`,
    done: (from, to) =>
      `Um ralo de ${from} a ${to} foi posto na lista de tubos. As suas juntas ainda não são conhecidas.`,
    tooShort: (least) => `Um ralo tem pelo menos ${least}.`,
    inTheWay: (piece, from, to) =>
      `Entre ${from} e ${to} está outra peça (${piece}): só o tubo liso passa a ralo.`,
    isScreen: 'Tudo aí já é ralo.',
    beside: 'Não há aí nenhuma coluna de tubos.',
    unread: 'São precisas as duas profundidades, como 12,5.',
  },
  marks: {
    list: 'Observações nesta página',
    show: 'Observações no desenho',
    letters: { error: '!', warning: '?', note: 'i' },
    name: (severity, title, depths) => `${severity} a ${depths}: ${title}`,
    range: (from, to) => `${from} a ${to}`,
    why: 'Porque importa',
    todo: 'O que fazer',
    source: 'Fonte',
    go: 'Ir ao campo',
    close: 'Fechar',
  },
};
