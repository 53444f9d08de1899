import type { RecordPath } from '../../base/recordPath.ts';
import type { PaperMm } from '../../base/units.ts';
import type { Kit } from '../kit.ts';
import { lettered, wrapped } from '../letters.ts';
import { lineHeight } from '../pens.ts';
import { blockPad, blockTitle, blockTitleHeight, type Block } from './block.ts';

export interface Note {
  readonly text: string;
  readonly source?: RecordPath | undefined;
}

/**
 * A block of notes, each wrapped to the width. What does not stand in `room` is counted in a last
 * line, so that nothing is left out in silence. Undefined where there is nothing to say.
 */
export function layNotes(
  kit: Kit,
  title: string,
  notes: readonly Note[],
  width: PaperMm,
  room: PaperMm,
): Block | undefined {
  if (notes.length === 0) return undefined;
  const pitch = lineHeight('small');
  const most = Math.floor((room - blockTitleHeight - blockPad) / pitch);
  const kept: { lines: string[]; source: RecordPath | undefined }[] = [];
  let count = 0;
  for (const { text, source } of notes) {
    const lines = wrapped(kit, text, width);
    const spare = kept.length === notes.length - 1 ? 0 : 1;
    if (count + lines.length + spare > most) break;
    kept.push({ lines, source });
    count += lines.length;
  }
  if (kept.length < notes.length) {
    const left = `${notes.length - kept.length} ${kit.words.moreFindings}`;
    kept.push({ lines: [left], source: undefined });
    count += 1;
  }
  return {
    height: blockTitleHeight + count * pitch + blockPad,
    draw: (x, y) => {
      let top = y + blockTitleHeight;
      return [
        ...blockTitle(kit, title, x, y, width),
        ...kept.flatMap(({ lines, source }) => {
          const items = lettered(kit, lines, x, top, { source });
          top += lines.length * pitch;
          return items;
        }),
      ];
    },
  };
}
