import type { PumpWords } from './words.ts';

/** European Portuguese, in the trade’s terms (from memory). */
export const portuguese: PumpWords = {
  kinds: {
    suction: 'bomba de sucção',
    directAction: 'bomba de ação direta',
    ropeAndWasher: 'bomba de corda',
    deepwellOpenTop: 'bomba de alavanca para furo fundo, êmbolo retirado pelo tubo de subida',
    deepwellPlastic: 'bomba de alavanca para furo fundo, tubo de subida em PVC',
    deepwellLever: 'bomba de alavanca para furo fundo, galvanizada (IS 15500)',
    extraDeepLever: 'bomba de alavanca de grande profundidade, galvanizada (IS 15500)',
    solarSubmersible: 'bomba solar submersível',
    electricSubmersible: 'bomba elétrica submersível',
    bucketAndWindlass: 'balde e sarilho',
  },
  verdicts: {
    possible: 'possível',
    doubtful: 'com reserva',
    cantSay: 'não se pode dizer',
    ruledOut: 'a excluir',
  },
  reasons: {
    liftWithin: 'A altura de elevação na estação seca, {liftM} m, cabe nos seus {mostM} m.',
    liftNearMost:
      'A altura de elevação na estação seca, {liftM} m, passa dos {wellM} m até aos quais trabalha bem; o seu limite é {mostM} m.',
    liftBeyond: 'A altura de elevação, {liftM} m ou mais, passa dos seus {mostM} m.',
    flowReckoned:
      'Não há caudal publicado para uma altura de {liftM} m; {flow} m³/h é calculado a partir do mais próximo.',
    needMet:
      'O que os utilizadores precisam leva {hours} h de bombagem por dia, dentro de {most} h.',
    longHours:
      'O que os utilizadores precisam leva {hours} h de bombagem por dia, ou seja, mais de {most} h.',
    flowTooLow: 'O que os utilizadores precisam levaria {hours} h de bombagem por dia.',
    longQueue:
      'Nas horas de ponta espera-se até {minutes} min, ou seja, mais de {most} min: menos utilizadores, ou um segundo ponto de água.',
    usersWithin: '{users} utilizadores cabem nos {most} que uma bomba serve.',
    usersAboveAdvised:
      '{users} utilizadores são mais do que os {advised} aconselhados; há relatos de até {most}.',
    usersAboveMost:
      '{users} utilizadores são mais do que os {most} que uma serve; seriam precisas {pumps}.',
    lightType: 'O modelo leve serve no máximo {light} utilizadores: pedir o modelo pesado.',
    wellGivesLess:
      'Eleva {flow} m³/h, mais do que os {rate} m³/h do ensaio do furo: o nível pode descer até à aspiração, e os utilizadores esperam então.',
    wellShort:
      'Com os {rate} m³/h do ensaio do furo, o que os utilizadores precisam leva {hours} h por dia, ou seja, mais de {most} h, seja qual for a bomba.',
    casingFits:
      'O revestimento, {insideMm} mm por dentro, tem largura suficiente para ela ({leastMm} mm no mínimo).',
    casingTight:
      'O revestimento, {insideMm} mm por dentro, é justo; {easyMm} mm dá folga. Comparar com o diâmetro do fabricante.',
    casingAtLimit:
      'O revestimento, {insideMm} mm por dentro, está no seu limite de {leastMm} mm, que não foi verificado: medir o corpo da bomba.',
    casingNarrow:
      'O revestimento, {insideMm} mm por dentro, é mais estreito do que os {leastMm} mm que ela pede.',
    corrosionProof: 'O que fica na água é de plástico e aço inoxidável, e não se corrói.',
    phHolds:
      'O pH de {ph} não está abaixo de {least}, em que o tubo galvanizado se corrói depressa.',
    phCorrodes:
      'O pH de {ph} está abaixo de {least}: tubos e varas galvanizados corroem-se, e o ferro passa para a água.',
    repairThere: 'A reparação pede {needs}: disponível no local.',
    repairBeyond: 'A reparação pede {needs}; o melhor no local é {there}.',
    intakeFits: 'A aspiração pode ficar em tubo liso, de {fromM} m a {toM} m.',
    intakeInScreen:
      'A aspiração só pode ficar dentro do tubo-ralo, de {fromM} m a {toM} m: manter o caudal baixo e vigiar a areia.',
    intakeInOpenHole:
      'A aspiração só pode ficar no furo sem revestimento, de {fromM} m a {toM} m: só onde a rocha se sustém.',
    intakeNoRoom:
      'Entre o nível dinâmico, {levelM} m, e o fundo, {footM} m, não cabem {underM} m de água acima da aspiração e {aboveM} m abaixo dela.',
    closed: 'É fechada, e afasta mãos e sujidade da água.',
    notClosed: 'Não é bem fechada: a cobertura e a laje têm de se manter inteiras.',
    priming: 'Tem de ser escorvada, o que leva água suja para o furo.',
    lastResort: 'O furo fica aberto, e o balde e a corda levam germes para ele: último recurso.',
    noMains: 'Não há eletricidade no local.',
  },
  cautions: {
    licensedElectrician:
      'Só um eletricista habilitado liga bomba, painéis ou alimentação, com terra e interruptor diferencial conforme as regras locais. Desligar antes de tocar em qualquer coisa: os painéis dão tensão enquanto há luz.',
    dryRunGuard: 'Montar uma proteção que pare a bomba antes de trabalhar em seco.',
    dipTube:
      'Pôr um tubo-guia de sonda de 19 mm ou mais ao lado do tubo de subida, para ler os níveis.',
    coolingFlow:
      'A esta profundidade a água não passa por si pelo motor: montar uma camisa de arrefecimento, ou pôr a bomba acima das ranhuras.',
    storageTank: 'Prever um depósito para as noites e os dias sem sol ou sem corrente.',
    makersCurve: 'Escolher a bomba pela curva do fabricante, para este caudal e esta altura total.',
    liftingGear:
      'Retirar o tubo de subida pede um tripé, braçadeiras e várias pessoas: ninguém fica por baixo.',
    cleanHands: 'Não pousar tubos e varas no chão, e desinfetar o furo depois de montar a bomba.',
    cover: 'Manter o topo coberto, e a laje e a vala inteiras.',
    localRules:
      'As regras locais e os tipos normalizados do país vêm primeiro: as peças de substituição seguem-nos.',
  },
  missing: {
    restLevel: 'nível estático',
    dryLevel: 'nível da água na estação seca, ou oscilação anual',
    drawdown: 'rebaixamento em bombagem',
    safeRate: 'caudal de ensaio do furo',
    users: 'número de utilizadores',
    casingInside: 'diâmetro interior do revestimento',
    ph: 'pH da água',
    repair: 'o que se pode reparar no local',
    wellFoot: 'profundidade do fundo do furo',
    strings: 'registo dos tubos',
    mains: 'se há eletricidade',
    sunHours: 'horas de sol pleno no mês mais pobre',
  },
  inputs: {
    safeRateM3h: 'caudal de ensaio do furo, m³/h',
    drawdownM: 'rebaixamento em bombagem, m',
    seasonalSwingM: 'oscilação anual do nível estático, m',
    lowMonths: 'meses do nível mais baixo',
    users: 'utilizadores',
    litresPerPersonDay: 'litros por pessoa e por dia',
    hoursMost: 'horas de bombagem por dia, no máximo',
    casingInsideMm: 'diâmetro interior do revestimento, mm',
    ph: 'pH',
    repair: 'o melhor que pode reparar no local',
    mains: 'há eletricidade',
    sunHours: 'horas de sol pleno por dia no mês mais pobre',
    outletM: 'saída acima do solo, m',
    deliveryInsideMm: 'diâmetro interior da conduta, mm',
    deliveryM: 'conduta do furo ao depósito, m',
  },
  quantities: {
    needLitresDay: 'água necessária',
    liftM: 'altura de elevação na estação seca',
    flowM3h: 'caudal a essa altura',
    hoursDay: 'bombagem',
    fillMinutes: 'tempo para encher 20 l',
    queueMinutes: 'espera mais longa',
    peopleServed: 'pessoas servidas',
    frictionM: 'perdas de carga',
    totalHeadM: 'altura manométrica total',
    hydraulicW: 'potência hidráulica',
    electricW: 'potência elétrica',
    energyKwhDay: 'energia',
    panelW: 'painéis solares, potência de pico',
  },
  units: {
    'l/d': 'l por dia',
    m: 'm',
    'm³/h': 'm³/h',
    'h/d': 'h por dia',
    min: 'min',
    '1': '',
    W: 'W',
    'kWh/d': 'kWh por dia',
  },
  assumptions: {
    litresPerPersonDay: 'litros por pessoa e por dia',
    hoursMost: 'horas de bombagem por dia, no máximo',
    outletM: 'saída acima do solo',
    deliveryInsideMm: 'diâmetro interior da conduta',
    deliveryM: 'conduta do furo ao depósito',
    peakShare: 'parte da água do dia nas horas de ponta',
    peakHours: 'horas de ponta',
    queueMost: 'espera mais longa que se aceita',
    containerLitres: 'recipiente',
    suctionLossPerM: 'sucção perdida por metro acima do mar',
    casingDoubtShare: 'dúvida sobre um limite de revestimento não verificado',
    fittingsShare: 'acessórios, como parte das perdas do tubo',
    roughnessMm: 'rugosidade do tubo de plástico',
    viscosityM2s: 'viscosidade da água',
    pumpEfficiency: 'rendimento da bomba e do motor',
    panelDerating: 'redução dos painéis',
    motorM: 'motor abaixo da aspiração',
    pipeM: 'comprimento de um tubo ou de uma vara',
    washerSpacingM: 'distância entre anilhas',
    ropeOverM: 'corda além do tubo de subida',
    cableOverM: 'cabo além do tubo de subida',
  },
  parts: {
    riserPipe: 'tubos de subida',
    pumpRod: 'varas da bomba',
    rope: 'laço de corda',
    washers: 'anilhas',
    cable: 'cabo submersível',
    safetyRope: 'corda de segurança',
    bucketRope: 'corda do balde',
  },
  repairs: {
    caretaker: 'um zelador com ferramentas de mão',
    areaMechanic: 'um mecânico da zona com equipamento de elevação',
    workshop: 'uma oficina com eletricista',
  },
  places: { plain: 'tubo liso', screen: 'tubo-ralo', openHole: 'furo sem revestimento' },
  disclaimer:
    'Ordem de tipos genéricos pelo que o registo diz. Quem responde pelo furo escolhe, conforme as regras locais; nada aqui diz se a água se pode beber.',
};
