import type { PaperMm } from '../../base/units.ts';
import type { Mark } from '../../record/headworks.ts';
import type { Box, Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import type { PhotoImages } from './photos.ts';
import { letter } from '../letters.ts';
import { solid } from '../pens.ts';
import { group, line, polyline, rectangle } from '../shapes.ts';

/** Room for a mark made by hand, and two lines under it. */
export const marksHeight: PaperMm = 14;

/** Who is asked to sign an as-built sheet; a box stays free for each who has not. */
export const askedToSign = ['supervisor', 'contractor', 'client', 'committee'] as const;

/** A drawn mark in its box of 100 by 40, kept in proportion. */
function drawStrokes(mark: Mark, { x, y, width, height }: Box, source: string): Item[] {
  const scale = Math.min(width / 100, height / 40);
  return (mark.strokes ?? [])
    .filter((stroke) => stroke.length > 1)
    .map((stroke) =>
      polyline(
        stroke.map(([px, py]) => [x + px * scale, y + py * scale] as const),
        { ...solid('medium'), cap: 'round', join: 'round' },
        source,
      ),
    );
}

/** The picture of a mark, as large as its box lets it be. */
function drawPicture(mark: Mark, images: PhotoImages, box: Box, source: string): Item[] {
  const image = mark.hash === undefined ? undefined : images[mark.hash];
  if (!image) return [];
  const scale = Math.min(box.width / image.width, box.height / image.height);
  const [width, height] = [image.width * scale, image.height * scale];
  const y = box.y + box.height - height;
  return [
    { kind: 'image', x: box.x, y, width, height, data: image.data, says: mark.name ?? '', source },
  ];
}

/** How somebody signed: what was drawn, or a picture of it. */
export function drawSigned(mark: Mark, images: PhotoImages, box: Box, source: string): Item[] {
  return [...drawPicture(mark, images, box, source), ...drawStrokes(mark, box, source)];
}

/** Whose mark a box has, and as which of the record's. */
interface Asked {
  readonly role: Mark['role'];
  readonly mark: Mark | undefined;
  readonly at: number;
  readonly images: PhotoImages;
}

/** A box for one who signs: mark, name and day, or empty lines to fill in on paper. */
function drawBox(kit: Kit, { role, mark, at, images }: Asked, box: Box): Item {
  const { roles, title, colon } = kit.words;
  const { x, y, width, height } = box;
  const source = mark ? `marks[${at}]` : undefined;
  const foot = y + height;
  const inner = { x: x + 2, y: y + 3.4, width: width - 4, height: height - 9.6 };
  const look = { source, widest: width - 2.4 };
  const who = mark ? [mark.name, mark.on].filter(Boolean).join(', ') : `${title.name}${colon}`;
  const forWhom = mark ? (mark.organisation ?? '') : `${title.markDate}${colon}`;
  return group(
    'mark',
    [
      rectangle(box, { stroke: solid('thin') }),
      ...letter(kit, roles[role], x + 1.2, y + 2.7, { face: 'bold', widest: width - 2.4 }),
      ...(mark ? drawSigned(mark, images, inner, source!) : []),
      line([x + 1.2, foot - 6.1], [x + width - 1.2, foot - 6.1], solid('thin')),
      ...letter(kit, who, x + 1.2, foot - 3.7, look),
      ...letter(kit, forWhom, x + 1.2, foot - 0.9, look),
    ],
    { source },
  );
}

/** Boxes for the marks of those who sign, side by side; in two rows where the place is as high. */
export function drawMarkBoxes(
  kit: Kit,
  marks: readonly Mark[],
  images: PhotoImages,
  { x, y, width, height }: Box,
): Item {
  const columns = askedToSign.length / (height >= 2 * marksHeight ? 2 : 1);
  const each = { width: width / columns, height: (height * columns) / askedToSign.length };
  const boxes = askedToSign.map((role, at) => {
    const index = marks.findIndex((one) => one.role === role);
    const mark = marks[index];
    const [right, down] = [at % columns, Math.floor(at / columns)];
    const box = { x: x + right * each.width, y: y + down * each.height, ...each };
    return drawBox(kit, { role, mark, at: index, images }, box);
  });
  return group('marks', boxes);
}
