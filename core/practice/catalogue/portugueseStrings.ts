import type { FindingCode, FindingText } from './texts.ts';

type StringCode = Extract<FindingCode, `string.${string}` | `screen.${string}`>;

/** Casing strings and their screens. */
export const portugueseStrings: Record<StringCode, FindingText> = {
  'string.noPieces': {
    title: 'Coluna impossível de colocar',
    sentence: 'A coluna {string} não tem nenhuma peça de comprimento conhecido; é deixada de fora.',
    why: 'As profundidades da tubagem e do tubo-ralo vêm dos comprimentos das peças.',
    todo: 'Escrever as peças de baixo para cima, com o comprimento de cada uma.',
  },
  'string.noLength': {
    title: 'Peça sem comprimento',
    sentence: 'Coluna {string}: uma peça ({piece}) não tem comprimento; é deixada de fora.',
    why: 'Todas as peças acima ficam então fundas demais, ou o topo da coluna baixo demais.',
    todo: 'Escrever o comprimento de uma peça, de ponta a ponta, com a campânula.',
  },
  'string.noDiameter': {
    title: 'Diâmetro exterior não registado',
    sentence:
      'Peças da coluna {string} sem diâmetro exterior, de {fromM} m a {toM} m: {count} de {of}.',
    why: 'Sem ele o espaço anular à volta não tem volume.',
    todo: 'Escrever o diâmetro exterior em milímetros.',
  },
  'string.noWall': {
    title: 'Espessura da parede não registada',
    sentence: 'Peças da coluna {string} sem espessura nem diâmetro interior: {count} de {of}.',
    why: 'O diâmetro interior diz que bomba passa e quanta água o furo guarda.',
    todo: 'Escrever a espessura em milímetros, como impressa no tubo, ou o diâmetro interior.',
  },
  'string.wallTooThick': {
    title: 'Parede mais grossa do que o tubo',
    sentence:
      'Coluna {string}: uma peça ({piece}) de {outsideMm} mm tem uma parede de {wallMm} mm, o que não deixa interior.',
    why: 'O dobro da parede tem de ser menor do que o diâmetro exterior.',
    todo: 'Verificar se a parede foi escrita noutra unidade, ou um diâmetro no seu lugar.',
  },
  'string.insideTooWide': {
    title: 'Interior mais largo do que o tubo',
    sentence:
      'Coluna {string}: uma peça ({piece}) de {outsideMm} mm por fora está registada com {insideMm} mm por dentro; o interior é ignorado.',
    why: 'Um tubo é mais estreito por dentro do que por fora.',
    todo: 'Verificar se os dois diâmetros foram trocados.',
  },
  'string.sizesDisagree': {
    title: 'Exterior, parede e interior em desacordo',
    sentence:
      'Coluna {string}: uma peça ({piece}) de {outsideMm} mm com parede de {wallMm} mm está registada com {insideMm} mm por dentro; toma-se o interior registado.',
    why: 'O interior é o exterior menos o dobro da parede; um dos três está errado.',
    todo: 'Corrigir o que está errado, ou deixar em branco o que não foi medido.',
  },
  'string.countTooHigh': {
    title: 'Demasiadas peças iguais',
    sentence: 'Coluna {string}: {count} peças iguais ({piece}) estão registadas; tomam-se {most}.',
    why: 'Nenhum furo tem tantas; talvez um comprimento esteja no lugar do número.',
    todo: 'Corrigir o número.',
  },
  'string.insertionTooLong': {
    title: 'Encaixe mais comprido do que a peça',
    sentence:
      'Coluna {string}: uma peça ({piece}) entra {insertionM} m na de baixo, tanto como o comprimento de uma das duas; o encaixe não é descontado.',
    why: 'Um encaixe é curto; sem o número verdadeiro a soma das peças está errada.',
    todo: 'Escrever o encaixe em metros, por exemplo 0,10.',
  },
  'string.centraliserOffPiece': {
    title: 'Centralizador fora da sua peça',
    sentence:
      'Coluna {string}: um centralizador está registado {heightM} m acima da ponta inferior de uma peça ({piece}) com {lengthM} m; é deixado de fora.',
    why: 'A altura de um centralizador mede-se na sua própria peça.',
    todo: 'Escrever a altura acima da ponta inferior dessa peça.',
  },
  'string.reducerOneSize': {
    title: 'Redução com um só diâmetro',
    sentence: 'Coluna {string}: o diâmetro superior de uma redução não está registado.',
    why: 'É desenhada como um tubo direito, e o espaço anular à volta não é exato.',
    todo: 'Escrever o diâmetro exterior na ponta superior.',
  },
  'string.reducerMisfit': {
    title: 'Redução que não encaixa',
    sentence:
      'Coluna {string}: a {fromM} m uma ponta de redução de {reducerMm} mm encontra um tubo de {neighbourMm} mm.',
    why: 'Uma redução acaba nos diâmetros dos vizinhos; pode estar ao contrário.',
    todo: 'Verificar os diâmetros, e se as peças estão escritas de baixo para cima.',
  },
  'string.stepWithoutReducer': {
    title: 'Diâmetro muda sem redução',
    sentence:
      'Coluna {string}: a {fromM} m um tubo de {upperMm} mm assenta num tubo de {lowerMm} mm sem redução.',
    why: 'Pode faltar uma redução na soma das peças, e o seu comprimento com ela.',
    todo: 'Escrever a redução, ou corrigir o diâmetro.',
  },
  'string.placedAtHoleBottom': {
    title: 'Posição da coluna não registada',
    sentence:
      'Nada diz onde está a coluna {string}; é desenhada assente no fundo do furo, a {bottomM} m.',
    why: 'Todas as profundidades de tubo-ralo e tubagem dependem deste único número.',
    todo: 'Escrever a profundidade da ponta inferior, ou quanto o topo sobressai do solo.',
  },
  'string.placedAtGround': {
    title: 'Posição da coluna não registada',
    sentence: 'Nada diz onde está a coluna {string}; é desenhada a partir do solo.',
    why: 'Todas as profundidades de tubo-ralo e tubagem dependem deste único número.',
    todo: 'Escrever a profundidade da ponta inferior, ou quanto o topo sobressai do solo.',
  },
  'string.measuredElsewhere': {
    title: 'Profundidade medida e soma diferentes',
    sentence:
      'Coluna {string}: a ponta inferior foi medida a {measuredM} m, a soma das peças põe-na a {tallyBottomM} m ({differenceM} m de diferença).',
    why: 'Pode faltar uma peça ou uma junta na soma, ou a coluna está suspensa ou desceu.',
    todo: 'Contar de novo as peças e as juntas, e verificar a posição.',
  },
  'string.stickUpElsewhere': {
    title: 'Altura da tubagem e soma diferentes',
    sentence:
      'O topo da tubagem foi medido {measuredM} m acima do solo, a soma das peças da coluna {string} põe-no a {stickUpM} m.',
    why: 'Ou a tubagem foi cortada depois, ou a soma e a posição não concordam.',
    todo: 'Escrever a peça cortada com o comprimento que ficou, ou corrigir a posição.',
  },
  'string.belowHole': {
    title: 'Coluna mais funda do que o furo',
    sentence: 'A coluna {string} atinge {bottomM} m, mas o furo tem {depthM} m de profundidade.',
    why: 'Uma coluna não pode estar abaixo do fundo do furo.',
    todo: 'Verificar a soma das peças, a posição e a profundidade atingida.',
  },
  'string.widerThanHole': {
    title: 'Coluna mais larga do que o furo',
    sentence:
      'De {fromM} m a {toM} m a coluna {string} tem {outsideMm} mm de largura num furo de {holeMm} mm.',
    why: 'Não pode ter entrado; não se conhece espaço anular aqui.',
    todo: 'Corrigir o diâmetro do furo ou do tubo.',
  },
  'string.insideWiderThanHole': {
    title: 'Coluna mais larga por dentro do que o furo',
    sentence:
      'De {fromM} m a {toM} m a coluna {string} tem {insideMm} mm por dentro, num furo de {holeMm} mm.',
    why: 'Com a parede é ainda mais larga, e não pode ter entrado.',
    todo: 'Corrigir o diâmetro do furo ou do tubo.',
  },
  'string.widerThanOuter': {
    title: 'Coluna mais larga do que a de fora',
    sentence:
      'De {fromM} m a {toM} m a coluna {string} tem {outsideMm} mm de largura dentro da coluna {outer}, cujo interior tem {insideMm} mm.',
    why: 'Não pode ter entrado; não se conhece espaço anular aqui.',
    todo: 'Corrigir os diâmetros e as paredes, ou as profundidades, das duas colunas.',
  },
  'string.noRoomInOuter': {
    title: 'Uma coluna não cabe na outra',
    sentence:
      'De {fromM} m a {toM} m a coluna {string}, registada com {sizeMm} mm, está dentro da coluna {outer}, registada com {roomMm} mm: com as paredes não sobra espaço.',
    why: 'Não pode ter entrado; uma das duas pode ser o mesmo tubo registado duas vezes.',
    todo: 'Corrigir os diâmetros ou as profundidades, ou apagar a coluna que não foi colocada.',
  },
  'screen.noStratum': {
    title: 'Tubo-ralo onde o perfil se cala',
    sentence: 'Coluna {string}: de {fromM} m a {toM} m um tubo-ralo está onde o perfil nada diz.',
    why: 'Não se pode julgar se o tubo-ralo está em terreno aquífero.',
    todo: 'Completar o perfil, ou verificar as profundidades do tubo-ralo.',
  },
  'screen.aboveGround': {
    title: 'Tubo-ralo acima do solo',
    sentence: 'Coluna {string}: um tubo-ralo sobressai do solo, até {fromM} m.',
    why: 'Ranhuras acima do solo deixam entrar água da superfície; o mais provável é a soma estar errada.',
    todo: 'Verificar a soma das peças e a posição da coluna.',
  },
};
