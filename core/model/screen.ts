import { known } from '../base/known.ts';
import type { Result } from '../base/result.ts';
import type { DepthM, Metres } from '../base/units.ts';
import type { CasingString, Component, ComponentKind } from '../record/strings.ts';
import { cut, isRange, roundDepth, type Range } from './range.ts';
import type { PieceModel, StringModel } from './wellModel.ts';

/** Why no screen can be put where it was asked for. */
export type NoScreen =
  | { readonly why: 'tooShort'; readonly leastM: Metres }
  /** A piece that is no plain pipe stands there. */
  | { readonly why: 'inTheWay'; readonly kind: ComponentKind; readonly atM: Range }
  /** All of it is screen already. */
  | { readonly why: 'isScreen' };

/** A tally with a screen in it, and the metres that are screen now. */
export interface Recut extends Range {
  readonly components: readonly Component[];
  /** For each component, the index of the line of the old tally that it comes from. */
  readonly origins: readonly number[];
}

/** Metres: a shorter piece of screen is not cut. */
const shortestM = 0.1;
/** Metres: a cut nearer to a joint than this falls on the joint. */
const sawM = 0.01;

/** A piece with the stretch that is its own, which leaves out its end in the piece below. */
interface Stretch extends Range {
  readonly piece: PieceModel;
}

function stretchOf(piece: PieceModel): Stretch {
  return { piece, fromM: piece.topM, toM: roundDepth(piece.bottomM - piece.insertionM) };
}

/**
 * Where a cut is made that was asked for at a depth. Nobody cuts a pipe within the joint at its
 * upper end: there the cut falls on the joint.
 */
function cutAt({ pieces, topM, bottomM }: StringModel, depthM: DepthM): DepthM {
  const withinM = roundDepth(Math.min(Math.max(depthM, topM), bottomM));
  const stretches = pieces.map(stretchOf);
  const at = stretches.findIndex(({ fromM, toM }) => withinM >= fromM && withinM <= toM);
  const there = stretches[at];
  if (!there) return withinM;
  const takenM = pieces[at - 1]?.insertionM ?? 0;
  if (withinM - there.fromM <= takenM + sawM) return there.fromM;
  return there.toM - withinM <= sawM ? there.toM : withinM;
}

/** Where a screen comes to lie that is asked for between two depths, in either order. */
export function screenRange(string: StringModel, oneM: DepthM, otherM: DepthM): Range {
  const [one, other] = [cutAt(string, oneM), cutAt(string, otherM)];
  return { fromM: Math.min(one, other), toM: Math.max(one, other) };
}

/** A screen of the string that is as wide as a pipe: the one that stands nearest. */
function nearestScreen(string: CasingString, model: StringModel, piece: PieceModel) {
  const distance = (other: PieceModel) => Math.abs(other.topM - piece.topM);
  const nearest = model.pieces
    .filter(
      ({ kind, outsideMm }) =>
        kind === 'screen' && (outsideMm ?? piece.outsideMm) === piece.outsideMm,
    )
    .sort((a, b) => distance(a) - distance(b))[0];
  return string.components.find((_, at) => pathOf(model, at) === nearest?.path);
}

function pathOf({ path }: StringModel, at: number): string {
  return `${path}.components[${at}]`;
}

/** A screen as wide as the pipe that it takes the place of. Slots are unknown where no screen tells. */
function screenFor(pipe: Component, like: Component | undefined): Component {
  const { material, outside, wall, inside } = like ?? pipe;
  const { slotWidth, slotSpacing, slotRows, openArea } = like ?? {};
  return {
    kind: 'screen',
    ...known({ material, outside: outside ?? pipe.outside, wall, inside }),
    ...known({ slotWidth, slotSpacing, slotRows, openArea }),
  };
}

function without(line: Component, keys: readonly string[]): Component {
  const kept = Object.entries(line).filter(([key]) => !keys.includes(key));
  return { kind: line.kind, ...Object.fromEntries(kept) };
}

