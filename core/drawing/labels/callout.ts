import type { RecordPath } from '../../base/recordPath.ts';
import type { DepthM, PaperMm } from '../../base/units.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { letter, wrapped, widthOf } from '../letters.ts';
import { black, letterings, lineHeight, solid } from '../pens.ts';
import { circle, group, polyline } from '../shapes.ts';
import { spread } from './spread.ts';

/** Words beside the section that speak of a depth or of a part, tied to it by a leader. */
export interface Callout {
  readonly depthM: DepthM;
  /** Where on the page the leader ends. */
  readonly at: readonly [PaperMm, PaperMm];
  /** A depth that matters, set larger. */
  readonly figure?: string;
  readonly text: string;
  /** The leader ends in a dot, inside a part, rather than at an edge. */
  readonly dot?: boolean;
  readonly source?: RecordPath | undefined;
}

/** Which side of the section the words stand on, and their room. */
export interface CalloutRoom {
  readonly side: 'left' | 'right';
  readonly x: PaperMm;
  readonly width: PaperMm;
  readonly top: PaperMm;
  readonly foot: PaperMm;
}

const leader: PaperMm = 4.5;
const gap: PaperMm = 0.7;
const afterFigure: PaperMm = 1;
/** Kept for the line that counts what found no room. */
const noteHeight: PaperMm = 3.5;

interface Block {
  readonly callout: Callout;
  readonly lines: readonly string[];
  readonly figureWidth: PaperMm;
  readonly middle: PaperMm;
  readonly height: PaperMm;
}

/**
 * The words' lines, the first beside the figure. On the left, where the figure stands last, words
 * that do not all fit beside it go under it, since they would read broken.
 */
function linesOf(
  kit: Kit,
  text: string,
  side: CalloutRoom['side'],
  width: PaperMm,
  beside: PaperMm,
): string[] {
  const lines = wrapped(kit, text, width, {}, beside);
  if (side === 'right' || beside === width || lines.length < 2) return lines;
  return ['', ...wrapped(kit, text, width)];
}

function blockOf(kit: Kit, callout: Callout, room: CalloutRoom, mostLines: number): Block {
  const { figure, text } = callout;
  const figureWidth = figure
    ? widthOf(kit, figure, { lettering: 'normal', face: 'bold' }) + afterFigure
    : 0;
  const width = room.width - leader - 0.8;
  const lines = linesOf(kit, text, room.side, width, width - figureWidth).slice(0, mostLines);
  const first = figure ? lineHeight('normal') : lineHeight('small');
  const height = first + Math.max(0, lines.length - 1) * lineHeight('small') + gap;
  return { callout, lines, figureWidth, middle: callout.at[1], height };
}

/** How much must be left out before the callouts fit; tried in this order. */
const sparings = [
  { mostLines: Infinity, texts: true },
  { mostLines: 2, texts: true },
  { mostLines: 1, texts: true },
  { mostLines: 1, texts: false },
] as const;

function placed(kit: Kit, callouts: readonly Callout[], room: CalloutRoom) {
  const sorted = [...callouts].sort((a, b) => a.at[1] - b.at[1]);
  for (const { mostLines, texts } of sparings) {
    const kept = sorted.filter(({ figure }) => texts || figure !== undefined);
    const blocks = kept.map((one) => blockOf(kit, one, room, mostLines));
    const tops = spread(blocks, room.top, room.foot);
    if (tops) return { blocks, tops, left: 0, whole: mostLines === Infinity };
  }
  return thinned(kit, sorted, room);
}

/** As many figures as the room takes, evenly from top to foot; `left` counts the others. */
function thinned(kit: Kit, sorted: readonly Callout[], room: CalloutRoom) {
  const figures = sorted.filter(({ figure }) => figure !== undefined);
  const bare = figures.map((one) => blockOf(kit, { ...one, text: '' }, room, 1));
  const each = bare[0]?.height ?? 1;
  const most = Math.max(0, Math.floor((room.foot - room.top - noteHeight) / each));
  const step = bare.length / Math.max(1, most);
  const blocks = Array.from(
    { length: Math.min(most, bare.length) },
    (_, at) => bare[Math.floor(at * Math.max(1, step))]!,
  );
  const tops = spread(blocks, room.top, room.foot - noteHeight) ?? [];
  return { blocks, tops, left: figures.length - blocks.length, whole: false };
}

/** Height that all callouts take in full. */
export function calloutsHeight(kit: Kit, callouts: readonly Callout[], room: CalloutRoom): PaperMm {
  return callouts.reduce((sum, one) => sum + blockOf(kit, one, room, Infinity).height, 0);
}

/** Width of a room in which every callout stands on one line, leader and all. */
export function calloutsWidth(kit: Kit, callouts: readonly Callout[]): PaperMm {
  const lines = callouts.map(({ figure, text }) => {
    const wide = figure ? widthOf(kit, figure, { lettering: 'normal', face: 'bold' }) : 0;
    return wide + (figure ? afterFigure : 0) + widthOf(kit, text);
  });
  return Math.max(0, ...lines) + leader + 0.8;
}

/** Whether all callouts can stand in full. */
export function calloutsFit(kit: Kit, callouts: readonly Callout[], room: CalloutRoom): boolean {
  return placed(kit, callouts, room).whole;
}

/** How far a line's baseline stands under the first one's, whose letters may be larger. */
function below(figure: string | undefined, at: number): PaperMm {
  if (at === 0) return 0;
  const first = figure ? lineHeight('normal') : lineHeight('small');
  return (first - lineHeight('small')) / 2 + at * lineHeight('small');
}

function drawBlock(kit: Kit, block: Block, top: PaperMm, room: CalloutRoom): Item {
  const { callout, lines, figureWidth } = block;
  const left = room.side === 'left';
  const edge = left ? room.x + room.width - leader : room.x + leader;
  const away = left ? -1 : 1;
  const anchor = left ? 'end' : 'start';
  const { source, figure } = callout;
  const firstLine = figure ? lineHeight('normal') : lineHeight('small');
  const tie = top + gap / 2 + firstLine / 2;
  const turn = edge - away * (leader - 1.2);
  const [x, y] = callout.at;
  const items: Item[] = [
    polyline(
      [
        [edge - away * 0.5, tie],
        [edge - away * 1.1, tie],
        [turn, y],
        [x, y],
      ],
      solid('thin'),
      source,
    ),
    ...(callout.dot ? [circle([x, y], 0.4, { fill: black, source })] : []),
  ];
  if (figure)
    items.push(
      ...letter(kit, figure, edge, tie + letterings.normal / 2, {
        lettering: 'normal',
        face: 'bold',
        anchor,
        source,
      }),
    );
  lines.forEach((text, at) =>
    items.push(
      ...letter(
        kit,
        text,
        edge + away * (at === 0 ? figureWidth : 0),
        tie + letterings[figure && at === 0 ? 'normal' : 'small'] / 2 + below(figure, at),
        { anchor, source },
      ),
    ),
  );
  return group('callout', items, { source });
}

/** Callouts spread apart in their room; sorted by depth, so that no leader crosses another. */
export function drawCallouts(kit: Kit, callouts: readonly Callout[], room: CalloutRoom): Item {
  const { blocks, tops, left } = placed(kit, callouts, room);
  const note =
    left === 0
      ? []
      : letter(kit, `${left} ${kit.words.moreFindings}`, room.x + 0.8, room.foot - 0.9, {
          widest: room.width - 1.6,
        });
  return group('callouts', [
    ...blocks.map((block, at) => drawBlock(kit, block, tops[at]!, room)),
    ...note,
  ]);
}
