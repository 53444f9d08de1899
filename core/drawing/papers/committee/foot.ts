import type { PaperMm } from '../../../base/units.ts';
import type { Mark } from '../../../record/headworks.ts';
import type { WellRecord } from '../../../record/schema.ts';
import type { Item } from '../../items.ts';
import type { Block } from '../../parts/block.ts';
import { drawSigned } from '../../parts/markBoxes.ts';
import type { PhotoImages } from '../../parts/photos.ts';
import { solid } from '../../pens.ts';
import { group, rectangle } from '../../shapes.ts';
import type { CommitteeKit } from './committeeKit.ts';
import { dayInShort } from './days.ts';
import { keptName, said } from './text.ts';

const asked = ['committee', 'contractor', 'supervisor'] as const;
type Asked = (typeof asked)[number];

const dayWidth: PaperMm = 22.5;

interface Signed {
  readonly marks: readonly Mark[];
  /** Pictures of marks that are at hand, by hash. */
  readonly images: PhotoImages;
}

function drawMark(
  kit: CommitteeKit,
  role: Asked,
  { marks, images }: Signed,
  x: PaperMm,
  y: PaperMm,
  width: PaperMm,
  height: PaperMm,
): Item {
  const { marks: words } = kit.own;
  const index = marks.findIndex((one) => one.role === role);
  const mark = marks[index];
  const inner = { x: x + 24, y: y + 1.4, width: width - 26, height: height - 7 };
  const source = mark ? `marks[${index}]` : undefined;
  const day = mark?.on === undefined ? words.day : dayInShort(kit, mark.on);
  const signed = mark ? drawSigned(mark, images, inner, source!) : [];
  const foot = y + height - 1.6;
  const name = mark?.name ?? words.name;
  const dayAt = x + width - dayWidth;
  return group(
    role,
    [
      rectangle({ x, y, width, height }, { stroke: solid('medium') }),
      ...said(kit, words[role], x + 1.5, y + 4, { face: 'bold', widest: width - 3 }),
      ...(signed.length === 0 ? [] : [group(keptName, signed)]),
      ...said(kit, name, x + 1.5, foot, { widest: width - dayWidth - 2.5 }),
      ...said(kit, day, dayAt, foot, { widest: dayWidth - 1 }),
    ],
    { source },
  );
}

/** Boxes for those who sign, side by side. */
export function layFoot(
  kit: CommitteeKit,
  { marks = [] }: WellRecord,
  images: PhotoImages,
  width: PaperMm,
  height: PaperMm = kit.spacing.marks,
): Block {
  const each = width / asked.length;
  return {
    height,
    draw: (x, y) => {
      const boxes = asked.map((role, at) =>
        drawMark(kit, role, { marks, images }, x + at * each, y, each, height),
      );
      return [group('marks', boxes)];
    },
  };
}
