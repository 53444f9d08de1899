import type { FindingCode, FindingText } from './texts.ts';

type GroundCode = Extract<FindingCode, `bore.${string}` | `log.${string}` | `sample.${string}`>;

/** The hole and the log. */
export const portugueseGround: Record<GroundCode, FindingText> = {
  'bore.reversed': {
    title: 'Troço de furo ao contrário',
    sentence: 'Um troço do furo acaba acima de onde começa; é tomado de {fromM} m a {toM} m.',
    why: 'As profundidades contam-se para baixo: a base de um troço é o número maior.',
    todo: 'Trocar as duas profundidades, ou corrigir a que está errada.',
  },
  'bore.empty': {
    title: 'Troço de furo sem comprimento',
    sentence: 'Um troço do furo começa e acaba a {fromM} m; é deixado de fora.',
    why: 'Um troço sem comprimento não diz nenhum diâmetro.',
    todo: 'Escrever a profundidade em que se mudou de ferramenta, ou apagar o troço.',
  },
  'bore.aboveGround': {
    title: 'Troço de furo acima do solo',
    sentence: 'Um troço do furo começa acima do solo, a {fromM} m; é cortado ao nível do solo.',
    why: 'As profundidades medem-se a partir do solo, e acima dele não há furo.',
    todo: 'Verificar se as profundidades foram medidas de outra referência, como a mesa da sonda.',
  },
  'bore.noDiameter': {
    title: 'Troço de furo sem diâmetro',
    sentence: 'O troço do furo de {fromM} m a {toM} m não tem diâmetro; é deixado de fora.',
    why: 'Sem o diâmetro não se conhece nem espaço anular nem volume.',
    todo: 'Escrever o diâmetro da ferramenta que perfurou este troço.',
  },
  'bore.overlap': {
    title: 'Troços de furo sobrepostos',
    sentence:
      'De {fromM} m a {toM} m, o furo está registado com dois diâmetros, {otherMm} mm e {diameterMm} mm; toma-se o maior.',
    why: 'Um furo alargado é tão largo como a sua ferramenta mais larga, mas as profundidades podem estar erradas.',
    todo: 'Se o furo foi alargado, acabar o troço estreito onde acaba o mais largo.',
  },
  'bore.gap': {
    title: 'Falta o diâmetro do furo',
    sentence: 'Nenhum diâmetro do furo está registado de {fromM} m a {toM} m.',
    why: 'Sem o diâmetro não se conhece aqui nem espaço anular nem volume.',
    todo: 'Escrever a ferramenta que perfurou esta parte.',
  },
  'bore.diametersUnknown': {
    title: 'Diâmetro do furo não registado',
    sentence: 'O diâmetro do furo não está registado em nenhuma profundidade até {toM} m.',
    why: 'Sem ele o espaço anular não tem volume, e não se sabe se as colunas cabem.',
    todo: 'Escrever cada ferramenta com as profundidades que perfurou.',
  },
  'bore.depthNotBelowGround': {
    title: 'Profundidade do furo impossível',
    sentence: 'A profundidade atingida está registada como {depthM} m, o que não é abaixo do solo.',
    why: 'As profundidades contam-se para baixo a partir do solo.',
    todo: 'Escrever a profundidade atingida como número positivo.',
  },
  'bore.depthAssumed': {
    title: 'Profundidade do furo não registada',
    sentence:
      'A profundidade do furo não está registada; toma-se {depthM} m, o ponto mais fundo do perfil ou das colunas.',
    why: 'O furo pode ser mais fundo; então os volumes e o pé do desenho estão errados.',
    todo: 'Escrever a profundidade atingida.',
  },
  'bore.sectionBelowDepth': {
    title: 'Troço abaixo do fundo do furo',
    sentence:
      'Um troço do furo vai de {fromM} m a {toM} m, mas o furo atingiu {depthM} m; é cortado aí.',
    why: 'Uma das duas profundidades está errada.',
    todo: 'Corrigir o troço ou a profundidade atingida.',
  },
  'bore.foundBelowDepth': {
    title: 'Sondado mais fundo do que perfurado',
    sentence: 'O fundo foi encontrado a {foundM} m, abaixo dos {depthM} m perfurados.',
    why: 'Um furo pode desabar antes de ser revestido, mas não ficar mais fundo.',
    todo: 'Verificar as duas profundidades, e de que referência cada uma foi medida.',
  },
  'sample.reversed': {
    title: 'Amostra ao contrário',
    sentence: 'Uma amostra acaba acima de onde começa; é tomada de {fromM} m a {toM} m.',
    why: 'As profundidades contam-se para baixo: a base de uma amostra é o número maior.',
    todo: 'Trocar as duas profundidades, ou corrigir a que está errada.',
  },
  'sample.belowHole': {
    title: 'Amostra de abaixo do furo',
    sentence: 'Uma amostra viria de {toM} m, mas o furo acaba a {depthM} m.',
    why: 'Nada sobe de onde ninguém perfurou: uma das duas profundidades está errada.',
    todo: 'Contar os sacos contra os metros perfurados, e corrigir a amostra ou a profundidade atingida.',
  },
  'log.reversed': {
    title: 'Intervalo do perfil ao contrário',
    sentence: 'Um intervalo do perfil acaba acima de onde começa; é tomado de {fromM} m a {toM} m.',
    why: 'As profundidades contam-se para baixo: a base de um intervalo é o número maior.',
    todo: 'Trocar as duas profundidades, ou corrigir a que está errada.',
  },
  'log.empty': {
    title: 'Intervalo do perfil sem comprimento',
    sentence: 'Um intervalo do perfil começa e acaba a {fromM} m; é deixado de fora.',
    why: 'Um intervalo sem comprimento não se pode desenhar.',
    todo: 'Escrever onde o material acabava, ou apagar o intervalo.',
  },
  'log.overlap': {
    title: 'Intervalos do perfil sobrepostos',
    sentence: 'De {fromM} m a {toM} m o perfil tem dois materiais.',
    why: 'Uma lente dentro de um intervalo é desenhada; senão, o intervalo de cima é desenhado até à sua base, e o outro pode ser o verdadeiro.',
    todo: 'Começar cada intervalo onde acaba o de cima.',
  },
  'log.sameRange': {
    title: 'Vários materiais na mesma faixa',
    sentence:
      'De {fromM} m a {toM} m o perfil tem {count} intervalos; são tomados como um só, o primeiro como principal.',
    why: 'Os perfuradores registam assim dois materiais que alternam.',
    todo: 'Se estão um sobre o outro, escrever a profundidade em que o material muda.',
  },
  'log.gap': {
    title: 'Lacuna no log',
    sentence: 'O perfil nada diz de {fromM} m a {toM} m.',
    why: 'Não se pode julgar o que aí está em frente do tubo-ralo e dos selos.',
    todo: 'Escrever o que se viu, ou um intervalo sem amostra se nada se viu.',
  },
  'log.short': {
    title: 'Perfil acaba antes do fundo do furo',
    sentence: 'O perfil acaba a {fromM} m; o furo desce a {toM} m.',
    why: 'Não se sabe em que está o pé do furo.',
    todo: 'Escrever o que se viu mais abaixo, ou corrigir a profundidade atingida.',
  },
  'log.aboveGround': {
    title: 'Perfil começa acima do solo',
    sentence: 'O perfil começa acima do solo, a {fromM} m.',
    why: 'As profundidades medem-se a partir do solo.',
    todo: 'Verificar se as profundidades foram medidas de outra referência, como a mesa da sonda.',
  },
  'log.belowHole': {
    title: 'Perfil mais fundo do que o furo',
    sentence: 'O perfil desce a {toM} m, mas o furo tem {depthM} m de profundidade.',
    why: 'Nada se pode ter visto abaixo do fundo do furo; uma das duas profundidades está errada.',
    todo: 'Corrigir a base do intervalo ou a profundidade do furo.',
  },
};
