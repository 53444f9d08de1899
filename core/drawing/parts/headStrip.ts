import type { PaperMm } from '../../base/units.ts';
import type { Box, Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter, widthOf, type TextLook } from '../letters.ts';
import type { Paper } from '../paper.ts';
import { letterings, solid, type Lettering } from '../pens.ts';
import { group, rectangle } from '../shapes.ts';
import type { SheetWords } from '../words/words.ts';

/** A picture of a template, by its size in pixels. */
export interface Logo {
  /** PNG or JPEG as a data URL. */
  readonly data: string;
  readonly width: number;
  readonly height: number;
  /** For those who cannot see it. */
  readonly says: string;
}

/** Labels of the title block that an organisation may word its own way. */
export const labelIds = [
  'client',
  'programme',
  'contract',
  'contractor',
  'supervisor',
  'approval',
  'number',
  'titleField',
] as const;
export type LabelId = (typeof labelIds)[number];

/** What an organisation has on its papers. */
export interface Template {
  /** Names, the first set large. */
  readonly name: readonly string[];
  readonly address: readonly string[];
  readonly logos: readonly Logo[];
  readonly labels: Readonly<Partial<Record<LabelId, string>>>;
  /** In place of the sheet's own. */
  readonly disclaimer?: string;
}

/** Lines of a name, and of an address, that a strip has room for. */
export const mostLines = 3;
/** Logos that a strip has room for. */
export const mostLogos = 3;

/** How a head strip is lettered, and how high it is. */
export interface StripLook {
  readonly height: PaperMm;
  /** Round the logos. */
  readonly pad: PaperMm;
  /** Letterings of the first line of the name, from the one that is wished for down. */
  readonly first: readonly Lettering[];
  /** Of all other lines. */
  readonly rest: Lettering;
  /** Distances of baselines: of the second line of the name, of the others, of the address. */
  readonly second: PaperMm;
  readonly pitch: PaperMm;
  readonly addressPitch: PaperMm;
}

/** Over a drawing. */
export const drawingStrip: StripLook = {
  height: 14,
  pad: 1.5,
  first: ['large', 'normal', 'small'],
  rest: 'small',
  second: 3.9,
  pitch: 3.1,
  addressPitch: 3.8,
};

/** Over a sheet that is read at arm's length: nothing under 11 pt. */
export const readStrip: StripLook = {
  height: 16,
  pad: 1.5,
  first: ['large', 'plain'],
  rest: 'plain',
  second: 4.8,
  pitch: 4.4,
  addressPitch: 4.6,
};

/** Heights of a low strip of one, two and three lines. */
const lowHeights: readonly PaperMm[] = [7.6, 11.4, 16];

/** The same, no higher than the lines of a template ask: name and address in a row where each is one. */
export function lowStrip({ name, address }: Template): StripLook {
  const lines = Math.min(mostLines, Math.max(name.length, address.length));
  return { ...readStrip, height: lowHeights[lines - 1] ?? readStrip.height, pad: 0.7 };
}

const pad: PaperMm = 1.5;
/** A wide logo is shrunk to this. */
const widestLogo: PaperMm = 30;
/** Between name and address, at least. */
const between: PaperMm = 4;

/** The paper under its head strip. */
export function underStrip(paper: Paper, look: StripLook = drawingStrip): Paper {
  const { x, y, width, height } = paper.frame;
  const frame = { x, y: y + look.height, width, height: height - look.height };
  return { ...paper, frame };
}

/** Logos from the left, as high as the strip lets them be; gives where they end. */
function drawLogos(
  logos: readonly Logo[],
  look: StripLook,
  { x, y, height }: Box,
): { items: Item[]; end: PaperMm } {
  const high = height - 2 * look.pad;
  let left = x + pad;
  const items = logos.slice(0, mostLogos).map((logo): Item => {
    const scale = Math.min(high / logo.height, widestLogo / logo.width);
    const own = { width: logo.width * scale, height: logo.height * scale };
    const item = { kind: 'image', x: left, y: y + (height - own.height) / 2, ...own } as const;
    left += own.width + pad;
    return { ...item, data: logo.data, says: logo.says };
  });
  return { items, end: left };
}

/** A line of the strip and how far its baseline lies under that of the first. */
interface StripLine {
  readonly text: string;
  readonly under: PaperMm;
  readonly look: TextLook & { readonly lettering: Lettering };
}

function nameLines(kit: Kit, name: readonly string[], look: StripLook, room: PaperMm): StripLine[] {
  return name.slice(0, mostLines).map((text, at) => {
    if (at > 0)
      return { text, under: look.second + (at - 1) * look.pitch, look: { lettering: look.rest } };
    const fits = look.first.find(
      (lettering) => widthOf(kit, text, { lettering, face: 'bold' }) <= room,
    );
    return { text, under: 0, look: { lettering: fits ?? look.first.at(-1)!, face: 'bold' } };
  });
}

function addressLines(address: readonly string[], look: StripLook): StripLine[] {
  return address.slice(0, mostLines).map((text, at) => ({
    text,
    under: at * look.addressPitch,
    look: { lettering: look.rest, anchor: 'end' },
  }));
}

/** Lines halfway between the strip's edges, each cut where it is wider than its room. */
function drawLines(
  kit: Kit,
  lines: readonly StripLine[],
  x: PaperMm,
  { y, height }: Box,
  widest: PaperMm,
): Item[] {
  const [first] = lines;
  if (!first) return [];
  const capitals = letterings[first.look.lettering];
  const base = y + (height - capitals - lines.at(-1)!.under) / 2 + capitals;
  return lines.flatMap(({ text, under, look }) =>
    letter(kit, text, x, base + under, { ...look, widest }),
  );
}

/** How wide lines are as they are wished for. */
function widest(kit: Kit, lines: readonly StripLine[]): PaperMm {
  return Math.max(0, ...lines.map(({ text, look }) => widthOf(kit, text, look)));
}

/**
 * Name at the left and address at the right of the logos, over the frame of `paper`. Where both are
 * long, the name is set smaller first, and each has half of the room at least.
 */
export function drawHeadStrip(
  kit: Kit,
  template: Template,
  paper: Paper,
  look: StripLook = drawingStrip,
): Item {
  const { frame } = paper;
  const box = { ...frame, y: frame.y - look.height, height: look.height };
  const logos = drawLogos(template.logos, look, box);
  const right = box.x + box.width - pad;
  const room = right - logos.end - between;
  const address = addressLines(template.address, look);
  const wished = widest(kit, nameLines(kit, template.name, look, room));
  const forAddress = Math.min(widest(kit, address), Math.max(room / 2, room - wished));
  const forName = room - forAddress;
  const name = nameLines(kit, template.name, look, forName);
  return group('headStrip', [
    ...logos.items,
    ...drawLines(kit, name, logos.end, box, forName),
    ...drawLines(kit, address, right, box, forAddress),
    rectangle(box, { stroke: solid('frame') }),
  ]);
}

/** The words of a sheet with the labels of an organisation. */
export function labelled(words: SheetWords, template: Template | undefined): SheetWords {
  return template ? { ...words, title: { ...words.title, ...template.labels } } : words;
}
