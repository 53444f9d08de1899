import { filled } from '../../../base/text/filled.ts';
import type { RecordPath } from '../../../base/recordPath.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { plainFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import { widthOf } from '../../letters.ts';
import type { Block } from '../../parts/block.ts';
import { solid } from '../../pens.ts';
import { drawPictogram, type PictogramId } from '../../pictograms/pictogram.ts';
import { group, line } from '../../shapes.ts';
import type { CommitteeKit } from './committeeKit.ts';
import { dayInShort } from './days.ts';
import type { WellFacts } from './facts.ts';
import { partsToKeep } from './parts.ts';
import { headOf } from './picture/pump.ts';
import { closedState } from './stages.ts';
import { blank, blockTitle, linesOf, pitch, said, saidLines } from './text.ts';
import type { Yield } from './yieldOf.ts';

/** A figure with what it is of; without its value a line to be filled in by hand. */
interface Card {
  readonly sign: PictogramId;
  readonly label: string;
  readonly value?: string;
  readonly unit: string;
  readonly note?: string;
  /** In words, where it is no figure. */
  readonly words?: string;
  readonly source?: RecordPath;
}

const signSide: PaperMm = 9.5;
const textAt: PaperMm = 11.5;
const handWidth: PaperMm = 22;

function drawValue(kit: CommitteeKit, card: Card, x: PaperMm, y: PaperMm, room: PaperMm): Item[] {
  const { words, value, unit, source } = card;
  if (words !== undefined) {
    const lines = linesOf(kit, words, room, { face: 'bold' }).slice(0, 3);
    return saidLines(kit, lines, x, y - 6, { face: 'bold', source });
  }
  if (value === undefined)
    return [blank(x, y, handWidth), ...said(kit, unit, x + handWidth + 1.5, y)];
  const look = { lettering: 'title', face: 'bold', source } as const;
  const wide = widthOf(kit, value, look);
  const behind = { lettering: 'large', source } as const;
  return [...said(kit, value, x, y, look), ...said(kit, unit, x + wide + 1.2, y, behind)];
}

function drawCard(kit: CommitteeKit, card: Card, x: PaperMm, y: PaperMm, width: PaperMm): Item {
  const { sign, label, note = '', source } = card;
  const room = width - textAt;
  return group('figure', [
    drawPictogram(sign, { x, y: y + 1.6, side: signSide, source }),
    ...said(kit, label, x + textAt, y + 3.6, { widest: room }),
    ...drawValue(kit, card, x + textAt, y + 10.4, room),
    ...said(kit, note, x + textAt, y + 15, { widest: room, source }),
  ]);
}

function depthCard(kit: CommitteeKit, { depth }: WellFacts, closed: boolean): Card {
  const { figures } = kit.own;
  const of = depth?.of ?? (closed ? 'hole' : 'well');
  const label = figures[of];
  if (!depth) return { sign: 'depth', label, unit: 'm' };
  const value = plainFigure(kit, depth.m, 1);
  return { sign: 'depth', label, value, unit: 'm', source: depth.source };
}

function restCard(kit: CommitteeKit, { rest }: WellFacts): Card {
  const { figures } = kit.own;
  const base = { sign: 'rest', label: figures.rest, unit: 'm' } as const;
  if (!rest) return base;
  const day = rest.at === undefined ? undefined : dayInShort(kit, rest.at);
  const above = rest.m < 0 ? `${figures.aboveGround}` : undefined;
  const read = day === undefined ? undefined : filled(figures.readOn, { day });
  const note = above ?? read;
  const value = plainFigure(kit, Math.abs(rest.m), 1);
  return { ...base, value, source: rest.source, ...(note !== undefined && { note }) };
}

function intakeCard(kit: CommitteeKit, { intakeM }: WellFacts): Card {
  const base = { sign: 'intake', label: kit.own.figures.intake, unit: 'm' } as const;
  if (intakeM === undefined) return base;
  return { ...base, value: plainFigure(kit, intakeM, 1), source: 'pump.intake' };
}

function pipeCard(kit: CommitteeKit, { pipe }: WellFacts): Card {
  const { figures } = kit.own;
  const base = { sign: 'width', label: figures.pipe, unit: 'mm' } as const;
  if (!pipe) return base;
  const { outsideMm, insideMm, source } = pipe;
  const inside = insideMm === undefined ? undefined : plainFigure(kit, insideMm, 0);
  const note = inside === undefined ? figures.outside : filled(figures.inside, { mm: inside });
  return { ...base, value: plainFigure(kit, outsideMm, 0), note, source };
}

