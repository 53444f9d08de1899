import type { PaperMm } from '../../base/units.ts';
import type { Box, Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter } from '../letters.ts';
import type { Paper } from '../paper.ts';
import { lineHeight, solid } from '../pens.ts';
import { group, rectangle } from '../shapes.ts';

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

const stripHeight: PaperMm = 14;
const pad: PaperMm = 1.5;
/** A wide logo is shrunk to this. */
const widestLogo: PaperMm = 30;

/** The paper under its head strip. */
export function underStrip(paper: Paper): Paper {
  const { x, y, width, height } = paper.frame;
  const frame = { x, y: y + stripHeight, width, height: height - stripHeight };
  return { ...paper, frame };
}

/** Logos from the left, as high as the strip lets them be; gives where they end. */
function drawLogos(logos: readonly Logo[], { x, y }: Box): { items: Item[]; end: PaperMm } {
  const high = stripHeight - 2 * pad;
  let left = x + pad;
  const items = logos.slice(0, mostLogos).map((logo): Item => {
    const scale = Math.min(high / logo.height, widestLogo / logo.width);
    const [width, height] = [logo.width * scale, logo.height * scale];
    const top = y + (stripHeight - height) / 2;
    const item = { kind: 'image', x: left, y: top, width, height } as const;
    left += width + pad;
    return { ...item, data: logo.data, says: logo.says };
  });
  return { items, end: left };
}

/** Name at the left and address at the right of the logos, over the frame of `paper`. */
export function drawHeadStrip(kit: Kit, template: Template, paper: Paper): Item {
  const { frame } = paper;
  const box = { x: frame.x, y: frame.y - stripHeight, width: frame.width, height: stripHeight };
  const logos = drawLogos(template.logos, box);
  const right = box.x + box.width - pad;
  const room = (right - logos.end - pad) / 2;
  const [first = '', ...more] = template.name.slice(0, mostLines);
  const pitch = lineHeight('small');
  const name = [
    ...letter(kit, first, logos.end, box.y + 5, { lettering: 'large', face: 'bold', widest: room }),
    ...more.flatMap((one, at) =>
      letter(kit, one, logos.end, box.y + 8.6 + at * pitch, { widest: room }),
    ),
  ];
  const address = template.address
    .slice(0, mostLines)
    .flatMap((one, at) =>
      letter(kit, one, right, box.y + 3.6 + at * (pitch + 0.9), { anchor: 'end', widest: room }),
    );
  return group('headStrip', [
    ...logos.items,
    ...name,
    ...address,
    rectangle(box, { stroke: solid('frame') }),
  ]);
}
