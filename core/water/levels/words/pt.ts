import type { LevelWords } from './words.ts';

/** European Portuguese, in the trade’s terms (from memory). */
export const portuguese: LevelWords = {
  assumptions: {
    swingAsGiven: 'A oscilação anual é a que alguém do local disse, não medida.',
    waveBetweenLows: 'Entre os meses de estiagem supõe-se que o nível sobe e desce em onda.',
    readAtLow: 'O nível foi lido num mês de estiagem, e toma-se pelo mais baixo.',
    readAtHigh:
      'Não se conhece o dia ou os meses de estiagem: o nível lido toma-se pelo mais alto do ano.',
    yearsAlike: 'Supõem-se anos iguais; depois de chuvas fracas o nível desce mais.',
  },
  dryBy: { said: 'conforme o registo', estimated: 'estimado pela oscilação anual' },
  criteria: {
    developmentH: 'duração do desenvolvimento, no mínimo',
    turbidityNtu: 'turbidez no fim, no máximo',
    sandMgL: 'areia no fim, no máximo',
  },
  states: { met: 'cumprido', notMet: 'não cumprido', cantSay: 'não se pode dizer' },
  missing: {
    boreDiameter: 'diâmetro do furo',
    boreDepth: 'profundidade do furo',
    restLevel: 'nível estático',
    development: 'desenvolvimento',
    times: 'início ou fim de uma operação',
    rates: 'caudal de uma operação',
    turbidityOrSand: 'turbidez ou areia no fim',
  },
  names: {
    hours: 'horas de trabalho',
    pumped: 'água bombada',
    boreVolume: 'furo debaixo de água',
    boreVolumes: 'volumes bombados',
    turbidity: 'turbidez',
    sand: 'areia',
    end: 'fim do desenvolvimento',
    restLevel: 'nível estático',
    dryRestLevel: 'nível estático na estação seca',
    pumpingLevel: 'nível dinâmico',
    dryPumpingLevel: 'nível dinâmico na estação seca',
    seenSwing: 'oscilação observada',
    atLeast: 'pelo menos',
  },
};
