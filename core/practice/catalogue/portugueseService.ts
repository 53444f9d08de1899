import type { serviceCodes } from '../rules/service/codes.ts';
import type { FindingText } from './texts.ts';

/** The site, the work and the handover. */
export const portugueseService: Readonly<Record<keyof typeof serviceCodes, FindingText>> = {
  'dates.order': {
    title: 'Datas fora de ordem',
    sentence: '{later} ({laterOn}) precede {earlier} ({earlierOn}).',
    why: 'O local é acordado, depois o furo é executado e terminado; só um furo terminado se desenvolve, se ensaia e se recebe: uma das duas datas está errada.',
    todo: 'Comparar as duas datas com o caderno de campo e corrigir a que está errada.',
  },
  'samples.sparse': {
    title: 'Metros sem amostra',
    sentence:
      '{bareM} m do furo estão sem amostra, os primeiros de {fromM} m a {toM} m; pede-se uma a cada {eachM} m.',
    why: 'Uma camada que ninguém expôs pode escapar, e o tubo-ralo e os selos colocam-se pelas amostras.',
    todo: 'Escrever as amostras colhidas; onde nada subiu, dizê-lo no perfil, e não pôr ali tubo-ralo nem selo por palpite.',
  },
};
