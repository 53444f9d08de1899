import { formatFixed } from '../../base/numbers.ts';
import type { PaperMm } from '../../base/units.ts';
import { looseCap } from '../../model/tally.ts';
import type { AnnulusZone, StringModel, WellModel } from '../../model/wellModel.ts';
import { depthFigure, litreFigure, plainFigure, rangeFigure } from '../figures.ts';
import type { Kit } from '../kit.ts';
import { lineHeight } from '../pens.ts';
import {
  blockPad,
  blockTitle,
  blockTitleHeight,
  drawRows,
  fittingColumns,
  rowsWithin,
  unfolded,
  type Block,
  type TableColumn,
  type TableRow,
} from './block.ts';
import { stretchesOf } from './section/casingCallouts.ts';

/** What is counted: the hole, what stands in it, and what that holds. */
export type Held = Pick<WellModel, 'bore' | 'strings' | 'annulus' | 'contents' | 'totals'>;

/** A dash where litres are not known: a nought would claim that there are none. */
function litres(kit: Kit, value: number | undefined): string {
  return value === undefined ? '–' : litreFigure(kit, value);
}

/** What was poured over what the ring holds; above 1 the hole may be wider than recorded. */
function share({ litres: computed, pouredLitres: poured }: AnnulusZone, kit: Kit): string {
  return computed && poured !== undefined
    ? formatFixed(poured / computed, 2, kit.words.decimalMark)
    : '–';
}

/** One zone: depths in metres, litres computed and poured, sacks, and the share of both. */
function zoneRow(kit: Kit, zone: AnnulusZone): TableRow {
  const { words } = kit;
  return {
    cells: [
      zone.sanitary ? words.sanitarySeal : words.fills[zone.fill],
      rangeFigure(kit, zone.fromM, zone.toM),
      litres(kit, zone.litres),
      litres(kit, zone.pouredLitres),
      zone.sacks === undefined ? '–' : plainFigure(kit, zone.sacks, 1),
      share(zone, kit),
    ],
    source: zone.path,
  };
}

/** Litres of the open hole, and of what each string holds with the water in it. */
function wholeRows(kit: Kit, { bore, contents, totals }: Held): TableRow[] {
  const { quantities } = kit.words;
  const hole: TableRow[] =
    totals.boreLitres === undefined || bore.depthM === undefined
      ? []
      : [
          {
            cells: [
              quantities.hole,
              rangeFigure(kit, 0, bore.depthM),
              litres(kit, totals.boreLitres),
            ],
            source: 'bore',
          },
        ];
  const inside = contents.flatMap(({ fromM, toM, litres: all, waterLitres }): TableRow[] => [
    { cells: [quantities.contents, rangeFigure(kit, fromM, toM), litres(kit, all)] },
    ...(waterLitres === undefined
      ? []
      : [{ cells: [quantities.waterInside, '', litres(kit, waterLitres)] }]),
  ]);
  return [...hole, ...inside];
}

/** `9 plain casing, 6 screen …` for each string, with the length that the tally gives. */
function stringRow(kit: Kit, string: StringModel): TableRow {
  const { words } = kit;
  const counts = new Map<string, number>();
  for (const { first, count } of stretchesOf(string))
    counts.set(words.pieces[first.kind], (counts.get(words.pieces[first.kind]) ?? 0) + count);
  if (looseCap(string) !== undefined) counts.set(words.pieces.cap, 1);
  const pieces = [...counts]
    .map(([what, count]) =>
      words.quantities.count.replace('{count}', String(count)).replace('{what}', what),
    )
    .join(', ');
  const tally = `${words.quantities.tally} ${depthFigure(kit, string.tallyM)} m`;
  return { cells: [`${tally}${words.colon} ${pieces}`], source: string.path };
}

/**
 * What was computed and what was put in, as many zones as the room holds, and what hole and casing
 * hold; undefined where nothing of it is known.
 */
export function layQuantities(
  kit: Kit,
  model: Held,
  width: PaperMm,
  room: PaperMm = Infinity,
): Block | undefined {
  const { quantities } = kit.words;
  const usual: TableColumn[] = [
    { width: width - 61, anchor: 'start' },
    { width: 20, anchor: 'end' },
    { width: 15, anchor: 'end' },
    { width: 11, anchor: 'end' },
    { width: 8, anchor: 'end' },
    { width: 7, anchor: 'end' },
  ];
  const heads: TableRow = {
    cells: [
      '',
      quantities.range,
      quantities.computed,
      quantities.poured,
      quantities.sacks,
      quantities.share,
    ],
  };
  const zones = model.annulus.map((zone) => zoneRow(kit, zone));
  const whole = wholeRows(kit, model);
  const strings = unfolded(
    kit,
    model.strings.map((one) => stringRow(kit, one)),
    0,
    width,
  );
  if (zones.length + whole.length + strings.length === 0) return undefined;
  const pitch = lineHeight('small');
  const others = blockTitleHeight + (1 + whole.length + strings.length) * pitch + blockPad;
  const columns = fittingColumns(kit, usual, [heads, ...zones, ...whole]);
  const lines = unfolded(kit, zones, 0, columns[0]!.width);
  const rows = [heads, ...rowsWithin(kit, lines, room - others, 0), ...whole];
  return {
    height: blockTitleHeight + (rows.length + strings.length) * pitch + blockPad,
    draw: (x, y) => [
      ...blockTitle(kit, quantities.title, x, y, width),
      ...drawRows(kit, columns, rows, x, y + blockTitleHeight),
      ...drawRows(
        kit,
        [{ width, anchor: 'start' }],
        strings,
        x,
        y + blockTitleHeight + rows.length * pitch,
      ),
    ],
  };
}
