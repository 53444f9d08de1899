import { filled } from '../../../base/text/filled.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import type { Mark } from '../../../record/headworks.ts';
import type { Item } from '../../items.ts';
import { baseline, letter, lettered, wrapped } from '../../letters.ts';
import { letterings, lineHeight, solid, type Lettering } from '../../pens.ts';
import { group, line, rectangle } from '../../shapes.ts';
import type { LaidOut } from './laidOut.ts';
import { blockGap, bodyWidth, type SheetKit } from './sheetKit.ts';

const width: PaperMm = bodyWidth;
const titleHeight: PaperMm = 5;
const signHeight: PaperMm = 11;
/** A line to write on by hand. */
export const writingLine: PaperMm = 6.5;
const bullet: PaperMm = 3.5;

/** Lettering of the words at a page's foot: the smaller one where the page would not hold all. */
export type FootLettering = Extract<Lettering, 'normal' | 'small'>;

function titled(kit: SheetKit, title: string, x: PaperMm, y: PaperMm): Item[] {
  const look = { lettering: 'normal', face: 'bold', widest: width } as const;
  return [
    ...letter(kit, title, x, y + titleHeight - 1.3, look),
    line([x, y + titleHeight - 0.4], [x + width, y + titleHeight - 0.4], solid('narrow')),
  ];
}

function cautionLines(kit: SheetKit, lettering: FootLettering): string[][] {
  const { each } = kit.own.cautions;
  return each.map((text) => wrapped(kit, text, width - bullet, { lettering }));
}

function drawCautions(kit: SheetKit, lettering: FootLettering, x: PaperMm, y: PaperMm): Item[] {
  let top = y + titleHeight;
  const pitch = lineHeight(lettering);
  const lines = cautionLines(kit, lettering).flatMap((each) => {
    const middle = top + baseline(lettering) - letterings[lettering] / 2;
    const dot = { x: x + 0.6, y: middle - 0.6, width: 1.2, height: 1.2 };
    const items: Item[] = [
      rectangle(dot, { fill: '#000000' }),
      ...lettered(kit, each, x + bullet, top, { lettering }),
    ];
    top += each.length * pitch;
    return items;
  });
  return [...titled(kit, kit.own.cautions.title, x, y), ...lines];
}

function contradictions({ own }: SheetKit, { findings }: WellModel): string[] {
  const count = findings.filter(({ severity }) => severity === 'error').length;
  if (count === 0) return [];
  if (count === 1) return [own.contradictions.one];
  return [filled(own.contradictions.many, { count: String(count) })];
}

/** The most lines that what people wrote may take; the rest is left to the record. */
const mostRemarkLines = 3;

/** What the crew must read: contradictions first, then the remark of the laying out. */
function noteLines(kit: SheetKit, { record, model }: LaidOut, lettering: FootLettering) {
  const bold = contradictions(kit, model).flatMap((text) =>
    wrapped(kit, text, width, { lettering, face: 'bold' }),
  );
  const remark = wrapped(kit, record.layingOut?.remark ?? '', width, { lettering });
  const cut = remark.length > mostRemarkLines;
  const kept = remark.slice(0, mostRemarkLines);
  const said = cut ? [...kept.slice(0, -1), `${kept.at(-1)!.replace(/.{2}$/, '')}…`] : kept;
  return { bold, said };
}

function drawNotes(
  kit: SheetKit,
  laid: LaidOut,
  lettering: FootLettering,
  writing: number,
  x: PaperMm,
  y: PaperMm,
): Item[] {
  if (notesHeight(kit, laid, lettering, writing) === 0) return [];
  const { bold, said } = noteLines(kit, laid, lettering);
  const pitch = lineHeight(lettering);
  const top = y + titleHeight;
  const under = top + bold.length * pitch;
  const free = under + said.length * pitch;
  const source = 'layingOut.remark';
  return [
    ...titled(kit, kit.words.notes, x, y),
    ...lettered(kit, bold, x, top, { lettering, face: 'bold' }),
    ...lettered(kit, said, x, under, { lettering, source }),
    ...Array.from({ length: writing }, (_, at) => {
      const level = free + (at + 1) * writingLine;
      return line([x, level], [x + width, level], solid('thin'));
    }),
  ];
}

