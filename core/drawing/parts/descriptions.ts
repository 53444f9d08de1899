import type { PaperMm } from '../../base/units.ts';
import type { Stratum } from '../../model/wellModel.ts';
import { describeStratum } from '../describe.ts';
import type { Item } from '../items.ts';
import { again, type Kit } from '../kit.ts';
import { spread } from '../labels/spread.ts';
import { lettered, wrapped } from '../letters.ts';
import { lineHeight, solid } from '../pens.ts';
import { shownMiddle, shownPart, yAt } from '../scale.ts';
import { group, polyline } from '../shapes.ts';
import { wordsRoom, type View } from './columns.ts';

/** Room for the leader between log and words, within the words' column. */
const leaderWidth: PaperMm = 5;
const inset: PaperMm = 1;
const gap: PaperMm = 0.5;

interface Block {
  readonly stratum: Stratum;
  readonly lines: readonly string[];
  readonly middle: PaperMm;
  readonly height: PaperMm;
}

/** The words of a stratum, wrapped. */
function linesOf(kit: Kit, stratum: Stratum, width: PaperMm): string[] {
  return wrapped(kit, describeStratum(stratum, kit.words), width);
}

/** The words of each stratum that a page shows, wrapped, with where they would best stand. */
function blocksOf(kit: Kit, strata: readonly Stratum[], view: View, mostLines: number): Block[] {
  if (view.columns.description.width === 0) return [];
  const width = view.columns.description.width - leaderWidth - inset;
  return strata.flatMap((stratum) => {
    const part = shownPart(view.axis, stratum.fromM, stratum.toM);
    if (!part) return [];
    const all = again(kit, `lines of ${stratum.path}`, linesOf, stratum, width);
    const lines = all.length > mostLines ? shortened(all, mostLines) : all;
    const middle = yAt(view.axis, shownMiddle(view.axis, part));
    return [{ stratum, lines, middle, height: lines.length * lineHeight('small') + gap }];
  });
}

/** The last line gives two letters to the mark that says that more was written. */
function shortened(lines: readonly string[], most: number): string[] {
  const kept = lines.slice(0, most);
  return [...kept.slice(0, -1), `${kept.at(-1)!.replace(/.{2}$/, '')}…`];
}

/** Height that all descriptions of a page take in full. */
export function descriptionsHeight(kit: Kit, strata: readonly Stratum[], view: View): PaperMm {
  return blocksOf(kit, strata, view, Infinity).reduce((sum, { height }) => sum + height, 0);
}

/** Whether all descriptions of a page can stand in full beside each other. */
export function descriptionsFit(kit: Kit, strata: readonly Stratum[], view: View): boolean {
  const { top, foot } = wordsRoom(view);
  return descriptionsHeight(kit, strata, view) <= foot - top;
}

/** Strata whose description had to be shortened on this page, so that it can stand elsewhere. */
export function shortenedStrata(kit: Kit, strata: readonly Stratum[], view: View): Stratum[] {
  const { most } = placedBlocks(kit, strata, view);
  const whole = blocksOf(kit, strata, view, Infinity);
  return whole.filter(({ lines }) => lines.length > most).map(({ stratum }) => stratum);
}

/** As many lines of each description as let all of them stand, and where their tops come. */
function placedBlocks(kit: Kit, strata: readonly Stratum[], view: View) {
  const { top, foot } = wordsRoom(view);
  for (const most of [Infinity, 8, 5, 4, 3, 2, 1]) {
    const blocks = blocksOf(kit, strata, view, most);
    const tops = spread(blocks, top, foot);
    if (tops) return { blocks, tops, most };
  }
  return { blocks: [], tops: [], most: 0 };
}

/** Descriptions spread apart beside the log, each tied to its interval by a leader. */
export function drawDescriptions(kit: Kit, strata: readonly Stratum[], view: View): Item {
  const { x } = view.columns.description;
  const { blocks, tops } = placedBlocks(kit, strata, view);
  const items = blocks.map(({ stratum, lines, middle }, at) => {
    const top = tops[at]! + gap / 2;
    const tie = top + lineHeight('small') / 2;
    const height = lines.length * lineHeight('small');
    const end = lines.length === 1 ? tie : Math.min(Math.max(middle, tie), top + height - 1.2);
    return group(
      'description',
      [
        polyline(
          [
            [x, middle],
            [x + 1, middle],
            [x + leaderWidth - 1.4, end],
            [x + leaderWidth - 0.6, end],
          ],
          solid('thin'),
          stratum.path,
        ),
        ...lettered(kit, lines, x + leaderWidth, top, { source: stratum.path }),
      ],
      { source: stratum.path },
    );
  });
  return group('descriptions', items);
}
