import type { entry as english } from '../en/entry.ts';

export const entry: typeof english = {
  kinds: {
    length: 'um comprimento',
    flow: 'um caudal',
    volume: 'um volume',
    mass: 'uma massa',
    time: 'uma duração',
  },
  wrongKind: (text, kind, unit) =>
    `“${text}” é ${kind}, e este campo está em ${unit}. Escreva em ${unit}, ou noutra unidade desse género.`,
  unknownUnit: (text, name, unit) =>
    `“${text}” não é um número. Escreva por exemplo 12,5 ou 12.5. A unidade “${name}” não é conhecida aqui; sem unidade, fica em ${unit}.`,
  onlyUnit: (text, unit) => `“${text}” tem uma unidade que não é aceite aqui. Escreva em ${unit}.`,
  asTyped: (text) => `Escrito: ${text}`,
  tools: 'Linhas',
  insert: 'Inserir',
  duplicate: 'Duplicar',
  split: 'Dividir',
  splitAt: 'Dividir a (m)',
  splitOutside: (text, from, to) =>
    `“${text}” não fica dentro do intervalo. Escreva uma profundidade entre ${from} e ${to}.`,
  join: 'Juntar à seguinte',
  fillDown: 'Preencher para baixo',
  up: 'Subir',
  down: 'Descer',
  remove: (n) => (n === 1 ? 'Eliminar a linha' : `Eliminar ${n} linhas`),
  selected: (n) => `${n} linhas selecionadas`,
  isSelected: 'selecionada',
  copied: (n) => (n === 1 ? '1 linha copiada' : `${n} linhas copiadas`),
  keysTitle: 'Teclas',
  keys: 'Enter avança e Shift+Enter recua; numa linha seguinte sem nada escrito, Enter leva à tabela ou ao formulário seguinte, e do último ao capítulo seguinte. Ctrl+seta para baixo ou para cima vai logo para lá, Alt+1 a 7 e Alt+Page Down ou Up viram os capítulos. Shift+seta seleciona linhas, Ctrl+C, X e V copiam, cortam e colam, também com uma folha de cálculo. Ctrl+D preenche para baixo, Insert põe uma linha antes desta, Ctrl+Shift+D duplica, Alt+S divide um intervalo, Alt+J junta-o ao seguinte, Alt+seta move, Ctrl+Delete elimina. Ctrl+Enter abre o resto da linha, Escape volta.',
  options: (label) => `Palavras para ${label}`,
  code: (code) => `código ${code}`,
  samples: 'Amostras do terreno',
  makeLog: 'Fazer o perfil a partir das amostras',
  replaceLog: (n) =>
    n === 1
      ? 'O perfil tem um intervalo. Substituir?'
      : `O perfil tem ${n} intervalos. Substituir?`,
  replace: 'Substituir',
  keep: 'Manter o perfil',
  logMade: (n) =>
    n === 1 ? 'O perfil tem agora um intervalo.' : `O perfil tem agora ${n} intervalos.`,
  why: 'Porque importa',
  show: 'Mostrar',
  hiddenFindings: (n) => (n === 1 ? 'Mais uma está escondida.' : `Mais ${n} estão escondidas.`),
};
