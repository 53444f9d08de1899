import type { casingCodes } from '../rules/casing/codes.ts';
import type { FindingText } from './texts.ts';

/** Pipes and screens. */
export const portugueseCasing: Readonly<Record<keyof typeof casingCodes, FindingText>> = {
  'sump.length': {
    title: 'Tubo de decantação de comprimento invulgar',
    sentence:
      'Coluna {string}: há {sumpM} m de tubo liso abaixo do tubo-ralo mais fundo; pedem-se {leastM} m a {mostM} m.',
    why: 'A areia que entra deposita-se aí: num tubo curto depressa cobre o tubo-ralo, um comprido só custa tubo e furo.',
    todo: 'Verificar a soma das peças; antes da colocação, pôr por baixo do tubo-ralo um tubo desse comprimento.',
  },
  'foot.open': {
    title: 'Base da tubagem não fechada',
    sentence:
      'Coluna {string}: a soma das peças não tem tampão de fundo na ponta inferior, a {fromM} m.',
    why: 'Por uma base aberta, areia e argila sobem na tubagem até ao tubo-ralo.',
    todo: 'Escrever o tampão de fundo se existir; senão fechar a base antes de descer a coluna.',
  },
  'screened.ground': {
    title: 'Tubo-ralo em terreno que não dá água',
    sentence:
      'Coluna {string}: do tubo-ralo de {fromM} m a {toM} m, {tightM} m em {screenM} m estão em terreno que mal deixa passar a água.',
    why: 'Essas ranhuras não dão água, e deixam passar argila e silte.',
    todo: 'Verificar o perfil e a soma das peças; antes da colocação, pôr aí tubo liso, e o tubo-ralo em areia, cascalho ou rocha fraturada.',
  },
  'screened.dry': {
    title: 'Tubo-ralo acima do nível mais baixo',
    sentence:
      'Coluna {string}: o tubo-ralo de {fromM} m a {toM} m não devia começar acima de {limitM} m; a água em repouso desce até {levelM} m.',
    why: 'A parte fora da água não a dá; entra aí ar, e o ferro e as lamas colmatam as ranhuras.',
    todo: 'Verificar os níveis e a soma das peças; antes da colocação, pôr o tubo-ralo mais fundo.',
  },
  'screened.pumping': {
    title: 'Tubo-ralo acima do nível dinâmico',
    sentence:
      'Coluna {string}: o tubo-ralo de {fromM} m a {toM} m não devia começar acima de {limitM} m; durante a bombagem, a água está a {levelM} m.',
    why: 'A água cai então na tubagem pelas ranhuras de cima com ar, que as colmata e estraga a bomba.',
    todo: 'Bombear menos, ou antes da colocação pôr o tubo-ralo mais fundo.',
  },
  'grain.pack': {
    title: 'Grão do maciço não serve ao terreno',
    sentence:
      'Coluna {string}, de {fromM} m a {toM} m: o maciço, cerca de {pack} mm, é {ratio} vezes mais grosso do que o terreno mais fino, {ground} mm; pedem-se {least} a {most} vezes (para ambos: o tamanho que retém 70 %).',
    why: 'Um maciço grosso demais deixa sempre passar areia; um fino demais retém a água.',
    todo: 'Verificar o grão do maciço e do terreno; antes de deitar, peneirar um que sirva ao terreno mais fino captado. Se já foi deitado, desenvolver com cuidado e vigiar a areia.',
  },
  'slot.pack': {
    title: 'Ranhuras largas demais para o maciço',
    sentence:
      'Coluna {string}: ranhuras de {slot} mm estão num maciço de {finest} mm a {coarsest} mm; para reter {keeps} % dele podem ter {limit} mm.',
    why: 'Por ranhuras largas demais o maciço corre para dentro do furo, e o terreno atrás dele.',
    todo: 'Verificar as ranhuras e o maciço; antes de deitar, usar um mais grosso, ou antes da colocação uma ranhura mais estreita.',
  },
  'slot.ground': {
    title: 'Ranhuras largas demais para terreno sem maciço',
    sentence:
      'Coluna {string}: ranhuras de {slot} mm estão no terreno nu de {fromM} m a {toM} m; para reter {keeps} % dele podem ter {limit} mm.',
    why: 'Sem maciço, o terreno tem de fazer o seu com o que as ranhuras retêm; senão o furo dá areia.',
    todo: 'Verificar as ranhuras e o perfil; antes da colocação, usar uma ranhura mais estreita, ou deitar um maciço filtrante.',
  },
  'screened.openArea': {
    title: 'Tubo-ralo com pouca área aberta',
    sentence:
      'Coluna {string}: o tubo-ralo de {fromM} m a {toM} m está aberto em {percent} % da superfície; pede-se pelo menos {least} %.',
    why: 'Por poucas ranhuras o maciço não se limpa no desenvolvimento, e a água baixa mais do que o terreno pede.',
    todo: 'Verificar a largura, a distância e as filas das ranhuras; antes da colocação, cortar mais ou usar outro tubo-ralo.',
  },
  'screened.velocity': {
    title: 'A água entra depressa demais no tubo-ralo',
    sentence:
      '{rate} m³/h através de {screenM} m de tubo-ralo abaixo do nível dinâmico fazem {speed} cm/s nas ranhuras que ficam abertas; o limite é {most} cm/s.',
    why: 'A água rápida arrasta areia, gasta as ranhuras e incrusta-as.',
    todo: 'Bombear menos; antes da colocação, pôr mais tubo-ralo ou um com mais área aberta.',
  },
  'collapse.emptied': {
    title: 'Tubagem em risco de colapso ao esvaziar',
    sentence:
      'Coluna {string}: com a água por fora a {restM} m e o interior esvaziado até {emptiedM} m, {load} kPa apertam um tubo de {outsideMm} mm com parede de {wallMm} mm, que aguenta {holds} kPa em terreno quente: {factor} vezes a carga, quando se pedem {wanted} vezes.',
    why: 'Um tubo de plástico esmagado não volta à forma, e a bomba pode ficar presa. As ranhuras enfraquecem mais um tubo-ralo; quanto, a fórmula não diz.',
    todo: 'Nunca baixar a água no interior abaixo de {safeM} m no desenvolvimento ou na bombagem; antes da colocação, usar tubo de parede mais grossa.',
  },
  'collapse.grouted': {
    title: 'Tubagem em risco de colapso sob a calda',
    sentence:
      'Coluna {string}, de {fromM} m a {toM} m: mesmo cheio de água, {load} kPa de calda fluida apertam um tubo de {outsideMm} mm com parede de {wallMm} mm, que aguenta {holds} kPa a {warm} °C, aquecido pelo cimento: {factor} vezes a carga, quando se pedem {wanted} vezes.',
    why: 'A calda é mais pesada do que a água no interior, e o seu calor amolece o plástico; esmagado, o tubo não volta à forma.',
    todo: 'Manter a tubagem cheia de água e cimentar por troços mais baixos, cada um curado antes do seguinte; ou usar parede mais grossa. Se já está cimentada, descer um calibre do tamanho da bomba.',
  },
  'room.pump': {
    title: 'Pouco espaço à volta da bomba',
    sentence:
      'A bomba tem {bodyMm} mm de largura, a tubagem {insideMm} mm por dentro por onde ela passa: {roomMm} mm de folga, quando se pedem {leastMm} mm.',
    why: 'Uma bomba apertada prende-se numa junta ou numa curva, e a areia bloqueia-a quando se retira.',
    todo: 'Descer um calibre do tamanho da bomba até à sua profundidade antes de a colocar, ou usar uma bomba mais estreita.',
  },
  'centraliser.spacing': {
    title: 'Tubagem não centrada no maciço',
    sentence:
      'Coluna {string}: nenhum centralizador de {fromM} m a {toM} m, em {gapM} m; o máximo aqui é {mostM} m.',
    why: 'Uma tubagem encostada à parede não tem maciço desse lado, e a areia entra por aí.',
    todo: 'Escrever os centralizadores que há; antes da colocação, pôr um em cada ponta do tubo-ralo e entre elas.',
  },
  'stickUp.height': {
    title: 'Tubagem de altura invulgar',
    sentence: 'O topo da tubagem está {heightM} m acima do solo; pedem-se {leastM} m a {mostM} m.',
    why: 'Por um topo baixo a água da superfície corre para o furo; num alto a base da bomba não assenta.',
    todo: 'Medir de novo. Prolongar uma tubagem baixa antes de betonar a laje; cortar uma alta à medida da base da bomba.',
  },
};
