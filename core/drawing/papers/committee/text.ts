import type { PaperMm } from '../../../base/units.ts';
import type { Item } from '../../items.ts';
import { letter, wrapped, type TextLook } from '../../letters.ts';
import { solid } from '../../pens.ts';
import { drawPictogram, type PictogramId } from '../../pictograms/pictogram.ts';
import { group, line } from '../../shapes.ts';
import type { CommitteeKit } from './committeeKit.ts';

/** Distance of the baselines of plain lettering, and from the top of a line to its baseline. */
export const pitch: PaperMm = 4.35;
export const rise: PaperMm = 3.4;

/** What stays as it is where a sheet is mirrored: a line of text, a mark made by hand. */
export const keptName = 'kept';

/** One line of text at a baseline. Its runs stay together where the sheet is mirrored. */
export function said(
  kit: CommitteeKit,
  text: string,
  x: PaperMm,
  y: PaperMm,
  look: TextLook = {},
): Item[] {
  const runs = letter(kit, text, x, y, { lettering: 'plain', ...look });
  return runs.length === 0 ? [] : [group(keptName, runs)];
}

export function linesOf(
  kit: CommitteeKit,
  text: string,
  width: PaperMm,
  look: TextLook = {},
): string[] {
  return wrapped(kit, text, width, { lettering: 'plain', ...look });
}

/** Lines of plain lettering under each other; `top` is the upper edge of the first. */
export function saidLines(
  kit: CommitteeKit,
  lines: readonly string[],
  x: PaperMm,
  top: PaperMm,
  look: TextLook = {},
): Item[] {
  return lines.flatMap((text, at) => said(kit, text, x, top + at * pitch + rise, look));
}

/** A line to be filled in by hand. */
export function blank(x: PaperMm, y: PaperMm, width: PaperMm): Item {
  return line([x, y + 0.6], [x + width, y + 0.6], solid('narrow'));
}

const signSide: PaperMm = 5.8;

/** The title of a block under a heavy rule, with its pictogram at the end of the line. */
export function blockTitle(
  kit: CommitteeKit,
  title: string,
  x: PaperMm,
  y: PaperMm,
  width: PaperMm,
  sign?: PictogramId,
): Item[] {
  const place = { x: x + width - signSide, y: y + 0.8, side: signSide };
  const widest = sign === undefined ? width : width - signSide - 1;
  return [
    line([x, y + 0.35], [x + width, y + 0.35], solid('frame')),
    ...said(kit, title, x, y + 5.2, { lettering: 'large', face: 'bold', widest }),
    ...(sign === undefined ? [] : [drawPictogram(sign, place)]),
  ];
}
