import { filled } from '../../../base/text/filled.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { widthOf } from '../../letters.ts';
import type { Item } from '../../items.ts';
import type { Block } from '../../parts/block.ts';
import { solid, type Lettering } from '../../pens.ts';
import { drawPictogram } from '../../pictograms/pictogram.ts';
import { group, rectangle } from '../../shapes.ts';
import type { CommitteeKit } from './committeeKit.ts';
import { dayInWords } from './days.ts';
import { bannerState } from './stages.ts';
import { blank, linesOf, said, saidLines } from './text.ts';

/** What the head cannot read from the record. */
export interface SheetFacts {
  readonly madeAt: string;
  readonly revision?: number;
}

const height: PaperMm = 18.8;
const numberWidth: PaperMm = 50;
const falling: readonly Lettering[] = ['number', 'title', 'large', 'plain'];

/** A text in the largest lettering in which it fits; cut in the smallest. */
function fitting(kit: CommitteeKit, text: string, from: Lettering, widest: PaperMm) {
  const face = 'bold' as const;
  const sizes = falling.slice(falling.indexOf(from));
  const fits = sizes.find((lettering) => widthOf(kit, text, { lettering, face }) <= widest);
  return { lettering: fits ?? 'plain', face, widest } as const;
}

function placeOf({ site }: WellRecord, shown: string): string {
  const places = [site?.village, site?.commune, site?.district, site?.region, site?.country];
  return places.filter((one) => one !== undefined && one !== shown).join(', ');
}

/** The number as large as it fits; one too long in two lines, since it may not be cut. */
function drawNumber(kit: CommitteeKit, { identity }: WellRecord, x: PaperMm, y: PaperMm): Item[] {
  const box = { x, y, width: numberWidth, height: height - 0.6 };
  const number = identity?.number ?? '';
  const room = numberWidth - 5;
  const look = { ...fitting(kit, number, 'title', room), source: 'identity.number' };
  const left = x + 2.5;
  const written =
    look.lettering === 'plain'
      ? saidLines(kit, linesOf(kit, number, room, look).slice(0, 2), left, y + 7.4, look)
      : said(kit, number, left, y + 13.8, look);
  return [
    rectangle(box, { stroke: solid('frame') }),
    ...said(kit, kit.own.wellNumber, left, y + 5.2, { widest: room }),
    ...(number === '' ? [blank(left, y + 13.6, room)] : written),
  ];
}

/** The name as large as it fits; one too long for the smallest of a line in two, cut. */
function drawName(kit: CommitteeKit, name: string, x: PaperMm, y: PaperMm, room: PaperMm): Item[] {
  const look = fitting(kit, name, 'number', room);
  if (look.lettering !== 'plain') return said(kit, name, x, y + 11.8, look);
  const [first = '', ...more] = linesOf(kit, name, room, { face: 'bold' });
  const second = more.join(' ');
  if (second === '') return said(kit, first, x, y + 11.8, { face: 'bold' });
  return [
    ...said(kit, first, x, y + 8, { face: 'bold' }),
    ...said(kit, second, x, y + 12.6, { face: 'bold', widest: room }),
  ];
}

/** Whose well it is and where: name, place, number, and from which day the sheet is. */
export function layTitle(
  kit: CommitteeKit,
  record: WellRecord,
  { madeAt, revision }: SheetFacts,
  width: PaperMm,
): Block {
  const { own } = kit;
  const name = record.identity?.name ?? record.site?.village ?? '';
  const day = dayInWords(kit, madeAt);
  const made =
    revision === undefined
      ? filled(own.madeLoose, { day })
      : filled(own.made, { day, revision: String(revision) });
  const room = width - numberWidth - 5;
  return {
    height,
    draw: (x, y) => {
      const place = placeOf(record, name);
      const source = record.identity?.name === undefined ? 'site.village' : 'identity.name';
      const items = [
        ...said(kit, `${own.title}. ${made}`, x, y + 3, { widest: room }),
        ...(name === ''
          ? [blank(x, y + 11.8, room)]
          : [group('name', drawName(kit, name, x, y, room), { source })]),
        ...said(kit, place, x, y + 17.4, { widest: room, source: 'site.village' }),
        ...drawNumber(kit, record, x + width - numberWidth, y),
      ];
      return [group('titleBlock', items)];
    },
  };
}

const bannerHeight: PaperMm = 15;

/** What the whole sheet is under, where a well is closed, planned or not finished. */
export function layBanner(
  kit: CommitteeKit,
  record: WellRecord,
  width: PaperMm,
): Block | undefined {
  const state = bannerState(record);
  if (!state) return undefined;
  const { says, more } = kit.own.banners[state];
  const room = width - 20;
  return {
    height: bannerHeight,
    draw: (x, y) => [
      group(
        'banner',
        [
          rectangle(
            { x: x + 0.5, y, width: width - 1, height: bannerHeight },
            {
              stroke: { ...solid('frame'), width: 1 },
            },
          ),
          drawPictogram('warning', { x: x + 4, y: y + 1.8, side: 11 }),
          ...said(kit, says, x + 18, y + 6.6, { ...fitting(kit, says, 'large', room) }),
          ...said(kit, more, x + 18, y + 12, { widest: room }),
        ],
        { source: 'identity.state' },
      ),
    ],
  };
}
