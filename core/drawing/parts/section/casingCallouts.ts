import { looseCap } from '../../../model/tally.ts';
import type { LevelModel, PieceModel, StringModel } from '../../../model/wellModel.ts';
import { depthFigure, momentFigure, plainFigure } from '../../figures.ts';
import type { Kit } from '../../kit.ts';
import { bound } from '../../letters.ts';
import type { Callout } from '../../labels/callout.ts';
import { shownMiddle, shownPart, shows, yAt } from '../../scale.ts';
import type { View } from '../columns.ts';
import { centreOf, halfOfPiece } from './across.ts';
import type { Built } from './built.ts';
import { shownLevels } from './waterLevels.ts';

/** Neighbouring pieces that look the same, as one stretch of the string. */
export interface Stretch {
  readonly first: PieceModel;
  readonly topM: number;
  readonly bottomM: number;
  readonly count: number;
}

/** Whether two pieces need but one callout: the same in all that a callout says. */
function alike(a: PieceModel, b: PieceModel): boolean {
  return (
    a.kind === b.kind &&
    a.outsideMm === b.outsideMm &&
    a.wallMm === b.wallMm &&
    a.insideMm === b.insideMm &&
    a.material === b.material &&
    a.slotWidthMm === b.slotWidthMm
  );
}

/** A string from the top down, neighbours that look alike taken together. */
export function stretchesOf(string: StringModel): Stretch[] {
  const stretches: Stretch[] = [];
  for (const piece of string.pieces) {
    const last = stretches.at(-1);
    if (last && alike(last.first, piece))
      stretches[stretches.length - 1] = { ...last, bottomM: piece.bottomM, count: last.count + 1 };
    else stretches.push({ first: piece, topM: piece.topM, bottomM: piece.bottomM, count: 1 });
  }
  return stretches;
}

/** `110 × 4.2`, of a reducer `110/160 × 5`; `Ø in 102` where only the inside is known. */
export function sizeWords(kit: Kit, piece: PieceModel): string {
  const { outsideMm, upperOutsideMm, wallMm, insideMm } = piece;
  const figure = (mm: number) => plainFigure(kit, mm, 1);
  if (outsideMm === undefined && upperOutsideMm === undefined && insideMm !== undefined)
    return [...kit.words.insideDiameter.split(' '), figure(insideMm)].join(bound);
  const ends = upperOutsideMm === outsideMm ? [outsideMm] : [upperOutsideMm, outsideMm];
  const outside = ends.flatMap((mm) => (mm === undefined ? [] : figure(mm))).join('/');
  const wall = wallMm === undefined ? '' : figure(wallMm);
  return [outside, wall].filter(Boolean).join(`${bound}×${bound}`);
}

/** `screen uPVC 110 × 4.2, slot 0.75, open 7 %`, or with fewer details of its slots. */
export function pieceWords(kit: Kit, piece: PieceModel, details = 2): string {
  const { words } = kit;
  const slot =
    piece.slotWidthMm === undefined
      ? ''
      : `${words.slot}${bound}${plainFigure(kit, piece.slotWidthMm, 2)}`;
  const open =
    piece.openAreaPercent === undefined
      ? ''
      : [words.openArea, plainFigure(kit, piece.openAreaPercent, 1), '%'].join(bound);
  const what = [words.pieces[piece.kind], piece.material, sizeWords(kit, piece)]
    .filter(Boolean)
    .join(' ');
  return [what, ...[slot, open].filter(Boolean).slice(0, details)].join(', ');
}

/** Where leaders end: callouts of the casing come from the left. */
function wallX(view: View, piece: PieceModel): number {
  return centreOf(view) - halfOfPiece(view, piece);
}

/** A string’s top, each stretch of like pieces, and its foot; a thin cap speaks for the foot above. */
function stringCallouts(kit: Kit, string: StringModel, view: View): Callout[] {
  const { words } = kit;
  const stretches = stretchesOf(string);
  const top = stretches[0];
  if (!top) return [];
  const head: Callout = {
    depthM: string.topM,
    at: [wallX(view, top.first), yAt(view.axis, string.topM)],
    figure: depthFigure(kit, Math.abs(string.topM)),
    text: string.topM < 0 ? `${words.casingTop}, ${words.aboveGround}` : words.casingTop,
    source: string.path,
  };
  const bodies = stretches.flatMap((stretch, at): Callout[] => {
    const part = shownPart(view.axis, stretch.topM, stretch.bottomM);
    const middleM = part ? shownMiddle(view.axis, part) : stretch.topM;
    const { first } = stretch;
    const closed = at === stretches.length - 1 && looseCap(string) !== undefined;
    const foot: Callout = {
      depthM: stretch.bottomM,
      at: [wallX(view, first), yAt(view.axis, stretch.bottomM)],
      figure: depthFigure(kit, stretch.bottomM),
      text: first.kind === 'cap' || closed ? words.pieces.cap : '',
      source: first.path,
    };
    const body: Callout = {
      depthM: middleM,
      at: [wallX(view, first) + 0.4, yAt(view.axis, middleM)],
      text: pieceWords(kit, first),
      dot: true,
      source: first.path,
    };
    const next = stretches[at + 1];
    const capped = next?.first.kind === 'cap' && next.bottomM - stretch.bottomM < 0.3;
    if (first.kind === 'cap') return [foot];
    return [...(part ? [body] : []), ...(capped ? [] : [foot])];
  });
  return [head, ...bodies];
}

function levelCallout(kit: Kit, level: LevelModel, view: View): Callout {
  const { words } = kit;
  const pumping = level.state === 'pumping';
  const what = pumping ? words.legend.pumping : words.legend.rest;
  const when = level.at === undefined ? '' : momentFigure(level.at).replace(' ', bound);
  const rate =
    pumping && level.rateM3h !== undefined
      ? `${plainFigure(kit, level.rateM3h, 2)}${bound}m³/h`
      : '';
  const after =
    pumping && level.minutesPumped !== undefined
      ? `${plainFigure(kit, level.minutesPumped, 0)}${bound}${words.minutes}`
      : '';
  return {
    depthM: level.depthM,
    at: [centreOf(view) - 0.5, yAt(view.axis, level.depthM)],
    figure: depthFigure(kit, level.depthM),
    text: [what, rate, after, when].filter(Boolean).join(', '),
    source: level.path,
  };
}

function pumpCallout(kit: Kit, { pump }: Built, view: View): Callout[] {
  if (pump?.intakeM === undefined) return [];
  return [
    {
      depthM: pump.intakeM,
      at: [centreOf(view) - 0.6, yAt(view.axis, pump.intakeM) + 0.8],
      figure: depthFigure(kit, pump.intakeM),
      text: kit.words.legend.intake,
      source: `${pump.path}.intake`,
    },
  ];
}

/** What stands left of the section: every change of the strings, water levels, the intake. */
export function casingCallouts(kit: Kit, model: Built, view: View): Callout[] {
  const all = [
    ...model.strings.flatMap((one) => stringCallouts(kit, one, view)),
    ...shownLevels(model.levels).map((one) => levelCallout(kit, one, view)),
    ...pumpCallout(kit, model, view),
  ];
  return all.filter(({ depthM }) => shows(view.axis, depthM, view.first));
}
