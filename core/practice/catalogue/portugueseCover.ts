import type { coverCodes } from '../rules/cover/codes.ts';
import type { FindingText } from './texts.ts';

/** What stands between wall and casing. */
export const portugueseCover: Readonly<Record<keyof typeof coverCodes, FindingText>> = {
  'pack.bare': {
    title: 'Tubo-ralo sem maciço filtrante',
    sentence:
      'Ao longo do tubo-ralo, de {fromM} m a {toM} m, não está registado maciço filtrante, mas sim: {fill}.',
    why: 'Sem maciço, o terreno solto passa pelas ranhuras e gasta a bomba e o tubo-ralo; argila ou calda diante das ranhuras tapa-as.',
    todo: 'Colocar ou completar o maciço antes de deitar seja o que for por cima. Num furo acabado, vigiar a areia e o caudal, e voltar a desenvolver.',
  },
  'pack.low': {
    title: 'Maciço filtrante acaba baixo demais',
    sentence:
      'O maciço sobe {aboveM} m acima do topo do tubo-ralo, que está a {screenM} m; pedem-se {wantedM} m, e menos de {graveM} m não chega para o assentamento.',
    why: 'O maciço assenta durante o desenvolvimento e o uso; o que desce não deve destapar ranhuras nem trazer o selo até elas.',
    todo: 'Sondar o topo do maciço depois da pistonagem e completá-lo antes de colocar o selo.',
  },
  'clay.thin': {
    title: 'Argila a menos sobre o maciço',
    sentence:
      'Sobre o maciço, cujo topo está a {packM} m, há {lengthM} m de argila ou calda; pedem-se {wantedM} m, e menos de {graveM} m não fecha nada.',
    why: 'O maciço é um caminho aberto até ao tubo-ralo: a água das camadas de cima e da superfície desce se nada estanque o cobrir.',
    todo: 'Colocar bolas de argila, bentonite ou calda sobre o topo sondado do maciço, deixar a argila inchar e sondar de novo.',
  },
  'seal.none': {
    title: 'Sem selo sanitário',
    sentence:
      'Nos {wantedM} m de cima não há argila nem calda junto à parede do furo, mas sim: {fill}.',
    why: 'A água suja da superfície desce ao longo do revestimento até ao tubo-ralo.',
    todo: 'Limpar o anular em cima e enchê-lo de argila ou calda de cimento de baixo para cima; até lá, não entregar o furo.',
  },
  'seal.short': {
    title: 'Selo sanitário curto demais',
    sentence:
      'O selo sanitário vai de {fromM} m a {toM} m; deve começar a não mais de {startM} m e descer a {wantedM} m.',
    why: 'Terra solta, raízes e tocas levam a água suja para além de um selo curto.',
    todo: 'Juntar argila ou calda onde falta, ou corrigir as profundidades.',
  },
  'open.above': {
    title: 'Anular deixado livre',
    sentence: 'O anular está livre de {fromM} m a {toM} m, acima de onde entra a água.',
    why: 'Um anular livre leva água de uma camada para outra, e em terreno solto desaba.',
    todo: 'Enchê-lo, com argila ou calda onde há camadas a separar.',
  },
  'aquifers.joined': {
    title: 'Dois aquíferos ligados pelo anular',
    sentence:
      'O terreno de {fromM} m a {toM} m retém a água em {thicknessM} m (conta a partir de {limitM} m), mas uma passagem atravessa-o de um aquífero ao outro: {fill}.',
    why: 'A água suja, salgada ou ferrosa de um aquífero chega ao outro, e um esvazia-se para o outro de vez.',
    todo: 'Fechar o anular com argila ou calda no terreno que os separa, se ainda estiver acessível; se não, consultar a autoridade e comparar as duas águas.',
  },
  'aquifers.screened': {
    title: 'Dois aquíferos ligados pelo revestimento',
    sentence:
      'A coluna {string} recebe água acima e abaixo do terreno de {fromM} m a {toM} m, que retém a água em {thicknessM} m (conta a partir de {limitM} m).',
    why: 'Dentro do revestimento a água passa de um aquífero ao outro sempre que a bomba para; o pior dos dois decide.',
    todo: 'Comparar os níveis e a qualidade dos dois. Se diferem, ou se o regulamento o proíbe, usar um e fechar o outro.',
  },
  'gap.narrow': {
    title: 'Espaço anular estreito',
    sentence:
      'Entre um furo de {holeMm} mm e um tubo de {pipeMm} mm ficam {gapMm} mm de maciço; pedem-se {wantedMm} mm, e menos de {graveMm} mm enche-se mal.',
    why: 'Num anular estreito o areão faz ponte nas uniões e onde o revestimento se inclina, e o maciço fica fino de um lado.',
    todo: 'Manter o tubo centrado, deitar devagar com água e sondar muitas vezes. Antes de descer o revestimento, é melhor um furo mais largo ou um tubo mais fino.',
  },
  'poured.little': {
    title: 'Deitou-se menos que o calculado',
    sentence:
      '{fill} de {fromM} m a {toM} m: deitaram-se {poured} litros onde se calcularam {computed}, {percent} %; esperavam-se pelo menos {limitPercent} %.',
    why: 'Um enchimento que chega à sua altura com tão pouco assenta talvez numa ponte com um vazio por baixo, ou o furo desabou.',
    todo: 'Sondar de novo, pistonar ou calcar com cuidado até o topo não descer mais, e completar, contando o que entra.',
  },
  'poured.much': {
    title: 'Deitou-se mais que o calculado',
    sentence:
      '{fill} de {fromM} m a {toM} m: deitaram-se {poured} litros onde se calcularam {computed}, {percent} %; esperavam-se no máximo {limitPercent} %.',
    why: 'O furo está talvez escavado aí, ou o enchimento perde-se em fissuras ou para além do seu lugar.',
    todo: 'Comparar com os desabamentos e as perdas vistos na perfuração, sondar o topo passado um tempo, e corrigir o diâmetro se for mais bem conhecido.',
  },
};
