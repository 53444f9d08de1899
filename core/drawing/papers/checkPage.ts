import type { Language } from '../../base/language.ts';
import type { Fonts } from '../../base/text/metrics.ts';
import type { PaperMm } from '../../base/units.ts';
import type { Material } from '../../record/materials.ts';
import { plainFigure } from '../figures.ts';
import { hatchFor, hatchForFill } from '../hatches/index.ts';
import type { Box, Drawing, Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter, lettered, wrapped, type TextLook } from '../letters.ts';
import { paperOf, type PaperName } from '../paper.ts';
import { lineHeight, pens, solid, type Pen } from '../pens.ts';
import { corners, group, hatched, line, polyline, rectangle } from '../shapes.ts';
import { usedHatches } from '../usedHatches.ts';
import { sheetWordsIn } from '../words/languages.ts';
import { checkPageWordsIn, type CheckPageWords } from './checkPage/words.ts';

export interface CheckPageOptions {
  readonly paper: PaperName;
  readonly fonts: Fonts;
  readonly language?: Language;
  /** ISO 8601 moment at which the page is made. */
  readonly madeAt: string;
  /** 32 hexadecimal digits. */
  readonly paperId: string;
}

interface CheckKit extends Kit {
  readonly own: CheckPageWords;
}

/** Width of what is read, in the middle of the frame. */
const contentWidth: PaperMm = 160;
const checked: PaperMm = 100;
const cornerArm: PaperMm = 10;

/** An L at each corner of the frame. */
function drawCorners({ x, y, width, height }: Box): Item {
  const marks = corners({ x, y, width, height }).map(([cx, cy]) => {
    const across = cx === x ? cornerArm : -cornerArm;
    const down = cy === y ? cornerArm : -cornerArm;
    return polyline(
      [
        [cx + across, cy],
        [cx, cy],
        [cx, cy + down],
      ],
      solid('medium'),
    );
  });
  return group('corners', marks);
}

/** Title, size of the paper, and what to do: the foot of it is where the rest may begin. */
function drawSaid(kit: CheckKit, paper: PaperName, x: PaperMm, y: PaperMm): [Item, PaperMm] {
  const { title, measure, mend, marks } = kit.own;
  const look: TextLook = { lettering: 'large' };
  const items: Item[] = [
    ...letter(kit, title, x, y, { lettering: 'title', face: 'bold' }),
    ...letter(kit, paper, x + contentWidth, y, { lettering: 'title', face: 'bold', anchor: 'end' }),
  ];
  let foot = y + 5;
  for (const [at, text] of [measure, mend, marks].entries()) {
    const own: TextLook = at === 0 ? { ...look, face: 'bold' } : look;
    const lines = wrapped(kit, text, contentWidth, own);
    items.push(...lettered(kit, lines, x, foot, own));
    foot += lines.length * lineHeight('large') + 2.5;
  }
  return [group('said', items), foot];
}

/** Ticks every 10 mm; the end marks are as wide as the line, and stand within the length. */
function drawAcross(kit: CheckKit, x: PaperMm, y: PaperMm): Item {
  const inset = pens.narrow / 2;
  const ends = [x + inset, x + checked - inset];
  const between = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((tens) => x + 10 * tens);
  return group('across', [
    line([x, y], [x + checked, y], solid('narrow')),
    ...ends.map((at) => line([at, y - 3], [at, y + 3], solid('narrow'))),
    ...between.map((at) => line([at, y - 1.2], [at, y + 1.2], solid('thin'))),
    ...letter(kit, kit.own.across, x + checked / 2, y - 4.2, {
      lettering: 'normal',
      anchor: 'middle',
    }),
  ]);
}

