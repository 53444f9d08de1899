import type { ReasonTexts } from './reason.ts';

/** The reasons in Portuguese. */
export const portuguese: ReasonTexts = {
  leftOut: '{says} Corrigir e ler de novo o ficheiro; a linha foi deixada de fora.',
  ofRecord: '{says}.',
  restComes: '{says}; o resto da ficha entra.',
  restOfWellComes: '{says}; o resto do furo entra.',

  noColumn: 'O ficheiro não tem a coluna «{column}»; não foi lido.',
  twoColumns: 'O ficheiro tem duas colunas «{column}»; não foi lido.',
  longCell: 'A célula contém mais de {letters} letras.',
  raggedRow: 'A linha tem {cells} células sob {headings} cabeçalhos.',
  noWell: 'A linha não nomeia nenhum furo.',
  fileMissing: 'A correspondência nomeia {file}, que não foi dado.',
  fileUnnamed: 'A correspondência não nomeia {file}; não foi lido.',
  saidOtherwise: 'O furo «{well}» é descrito de outro modo na linha {line}, que fica.',
  saidAlready: 'O furo «{well}» já tem uma linha acima.',
  upsideDown: 'O fundo, {to} m, não fica abaixo do topo, {from} m.',
  emptyCell: 'A célula está vazia; uma linha de «{kind}» precisa do seu «{name}».',
  noPointNumber: '«{text}» não é um número com ponto decimal.',
  noCommaNumber: '«{text}» não é um número com vírgula decimal.',
  notWhole: '«{text}» não é um número inteiro.',
  noUnit: '«{written}» não é uma unidade de comprimento; conhecem-se {units}.',
  notDay: '«{text}» não é um dia escrito na ordem {order}.',
  unknownWord: '«{text}» não está entre as palavras que a correspondência conhece.',

  brokenJson:
    'A ficha que começa aqui não é JSON completo; não foi lida. Escrever de novo o ficheiro.',
};
