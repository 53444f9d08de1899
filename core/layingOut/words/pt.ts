import type { LayingOutWords } from './words.ts';

/** Portuguese, with the words of the drilling trade. */
export const portuguese: LayingOutWords = {
  kinds: {
    safest: 'O mais seguro',
    mostProductive: 'O mais produtivo',
    fewestCuts: 'O de menos cortes',
  },
  why: {
    safest:
      'Entre os tubos-ralos bastante compridos, o seu começa mais fundo, a {topM} m, ou seja {underDryM} m abaixo do nível estático mais baixo; {goodM} m ficam em terreno permeável. Só se corta um tubo para ganhar meio metro.',
    mostProductive:
      'É o que tem mais tubo-ralo em terreno permeável e abaixo do nível dinâmico: {goodM} m, de {topM} a {footM} m.',
    fewestCuts:
      'É o que pede menos cortes ({cuts}); {goodM} m de tubo-ralo ficam em terreno permeável, de {topM} a {footM} m.',
    onlyOne:
      'É o melhor em tudo o que estes tubos permitem: {goodM} m de tubo-ralo em terreno permeável, de {topM} a {footM} m.',
  },
  obstacles: {
    noConductingGround:
      'O perfil não indica nenhum terreno permeável. Reveja as amostras e as entradas de água, ou continue a furar.',
    groundAboveDryLevel:
      'O terreno permeável fica acima do nível estático mais baixo, {levelM} m. Fure mais fundo, ou verifique esse nível.',
    groundAbovePumpingLevel:
      'Há pouco terreno permeável abaixo do nível dinâmico, {levelM} m. Fure mais fundo, ou preveja um caudal menor.',
    tooMuchTightGround:
      'Qualquer tubo-ralo ficaria em terreno impermeável em mais de {percent} % do seu comprimento. Traga tubos-ralos mais curtos, ou corte um.',
    aquiferTooThin:
      'Nenhum tubo-ralo é bastante curto para o terreno permeável que pode ser captado. Continue a furar, ou traga tubos-ralos mais curtos.',
    annulusTooNarrow:
      'Os tubos deixam menos de {gapMm} mm até à parede do furo. Alargue o furo, ou traga tubos mais estreitos.',
    holeTooShallowForSump:
      'Por baixo do tubo-ralo não há espaço para um tubo de decantação de {sumpM} m: o furo está aberto até {holeM} m. Limpe-o ou fure mais fundo.',
    noRoomForPackAndSeals:
      'Por cima do tubo-ralo não há espaço para {packM} m de maciço filtrante, {clayM} m de argila e o selo sanitário até {sealM} m. Fure mais fundo, ou capte terreno mais baixo.',
    noRoomForPartingSeal:
      'O terreno entre dois aquíferos não tem espaço para o maciço filtrante acima dos tubos-ralos, {packM} m, e {clayM} m de argila. Capte só o aquífero de cima, ou fure mais fundo no de baixo.',
    screensTooFew:
      'Os tubos-ralos no local são poucos ou não servem: somam {screenM} m. Traga mais, ou de outros comprimentos.',
    plainPipesTooFew:
      'Os tubos lisos no local são poucos ou não servem: somam {plainM} m. Traga mais, ou de outros comprimentos.',
    entranceTooFast:
      'A água entraria a mais de {velocityMs} m/s. Traga mais tubo-ralo ou um com mais área aberta, ou preveja um caudal menor.',
  },
  missing: {
    log: 'perfil geológico',
    boreDepth: 'profundidade do furo',
    boreDiameter: 'diâmetro do furo',
    restLevel: 'nível estático da água',
    plainPipes: 'tubos lisos no local, com o seu comprimento',
    screenPipes: 'tubos-ralos no local, com o seu comprimento',
    pipeLength: 'comprimento do tubo',
    pipeDiameter: 'diâmetro exterior do tubo',
    insertion: 'quanto o tubo entra na boca do outro',
    designRate: 'caudal que o furo deve dar',
    drawdown: 'rebaixamento esperado',
    openArea: 'área aberta do tubo-ralo',
  },
  pieces: {
    cap: 'tampão de fundo',
    sump: 'tubo de decantação',
    screen: 'tubo-ralo',
    plain: 'tubo liso',
  },
  parts: {
    casingTop: 'topo do revestimento',
    casingFoot: 'fundo do revestimento',
    screen: 'tubo-ralo',
    fill: 'enchimento',
  },
  edges: { top: 'topo', foot: 'fundo' },
};
