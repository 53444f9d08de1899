import type { FindingCode, FindingText } from './texts.ts';

type AnnulusCode = Extract<FindingCode, `annulus.${string}`>;

/** What stands between the wall of the hole and the casing. */
export const portugueseAnnulus: Record<AnnulusCode, FindingText> = {
  'annulus.reversed': {
    title: 'Enchimento anular ao contrário',
    sentence: 'Um enchimento acaba acima de onde começa; é tomado de {fromM} m a {toM} m.',
    why: 'As profundidades contam-se para baixo: a base de um enchimento é o número maior.',
    todo: 'Trocar as duas profundidades, ou corrigir a que está errada.',
  },
  'annulus.empty': {
    title: 'Enchimento anular sem comprimento',
    sentence: 'Um enchimento começa e acaba a {fromM} m; é deixado de fora.',
    why: 'Um enchimento sem comprimento não tem volume.',
    todo: 'Escrever as profundidades sondadas do topo e da base.',
  },
  'annulus.aboveGround': {
    title: 'Enchimento acima do solo',
    sentence: '{fill}: o enchimento começa acima do solo, a {fromM} m; é cortado ao nível do solo.',
    why: 'O espaço anular acaba ao nível do solo; o que sobressai pertence à obra à superfície.',
    todo: 'Escrever a parte acima do solo como laje ou obra à superfície.',
  },
  'annulus.belowHole': {
    title: 'Enchimento abaixo do fundo do furo',
    sentence:
      '{fill}: o enchimento desce a {toM} m, mas o furo tem {depthM} m de profundidade; é cortado aí.',
    why: 'Nada pode ser deitado abaixo do fundo do furo; uma das duas profundidades está errada.',
    todo: 'Corrigir a base do enchimento ou a profundidade do furo.',
  },
  'annulus.noSuchString': {
    title: 'Enchimento à volta de nenhuma coluna',
    sentence:
      '{fill} de {fromM} m a {toM} m: o enchimento está registado à volta da coluna {string}, que não existe; é tomado junto à parede do furo.',
    why: 'O seu volume depende do espaço anular que enche.',
    todo: 'Escolher a coluna que rodeia.',
  },
  'annulus.aboveString': {
    title: 'Enchimento acima do topo da sua coluna',
    sentence:
      '{fill} de {fromM} m a {toM} m: o enchimento passa acima do topo da coluna {string}, dentro de outra coluna; essa parte é deixada de fora.',
    why: 'Acima do topo de uma coluna suspensa não há espaço anular à sua volta.',
    todo: 'Corrigir o topo do enchimento, ou escolher a coluna que rodeia.',
  },
  'annulus.insideString': {
    title: 'Furo cheio onde está uma coluna',
    sentence:
      '{fill} de {fromM} m a {toM} m: o enchimento está registado em todo o furo, mas a coluna {string} está aí; é tomado dentro da coluna.',
    why: 'Onde uma coluna ficou no furo, o que se deita fica dentro dela e não à volta.',
    todo: 'Se a coluna foi retirada, tirá-la da ficha; se o enchimento a rodeia, escrevê-lo.',
  },
  'annulus.overlap': {
    title: 'Enchimentos sobrepostos',
    sentence:
      'De {fromM} m a {toM} m, dois enchimentos estão registados no mesmo espaço anular: {other} e {fill}.',
    why: 'O de baixo já lá estava e é desenhado até ao seu topo; o outro pode ser o verdadeiro.',
    todo: 'Acabar cada enchimento onde o seguinte foi sondado.',
  },
  'annulus.unrecorded': {
    title: 'Espaço anular não registado',
    sentence:
      'Nada está registado entre a coluna {string} e o que a rodeia de {fromM} m a {toM} m.',
    why: 'Um espaço anular vazio, ou cheio não se sabe de quê, pode deixar descer água suja.',
    todo: 'Escrever o que lá está: enchimento, desabamento natural ou vazio.',
  },
  'annulus.unrecordedHole': {
    title: 'Furo abaixo da coluna não registado',
    sentence: 'Nada está registado do furo fora de qualquer coluna de {fromM} m a {toM} m.',
    why: 'Não se sabe se ficou aberto, se desabou ou se foi cheio.',
    todo: 'Escrever o que lá está: enchimento, desabamento natural ou vazio.',
  },
};
