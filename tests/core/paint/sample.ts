import type { FaceId } from '../../../core/base/text/metrics.ts';
import { runWidth } from '../../../core/base/text/metrics.ts';
import type {
  Drawing,
  HatchTile,
  Item,
  Page,
  PathItem,
  Segment,
  Stroke,
  TextItem,
} from '../../../core/drawing/items.ts';
import { readFonts } from '../../../electron/files/fonts.ts';

/** Small hand-made drawings for the painters. */
export const fonts = readFonts();

/** Two by two dots: blue, red, red, half-clear green. */
export const picture =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAIAAAACCAYAAABytg0kAAAAFUlEQVQI12NgYPj//z8Dw38GKFEPAERNB3mPiPyYAAAAAElFTkSuQmCC';

export const pen: Stroke = { ink: '#000000', width: 0.35 };

export function box(x: number, y: number, width: number, height: number): Segment[] {
  return [
    ['M', x, y],
    ['L', x + width, y],
    ['L', x + width, y + height],
    ['L', x, y + height],
    ['Z'],
  ];
}

export function line(x1: number, y1: number, x2: number, y2: number, stroke = pen): PathItem {
  return {
    kind: 'path',
    segments: [
      ['M', x1, y1],
      ['L', x2, y2],
    ],
    stroke,
  };
}

export function text(
  letters: string,
  x: number,
  y: number,
  more: { em?: number; face?: FaceId; turn?: number; source?: string } = {},
): TextItem {
  const { em = 4, face = 'regular', ...rest } = more;
  const width = runWidth(fonts.metrics, { text: letters, face }, em);
  return { kind: 'text', x, y, text: letters, face, em, width, ink: '#102030', ...rest };
}

/** One square dot of 1 mm in the left upper part of a tile of 7 × 9 mm. */
export const dotted: HatchTile = {
  width: 7,
  height: 9,
  marks: [{ kind: 'path', segments: box(1, 2, 1, 1), fill: '#000000' }],
};

export function page(items: readonly Item[], width = 210, height = 297): Page {
  return { width, height, items };
}

export function drawing(pages: readonly Page[], more: Partial<Drawing> = {}): Drawing {
  return {
    title: 'Trial sheet',
    subject: 'Items of every kind',
    author: 'The tests',
    language: 'en',
    madeAt: '2024-05-06T07:08:09+02:00',
    paperId: '0123456789abcdef0123456789abcdef',
    pages,
    hatches: { dotted },
    ...more,
  };
}

/** All kinds of item, and the letters that painters most easily get wrong. */
export const everyKind: readonly Item[] = [
  line(20, 20, 120, 20),
  line(20, 25, 120, 25, { ink: '#cc0000', width: 0.7, dash: [3, 1, 0.5, 1], cap: 'round' }),
  {
    kind: 'path',
    segments: box(20, 30, 30, 20),
    stroke: { ...pen, join: 'bevel' },
    fill: '#ffee88',
  },
  {
    kind: 'path',
    segments: [['M', 60, 50], ['C', 60, 30, 90, 30, 90, 50], ['Z']],
    fill: '#88ccff',
  },
  {
    kind: 'region',
    segments: box(20, 60, 30, 30),
    hatch: 'dotted',
    ground: '#f5e6c0',
    source: 'log[0].soil',
  },
  { kind: 'region', segments: box(50, 60, 30, 30), hatch: 'dotted' },
  {
    kind: 'group',
    name: 'log <column>',
    source: 'log[1]',
    clip: { x: 20, y: 95, width: 20, height: 10 },
    items: [
      { kind: 'path', segments: box(15, 90, 30, 20), fill: '#ddffdd', source: 'log[1].to' },
      text('clipped', 18, 100, { source: 'log[1].words' }),
    ],
  },
  text('Depth (12.5 m) — AVATAR Té office ≤ ≥ 3/4 "q" <tag> & [more]?  two blanks', 20, 120),
  text('0123456789 (a) To', 20, 128, { face: 'bold' }),
  text('ƙ ɓ Ṣ', 20, 136, { face: 'fallback', em: 5 }),
  text('down', 150, 120, { turn: 90 }),
  text('aslant', 160, 120, { turn: -30, face: 'bold' }),
  { kind: 'image', x: 20, y: 140, width: 20, height: 10, data: picture, says: 'Four dots' },
  { kind: 'link', box: { x: 20, y: 115, width: 60, height: 8 }, to: { page: 2 } },
  {
    kind: 'link',
    box: { x: 20, y: 125, width: 60, height: 5 },
    to: { address: 'https://example.org/(é)' },
  },
];

/** Two pages of different size and orientation with the same items. */
export const trial = drawing([page(everyKind), page(everyKind, 420, 297.5)]);
