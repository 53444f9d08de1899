import type { Millimetres } from '../../../base/units.ts';
import type { RecordPath } from '../../../base/recordPath.ts';
import type { AnnulusZone } from '../../../model/wellModel.ts';
import { broken } from '../ruleCodes.ts';
import { figureOf, judged, unjudged, type JudgedWell, type Rule, type Verdict } from '../rule.ts';
import { isOver } from './compare.ts';
import {
  besideScreen,
  packGrainOf,
  packSize,
  pathOfZone,
  screenRows,
  wholePackGrain,
} from './pack.ts';
import type { ScreenRun } from '../../../model/screenRuns.ts';
import { judgeByDepth, type ScreenedString } from './screened.ts';
import { together } from './together.ts';

interface Slot {
  readonly path: RecordPath;
  readonly widthMm: Millimetres | undefined;
}

function judgeSlot(
  well: JudgedWell,
  { label }: ScreenedString,
  run: ScreenRun,
  { path, widthMm }: Slot,
  zone: AnnulusZone,
): Verdict {
  if (!widthMm) return unjudged({ what: 'slotWidth', path: `${path}.slotWidth` });
  const told = packGrainOf(well, zone);
  if (told.finestMm !== undefined && !isOver(widthMm, told.finestMm)) return judged([]);
  const grain = wholePackGrain(told);
  if (!grain) return unjudged({ what: 'packGrain', path: `${pathOfZone(zone)}.grainMin` });
  const keeps = figureOf(well, 'slotRetainsPercent');
  const limit = packSize(grain, 100 - keeps);
  if (!isOver(widthMm, limit)) return judged([]);
  const severity = isOver(widthMm, grain.coarsestMm) ? 'error' : 'warning';
  const { finestMm: finest, coarsestMm: coarsest } = grain;
  const values = { string: label, slot: widthMm, limit, finest, coarsest, keeps };
  return judged([broken('slot.pack', severity, path, values, run)]);
}

function judgeRun(well: JudgedWell, screened: ScreenedString, run: ScreenRun): Verdict {
  const { packs, untold } = besideScreen(well, screened.string, run);
  const unknown = untold.length === 0 ? [] : [unjudged(...untold)];
  const slots = screenRows(well, run).map(({ path, component }) => ({
    path,
    widthMm: component.slotWidth,
  }));
  const verdicts = packs.flatMap((zone) =>
    slots.map((slot) => judgeSlot(well, screened, run, slot, zone)),
  );
  return together([...verdicts, ...unknown]);
}

/** Slots keep back most of the pack, so that it stays where it was poured. */
export const slotToPack: Rule = {
  id: 'slot.pack',
  figures: ['slotRetainsPercent'],
  judge: (well) =>
    judgeByDepth(well, (screened) =>
      together(screened.runs.map((run) => judgeRun(well, screened, run))),
    ),
};
