import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Item } from '../../items.ts';
import { widthOf } from '../../letters.ts';
import type { Block } from '../../parts/block.ts';
import type { PictogramId } from '../../pictograms/pictogram.ts';
import { group } from '../../shapes.ts';
import type { CommitteeKit } from './committeeKit.ts';
import { blank, blockTitle, linesOf, pitch, rise, saidLines } from './text.ts';

export interface Paragraph {
  readonly says: string;
  readonly source?: RecordPath;
  readonly bold?: boolean;
  /** A line to be filled in by hand goes on from its end. */
  readonly byHand?: boolean;
}

interface Laid extends Paragraph {
  readonly lines: readonly string[];
}

/** Least width of a line that something is written on. */
const handWidth: PaperMm = 25;

/** The line by hand behind the last words, or under them where too little is left. */
function handLine(
  kit: CommitteeKit,
  { lines }: Laid,
  x: PaperMm,
  top: PaperMm,
  width: PaperMm,
): Item {
  const end = widthOf(kit, lines.at(-1) ?? '', { lettering: 'plain' }) + 1.5;
  const beside = width - end >= handWidth;
  const y = top + (lines.length - (beside ? 1 : 0)) * pitch + rise;
  return blank(beside ? x + end : x, y, beside ? width - end : width);
}

/** Room above a line that is written on. */
const handGap: PaperMm = 1.6;

function heightOf(kit: CommitteeKit, { lines, byHand }: Laid, width: PaperMm): PaperMm {
  if (!byHand) return lines.length * pitch;
  const end = widthOf(kit, lines.at(-1) ?? '', { lettering: 'plain' }) + 1.5;
  return (lines.length + (width - end >= handWidth ? 0 : 1)) * pitch + handGap;
}

/** A titled block of short paragraphs, with its pictogram at the end of the title. */
export function layParagraphs(
  kit: CommitteeKit,
  title: string,
  paragraphs: readonly Paragraph[],
  width: PaperMm,
  sign: PictogramId,
): Block {
  const laid = paragraphs.map((one) => ({
    ...one,
    lines: linesOf(kit, one.says, width, { face: one.bold ? 'bold' : 'regular' }),
  }));
  return {
    height: kit.spacing.title + laid.reduce((sum, one) => sum + heightOf(kit, one, width), 0),
    draw: (x, y) => {
      let top = y + kit.spacing.title;
      const items = laid.flatMap((one) => {
        const { lines, source, bold, byHand } = one;
        const own = top + (byHand ? handGap : 0);
        top += heightOf(kit, one, width);
        const look = { face: bold ? 'bold' : 'regular', source } as const;
        return [
          ...saidLines(kit, lines, x, own, look),
          ...(byHand ? [handLine(kit, one, x, own, width)] : []),
        ];
      });
      return [...blockTitle(kit, title, x, y, width, sign), group('paragraphs', items)];
    },
  };
}