/** Width of the words that say who signs, before the room for it. */
const whoWidth: PaperMm = 24;

/** Who signs, and free room for a mark over name and day; a seal may show in all of that room. */
function drawSign(
  kit: SheetKit,
  role: Mark['role'],
  says: string,
  x: PaperMm,
  y: PaperMm,
  wide: PaperMm,
): Item[] {
  const { title, colon } = kit.words;
  const room = { x: x + whoWidth, y, width: wide - whoWidth, height: signHeight };
  const word = (text: string, from: PaperMm) =>
    letter(kit, `${text}${colon}`, room.x + from, y + signHeight - 1.2, { widest: 20 });
  const outline = { stroke: solid('thin') };
  return [
    rectangle({ x, y, width: whoWidth, height: signHeight }, outline),
    ...letter(kit, says, x + 1, y + 3.5, {
      lettering: 'normal',
      face: 'bold',
      widest: whoWidth - 2,
    }),
    group(role, [rectangle(room, outline)]),
    ...word(title.name, 1),
    ...word(title.markDate, 38),
  ];
}

/** Boxes for the driller, who sets out and signs as the contractor, and for who approves. */
function drawSigns(kit: SheetKit, x: PaperMm, y: PaperMm): Item {
  const each = width / 2;
  return group('marks', [
    ...drawSign(kit, 'contractor', kit.own.driller, x, y, each),
    ...drawSign(kit, 'supervisor', kit.words.roles.supervisor, x + each, y, each),
  ]);
}

function cautionsHeight(kit: SheetKit, lettering: FootLettering): PaperMm {
  return titleHeight + cautionLines(kit, lettering).flat().length * lineHeight(lettering);
}

function notesHeight(kit: SheetKit, laid: LaidOut, lettering: FootLettering, writing: number) {
  const { bold, said } = noteLines(kit, laid, lettering);
  if (bold.length + said.length + writing === 0) return 0;
  const lines = (bold.length + said.length) * lineHeight(lettering);
  return titleHeight + lines + writing * writingLine + 1;
}

/** The disclaimer of an organisation, in small letters; none where it has none. */
function disclaimerLines(kit: SheetKit): string[] {
  return wrapped(kit, kit.disclaimer ?? '', width);
}

function disclaimerHeight(kit: SheetKit): PaperMm {
  const lines = disclaimerLines(kit).length;
  return lines === 0 ? 0 : lines * lineHeight('small') + 1;
}

/** What the foot of the last page takes with a number of lines to write on. */
export function footHeight(
  kit: SheetKit,
  laid: LaidOut,
  lettering: FootLettering,
  writing: number,
): PaperMm {
  const words = cautionsHeight(kit, lettering) + notesHeight(kit, laid, lettering, writing);
  return words + disclaimerHeight(kit) + 2 * blockGap + signHeight;
}

/** How many lines to write on stand in a height that is to spare, at most. */
export function linesWithin(spare: PaperMm): number {
  return Math.max(0, Math.floor(spare / writingLine));
}

/** Cautions, notes, disclaimer and boxes for marks, down to the foot of the last page. */
export function drawFoot(
  kit: SheetKit,
  laid: LaidOut,
  lettering: FootLettering,
  writing: number,
  x: PaperMm,
  foot: PaperMm,
): Item {
  const top = foot - footHeight(kit, laid, lettering, writing);
  const notes = top + cautionsHeight(kit, lettering) + blockGap;
  const signs = foot - signHeight;
  const disclaimer = signs - blockGap / 2 - disclaimerHeight(kit);
  return group('foot', [
    group('cautions', drawCautions(kit, lettering, x, top)),
    group('notes', drawNotes(kit, laid, lettering, writing, x, notes)),
    group('disclaimer', lettered(kit, disclaimerLines(kit), x, disclaimer)),
    drawSigns(kit, x, signs),
  ]);
}