function drawDown(kit: CheckKit, x: PaperMm, y: PaperMm): Item {
  const inset = pens.narrow / 2;
  const ends = [y + inset, y + checked - inset];
  const between = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((tens) => y + 10 * tens);
  const look: TextLook = { lettering: 'normal', anchor: 'middle', turn: -90 };
  return group('down', [
    line([x, y], [x, y + checked], solid('narrow')),
    ...ends.map((at) => line([x - 3, at], [x + 3, at], solid('narrow'))),
    ...between.map((at) => line([x - 1.2, at], [x + 1.2, at], solid('thin'))),
    ...letter(kit, kit.own.down, x - 4.2, y + checked / 2, look),
  ]);
}

const shownMaterials: readonly Material[] = ['clay', 'sand', 'laterite', 'granite'];

function drawHatches(kit: CheckKit, x: PaperMm, y: PaperMm): Item {
  const { materials, fills } = kit.words;
  const swatches = [
    ...shownMaterials.map((one) => [hatchFor(one), materials[one].noun] as const),
    [hatchForFill('gravelPack'), fills.gravelPack] as const,
    [hatchForFill('cementGrout'), fills.cementGrout] as const,
  ];
  const items = swatches.flatMap(([hatch, says], at) => {
    const box = { x: x + 42 * (at % 3), y: y + 5 + 22 * Math.floor(at / 3), width: 36, height: 14 };
    return [
      hatched(corners(box), hatch),
      rectangle(box, { stroke: solid('thin') }),
      ...letter(kit, says, box.x, box.y + box.height + 3.4, { widest: 40 }),
    ];
  });
  const title = letter(kit, kit.own.hatches, x, y + 2, { lettering: 'normal', widest: 124 });
  return group('hatches', [...title, ...items]);
}

function drawPens(kit: CheckKit, x: PaperMm, y: PaperMm): Item {
  const items = (Object.keys(pens) as Pen[]).flatMap((pen, at) => {
    const [left, level] = [x + 62 * (at % 2), y + 8 + 6 * Math.floor(at / 2)];
    return [
      ...letter(kit, plainFigure(kit, pens[pen], 2), left, level + 1),
      line([left + 8, level], [left + 54, level], solid(pen)),
    ];
  });
  const title = letter(kit, kit.own.pens, x, y + 2, { lettering: 'normal', widest: 124 });
  return group('pens', [...title, ...items]);
}

/** What is written by hand, so that the page can be kept beside the printer. */
function drawFields(kit: CheckKit, x: PaperMm, y: PaperMm): Item {
  const { printer, date, across, down } = kit.own.fields;
  const items = [printer, date, across, down].flatMap((says, at) => {
    const [left, level] = [x + 82 * (at % 2), y + 10 * Math.floor(at / 2)];
    return [
      ...letter(kit, `${says}${kit.words.colon}`, left, level, { lettering: 'normal' }),
      line([left + 48, level + 0.8], [left + 78, level + 0.8], solid('thin')),
    ];
  });
  return group('fields', items);
}

/** One page that tells whether a printer keeps the scale: printed once, then kept beside it. */
export function drawCheckPage(options: CheckPageOptions): Drawing {
  const { paper, fonts, language = 'en', madeAt, paperId } = options;
  const own = checkPageWordsIn(language);
  const kit: CheckKit = { fonts, words: sheetWordsIn(language), own };
  const { width, height, frame } = paperOf(paper);
  const x = frame.x + (frame.width - contentWidth) / 2;
  const [said, foot] = drawSaid(kit, paper, x, frame.y + 17);
  const [beside, top] = [x + 36, foot + 18];
  const items = [
    drawCorners(frame),
    said,
    drawAcross(kit, beside, top - 6),
    drawDown(kit, x + 12, top),
    drawHatches(kit, beside, top + 8),
    drawPens(kit, beside, top + 66),
    drawFields(kit, x, top + checked + 14),
  ];
  const pages = [{ width, height, items }];
  const saying = { title: own.title, subject: own.subject, author: '', language };
  return { ...saying, madeAt, paperId, pages, hatches: usedHatches(pages) };
}
