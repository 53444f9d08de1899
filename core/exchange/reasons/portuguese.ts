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

  notNumberOut: '«{text}» não é um número; foi deixado de fora.',
  notTimeOut: '«{text}» não é um momento escrito como 2026-03-04T08:30; foi deixado de fora.',
  notCount: '«{text}» não é uma contagem; foi deixado de fora.',
  noLength: 'A unidade «{unit}» não é um comprimento; {value} foi deixado de fora.',
  noFlow: 'A unidade «{unit}» não é um caudal; {value} foi deixado de fora.',
  levelUnit: 'Um nível em «{unit}» não se lê; dar em metros.',
  otherDatum: 'Uma posição em «{datum}» não está em WGS 84; foi deixada de fora.',
  nearDatum: 'Uma posição em GDA94 é tomada como em WGS 84, a menos de dois metros.',
  onGrid: 'Uma posição numa grelha nacional não está em WGS 84; só a sua altura entra.',
  notDegrees: '«{latitude}», «{longitude}» não é uma posição em graus; foi deixada de fora.',
  notOnEarth: '{latitude}, {longitude} não são latitude e longitude; foram deixadas de fora.',
  swapped:
    '{latitude}, {longitude} não são latitude e longitude; foram deixadas de fora. Parecem trocadas.',
  inTheSea: 'A posição 0, 0 fica no mar ao largo de África; foi deixada de fora.',
  noPosition: 'A linha não tem posição, que a norma pede.',
  halfPosition: 'Uma posição precisa de latitude e longitude.',
  noPoint: 'Uma geometria «{type}» não é um ponto; o furo entra sem ela.',
  halfRange: '{part} só tem uma das suas duas profundidades; foi deixado de fora.',
  rangeUpsideDown: 'O fundo, {to} m, não fica abaixo do topo, {from} m; foi deixado de fora.',
  noRange: 'O intervalo não tem duas profundidades, o fundo abaixo do topo; foi deixado de fora.',
  noPieceKind: '«{word}» não é um tipo de tubo conhecido; a linha foi deixada de fora.',
  noFill: '«{word}» não é um enchimento do espaço anular conhecido; foi deixado de fora.',
  halfCasing: 'Um revestimento precisa da sua profundidade e do seu diâmetro; foi deixado de fora.',
  diameterAlone: 'Um diâmetro de {diameter} mm sem profundidade foi deixado de fora.',
  lastRise: 'De vários níveis depois da entrada de água, entra o último.',
  noReading: 'Uma leitura de «{type}» não tem lugar numa ficha; foi deixada de fora.',
  heightMissing: 'Um nível sem a sua altura e a do seu ponto de medição foi deixado de fora.',
  notAWell: '«{source}» não é um furo; entra como um furo sem perfuração.',
  noLoca: '{well} não tem linha em LOCA; o que os outros grupos dizem dele entra.',
  longRow: 'A linha tem {fields} campos sob {headings} cabeçalhos de {group}.',
  strangeLine:
    'Uma linha de AGS 4 começa por GROUP, HEADING, UNIT, TYPE ou DATA, e não por «{word}»; foi deixada de fora.',
  beforeGroups: 'A linha está antes do primeiro GROUP; foi deixada de fora.',
  groupLeft:
    'Nada numa ficha é para {group}; as suas linhas, {count} ao todo, foram deixadas de fora.',
  headingsLeft: 'Nada numa ficha é para {headings} de {group}; o que lá está foi deixado de fora.',
  partLeft: 'Nada numa ficha é para {part}; foi deixado de fora.',
  propertyLeft:
    'Nenhum campo de uma ficha se chama «{name}»; foi deixado de fora de todos os furos.',
  columnsLeft:
    'Nada numa ficha é para as colunas {columns}, a maior parte das quais é escrita pela plataforma; foram deixadas de fora.',
  unclosedQuote:
    'Umas aspas que abrem aqui nunca fecham; o resto do ficheiro não foi lido. Fechá-las, ou tirá-las.',
  gapBetween:
    'Nada é dado entre {above} m e {below} m; o que está abaixo é tomado como uma coluna à parte.',
  noString: 'Nenhuma coluna deste furo responde a {name}; a linha foi deixada de fora.',
  tooNew:
    'Esta ficha é da versão {version}, mais recente do que este programa conhece ({known}); abrir com um Borefolio mais recente.',
  comesTwice: '{number} vem também de {file}, linha {line}; ambos entram.',
  fileRefused: '{says}',
};
