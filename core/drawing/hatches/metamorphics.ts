import { hatch, type Hatch } from './hatch.ts';
import { folded, leaning, wavy } from './lines.ts';
import * as mark from './marks.ts';
import { at, inTurn, staggered } from './places.ts';

/** Rocks remade by heat and pressure. FGDC 700 series in words. */

const gneissDash = mark.dash(1.1);

/** A bow, where the convention strings dots along one: sand has dots alone. */
const bow = mark.ripple(2, 1, 0.4);

const needle = mark.lozenge(1.7, 0.42, { filled: true });

export const metamorphics = {
  gneiss: hatch(
    12,
    6,
    [
      wavy(12, 1, 4, 0.55),
      wavy(12, 1.7, 4, 0.55),
      wavy(12, 4, 4, 0.55, 1),
      wavy(12, 4.7, 4, 0.55, 1),
      ...inTurn(
        [
          [1.6, 2.9],
          [4.4, 2.8],
          [7.6, 2.9],
          [10.4, 2.8],
          [1.2, 5.9],
          [4.6, 5.8],
          [7.2, 5.9],
          [10.6, 5.8],
        ],
        [mark.turned(gneissDash, -12), mark.turned(gneissDash, 16)],
      ),
    ],
    mark.ripple(2.2, 2, 0.4),
  ),
  schist: hatch(
    6,
    4,
    [
      wavy(6, 0.6, 2, 0.3),
      wavy(6, 1.6, 2, 0.4, 0.5),
      wavy(6, 2.7, 2, 0.3, 1),
      wavy(6, 3.5, 2, 0.4, 0.4),
    ],
    mark.ripple(2.2, 2, 0.35),
  ),
  quartzite: hatch(
    6,
    6,
    [
      mark.moved(bow, [1.7, 1.2]),
      mark.moved(bow, [4.7, 4.2]),
      ...at(
        [
          [4, 1.3],
          [5.4, 0.6],
          [3.6, 2.4],
          [0.8, 2.6],
          [2.4, 3.9],
          [0.9, 4.9],
          [3, 5.5],
        ],
        mark.dot(),
      ),
    ],
    bow,
  ),
  slate: hatch(4, 4, leaning(4, 4, 0.8, 1.6), mark.dash(1.7, { turn: -68 })),
  phyllite: hatch(6, 3, [folded(6, 0.75, 1), folded(6, 2.25, 1)], mark.ripple(1.8, 4, 0.3)),
  amphibolite: hatch(
    6,
    4,
    inTurn(staggered({ width: 6, height: 4 }, 2, 4), [
      mark.turned(needle, -12),
      mark.turned(needle, 14),
    ]),
    needle,
  ),
} satisfies Record<string, Hatch>;
