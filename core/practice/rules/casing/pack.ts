import type { Millimetres } from '../../../base/units.ts';
import { valueAt, type RecordPath } from '../../../base/recordPath.ts';
import { tapeToleranceM } from '../../../model/bore.ts';
import { cut, gapsIn, roundDepth, type Range } from '../../../model/range.ts';
import type { AnnulusZone, StringModel } from '../../../model/wellModel.ts';
import type { Component } from '../../../record/strings.ts';
import type { JudgedWell, Missing } from '../rule.ts';
import type { ScreenRun } from '../../../model/screenRuns.ts';

/** What stands round a screen, from the top down. */
export interface BesideScreen {
  /** Gravel packs, each fill once. */
  readonly packs: readonly AnnulusZone[];
  /** Where the ground itself came up to the screen, or was let come. */
  readonly ground: readonly AnnulusZone[];
  /** Where nobody wrote what stands there. */
  readonly untold: readonly Missing[];
}

const bare: readonly AnnulusZone['fill'][] = ['naturalCollapse', 'formationStabiliser', 'open'];

function eachOnce(zones: readonly AnnulusZone[]): AnnulusZone[] {
  return [...new Map(zones.map((zone) => [zone.path ?? zone.fromM, zone])).values()];
}

/** What stands round a run of screen. */
export function besideScreen(
  { model }: JudgedWell,
  { index }: StringModel,
  { fromM, toM }: Range,
): BesideScreen {
  const round = model.annulus.filter(
    (zone) => zone.around === index && cut(zone, fromM, toM) !== undefined,
  );
  const told = round.filter(({ fill }) => fill !== 'unrecorded');
  return {
    packs: eachOnce(told.filter(({ fill }) => fill === 'gravelPack')),
    ground: eachOnce(told.filter(({ fill }) => bare.includes(fill))),
    untold: gapsIn(told, fromM, toM)
      .filter((gap) => roundDepth(gap.toM - gap.fromM) > tapeToleranceM)
      .map((gap) => ({ what: 'fills', path: 'annulus', ...gap })),
  };
}

/** Grain of a pack, from the finest to the coarsest. */
export interface PackGrain {
  readonly finestMm: Millimetres;
  readonly coarsestMm: Millimetres;
}

/** The row of a fill. */
export function pathOfZone({ path }: AnnulusZone): RecordPath {
  return path ?? 'annulus';
}

/** The grain of a pack as its fill has it, else that of the gravel on site. */
export function packGrainOf(
  { record }: JudgedWell,
  { grainMinMm, grainMaxMm }: AnnulusZone,
): Partial<PackGrain> {
  const told = grainMinMm !== undefined || grainMaxMm !== undefined;
  const { grainMin, grainMax } = record.layingOut ?? {};
  const [finestMm, coarsestMm] = told ? [grainMinMm, grainMaxMm] : [grainMin, grainMax];
  return {
    ...(finestMm === undefined ? {} : { finestMm }),
    ...(coarsestMm === undefined ? {} : { coarsestMm }),
  };
}

/** The grain of a pack where both its bounds are known and in order. */
export function wholePackGrain({
  finestMm,
  coarsestMm,
}: Partial<PackGrain>): PackGrain | undefined {
  if (finestMm === undefined || coarsestMm === undefined) return undefined;
  return finestMm > 0 && finestMm <= coarsestMm ? { finestMm, coarsestMm } : undefined;
}

/**
 * The size than which a share of a pack is finer, if its grains are spread evenly over their range.
 * Nobody sieves a pack in the field; its bounds are what the sieves at the river were.
 */
export function packSize({ finestMm, coarsestMm }: PackGrain, percentFiner: number): Millimetres {
  return finestMm + (percentFiner / 100) * (coarsestMm - finestMm);
}

/** The rows of the tally that a run of screen consists of, each once. */
export function screenRows(
  { record }: JudgedWell,
  { pieces }: ScreenRun,
): { readonly path: RecordPath; readonly component: Component }[] {
  const paths = [...new Set(pieces.map(({ path }) => path))];
  return paths.flatMap((path) => {
    const component = valueAt(record, path) as Component | undefined;
    return component ? [{ path, component }] : [];
  });
}
