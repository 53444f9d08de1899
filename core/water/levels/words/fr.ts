import type { LevelWords } from './words.ts';

/** French, in the trade’s terms of francophone Africa (from memory). */
export const french: LevelWords = {
  assumptions: {
    swingAsGiven: 'Le battement annuel est celui que quelqu’un sur place a dit, non mesuré.',
    waveBetweenLows: 'Entre les mois d’étiage, le niveau est supposé monter et baisser en onde.',
    readAtLow: 'Le niveau a été lu dans un mois d’étiage ; il est pris pour le plus bas.',
    readAtHigh:
      'Le jour ou les mois d’étiage ne sont pas connus : le niveau lu est pris pour le plus haut de l’année.',
    yearsAlike:
      'Les années sont supposées pareilles ; après de faibles pluies le niveau descend plus bas.',
  },
  dryBy: { said: 'selon la fiche', estimated: 'estimé d’après le battement annuel' },
  criteria: {
    developmentH: 'durée de développement, au moins',
    turbidityNtu: 'turbidité en fin, au plus',
    sandMgL: 'sable en fin, au plus',
  },
  states: { met: 'atteint', notMet: 'non atteint', cantSay: 'impossible à dire' },
  missing: {
    boreDiameter: 'diamètre du trou',
    boreDepth: 'profondeur du trou',
    restLevel: 'niveau statique',
    development: 'développement',
    times: 'début ou fin d’une opération',
    rates: 'débit d’une opération',
    turbidityOrSand: 'turbidité ou sable en fin de développement',
  },
  names: {
    hours: 'heures de travail',
    pumped: 'eau pompée',
    boreVolume: 'trou sous l’eau',
    boreVolumes: 'volumes pompés',
    turbidity: 'turbidité',
    sand: 'sable',
    end: 'fin du développement',
    restLevel: 'niveau statique',
    dryRestLevel: 'niveau statique en saison sèche',
    pumpingLevel: 'niveau dynamique',
    dryPumpingLevel: 'niveau dynamique en saison sèche',
    seenSwing: 'battement observé',
    atLeast: 'au moins',
  },
};
