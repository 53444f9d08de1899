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
    title: 'Caleira curta',
    sentence: 'A caleira tem {built} m de comprimento; o comum é pelo menos {least} m.',
    why: 'Uma caleira curta deixa um charco junto ao furo, onde os animais bebem e os mosquitos se criam.',
    todo: 'Levar a água mais longe, a um poço absorvente ou a uma horta, mais baixo do que a laje.',
  },
  'drain.flat': {
    title: 'Caleira demasiado plana',
    sentence: 'A caleira tem {built} % de inclinação; pedem-se pelo menos {least} %.',
    why: 'A água fica parada numa caleira plana, que se enche de lodo e transborda para a laje.',
    todo: 'Verificar a inclinação com um nível ou vertendo água; mandar refazer a caleira onde a água fica parada.',
  },
  'near.latrine': {
    title: 'Latrina perto do furo',
    sentence: 'Uma latrina está a {distance} m do furo, {slope}; pedem-se pelo menos {limit} m.',
    why: 'Os germes de uma fossa viajam com a água subterrânea para um furo em bombagem.',
    todo: 'Medir de novo. Consultar as regras locais: vale a mais exigente que se aplique. Mandar mudá-la ou fechá-la, ou escolher outro local; uma distância cumprida nada prova sobre a água.',
  },
  'near.septicTank': {
    title: 'Fossa séptica perto do furo',
    sentence:
      'Uma fossa séptica está a {distance} m do furo, {slope}; pedem-se pelo menos {limit} m.',
    why: 'As fossas perdem pelas juntas, e o que se perde chega à água subterrânea sem filtro.',
    todo: 'Medir de novo. Consultar as regras locais: vale a mais exigente que se aplique. Mandar mudá-la ou fechá-la, ou escolher outro local; uma distância cumprida nada prova sobre a água.',
  },
  'near.soakaway': {
    title: 'Poço absorvente perto do furo',
    sentence:
      'Um poço absorvente está a {distance} m do furo, {slope}; pedem-se pelo menos {limit} m.',
    why: 'É feito para infiltrar águas usadas, que o furo pode atrair.',
    todo: 'Medir de novo. Consultar as regras locais: vale a mais exigente que se aplique. Mandar mudá-lo ou fechá-lo, ou escolher outro local; uma distância cumprida nada prova sobre a água.',
  },
  'near.livestock': {
    title: 'Gado perto do furo',
    sentence: 'Guarda-se gado a {distance} m do furo, {slope}; pedem-se pelo menos {limit} m.',
    why: 'O estrume e a urina levam germes e nitratos à água pouco profunda, e os animais sujam a laje.',
    todo: 'Medir de novo. Consultar as regras locais: vale a mais exigente que se aplique. Mandar mudá-lo ou fechá-lo, ou escolher outro local; uma distância cumprida nada prova sobre a água.',
  },
  'near.graveyard': {
    title: 'Cemitério perto do furo',
    sentence: 'Um cemitério está a {distance} m do furo, {slope}; pedem-se pelo menos {limit} m.',
    why: 'O que se decompõe nas sepulturas desce com a chuva durante muitos anos.',
    todo: 'Medir de novo. Consultar as regras locais: vale a mais exigente que se aplique. Escolher outro local, a montante; uma distância cumprida nada prova sobre a água.',
  },
  'near.wasteDump': {
    title: 'Lixeira perto do furo',
    sentence: 'Uma lixeira está a {distance} m do furo, {slope}; pedem-se pelo menos {limit} m.',
    why: 'A chuva arrasta dos resíduos sais, metais e germes, e ninguém sabe tudo o que ali se deitou.',
    todo: 'Medir de novo. Consultar as regras locais: vale a mais exigente que se aplique. Mandar mudá-la ou fechá-la, ou escolher outro local; uma distância cumprida nada prova sobre a água.',
  },
  'near.fuel': {
    title: 'Combustível ou químicos perto do furo',
    sentence:
      'Um depósito de combustível ou de químicos está a {distance} m do furo, {slope}; pedem-se pelo menos {limit} m.',
    why: 'Um pouco de combustível ou de pesticida estraga muita água, e o solo não o retém.',
    todo: 'Medir de novo. Consultar as regras locais: vale a mais exigente que se aplique. Mandar mudá-lo ou fechá-lo, ou escolher outro local; uma distância cumprida nada prova sobre a água.',
  },
  'near.openWater': {
    title: 'Água à superfície perto do furo',
    sentence:
      'Água à superfície está a {distance} m do furo, {slope}; pedem-se pelo menos {limit} m.',
    why: 'Um ribeiro ou charco pode inundar o furo, e um furo ao lado atrai água da superfície.',
    todo: 'Medir de novo com água alta. Consultar as regras locais: vale a mais exigente que se aplique. Elevar laje e tubo acima da maior cheia, ou escolher outro local.',
  },
  'near.building': {
    title: 'Edifício perto do furo',
    sentence: 'Um edifício está a {distance} m do furo, {slope}; pedem-se pelo menos {limit} m.',
    why: 'As águas do telhado e as águas usadas correm para o furo, e nenhuma máquina chega mais a ele.',
    todo: 'Medir de novo. Consultar as regras locais: vale a mais exigente que se aplique. Afastar do furo as águas do telhado e as usadas, e manter um acesso para uma máquina.',
  },
  'pit.nearWater': {
    title: 'Fundo de fossa perto da água',
    sentence:
      'O fundo de uma fossa, a {baseM} m, fica a menos de {limitM} m acima do nível estático mais alto lido, {restM} m, se o seu terreno estiver à mesma altura que o do furo.',
    why: 'Os germes morrem no terreno seco acima da água; se a fossa lhe toca ou quase, seguem com a água.',
    todo: 'Medir quanto o terreno da fossa é mais alto ou mais baixo; mandar subir, sobrelevar ou mudar a fossa, conforme a regra local mais exigente que se aplique.',
  },
  'intake.shallow': {
    title: 'Aspiração perto ou acima do nível da água',
    sentence:
      'A aspiração da bomba, a {intakeM} m, está menos de {underM} m abaixo do nível de água mais baixo conhecido, {levelM} m.',
    why: 'Uma bomba que puxa ar dá menos, desgasta-se e pode queimar.',
    todo: 'Descer a bomba se o tubo-ralo e o fundo o permitirem, ou bombar a menor caudal; se o nível foi lido a um caudal maior do que o da bomba, calculá-lo para esse caudal.',
  },
  'intake.inScreen': {
    title: 'Aspiração dentro de um tubo-ralo',
    sentence:
      'A aspiração da bomba, a {intakeM} m, está suspensa dentro do tubo-ralo, de {screenTopM} m a {screenBottomM} m.',
    why: 'A água entra com força pelas ranhuras ao lado, traz areia e desgasta bomba e tubo-ralo.',
    todo: 'Pôr a bomba em tubo cego, acima do tubo-ralo se o nível da água o permitir; se não puder ser, manter o caudal baixo e vigiar a areia.',
  },
  'intake.low': {
    title: 'Aspiração perto do fundo',
    sentence:
      'A aspiração da bomba, a {intakeM} m, está a menos de {aboveM} m acima do fundo do furo, {footM} m.',
    why: 'Areia e silte juntam-se no fundo; a bomba puxá-los-ia ou ficaria presa neles.',
    todo: 'Subir a bomba se o nível da água o permitir; sondar o fundo, e mandar limpá-lo se estiver assoreado.',
  },
  'development.short': {
    title: 'Desenvolvimento curto',
    sentence: 'O furo foi desenvolvido {hours} h ao todo; pedem-se pelo menos {leastH} h.',
    why: 'Os finos e a lama que ficam no pré-filtro e na parede retêm a água, e saem mais tarde como areia.',
    todo: 'Continuar o desenvolvimento, suave no início, até a água ficar clara e o nível estável; sondar o pré-filtro e completá-lo se assentou.',
  },
  'development.turbid': {
    title: 'Água turva no fim do desenvolvimento',
    sentence: 'O desenvolvimento acabou com {value} NTU de turbidez; quer-se no máximo {most} NTU.',
    why: 'A água turva desgasta a bomba, protege os germes do cloro e afasta os utentes.',
    todo: 'Continuar o desenvolvimento até a água ficar clara; se não ficar, procurar lama deixada no pré-filtro ou um tubo-ralo frente a argila.',
  },
  'development.sandy': {
    title: 'Areia no fim do desenvolvimento',
    sentence: 'O desenvolvimento acabou com {value} mg/l de areia; quer-se no máximo {most} mg/l.',
    why: 'A areia desgasta bomba e tubo-ralo, enche o tubo de decantação e deixa vazios no terreno.',
    todo: 'Continuar o desenvolvimento, com suavidade; se a areia não diminuir, verificar ranhuras e pré-filtro face ao terreno, e se o pré-filtro fez ponte.',
  },
  'contact.short': {
    title: 'Cloro bombado cedo demais',
    sentence: 'O cloro esteve {hours} h no furo; pedem-se pelo menos {leastH} h.',
    why: 'O cloro precisa de tempo para chegar ao pré-filtro e matar o que vive nos tubos e na parede.',
    todo: 'Desinfetar de novo e deixar o cloro atuar, com o furo fechado aos utentes; descarregá-lo longe de campos e ribeiros.',
  },
  'bacteria.undeveloped': {
    title: 'Bactérias procuradas antes do desenvolvimento',
    sentence:
      'A última amostra de água para bactérias foi colhida em {takenOn}; o desenvolvimento durou até {endedOn}.',
    why: 'O desenvolvimento traz o que a perfuração deixou no terreno, e muda o que a água contém.',
    todo: 'Colher de novo, agora que o desenvolvimento acabou; o que o resultado permite, cabe à autoridade de saúde dizê-lo.',
  },
  'bacteria.undisinfected': {
    title: 'Bactérias não procuradas desde a desinfeção',
    sentence:
      'A última amostra de água para bactérias foi colhida em {takenOn}, antes da desinfeção do furo.',
    why: 'Só uma amostra colhida depois da desinfeção mostra se ela chegou ao que a perfuração e a bomba trouxeram.',
    todo: 'Colher de novo quando o cloro estiver bombado e desaparecido; o que o resultado permite, cabe à autoridade de saúde dizê-lo.',
  },
  'bacteria.soon': {
    title: 'Bactérias procuradas cedo demais',
    sentence:
      'A água foi colhida para bactérias em {takenOn}; o cloro foi bombado em {pumpedOffOn}, e pede-se pelo menos {waitDays} d entre os dois.',
    why: 'O cloro que fica no pré-filtro e nos tubos esconde as bactérias, que voltam passados alguns dias.',
    todo: 'Colher de novo quando o cloro tiver desaparecido há esse tempo; o que o resultado permite, cabe à autoridade de saúde dizê-lo.',
  },
  'bacteria.chlorine': {
    title: 'Cloro numa amostra para bactérias',
    sentence:
      'O cloro livre era de {chlorineMgL} mg/l quando se colheu água para bactérias; deve ter desaparecido, no máximo {mostMgL} mg/l.',
    why: 'O cloro continua a matar no frasco, e o laboratório encontra menos do que o furo contém.',
    todo: 'Bombar até o cloro desaparecer e colher de novo; o que o resultado permite, cabe à autoridade de saúde dizê-lo.',
  },
  'handover.incomplete': {
    title: 'Falta para a receção: {item}',
    sentence: 'Falta no registo {item}.',
    why: 'Quem reparar, licenciar ou seguir o furo daqui a dez anos só terá este registo.',
    todo: 'Escrevê-lo agora, enquanto se sabe; se ninguém o souber, dizê-lo nas notas.',
  },
  'report.late': {
    title: 'Relatório assinado tarde',
    sentence:
      'O fiscal assinou em {signedOn}, {days} d depois dos últimos trabalhos de {endedOn}; os relatórios são devidos em {dueDays} d.',
    why: 'Os registos recebem os relatórios dentro de um prazo, também os de furos secos, e a memória apaga-se.',
    todo: 'Entregar já o relatório à autoridade da água; é o prazo dela que conta.',
  },
};
