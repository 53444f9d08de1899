import type { RecordPath } from '../../base/recordPath.ts';
import type { PaperMm } from '../../base/units.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter } from '../letters.ts';
import { letterings, solid } from '../pens.ts';
import { group, line } from '../shapes.ts';

/**
 * Dimension lines in the manner of ISO 129-1 (from memory): slanted strokes at both ends,
 * extension lines that begin a little off the edge and reach past the line, the figure above or
 * beside it.
 */

const off: PaperMm = 0.8;
const past: PaperMm = 1;
const stroke: PaperMm = 0.9;

function tick(x: PaperMm, y: PaperMm): Item {
  return line([x - stroke, y + stroke], [x + stroke, y - stroke], solid('narrow'));
}

interface Dimension {
  readonly from: PaperMm;
  readonly to: PaperMm;
  /** Where the dimension line stands. */
  readonly at: PaperMm;
  /** The edge from which the extension lines come. */
  readonly edge: PaperMm;
  readonly says: string;
  readonly source?: RecordPath | undefined;
}

/** A length across the page, from x to x; the figure stands over the line. */
export function acrossDimension(kit: Kit, dimension: Dimension): Item {
  const { from, to, at, edge, says, source } = dimension;
  const way = Math.sign(at - edge);
  const extensions = [from, to].map((x) =>
    line([x, edge + way * off], [x, at + way * past], solid('hair')),
  );
  return group(
    'dimension',
    [
      ...extensions,
      line([from, at], [to, at], solid('hair')),
      tick(from, at),
      tick(to, at),
      ...letter(kit, says, (from + to) / 2, at - 1.1, { anchor: 'middle', source }),
    ],
    { source },
  );
}

/** A length down the page, from y to y; the figure stands beside the line, away from the edge. */
export function downDimension(kit: Kit, dimension: Dimension): Item {
  const { from, to, at, edge, says, source } = dimension;
  const way = Math.sign(at - edge);
  const extensions = [from, to].map((y) =>
    line([edge + way * off, y], [at + way * past, y], solid('hair')),
  );
  const y = (from + to) / 2 + letterings.small / 2;
  return group(
    'dimension',
    [
      ...extensions,
      line([at, from], [at, to], solid('hair')),
      tick(at, from),
      tick(at, to),
      ...letter(kit, says, at + way * 1.6, y, { anchor: way > 0 ? 'start' : 'end', source }),
    ],
    { source },
  );
}
