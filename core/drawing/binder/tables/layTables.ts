import { flowed } from '../../parts/flow/flow.ts';
import type { Piece } from '../../parts/flow/part.ts';
import { gapPiece, textPieces } from '../../parts/flow/pieces.ts';
import type { Page } from '../../items.ts';
import type { BinderContent, BinderKit, LaidPart, PartMark, Places } from '../binder.ts';
import { binderPage, bodyOf, partTitle, partTitleHeight, under } from '../page.ts';
import { depthColumns, yieldColumns } from './columns.ts';
import { districtTable } from './districtTable.ts';
import { wellTable } from './wellTable.ts';

/** Depths, levels, states, yields and pumps: by district, then well by well. */
export function layTables(kit: BinderKit, content: BinderContent, places: Places): LaidPart {
  const { tables, parts } = kit.own;
  const body = bodyOf(kit);
  const { width } = body;
  const notes = (says: readonly string[]) =>
    [gapPiece(2.4), ...says.flatMap((one) => textPieces(kit, one, width))] as const;
  const all: readonly (readonly [title: string, pieces: readonly Piece[]])[] = [
    [
      tables.byDistrict,
      [
        ...districtTable(kit, content, places, width),
        ...notes([`${tables.outcomes} ${tables.medianSays} ${tables.marks}`]),
      ],
    ],
    [
      tables.depths,
      [
        ...wellTable(kit, content, places, depthColumns(kit), width),
        ...notes([`${tables.planned} ${tables.medianSays}`]),
      ],
    ],
    [
      tables.yields,
      [
        ...wellTable(kit, content, places, yieldColumns(kit), width),
        ...notes([`${tables.medianSays} ${tables.marks}`]),
      ],
    ],
  ];
  const pages: Page[] = [];
  const marks: PartMark[] = [];
  for (const [title, pieces] of all) {
    marks.push({ title, page: pages.length });
    const laid = flowed(pieces, [under(body, partTitleHeight)]);
    const name = `${parts.tables}${kit.words.colon} ${title}`;
    pages.push(
      ...laid.map((items) =>
        binderPage(kit, content, parts.tables, [partTitle(kit, name, body), ...items]),
      ),
    );
  }
  return { pages, marks };
}