function yieldCard(kit: CommitteeKit, given: Yield | undefined): Card {
  const { figures } = kit.own;
  const note = figures.bucketsAnHour;
  const label = figures.yields[given?.basis ?? 'pump'];
  if (!given) return { sign: 'bucket', label, unit: '', note };
  const value = String(given.bucketsAnHour);
  return { sign: 'bucket', label, value, unit: '', note, source: given.source };
}

function kindCard(kit: CommitteeKit, { kind }: WellFacts): Card {
  const sign = kind === undefined ? 'strokes' : headOf(kind);
  const base = { sign, label: kit.own.figures.pump, unit: '' } as const;
  return kind === undefined ? base : { ...base, words: kit.words.pumps[kind], source: 'pump.kind' };
}

function cardsOf(
  kit: CommitteeKit,
  record: WellRecord,
  facts: WellFacts,
  given: Yield | undefined,
): Card[] {
  const closed = closedState(record) !== undefined;
  const depth = depthCard(kit, facts, closed);
  if (closed) return [depth];
  return [
    depth,
    pipeCard(kit, facts),
    restCard(kit, facts),
    ...(facts.kind === 'bucketAndWindlass' ? [] : [intakeCard(kit, facts)]),
    yieldCard(kit, given),
    kindCard(kit, facts),
  ];
}

/** How the figures are laid: `brief` gives each part to keep one line, and cuts what is longer. */
export interface FiguresLook {
  readonly brief?: boolean;
  /** Height to be filled, where it is more than the figures need. */
  readonly height?: PaperMm;
}

/** Lines of the parts to keep, each with the field that it shows; one too long is cut. */
function keptLines(
  kit: CommitteeKit,
  record: WellRecord,
  facts: WellFacts,
  width: PaperMm,
  brief: boolean,
) {
  if (closedState(record) !== undefined) return [];
  return partsToKeep(kit, record, facts).flatMap(({ says, source }) => {
    const lines = brief ? [says] : linesOf(kit, says, width - dashAt).slice(0, 2);
    return lines.map((text, at) => ({ text, source, first: at === 0 }));
  });
}

type KeptLine = ReturnType<typeof keptLines>[number];

const dashAt: PaperMm = 4;

function layKept(kit: CommitteeKit, kept: readonly KeptLine[], width: PaperMm): Block {
  if (kept.length === 0) return { height: 0, draw: () => [] };
  return {
    height: kit.spacing.title + kept.length * pitch,
    draw: (x, y) => [
      ...blockTitle(kit, kit.own.keep.title, x, y, width),
      ...kept.flatMap(({ text, source, first }, at) => {
        const top = y + kit.spacing.title + at * pitch;
        const look = { source, widest: width - dashAt };
        return [
          ...(first ? [line([x, top + 2.3], [x + 2, top + 2.3], solid('frame'))] : []),
          ...saidLines(kit, [text], x + dashAt, top, look),
        ];
      }),
    ],
  };
}

/** The few big figures, and the parts of the pump that are to be kept or found again. */
export function layFigures(
  kit: CommitteeKit,
  record: WellRecord,
  facts: WellFacts,
  given: Yield | undefined,
  width: PaperMm,
  { brief = false, height = 0 }: FiguresLook = {},
): Block {
  const cards = cardsOf(kit, record, facts, given);
  const rows = Math.ceil(cards.length / 2);
  const closed = closedState(record) !== undefined;
  const bucket = closed ? [] : linesOf(kit, kit.own.figures.bucket, width);
  const kept = layKept(kit, keptLines(kit, record, facts, width, brief), width);
  const least = rows * kit.spacing.figure + bucket.length * pitch + 2 + kept.height;
  const each = (width - cardGap) / 2;
  const stretch = Math.min(mostStretch, Math.max(0, height - least) / (rows + 1));
  const high = kit.spacing.figure + stretch;
  const bucketTop = rows * high;
  const keptTop = bucketTop + bucket.length * pitch + 2 + stretch;
  return {
    height: least,
    draw: (x, y) => [
      ...cards.map((card, at) => {
        const left = x + (at % 2) * (each + cardGap);
        return drawCard(kit, card, left, y + Math.floor(at / 2) * high, each);
      }),
      ...saidLines(kit, bucket, x, y + bucketTop),
      ...kept.draw(x, y + keptTop),
    ],
  };
}

const cardGap: PaperMm = 3;
/** Most that is put between two rows of figures. */
const mostStretch: PaperMm = 6;
