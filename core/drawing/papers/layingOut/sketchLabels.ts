import type { DepthM, PaperMm } from '../../../base/units.ts';
import type { RecordPath } from '../../../base/recordPath.ts';
import type { Item, Span } from '../../items.ts';
import { spread } from '../../labels/spread.ts';
import { letter, widthOf } from '../../letters.ts';
import { letterings, lineHeight, solid, type Lettering } from '../../pens.ts';
import { shows, yAt } from '../../scale.ts';
import { group, polyline } from '../../shapes.ts';
import { wordsRoom, type View } from '../../parts/columns.ts';
import { centreOf, edgeAt, halfOfPiece, unknownHalf } from '../../parts/section/across.ts';
import type { WellModel } from '../../../model/wellModel.ts';
import type { FillStep } from './fillSteps.ts';
import type { StringSteps } from './pipeSteps.ts';
import type { SheetKit } from './sheetKit.ts';
import { levelFigure } from './tables.ts';

/** A depth that the crew works to, and what is there. */
interface Label {
  readonly depthM: DepthM;
  /** Where the leader ends. */
  readonly x: PaperMm;
  readonly text: string;
  readonly source: RecordPath | undefined;
}

function stringLabels({ own }: SheetKit, { string, steps }: StringSteps, view: View): Label[] {
  const wall = (kind: 'top' | 'foot') => {
    const piece = kind === 'top' ? string.pieces[0] : string.pieces.at(-1);
    return centreOf(view) + (piece ? halfOfPiece(view, piece) : 0);
  };
  const screens = steps.filter(({ kind }) => kind === 'screen');
  const ends = screens.flatMap(({ topM, bottomM, path }): [DepthM, RecordPath][] => [
    [topM, path],
    [bottomM, path],
  ]);
  // Where one screen stands on another there is no edge: its foot is in the other's bell.
  const inner = (depthM: DepthM) =>
    screens.filter(({ topM, bottomM }) => topM <= depthM && depthM <= bottomM).length > 1;
  return [
    { depthM: string.topM, x: wall('top'), text: own.beside.casingTop, source: string.path },
    { depthM: string.bottomM, x: wall('foot'), text: own.beside.foot, source: string.path },
    ...ends
      .filter(([depthM]) => !inner(depthM))
      .map(([depthM, source]) => ({ depthM, x: wall('foot'), text: own.beside.screen, source })),
  ];
}

function fillLabels(fills: readonly FillStep[], view: View): Label[] {
  return fills.map(({ letter: text, zone, topM }) => {
    const ring = zone.rings[0];
    const x = ring ? edgeAt(view, 1, ring.outerMm) : centreOf(view) + unknownHalf(view);
    return { depthM: topM, x, text, source: zone.path };
  });
}

function holeLabel({ own }: SheetKit, { bore }: WellModel, view: View): Label[] {
  if (bore.depthM === undefined) return [];
  const mm = bore.sections.at(-1)?.diameterMm;
  const x = mm === undefined ? centreOf(view) + unknownHalf(view) : edgeAt(view, 1, mm);
  return [{ depthM: bore.depthM, x, text: own.beside.hole, source: 'bore' }];
}

/** What stands at one depth is told by one figure. */
function joinedAlike(kit: SheetKit, labels: readonly Label[]): (Label & { figure: string })[] {
  const byFigure = new Map<string, Label & { figure: string }>();
  for (const one of labels.toSorted((a, b) => a.depthM - b.depthM)) {
    const figure = levelFigure(kit, one.depthM);
    const before = byFigure.get(figure);
    const texts = before ? new Set([...before.text.split(' '), one.text]) : new Set([one.text]);
    byFigure.set(figure, { ...(before ?? one), text: [...texts].join(' '), figure });
  }
  return [...byFigure.values()];
}

const leader: PaperMm = 4;
const gap: PaperMm = 0.5;

/** As many of the labels as a room holds, evenly, where it does not hold all. */
function thinned<T>(all: readonly T[], most: number): T[] {
  if (all.length <= most) return [...all];
  const step = all.length / Math.max(1, most);
  return Array.from({ length: most }, (_, at) => all[Math.floor(at * step)]!);
}

/** The labels in the largest lettering in which all find room. */
function placed<T extends Label>(labels: readonly T[], view: View) {
  const { top, foot } = wordsRoom(view);
  for (const lettering of ['large', 'normal'] as const) {
    const height = lineHeight(lettering) + gap;
    const most = Math.floor((foot - top) / height);
    const kept = lettering === 'normal' ? thinned(labels, most) : labels;
    const wanted = kept.map(({ depthM }) => ({ middle: yAt(view.axis, depthM), height }));
    const tops = spread(wanted, top, foot);
    if (tops) return { kept, middles: tops.map((one) => one + height / 2), lettering };
  }
  return { kept: [], middles: [], lettering: 'normal' as const };
}

function drawLabel(
  kit: SheetKit,
  label: Label & { figure: string },
  middle: PaperMm,
  lettering: Lettering,
  view: View,
  room: Span,
): Item {
  const { source, figure, text } = label;
  const edge = room.x + leader;
  const y = yAt(view.axis, label.depthM);
  const bold = { lettering, face: 'bold', source } as const;
  const after = edge + widthOf(kit, figure, bold) + 1;
  const widest = room.x + room.width - after;
  const words = (['normal', 'small'] as const).find(
    (one) => widthOf(kit, text, { lettering: one }) <= widest,
  );
  const foot = middle + letterings[lettering] / 2;
  return group(
    'callout',
    [
      polyline(
        [
          [edge - 0.5, middle],
          [edge - 1, middle],
          [room.x + 0.8, y],
          [label.x, y],
        ],
        solid('thin'),
        source,
      ),
      ...letter(kit, figure, edge, foot, bold),
      ...(words ? letter(kit, text, after, foot, { lettering: words, source }) : []),
    ],
    { source },
  );
}

/** Depths beside the sketch: tops of fills by their letters, ends of screens and strings. */
export function drawSketchLabels(
  kit: SheetKit,
  model: WellModel,
  strings: readonly StringSteps[],
  fills: readonly FillStep[],
  view: View,
): Item {
  const all = [
    ...strings.flatMap((one) => stringLabels(kit, one, view)),
    ...fillLabels(fills, view),
    ...holeLabel(kit, model, view),
  ];
  const shown = joinedAlike(kit, all).filter(({ depthM }) => shows(view.axis, depthM, true));
  const { kept, middles, lettering } = placed(shown, view);
  return group(
    'callouts',
    kept.map((one, at) => drawLabel(kit, one, middles[at]!, lettering, view, view.columns.fill)),
  );
}

/** The numbers of the pipes beside the string, as many as stand clear of each other. */
export function drawPipeNumbers(kit: SheetKit, strings: readonly StringSteps[], view: View): Item {
  const { x, width } = view.columns.casing;
  const least = letterings.normal + 0.9;
  const steps = strings.flatMap((one) => one.steps);
  const { top, foot } = wordsRoom(view);
  let taken: PaperMm[] = [];
  const items = steps.flatMap(({ number, topM, bottomM, path }) => {
    const middle = (yAt(view.axis, topM) + yAt(view.axis, bottomM)) / 2;
    const clear = taken.every((one) => Math.abs(one - middle) >= least);
    if (!clear || middle - least / 2 < top || middle + least / 2 > foot) return [];
    taken = [...taken, middle];
    return letter(kit, String(number), x + width - 1, middle + letterings.normal / 2, {
      lettering: 'normal',
      anchor: 'end',
      source: path,
    });
  });
  return group('pipeNumbers', items);
}
