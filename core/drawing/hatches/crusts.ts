import { hatch, type Hatch } from './hatch.ts';
import * as mark from './marks.ts';
import { alternating, at, staggered } from './places.ts';

/**
 * Crusts and rotten rock. The series followed elsewhere has no mark for them: these are our own,
 * and the legend names them.
 */

const sides = { width: 6, height: 4 };
const half = { width: 6, height: 6 };

/** A hard lump, black so that it is never taken for the cross of rotten rock. */
const lozenge = mark.lozenge(2, 1.2, { filled: true });

/** A nodule: a ring pressed flat with an upright through it. */
const nodule = [mark.oval(1.7, 1), mark.dash(1.7, { turn: 90 })];

/** What is left of the rock's grain: an open cross among dashes of clay. */
const remnant = mark.plus(1.5);

export const crusts = {
  laterite: hatch(6, 6, alternating(half, 2, 4, [lozenge, mark.ring(0.8)]), lozenge),
  calcrete: hatch(
    6,
    4,
    nodule.flatMap((part) => at(staggered(sides, 2, 2), part)),
    ...nodule,
  ),
  saprolite: hatch(6, 6, alternating(half, 2, 4, [remnant, mark.dash(1.4)]), remnant),
} satisfies Record<string, Hatch>;
