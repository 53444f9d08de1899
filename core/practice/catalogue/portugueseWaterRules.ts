import type { waterCodes } from '../rules/water/codes.ts';
import type { FindingText } from './texts.ts';

/** Results of water samples, the kind of pump, the rate. */
export const portugueseWaterRules: Readonly<Record<keyof typeof waterCodes, FindingText>> = {
  'quality.aboveHealth': {
    title: 'Acima do valor de saúde: {parameter}',
    sentence:
      '{parameter}: o último resultado é de {reading} {unit}, acima do valor baseado na saúde de {allowed} {unit}.',
    why: 'Uma água assim pode adoecer quem a bebe, logo ou passados anos.',
    todo: 'Deixar de a usar para beber até a autoridade de saúde decidir; colher outra amostra e mandá-la analisar.',
  },
  'quality.untested': {
    title: 'Não analisado antes da entrega: {parameter}',
    sentence:
      '{parameter}: nenhuma amostra foi analisada para este parâmetro, pedido antes da entrega.',
    why: 'O que ninguém procurou não se conhece; uma água límpida e sem sabor nada diz disso.',
    todo: 'Mandar analisar, ou escrever o resultado que existe; consultar o que pedem as regras locais.',
  },
  'suits.lift': {
    title: 'Água funda demais para este tipo de bomba',
    sentence:
      'A água é para elevar {liftM} m ou mais; uma bomba deste tipo eleva no máximo {mostM} m.',
    why: 'Além da sua altura, uma bomba dá pouca água ou nenhuma, e as peças gastam-se depressa e partem.',
    todo: 'Verificar os níveis da água e o tipo de bomba; se estiverem certos, escolher um tipo para essa altura.',
  },
  'suits.casing': {
    title: 'Furo estreito demais para este tipo de bomba',
    sentence:
      'O furo tem {insideMm} mm por dentro por onde passa a bomba; uma bomba deste tipo pede pelo menos {leastMm} mm.',
    why: 'Numa tubagem estreita, a bomba prende-se na descida, ou já não sobe para ser reparada.',
    todo: 'Verificar o tamanho dos tubos e o tipo de bomba; se estiverem certos, escolher um tipo mais estreito.',
  },
  'suits.flow': {
    title: 'Bomba abaixo do que os utilizadores precisam',
    sentence:
      'Para o que os utilizadores precisam, uma bomba deste tipo teria de trabalhar {hours} h por dia.',
    why: 'Um dia não tem tantas horas: espera-se, ou volta-se a outra água.',
    todo: 'Verificar o número de utilizadores; se estiver certo, escolher um tipo que dê mais, ou prever um segundo ponto de água.',
  },
  'rate.untested': {
    title: 'Caudal acima do ensaiado',
    sentence: 'São para bombear {rate} m³/h; nenhum ensaio de bombagem passou de {tested} m³/h.',
    why: 'Acima do caudal ensaiado ninguém sabe até onde a água desce: a bomba pode trabalhar a seco ou puxar areia.',
    todo: 'Ensaiar o furo com esse caudal, ou não bombear mais do que nos ensaios.',
  },
};
