import type { Finding } from '../../../base/finding.ts';
import { tapeToleranceM } from '../../../model/bore.ts';
import { cut, roundDepth } from '../../../model/range.ts';
import type { AnnulusZone } from '../../../model/wellModel.ts';
import {
  figureOf,
  judged,
  notApplicable,
  type JudgedWell,
  type Missing,
  type Rule,
} from '../rule.ts';
import { broken } from '../ruleCodes.ts';
import {
  isPack,
  isSeal,
  isUnrecorded,
  runsOf,
  zoneAbove,
  zonesRound,
  type Run,
} from './annulusRuns.ts';
import { judgeScreens } from './judgeScreens.ts';
import type { ScreenRun } from '../../../model/screenRuns.ts';
import { untoldRound } from './untoldFills.ts';

/** A pack round a screen with what closes it above. */
interface Closure {
  readonly pack: Run;
  readonly seal: Run | undefined;
  readonly lengthM: number;
  /** What stands above both. */
  readonly above: AnnulusZone | undefined;
}

function closuresOf({ model }: JudgedWell, screens: readonly ScreenRun[]): Closure[] {
  return [...new Set(screens.map(({ string }) => string))].flatMap((index) => {
    const zones = zonesRound(model, index);
    const seals = runsOf(zones, isSeal);
    const own = screens.filter(({ string }) => string === index);
    return runsOf(zones, isPack)
      .filter(({ fromM, toM }) => own.some((screen) => cut(screen, fromM, toM)))
      .map((pack) => {
        const seal = seals.find(({ toM }) => Math.abs(toM - pack.fromM) <= tapeToleranceM);
        const topM = seal?.fromM ?? pack.fromM;
        const lengthM = roundDepth(pack.fromM - topM);
        return { pack, seal, lengthM, above: zoneAbove(zones, topM) };
      });
  });
}

function checkClosure(well: JudgedWell, { pack, seal, lengthM, above }: Closure): Finding[] {
  const wantedM = figureOf(well, 'clayOnPackM');
  const graveM = figureOf(well, 'clayOnPackGraveM');
  if (lengthM >= wantedM || (above && isUnrecorded(above))) return [];
  return [
    broken(
      'clay.thin',
      lengthM < graveM ? 'error' : 'warning',
      (seal ?? pack).zones[0].path ?? 'annulus',
      { lengthM, packM: pack.fromM, wantedM, graveM },
      seal ? { fromM: seal.fromM, toM: seal.toM } : { fromM: pack.fromM },
    ),
  ];
}

function missingOf(well: JudgedWell, { lengthM, above }: Closure): Missing[] {
  if (lengthM >= figureOf(well, 'clayOnPackM') || !above || !isUnrecorded(above)) return [];
  return [{ what: 'fills', path: 'annulus', fromM: above.fromM, toM: above.toM }];
}

/** Each pack is closed above, so that nothing from higher up runs down to the screen. */
export const clayThin: Rule = {
  id: 'clay.thin',
  figures: ['clayOnPackM', 'clayOnPackGraveM'],
  judge: (well) =>
    judgeScreens(well, (screens) => {
      const closures = closuresOf(well, screens);
      const missing = [
        ...untoldRound(well.model, screens),
        ...closures.flatMap((one) => missingOf(well, one)),
      ];
      if (closures.length === 0 && missing.length === 0) return notApplicable;
      return judged(
        closures.flatMap((one) => checkClosure(well, one)),
        missing,
      );
    }),
};
