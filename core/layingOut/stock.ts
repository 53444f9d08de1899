import type { Millimetres } from '../base/units.ts';
import type { BoreModel } from '../model/wellModel.ts';
import type { SitePipe } from '../record/layingOut.ts';
import { cmOf, type Centimetres } from './centimetres.ts';
import { shortestPieceCm } from './limits.ts';

/** Pipes on site that are alike in all that a tally asks for. */
export interface PipeKind {
  readonly lengthCm: Centimetres;
  /** How far it goes into the bell of the one below. */
  readonly insertionCm: Centimetres;
  readonly count: number;
  /** Screen: open area on a centimetre of pipe, square centimetres; 0 where it is not known. */
  readonly openCm2PerCm: number;
  /** Where they lie: indices in `layingOut.pipes`, one for each pipe. */
  readonly pipes: readonly number[];
}

/** Pipes of one outside diameter, which alone can stand in one string. */
export interface Family {
  readonly outsideMm: Millimetres;
  readonly plains: readonly PipeKind[];
  readonly screens: readonly PipeKind[];
  /** How deep the hole is wide enough for them. */
  readonly depthCm: Centimetres;
}

/** Length that a pipe adds to what stands below it. */
export function takesUpCm({ lengthCm, insertionCm }: PipeKind): Centimetres {
  return lengthCm - insertionCm;
}

/** Lengths that a pipe may be cut to: from its lower end, so that it keeps its bell. */
export function cutRange({ lengthCm, insertionCm }: PipeKind): { fromCm: number; toCm: number } {
  return { fromCm: Math.max(shortestPieceCm, 2 * insertionCm), toCm: lengthCm - 1 };
}

const mmPerCm = 10;

function openCm2PerCm({ outside, openArea }: SitePipe): number {
  if (outside === undefined || openArea === undefined) return 0;
  return (Math.PI * outside * openArea) / 100 / mmPerCm;
}

/** More alike pipes than any well takes: a slip of the pen that must not fill the memory. */
const mostAlike = 500;

function kindOf(pipe: SitePipe, at: number): PipeKind[] {
  const lengthCm = cmOf(pipe.length ?? 0);
  const insertionCm = cmOf(pipe.insertion ?? 0);
  const count = Math.min(Math.floor(pipe.count ?? 1), mostAlike);
  const isPipe = lengthCm > 0 && lengthCm < Infinity && insertionCm * 2 <= lengthCm;
  if (!isPipe || !(count >= 1)) return [];
  const pipes = Array<number>(count).fill(at);
  return [{ lengthCm, insertionCm, count, openCm2PerCm: openCm2PerCm(pipe), pipes }];
}

function isAlike(a: PipeKind, b: PipeKind): boolean {
  return (
    a.lengthCm === b.lengthCm &&
    a.insertionCm === b.insertionCm &&
    a.openCm2PerCm === b.openCm2PerCm
  );
}

/** Kinds, the longest first; entries that are alike count as one. */
function gather(kinds: readonly PipeKind[]): PipeKind[] {
  const gathered: PipeKind[] = [];
  for (const kind of kinds) {
    const at = gathered.findIndex((one) => isAlike(one, kind));
    const same = gathered[at];
    if (!same) gathered.push(kind);
    else
      gathered[at] = {
        ...same,
        count: same.count + kind.count,
        pipes: [...same.pipes, ...kind.pipes],
      };
  }
  return gathered.sort((a, b) => b.lengthCm - a.lengthCm || a.insertionCm - b.insertionCm);
}

/** How deep a pipe goes in with the least gap beside it, in a hole that is open to `holeCm`. */
function widthReachesCm(
  { sections }: BoreModel,
  outsideMm: Millimetres,
  gapMm: Millimetres,
  holeCm: Centimetres,
): Centimetres {
  const narrow = sections.find(({ diameterMm }) => (diameterMm - outsideMm) / 2 < gapMm);
  const widest = sections.some(({ diameterMm }) => (diameterMm - outsideMm) / 2 >= gapMm);
  if (sections.length > 0 && !widest) return 0;
  return narrow ? Math.min(holeCm, cmOf(narrow.fromM)) : holeCm;
}

/** The pipes on site by outside diameter, each with how deep the hole takes them. */
export function familiesOf(
  pipes: readonly SitePipe[],
  bore: BoreModel,
  gapMm: Millimetres,
  holeCm: Centimetres,
): Family[] {
  const widths = [...new Set(pipes.map(({ outside }) => outside ?? 0))];
  return widths.map((outsideMm) => {
    const ofKind = (kind: SitePipe['kind']) =>
      gather(
        pipes.flatMap((pipe, at) =>
          (pipe.outside ?? 0) === outsideMm && pipe.kind === kind ? kindOf(pipe, at) : [],
        ),
      );
    return {
      outsideMm,
      plains: ofKind('plain'),
      screens: ofKind('screen'),
      depthCm: widthReachesCm(bore, outsideMm, gapMm, holeCm),
    };
  });
}
