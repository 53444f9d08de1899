import { filled } from '../../../base/text/filled.ts';
import type { RecordPath } from '../../../base/recordPath.ts';
import type { Metres, PaperMm } from '../../../base/units.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { plainFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import type { Block } from '../../parts/block.ts';
import { drawForbidden, type PictogramId } from '../../pictograms/pictogram.ts';
import { group } from '../../shapes.ts';
import type { CommitteeKit } from './committeeKit.ts';
import { distances, keptAway, type Distance } from './distances.ts';
import { blockTitle, pitch, rise, said } from './text.ts';

interface Cell {
  readonly sign: PictogramId;
  readonly what: string;
  readonly says: string;
  readonly now?: string;
  readonly source?: RecordPath;
}

/** The nearest of a kind that stands nearer than it may. */
function tooNear({ site }: WellRecord, kind: Distance, leastM: Metres) {
  return (site?.surroundings ?? [])
    .map((one, at) => ({ ...one, path: `site.surroundings[${at}].distance` }))
    .filter((one) => one.kind === kind && one.distance !== undefined && one.distance < leastM)
    .sort((a, b) => a.distance! - b.distance!)[0];
}

function cellOf(kit: CommitteeKit, record: WellRecord, kind: Distance): Cell {
  const { away } = kit.own;
  const { figure, sign } = keptAway[kind];
  const leastM = kit.practice.figures[figure].value;
  const near = tooNear(record, kind, leastM);
  const cell = { sign, what: away.what[kind], says: `${plainFigure(kit, leastM, 0)} m` };
  if (near?.distance === undefined) return cell;
  const now = filled(away.now, { m: plainFigure(kit, near.distance, 0) });
  return { ...cell, now, source: near.path };
}

function drawCell(kit: CommitteeKit, cell: Cell, x: PaperMm, y: PaperMm, width: PaperMm): Item {
  const middle = x + width / 2;
  const look = { anchor: 'middle', widest: width } as const;
  const signSide = kit.spacing.sign;
  const top = y + signSide + 0.6;
  return group('keepAway', [
    drawForbidden(cell.sign, { x: middle - signSide / 2, y, side: signSide }),
    ...said(kit, cell.what, middle, top + rise, look),
    ...said(kit, cell.says, middle, top + rise + 5.2, {
      ...look,
      lettering: 'large',
      face: 'bold',
    }),
    ...said(kit, cell.now ?? '', middle, top + rise + 5.2 + pitch, {
      ...look,
      face: 'bold',
      source: cell.source,
    }),
  ]);
}

/** What may not come near the well, crossed out, each with the distance that the practice asks. */
export function layKeepAway(kit: CommitteeKit, record: WellRecord, width: PaperMm): Block {
  const { away } = kit.own;
  const washing: Cell = { sign: 'washing', what: away.wash, says: away.washing };
  const cells = [...distances.map((kind) => cellOf(kit, record, kind)), washing];
  const each = width / cells.length;
  const nowHeight = cells.some(({ now }) => now !== undefined) ? pitch : 0;
  return {
    height: kit.spacing.title + kit.spacing.sign + 0.6 + pitch + 5.4 + nowHeight,
    draw: (x, y) => [
      ...blockTitle(kit, away.title, x, y, width),
      ...cells.map((cell, at) =>
        drawCell(kit, cell, x + at * each, y + kit.spacing.title + 0.4, each),
      ),
    ],
  };
}
