import type { Random } from '../../../core/base/random.ts';
import { drawnFrom, intervalCounts, materialWeights, rounded, weighed } from './spread.ts';

const colours = { brown: 6, 'red brown': 5, grey: 5, 'yellow brown': 4, white: 1, 'dark grey': 2 };
const consistencies = { stiff: 5, soft: 2, firm: 3, loose: 3, dense: 3, hard: 3 };
const moistures = { dry: 3, moist: 4, wet: 2, waterBearing: 3 } as const;
const boundaries = { sharp: 3, gradual: 6, uncertain: 1 } as const;
const remarks = [
  'Broken, fragments to 40 mm',
  'Fluid lost, about 200 l',
  'Roots and termite galleries to 1.5 m',
  'Hard band of 10 cm at its foot',
  'Première venue d’eau',
  'Smell of rotten eggs while bailing',
];

/** Depths that part the log, from the ground to the foot, thicker ones further down. */
function cuts(depth: number, count: number, random: Random): number[] {
  const inner = Array.from({ length: count - 1 }, () => rounded(depth * random() ** 1.5, 1));
  return [...new Set([0, ...inner, depth])].sort((a, b) => a - b);
}

/** A log down to a depth, its intervals as many and its materials as often as in real ones. */
export function madeLog(number: string, depth: number, random: Random): object[] {
  const count = Math.max(2, Math.round(drawnFrom(intervalCounts, random)));
  const edges = cuts(depth, count, random);
  return edges.slice(1).map((to, at) => ({
    from: edges[at]!,
    to,
    material: at === 0 ? 'topsoil' : weighed(materialWeights, random),
    ...(random() < 0.4
      ? { qualifiers: [{ material: weighed(materialWeights, random), degree: 'slightly' }] }
      : {}),
    colour: weighed(colours, random),
    consistency: weighed(consistencies, random),
    moisture: weighed(moistures, random),
    boundary: weighed(boundaries, random),
    sampled: true,
    sampleLabel: `${number}/${at + 1}`,
    minutesPerMetre: rounded(2 + 12 * random(), 1),
    ...(random() < 0.15 ? { remarks: remarks[Math.floor(random() * remarks.length)] } : {}),
  }));
}
