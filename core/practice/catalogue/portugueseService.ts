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
  'pad.thin': {
    title: 'Laje de betão demasiado fina',
    sentence: 'A laje de betão tem {built} m de espessura; pedem-se pelo menos {least} m.',
    why: 'Uma laje fina fende, e a água derramada desce ao longo do tubo.',
    todo: 'Medir a espessura na borda; se for mesmo essa, procurar fendas e mandar refazer ou engrossar a laje.',
  },
  'pad.small': {
    title: 'Laje de betão pequena',
    sentence: 'O lado menor da laje de betão mede {built} m; aconselham-se pelo menos {least} m.',
    why: 'A água derramada pelos utentes cai ao lado de uma laje pequena e amolece o terreno à volta do tubo.',
    todo: 'Medir os dois lados; se for mesmo assim, alargar a laje ou empedrar à volta com inclinação que afaste a água do furo.',
  },
  'drain.short': {
    title: 'Vala de drenagem curta',
    sentence: 'A vala de drenagem tem {built} m de comprimento; o comum é pelo menos {least} m.',
    why: 'Uma vala curta deixa um charco junto ao furo, onde os animais bebem e os mosquitos se criam.',
    todo: 'Levar a água mais longe, a um poço absorvente ou a uma horta, mais baixo do que a laje.',
  },
  'drain.flat': {
    title: 'Vala de drenagem demasiado plana',
    sentence: 'A vala de drenagem tem {built} % de inclinação; pedem-se pelo menos {least} %.',
    why: 'A água fica parada numa vala plana, que se enche de lodo e transborda para a laje.',
    todo: 'Verificar a inclinação com um nível ou vertendo água; mandar refazer a vala onde a água fica parada.',
  },
};
