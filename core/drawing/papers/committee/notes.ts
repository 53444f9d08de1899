import type { PaperMm } from '../../../base/units.ts';
import type { Block } from '../../parts/block.ts';
import { solid } from '../../pens.ts';
import { group, line } from '../../shapes.ts';
import type { CommitteeKit } from './committeeKit.ts';
import { blockTitle } from './text.ts';

const notePitch: PaperMm = 6.2;

/** Least height in which something can be written by hand. */
export function leastNotes({ spacing }: CommitteeKit): PaperMm {
  return spacing.title + notePitch;
}

/** Room to write in, as high as it is given. */
export function layNotes(kit: CommitteeKit, width: PaperMm, height: PaperMm): Block {
  const count = Math.max(1, Math.floor((height - kit.spacing.title) / notePitch + 1e-9));
  return {
    height: Math.max(height, leastNotes(kit)),
    draw: (x, y) => [
      ...blockTitle(kit, kit.own.notes, x, y, width),
      group(
        'notes',
        Array.from({ length: count }, (_, at) => {
          const level = y + kit.spacing.title + (at + 1) * notePitch - 0.6;
          return line([x, level], [x + width, level], solid('thin'));
        }),
      ),
    ],
  };
}
