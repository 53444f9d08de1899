import type { WaterWords } from './words.ts';

/** Portuguese, in the trade's terms of Africa (from memory). */
export const portuguese: WaterWords = {
  quality: {
    states: {
      above: 'acima do valor',
      below: 'abaixo do valor',
      limitTooHigh: 'limite de deteção demasiado alto para concluir',
      formUnknown: 'forma não indicada, e ela conta',
      unitUnknown: 'unidade ausente ou não convertível',
      notTested: 'não analisado',
      within: 'cumpre o valor',
    },
    bases: {
      health: 'saúde',
      provisional: 'saúde, provisório',
      acceptability: 'gosto e uso',
      operational: 'exploração',
    },
    purposes: {
      faeces: 'sinal de fezes na água',
      infants: 'sobretudo para bebés alimentados a biberão',
      longUse: 'para quem a bebe durante anos',
      taste: 'gosto',
      odour: 'cheiro',
      stains: 'manchas e cor',
      scale: 'incrustação',
      corrosion: 'corrosão da bomba e dos tubos',
      laxative: 'efeito laxante',
      seen: 'visível a olho nu',
      chlorination: 'boa ação do cloro',
      nearbyWaste: 'sinal de resíduos por perto',
    },
    conditions: { chlorinated: 'onde a água é clorada' },
    bands: {
      low: 'baixo',
      intermediate: 'médio',
      high: 'alto',
      veryHigh: 'muito alto',
      excellent: 'gosto excelente',
      good: 'bom gosto',
      fair: 'gosto razoável',
      poor: 'mau gosto',
      unacceptable: 'gosto inaceitável',
    },
    conversions: {
      unit: 'unidade convertida',
      form: 'forma convertida',
      formUnwritten: 'forma não indicada; todas foram experimentadas',
      limitUnwritten: 'abaixo do limite de deteção, que não foi indicado',
      fnuAsNtu: 'FNU contadas como NTU',
      mpnAsCount: 'número mais provável contado como contagem',
      ppmAsMgL: 'ppm contadas como mg/l',
    },
    directions: {
      up: 'mais alto do que no início',
      down: 'mais baixo do que no início',
      same: 'mais ou menos como no início',
      unclear: 'incerto, por causa dos limites de deteção',
    },
    steadily: 'de cada vez',
    balance: {
      good: 'balanço iónico dentro de 5 %',
      fair: 'balanço iónico só dentro de 10 %',
      poor: 'o balanço iónico não fecha; mandar rever a análise',
      unclear: 'os limites de deteção deixam o balanço em aberto',
    },
    notes: {
      'sample.undated': 'Ninguém escreveu quando a amostra foi colhida; conta como a mais antiga.',
      'sample.late':
        'O frasco chegou ao laboratório após {hours} h; {mostHours} h é o máximo. O resultado pode ser demasiado baixo.',
      'sample.aging':
        'O frasco chegou ao laboratório após {hours} h; a boa prática é de {goodHours} h.',
      'sample.ageUnknown':
        'Dias sem hora não dizem se o frasco chegou ao laboratório dentro de {mostHours} h.',
      'sample.measuredInLaboratory':
        'Muda no frasco e mede-se junto ao furo; o valor do laboratório pouco serve.',
      'sample.receivedBefore':
        'Segundo estas datas, o laboratório recebeu o frasco antes de ser cheio.',
    },
    reservation:
      'Resultados ao lado de valores-guia, não um juízo sobre a água. As normas nacionais vêm primeiro; a autoridade de saúde decide do seu uso.',
    bandReservation:
      'Uma ordem dos furos por urgência de agir, não um limite de aprovação: qualquer colónia pede inspeção, desinfeção e nova amostra.',
  },
  siting: {
    ground: {
      clay: 'argila ou rocha compacta',
      silt: 'silte',
      fineSand: 'areia fina',
      mediumSand: 'areia média',
      coarseSand: 'areia grossa',
      sandAndGravel: 'areia e cascalho',
      gravel: 'cascalho',
      fineToMediumSand: 'areia fina a média',
      mediumToCoarseSand: 'areia média a grossa',
      anySand: 'areia de grão desconhecido',
      sandstone: 'arenito',
      weatheredRock: 'rocha alterada',
      fracturedRock: 'rocha fraturada',
    },
    stands: {
      shorter: 'menos de {days} dias',
      spans: 'menos ou mais de {days} dias',
      longer: 'mais de {days} dias',
    },
    missing: {
      distance: 'distância',
      ground: 'terreno abaixo do nível da água',
      channels: 'calcário ou cavidades: a água pode correr em canais a qualquer velocidade',
    },
    reservation:
      'Uma ordem de grandeza tirada de tabelas, não uma medição. Pode mostrar que uma distância é demasiado curta; nunca mostra que chega.',
  },
  disinfection: {
    missing: {
      restLevel: 'nível estático',
      pipeInside: 'diâmetro interior do revestimento',
      hole: 'profundidade e diâmetro do furo abaixo da água',
      packSizes: 'diâmetros em volta do maciço filtrante',
      riser: 'diâmetro da coluna de subida',
      rate: 'caudal da bomba',
    },
    cautions: {
      localRules:
        'Seguir primeiro as regras do país, o rótulo do produto e a sua ficha de segurança.',
      protectEyesAndHands: 'Usar luvas, óculos e roupa velha; ter água limpa à mão para enxaguar.',
      openAir: 'Misturar ao ar livre, com o vento pelas costas; não respirar pó nem gás.',
      productIntoWater: 'Deitar o produto na água, nunca a água sobre o produto.',
      neverMix:
        'Nunca o misturar com ácido, combustível, óleo, sabão ou outro produto de cloro: gás e fogo.',
      keepOffWell: 'Não se debruçar sobre um poço em tratamento, nem descer nele.',
      storeCoolDry:
        'Guardar o produto fresco, seco, fechado, longe de crianças, alimentos e metal.',
      strengthFalls:
        'O teor baixa com a idade e o calor: para uma lata velha, usar o teor de hoje, não o do rótulo.',
      clearWaterFirst:
        'Bombear até a água sair limpa antes de dosear: as partículas gastam o cloro.',
      closeToUsers:
        'Fechar a bomba e pôr alguém de guarda: ninguém tira água antes de o cloro ser retirado.',
      dischargeAway:
        'Levar a água muito clorada para solo nu, longe de ribeiros, charcos, zonas húmidas, culturas e latrinas.',
      sampleWithoutChlorine: 'Colher para bacteriologia só quando o cloro tiver desaparecido.',
    },
    contact: 'Deixar atuar pelo menos {leastH} h, melhor {fromH} a {toH} h, durante a noite.',
    resample:
      'Colher para bacteriologia {waitDays} d ou mais depois de bombear, com {chlorineMgL} mg/l de cloro livre no máximo.',
    reservation:
      'Uma dose, não uma garantia: só uma amostra diz se resultou, e um furo contaminado repetidas vezes está-o por alguma razão.',
  },
  reckoned: {
    nitrogenRatio: 'nitrato e nitrito em conjunto',
    hardnessMgL: 'dureza em CaCO3, a partir de cálcio e magnésio',
    dissolvedSolidsMgL: 'sólidos dissolvidos, a partir da condutividade',
    cationsMeqL: 'soma dos catiões',
    anionsMeqL: 'soma dos aniões',
    ionErrorPercent: 'erro do balanço iónico',
    travelDays: 'tempo de percurso',
    pipeWaterLitres: 'água no revestimento',
    holeWaterLitres: 'água no furo aberto',
    packWaterLitres: 'água no maciço filtrante',
    riserWaterLitres: 'água na coluna de subida acima do nível estático',
    waterLitres: 'água a tratar',
    productG: 'produto, seco',
    productMl: 'produto, líquido',
    teaspoons: 'colheres de chá rasas',
    tablespoons: 'colheres de sopa rasas',
    stockLitres: 'água para o dissolver',
    washProductG: 'produto para um balde de lavagem das paredes',
    pumpOffLitres: 'água a retirar, pelo menos',
    pumpOffMinutes: 'tempo de bombagem',
  },
  assumptions: {
    solidsFactor: 'fator da condutividade para os sólidos dissolvidos',
    solidsFactorMiddle: 'fator médio da condutividade para os sólidos dissolvidos',
    gradient: 'declive do nível freático entre 1 e 10 m por quilómetro',
    conductivityByGround: 'condutividade hidráulica de uma tabela, segundo o terreno',
    porosityByGround: 'porosidade eficaz de uma tabela de cedência específica',
    porosityOfRock: 'porosidade de fissuras de um manual',
    fastestGround: 'o terreno mais rápido abaixo do nível da água, segundo o perfil deste furo',
    wholeHole: 'nível estático desconhecido: conta todo o perfil',
    evenGround: 'o terreno é igual em todo o caminho, sem fissuras nem canais',
    straightWay: 'a água vai a direito',
    noWayDown: 'o tempo através do terreno seco por cima não é contado',
    noPumping: 'a força da bomba não é contada; perto do furo a água vai mais depressa',
    downhillToo: 'a jusante: contado na mesma, pois a bombagem pode inverter o fluxo',
    packVoids: 'vazios do maciço filtrante',
    strength: 'cloro ativo dos grânulos',
    liquidStrength: 'cloro ativo da lixívia',
    dose: 'dose',
    liquidByVolume: 'um por cento de lixívia vale 10 g de cloro por litro',
    bulkDensity:
      'um mililitro de grânulos soltos pesa 0,8 a 1,0 g, uma estimativa; pesar onde for possível',
    teaspoon: 'colher de chá rasa',
    tablespoon: 'colher de sopa rasa',
    stock: 'cloro da solução-mãe, 1 %',
    wash: 'dose para lavar as paredes',
    washBucket: 'balde',
    riserAsOutside: 'o diâmetro exterior da coluna, um pouco a mais',
    spout: 'altura da bica acima do solo',
    pumpOffVolumes: 'número de volumes do furo a retirar',
  },
};
