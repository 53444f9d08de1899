import { filled } from '../../../base/text/filled.ts';
import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { dayFigure } from '../../figures.ts';
import type { Box, Item } from '../../items.ts';
import { letter, widthOf } from '../../letters.ts';
import { solid, type Lettering } from '../../pens.ts';
import { group, rectangle } from '../../shapes.ts';
import type { LaidOut } from './laidOut.ts';
import type { SheetKit } from './sheetKit.ts';

/** The first row holds the village over the spot. */
const rowHeights: readonly PaperMm[] = [12.5, 7.5, 7.5];
export const headHeight: PaperMm = 27.5;

/** What the head cannot read from the record. */
export interface HeadFacts {
  readonly revision?: number;
  readonly madeAt: string;
  readonly sheet: number;
  readonly sheets: number;
}

interface HeadCell {
  readonly label: string;
  readonly value: string;
  readonly width: PaperMm;
  readonly source?: RecordPath;
  readonly lettering?: Lettering;
  readonly bold?: boolean;
  /** Under the value, where there is more to say. */
  readonly more?: string;
}

const falling: readonly Lettering[] = ['title', 'large', 'normal', 'small'];

/** The value in the largest lettering, from the wished one down, in which it fits. */
function fittingLook(kit: SheetKit, text: string, from: Lettering, bold: boolean, room: PaperMm) {
  const face = bold ? 'bold' : 'regular';
  const sizes = falling.slice(falling.indexOf(from));
  const fits = sizes.find((size) => widthOf(kit, text, { lettering: size, face }) <= room);
  return { lettering: fits ?? 'small', face, widest: room } as const;
}

function drawCell(kit: SheetKit, cell: HeadCell, box: Box): Item[] {
  const { lettering = 'normal', bold = false, label, value, source, more } = cell;
  const widest = box.width - 2;
  const x = box.x + 1;
  const foot = box.y + box.height - (lettering === 'normal' ? 1 : more === undefined ? 2 : 5);
  const under = fittingLook(kit, more ?? '', 'normal', false, widest);
  return [
    rectangle(box, { stroke: solid('thin') }),
    ...letter(kit, label, x, box.y + 2.6, { widest }),
    ...letter(kit, value, x, foot, { ...fittingLook(kit, value, lettering, bold, widest), source }),
    ...letter(kit, more ?? '', x, box.y + box.height - 0.9, { ...under, source: 'site.spot' }),
  ];
}

function drawRow(kit: SheetKit, cells: readonly HeadCell[], box: Box): Item[] {
  let left = box.x;
  return cells.flatMap((cell) => {
    const own = { ...box, x: left, width: cell.width };
    left += cell.width;
    return drawCell(kit, cell, own);
  });
}

/** What the completion was taken from: the record as it is, or the proposal that it kept. */
function basisOf({ own }: SheetKit, { proposal }: LaidOut): string {
  if (!proposal) return own.head.fromRecord;
  return filled(own.head.asProposed, { day: proposal.takenOn ?? '–' });
}

function rowsOf(kit: SheetKit, laid: LaidOut, facts: HeadFacts): HeadCell[][] {
  const { own, practice, words } = kit;
  const { identity = {}, site = {} }: WellRecord = laid.record;
  const { title } = words;
  const place = site.village ?? identity.name;
  const revision = facts.revision === undefined ? '–' : String(facts.revision);
  const named = `${practice.name[words.language]}, ${practice.version}`;
  return [
    [
      {
        label: title.number,
        value: identity.number ?? '–',
        width: 50,
        source: 'identity.number',
        lettering: 'title',
        bold: true,
      },
      {
        label: own.head.place,
        value: place ?? '–',
        width: 74,
        source: 'site.village',
        lettering: 'large',
        bold: true,
        ...(site.spot !== undefined && { more: site.spot }),
      },
      { label: title.documentType, value: own.title, width: 56, lettering: 'large', bold: true },
    ],
    [
      {
        label: title.contractor,
        value: identity.contractor ?? '',
        width: 50,
        source: 'identity.contractor',
      },
      {
        label: own.head.driller,
        value: identity.driller ?? '',
        width: 38,
        source: 'identity.driller',
      },
      {
        label: words.roles.supervisor,
        value: identity.supervisor ?? '',
        width: 42,
        source: 'identity.supervisor',
      },
      { label: own.head.date, value: '', width: 50 },
    ],
    [
      { label: own.head.practice, value: named, width: 88, source: 'identity.practice' },
      { label: own.head.basis, value: basisOf(kit, laid), width: 42 },
      { label: title.revision, value: revision, width: 14 },
      { label: title.date, value: dayFigure(facts.madeAt), width: 22 },
      { label: title.sheet, value: `${facts.sheet} ${words.of} ${facts.sheets}`, width: 14 },
    ],
  ];
}

/** Who, where, by which practice and from which revision; 180 mm wide. */
export function drawHead(
  kit: SheetKit,
  laid: LaidOut,
  facts: HeadFacts,
  x: PaperMm,
  y: PaperMm,
): Item {
  let top = y;
  const cells = rowsOf(kit, laid, facts).flatMap((row, at) => {
    const box = { x, y: top, width: 180, height: rowHeights[at]! };
    top += rowHeights[at]!;
    return drawRow(kit, row, box);
  });
  return group('titleBlock', cells);
}