/** The centralisers of a pipe that sit on a part of it, from the part's own lower end. */
function centralisersOn(pipe: Component, lowM: Metres, highM: Metres) {
  const heights = (pipe.centralisers ?? []).filter(
    (heightM) => heightM >= lowM && (heightM < highM || heightM === pipe.length),
  );
  if (heights.length === 0) return {};
  return { centralisers: heights.map((heightM) => roundDepth(heightM - lowM)) };
}

/** One pipe cut where a range begins or ends in it, bottom-up; what lies in the range is screen. */
function cutPipe(pipe: Component, piece: PieceModel, screen: Component, range: Range): Component[] {
  const own = stretchOf(piece);
  const inside = [range.toM, range.fromM].filter((atM) => atM > own.fromM && atM < own.toM);
  const bounds = [piece.bottomM, ...inside, piece.topM];
  return bounds.slice(1).map((topM, at) => {
    const bottomM = bounds[at] ?? topM;
    const middleM = (topM + Math.min(bottomM, own.toM)) / 2;
    const { insertion, joint } = pipe;
    const plain = without(pipe, ['centralisers', 'count', 'insertion', 'joint']);
    const made = middleM > range.fromM && middleM < range.toM ? screen : plain;
    const heightM = (depthM: DepthM) => roundDepth(piece.bottomM - depthM);
    return {
      ...made,
      length: roundDepth(bottomM - topM),
      // Cut ends stand on each other, joined nobody wrote how.
      ...(at === 0 && known({ joint, insertion })),
      ...centralisersOn(pipe, heightM(bottomM), heightM(topM)),
    };
  });
}

function alike(one: Component | undefined, other: Component): boolean {
  const bare = (line: Component) => JSON.stringify(without(line, ['count']));
  return one !== undefined && bare(one) === bare(other);
}

/** Pieces in a row that are alike, as one line of the tally with their count. */
function gathered(pieces: readonly Component[]): Component[] {
  const lines: Component[] = [];
  for (const piece of pieces) {
    const last = lines.at(-1);
    if (last && alike(last, piece))
      lines[lines.length - 1] = { ...last, count: (last.count ?? 1) + 1 };
    else lines.push(piece);
  }
  return lines;
}

/** The lines that one line of the tally becomes; itself where nothing of it is touched. */
function recutLine(
  line: Component,
  string: CasingString,
  model: StringModel,
  at: number,
  range: Range,
): readonly Component[] {
  const pieces = model.pieces.filter(({ path }) => path === pathOf(model, at)).reverse();
  const touched = (piece: PieceModel) => touches(piece, range);
  if (line.kind !== 'plain' || !pieces.some(touched)) return [line];
  const single = without(line, ['count']);
  return gathered(
    pieces.flatMap((piece) =>
      touched(piece)
        ? cutPipe(line, piece, screenFor(line, nearestScreen(string, model, piece)), range)
        : [single],
    ),
  );
}

function touches(piece: PieceModel, { fromM, toM }: Range): boolean {
  return cut(stretchOf(piece), fromM, toM) !== undefined;
}

/**
 * The tally of a string with screen between two depths (metres below ground): pipes that begin
 * or end there are cut, those between become screen whole, all else stays. The string keeps its
 * length and where it stands. Its measures are those of the nearest screen of the same width.
 * The range may move onto a joint; screen is counted without its end in the piece below.
 */
export function recutForScreen(
  string: CasingString,
  model: StringModel,
  oneM: DepthM,
  otherM: DepthM,
): Result<Recut, NoScreen> {
  const range = screenRange(model, oneM, otherM);
  const refuse = (error: NoScreen): Result<Recut, NoScreen> => ({ ok: false, error });
  if (!isRange(range) || range.toM - range.fromM < shortestM)
    return refuse({ why: 'tooShort', leastM: shortestM });
  const there = model.pieces.filter((piece) => touches(piece, range));
  const other = there.find(({ kind }) => kind !== 'plain' && kind !== 'screen');
  if (other) return refuse({ why: 'inTheWay', kind: other.kind, atM: stretchOf(other) });
  if (there.every(({ kind }) => kind === 'screen')) return refuse({ why: 'isScreen' });
  const lines = string.components.map((line, at) => recutLine(line, string, model, at, range));
  const origins = lines.flatMap((line, at) => line.map(() => at));
  return { ok: true, value: { ...range, components: lines.flat(), origins } };
}
