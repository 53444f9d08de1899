import type { HydraulicsWords } from './words.ts';

/** Portuguese, in the trade's terms of lusophone Africa (from memory). */
export const portuguese: HydraulicsWords = {
  methods: {
    specificCapacity: 'Caudal específico',
    logan: 'Estimativa por um ponto (Logan)',
    cooperJacob: 'Reta de Cooper e Jacob',
    theis: 'Ajuste da curva de Theis',
    theisRecovery: 'Recuperação (Theis)',
    hantushBierschenk: 'Ensaio escalonado (Hantush e Bierschenk)',
    edenHazel: 'Todos os escalões juntos (Eden e Hazel)',
  },
  quantities: {
    transmissivity: 'transmissividade T',
    storage: 'coeficiente de armazenamento S',
    slope: 'declive por ciclo logarítmico',
    specificCapacity: 'caudal específico Q/s',
    aquiferLoss: 'perdas lineares B',
    wellLoss: 'perdas quadráticas C',
    laminarShare: 'parte das perdas lineares no maior caudal',
    rateByDrawdown: 'caudal que esgota o rebaixamento',
    safeRate: 'caudal de exploração na estação seca',
    drawdown: 'rebaixamento no fim do tempo',
    pumpingLevel: 'nível dinâmico abaixo do solo',
    intake: 'profundidade mínima da aspiração',
  },
  bases: {
    regression: 't de Student em torno da reta',
    linearised: 't de Student em torno do logaritmo, linearizado no melhor ajuste',
    propagated: 'pela covariância de B e C, em primeira ordem',
    spread: 'dispersão do método por experiência',
    worstCase: 'pelos dois extremos de tudo o que entra',
  },
  leftOut: {
    noMinutes: 'sem tempo',
    noReading: 'sem nível',
    notAfterStart: 'não depois do início',
    aboveRest: 'no nível estático ou acima dele',
    belowIntake: 'abaixo da aspiração da bomba de ensaio',
    outOfOrder: 'tempo fora de ordem',
    noRate: 'sem caudal para o seu escalão',
  },
  seriesNotes: {
    noMinutes: 'Falta o tempo: a leitura não é usada.',
    noReading: 'Falta o nível: a leitura não é usada.',
    notAfterStart: 'Pelos caudais lidos, a bomba ainda não trabalhava: a leitura não é usada.',
    aboveRest:
      'O nível, {readM} m, está acima do nível estático de {restM} m: a leitura não é usada.',
    atRest: 'O nível, {readM} m, é o nível estático: a leitura não tem rebaixamento e não é usada.',
    belowIntake:
      'O nível está abaixo da aspiração da bomba de ensaio, {intakeM} m: a leitura não é usada.',
    outOfOrder: 'O tempo, {minutes} min, está fora de ordem: a leitura não é usada.',
    noRate: 'Não se conhece caudal para este escalão: a leitura não é usada.',
    rateNil: 'O caudal é nulo: é ignorado e não conta para o caudal do ensaio.',
    rateNilBefore:
      'O caudal é nulo: supõe-se que a bombagem começa depois, e a leitura não é usada.',
    rateNilStands: 'O caudal é nulo: supõe-se a bomba parada desde a leitura anterior.',
    lacksRestLevel: 'Não se conhece o nível estático: estas leituras não dão rebaixamento.',
    lacksRate: 'Não se conhece caudal acima de zero: estas leituras nada dizem do terreno.',
    lacksMinutesPumped:
      'Não se sabe quanto tempo se bombou antes: a recuperação não pode ser interpretada.',
    fewForLine:
      'Leituras que se podem usar: {count}. Uma reta com o seu intervalo pede {least} ou mais.',
    fewForCurve: 'Leituras que se podem usar: {count}. A curva pede {least} ou mais.',
    fewSteps:
      'Escalões que se podem usar: {count}. B e C com os seus intervalos pedem {least} ou mais.',
  },
  missing: {
    series: 'leituras do ensaio',
    restLevel: 'nível estático antes da bombagem',
    rate: 'caudal de bombagem',
    minutesPumped: 'minutos bombados antes da recuperação',
    steps: 'dois ou mais escalões com caudais diferentes',
    enoughReadings: 'leituras suficientes para uma reta que sobe',
    pumpingTest: 'um ensaio a caudal constante ou escalonado que possa ser interpretado',
    drySeasonLevel: 'nível estático na estação seca',
    screenOrIntake: 'profundidade do ralo ou da aspiração',
  },
  checks: {
    uSmall: {
      holds: 'u desce de {first} a {last}, sem passar de {limit}: a reta é válida.',
      fails: 'u vale {first} na primeira leitura, mais de {limit}: cedo demais para uma reta.',
    },
    bendSeen: {
      holds: 'u desce de {first} a {last}: a curvatura foi observada.',
      fails:
        'u vale {first} na primeira leitura, não mais de {limit}: a curvatura não foi observada, S fica mal fixado.',
    },
    afterCasingStorage: {
      holds: 'A primeira leitura, aos {first} min, vem depois da água da tubagem ({minutes} min).',
      fails:
        'A primeira leitura, aos {first} min, vem antes de {minutes} min: a água da tubagem ainda conta.',
    },
    straight: {
      holds:
        'O declive muda {change} % de ponta a ponta; o que passa de {limit} % fica dentro da dispersão.',
      fails:
        'O declive muda {change} % de ponta a ponta, mais de {limit} %: as leituras não estão alinhadas.',
    },
    longEnough: {
      holds: 'A reta abrange {cycles} ciclos logarítmicos.',
      fails:
        'A reta abrange {cycles} ciclos logarítmicos, menos de {limit}: é curta para um declive.',
    },
    recoveryToRest: {
      holds: 'A reta chega a menos de {limit} m do nível estático em t/t′ = 1.',
      fails:
        'A reta passa a {atZero} m do nível estático em t/t′ = 1, mais de {limit} m: recarga, aquífero limitado ou nível estático que se moveu.',
    },
    lossPositive: {
      holds: 'C não é negativo.',
      fails:
        'C vale {value} d²/m⁵, é negativo: o furo desenvolveu-se durante o ensaio, ou um caudal ou um nível está errado.',
    },
    stepsEnough: {
      holds: '{steps} escalões.',
      fails: '{steps} escalões, menos de {limit}: nada resta para julgar a dispersão.',
    },
    stepsRise: {
      holds: 'Os caudais vão de {lowest} a {highest} m³/h.',
      fails: 'Os caudais vão só de {lowest} a {highest} m³/h: B e C mal se distinguem.',
    },
    withinTested: {
      holds:
        'O caudal que esgota o rebaixamento, {rate} m³/h, fica dentro do que foi ensaiado ({tested} m³/h).',
      fails:
        'O rebaixamento permitiria {rate} m³/h, mas {tested} m³/h é o maior caudal ensaiado: o caudal de exploração acaba aí.',
    },
    waterAvailable: {
      holds: 'Há {available} m de rebaixamento disponível na estação seca.',
      fails:
        'Não há rebaixamento disponível na estação seca ({available} m): as margens passam acima da água.',
    },
    askedWithinSafe: {
      holds: 'O caudal pedido, {asked} m³/h, fica dentro do caudal de exploração de {safe} m³/h.',
      fails: 'O caudal pedido, {asked} m³/h, passa do caudal de exploração de {safe} m³/h.',
    },
    intakeDeepEnough: {
      holds: 'A aspiração a {intake} m é bastante funda; {least} m bastariam.',
      fails: 'A aspiração a {intake} m não é bastante funda; precisa de {least} m.',
    },
  },
  hints: {
    slopeDoubling:
      'O declive tardio é {ratio} vezes o inicial: pode ser um limite estanque, como uma falha ou um muro de argila; ou o caudal subiu.',
    slopeSteeper:
      'O declive tardio é {ratio} vezes o inicial: pode ser terreno menos permeável mais longe, uma camada que secou ou um caudal que subiu.',
    flattening:
      'O declive tardio é {ratio} vezes o inicial: pode ser água de um rio, de uma camada acima ou da drenagem do terreno; ou o caudal desceu.',
    stabilised:
      'O declive mantém-se por {cycles} ciclos logarítmicos, como em terreno vasto e regular.',
  },
  assumptions: {
    idealAquifer: 'O aquífero é vasto, regular e confinado, e o furo atravessa-o por inteiro.',
    independentResiduals:
      'O intervalo contém só a dispersão das leituras, cada uma tida por errar por si; não o que afasta o terreno do ideal.',
    storageNotReported:
      'Não se dá armazenamento: o raio eficaz de um furo bombado não é conhecido.',
    uByLargestStorage:
      'u é calculado com o maior armazenamento, {storage}, e um raio de {radius} m: é antes grande demais.',
    riserIgnored:
      'Armazenamento da tubagem por 25 rc²/T (Papadopulos e Cooper 1967, de memória) com rc {radius} m; a coluna de subida não é descontada, e o tempo é antes longo demais.',
    casingUnknown:
      'O interior da tubagem não é conhecido: nenhuma leitura inicial é excluída pela água da tubagem.',
    rateAveraged: 'Um só caudal, {rate} m³/h; as leituras ficam a {spread} % da sua média.',
    ratesSuperposed: 'As mudanças de caudal são sobrepostas.',
    delayedStart: 'A bombagem começou {minutes} min depois do relógio.',
    restFromLevels:
      'O ensaio não dá nível estático; toma-se o último lido em repouso antes dele, {level} m abaixo do solo.',
    restFromSeries: 'O nível estático é a leitura aos 0 min.',
    restFromPumpingTest: 'O nível estático é o da bombagem anterior.',
    rateFromPumpingTest: 'O caudal é o da bombagem anterior.',
    pumpedFromPumpingTest: 'Os minutos bombados são os da bombagem anterior.',
    minutesRunOn: 'Os minutos continuam de escalão para escalão.',
    stepsByRate: 'Os escalões são reconhecidos por caudal e tempo, por falta de números.',
    stepsFreedOfTails:
      'Os rebaixamentos no fim dos escalões são libertos da cauda dos escalões anteriores, a {minutes} min cada um.',
    stepEndsAsRead:
      'Os rebaixamentos no fim dos escalões são tomados como lidos; os últimos ainda trazem os anteriores e C sai antes grande demais.',
    unequalSteps: 'Os escalões têm durações desiguais.',
    nearSteady:
      'O nível quase já não desce, e toma-se uma razão usual entre raio de ação e raio do furo.',
    wellLossIgnored:
      'As perdas do furo não são descontadas: T sai antes baixo demais num furo com muitas perdas.',
    wellLossInStorage: 'O ajuste põe as perdas do furo no armazenamento; T fica livre delas.',
    automaticWindow: 'A parte reta mais longa foi escolhida pelo programa.',
    handWindow: 'As leituras foram escolhidas à mão.',
    pumpedSoLong: '{days} dias de bombagem, {hours} horas por dia.',
    noRecharge: 'Nenhuma chuva chega ao aquífero nesse tempo.',
    noBoundary: 'Não se atinge nenhum limite que o ensaio não tenha visto.',
    lateSlope:
      'O rebaixamento torna-se mais inclinado no fim do ensaio; é prolongado pelas últimas leituras.',
    slopesOfAllMethods:
      'O intervalo prolonga o rebaixamento pelo declive mais fraco e pelo mais forte de todos os métodos.',
    lossFromSteps: 'Perdas quadráticas C {C} d²/m⁵ do ensaio escalonado.',
    lossInLine:
      'Nenhum ensaio escalonado dá as perdas do furo: toma-se o rebaixamento a crescer como o caudal, o que é pouco acima do caudal ensaiado.',
    drySeasonFromLevels:
      'Ninguém deu um nível da estação seca; toma-se o mais fundo lido em repouso, {level} m abaixo do solo.',
    drySeasonSaid: 'O nível da estação seca é o que foi dado.',
    drySeasonEstimated:
      'O nível da estação seca é estimado pelo último nível estático e pela oscilação anual indicada.',
    marginOverScreen: 'O nível dinâmico fica {margin} m acima do topo do ralo.',
    marginOverIntake: 'O nível dinâmico fica {margin} m acima da aspiração.',
  },
  limits: { screen: 'topo do ralo', intake: 'aspiração da bomba' },
  sources: {
    theis1935: 'Theis 1935',
    cooperJacob1946: 'Cooper e Jacob 1946',
    hantushBierschenk: 'Jacob 1947, Hantush 1964, Bierschenk 1963',
    edenHazel1973: 'Eden e Hazel 1973 (de memória)',
    birsoySummers1980: 'Birsoy e Summers 1980 (de memória)',
    logan1964: 'Logan 1964 (de memória)',
    bourdet1989: 'Bourdet, Ayoub e Pirard 1989 (de memória)',
    common: 'prática corrente do ofício',
  },
};
