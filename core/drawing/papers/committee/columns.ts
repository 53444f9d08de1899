import type { PaperMm } from '../../../base/units.ts';
import type { WellRecord } from '../../../record/schema.ts';
import type { Block } from '../../parts/block.ts';
import { layCallWhom, layStopSigns } from './callWhom.ts';
import { layChlorine } from './chlorine.ts';
import { columnGap, type CommitteeKit } from './committeeKit.ts';
import type { CommitteeContent } from './content.ts';
import { layNotes, leastNotes } from './notes.ts';
import { layQuality } from './quality.ts';
import { beside, stackedHeight } from './stack.ts';
import { bannerState, closedState } from './stages.ts';

type Columns = readonly [Block[], Block[]];

/** Every way to share blocks over two columns, their order kept, the first always on the left. */
function sharings(blocks: readonly Block[]): Columns[] {
  const ways = 2 ** Math.max(0, blocks.length - 1);
  return Array.from({ length: ways }, (_, way) => {
    const isRight = (at: number) => at > 0 && Math.floor(way / 2 ** (at - 1)) % 2 === 1;
    return [blocks.filter((_, at) => !isRight(at)), blocks.filter((_, at) => isRight(at))];
  });
}

/** Height of a column, with notes under it where it takes them. */
function withNotes(kit: CommitteeKit, column: readonly Block[], notes: PaperMm): PaperMm {
  return stackedHeight(kit, column) + (column.length === 0 ? 0 : kit.spacing.gap) + notes;
}

function heightWithNotes(kit: CommitteeKit, [left, right]: Columns): PaperMm {
  const [a, b] = [stackedHeight(kit, left), stackedHeight(kit, right)];
  const least = leastNotes(kit);
  return a <= b
    ? Math.max(b, withNotes(kit, left, least))
    : Math.max(a, withNotes(kit, right, least));
}

/** The sharing that takes the least height together with the notes. */
function shared(kit: CommitteeKit, blocks: readonly Block[]): Columns {
  const ways = sharings(blocks);
  const heights = ways.map((way) => heightWithNotes(kit, way));
  return ways[heights.indexOf(Math.min(...heights))]!;
}

/** What a well of its state has to say: a closed one has no water to test or to treat. */
function blocksOf(kit: CommitteeKit, content: CommitteeContent, width: PaperMm): Block[] {
  const { record, guidelines } = content;
  const call = layCallWhom(kit, record, width);
  if (closedState(record) !== undefined) return [call];
  const chlorine = layChlorine(kit, record, width);
  if (isPlanned(record)) return [call, chlorine];
  const quality = layQuality(kit, record, guidelines, width);
  return [quality, call, layStopSigns(kit, width), chlorine];
}

function isPlanned(record: WellRecord): boolean {
  return bannerState(record) === 'laidOut';
}

/**
 * Whom to call, what the water's tests found, chlorine: in two columns, with room for notes under
 * the shorter one, down to the foot of the longer or to a height.
 */
export function layColumns(
  kit: CommitteeKit,
  content: CommitteeContent,
  width: PaperMm,
  height: PaperMm = 0,
): Block {
  const half = (width - columnGap) / 2;
  const columns = shared(kit, blocksOf(kit, content, half));
  const [left, right] = columns;
  const [shorter, longer] =
    stackedHeight(kit, right) <= stackedHeight(kit, left) ? [right, left] : [left, right];
  const room = Math.max(height, stackedHeight(kit, longer)) - withNotes(kit, shorter, 0);
  shorter.push(layNotes(kit, half, Math.max(leastNotes(kit), room)));
  return beside(kit, left, right, half + columnGap);
}
