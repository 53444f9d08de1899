import type { RecordPath } from '../../base/recordPath.ts';
import type { PaperMm } from '../../base/units.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter, widthOf } from '../letters.ts';
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

/** Kept between a figure and the lines beside it. */
const clear: PaperMm = 0.6;
const beside: PaperMm = 1.6;
/** From the line to the baseline over it: tails stay clear of the strokes. */
const over: PaperMm = 1.35;

/** A length across the page. */
interface AcrossDimension extends Dimension {
  /** How far lines of other dimensions reach to the right; the own line's end where absent. */
  readonly past?: PaperMm;
}

/**
 * A length across the page, from x to x. The figure stands over the line; where that is too short
 * for it, the line goes on to the right and the figure stands at its end.
 */
export function acrossDimension(kit: Kit, dimension: AcrossDimension): Item {
  const { from, to, at, edge, says, source, past: reach = to } = dimension;
  const way = Math.sign(at - edge);
  const extensions = [from, to].map((x) =>
    line([x, edge + way * off], [x, at + way * past], solid('hair')),
  );
  const fits = widthOf(kit, says) + 2 * clear <= to - from;
  const end = fits ? to : Math.max(reach, to) + beside - clear;
  const figure = fits
    ? letter(kit, says, (from + to) / 2, at - over, { anchor: 'middle', source })
    : letter(kit, says, end + clear, at + letterings.small / 2, { source });
  return group(
    'dimension',
    [
      ...extensions,
      line([from, at], [end, at], solid('hair')),
      tick(from, at),
      tick(to, at),
      ...figure,
    ],
    { source },
  );
}

/** A length down the page. */
interface DownDimension extends Dimension {
  /** Where the figure's middle stands; that of the line where absent. */
  readonly middle?: PaperMm;
}

/** A length down the page, from y to y; the figure stands beside the line, away from the edge. */
export function downDimension(kit: Kit, dimension: DownDimension): Item {
  const { from, to, at, edge, says, source, middle = (from + to) / 2 } = dimension;
  const way = Math.sign(at - edge);
  const extensions = [from, to].map((y) =>
    line([edge + way * off, y], [at + way * past, y], solid('hair')),
  );
  const y = middle + letterings.small / 2;
  return group(
    'dimension',
    [
      ...extensions,
      line([at, from], [at, to], solid('hair')),
      tick(at, from),
      tick(at, to),
      ...letter(kit, says, at + way * beside, y, { anchor: way > 0 ? 'start' : 'end', source }),
    ],
    { source },
  );
}
