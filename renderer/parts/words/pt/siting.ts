import type { InterfaceWords } from '../catalogue.ts';

export const siting: InterfaceWords['siting'] = {
  title: 'Planta e tempos de percurso',
  plan: (reach) => `Planta em volta do furo, norte para cima, até ${reach} para cada lado`,
  reach: 'A planta chega a',
  grid: (zone, east, north) =>
    `Na grelha UTM (WGS 84): fuso ${zone}, ${east} m este, ${north} m norte`,
  well: 'Furo',
  north: 'N',
  number: 'N.º',
  what: 'O quê',
  distance: 'Distância',
  asked: 'Exigida',
  direction: 'Direção',
  lies: 'Situa-se',
  beyond: 'fora da planta',
  tooNear: 'mais perto do que se exige',
  noDirection: 'Não está na planta, pois ninguém anotou a direção:',
  noDistance: 'Ninguém anotou a distância:',
  nothingPlaced: 'Nada tem ainda distância e direção: não há planta.',
  travel: 'Tempo que os germes podem levar',
  days: (figure) => `${figure} dias`,
  years: (figure) => `${figure} anos`,
  ground: (ground) => `através de: ${ground}`,
  assumptions: 'O que se supõe',
  missing: 'Sem estimativa, por falta de:',
};
