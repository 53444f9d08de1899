import { known } from '../base/known.ts';
import { mmPerM, type DepthM, type Metres, type Millimetres } from '../base/units.ts';
import { nestStrings } from '../model/column.ts';
import type { StringModel, WellModel } from '../model/wellModel.ts';
import type { HandWindow } from './results.ts';
import type { Setting } from './setting.ts';

const radiusM = (diameterMm: Millimetres): Metres => diameterMm / 2 / mmPerM;

const reaches = ({ topM, bottomM }: { topM: DepthM; bottomM: DepthM }, depthM: DepthM) =>
  topM <= depthM && depthM < bottomM;

function insideMm({ pieces }: StringModel, depthM: DepthM): Millimetres | undefined {
  return pieces.find((piece) => reaches(piece, depthM) && piece.insideMm !== undefined)?.insideMm;
}

function boreMm({ bore }: WellModel, depthM: DepthM): Millimetres | undefined {
  return bore.sections.find(({ fromM, toM }) => fromM <= depthM && depthM < toM)?.diameterMm;
}

/** Radius of what holds the water where it stands at rest: of the innermost casing, else the hole. */
function casingRadiusM(model: WellModel, restM: DepthM): Metres | undefined {
  const inside = nestStrings(model.strings)
    .filter((string) => reaches(string, restM))
    .map((string) => insideMm(string, restM))
    .at(-1);
  const cased = model.strings.some((string) => reaches(string, restM));
  const diameterMm = inside ?? (cased ? undefined : boreMm(model, restM));
  return diameterMm === undefined ? undefined : radiusM(diameterMm);
}

/** Top of the uppermost screen, metres below ground. */
export function screenTopM({ strings }: WellModel): DepthM | undefined {
  const tops = strings
    .flatMap(({ pieces }) => pieces)
    .filter(({ kind }) => kind === 'screen')
    .map(({ topM }) => topM);
  return tops.length === 0 ? undefined : Math.min(...tops);
}

function holeRadiusM(model: WellModel): Metres | undefined {
  const screenM = screenTopM(model);
  const diameterMm =
    (screenM === undefined ? undefined : boreMm(model, screenM)) ??
    model.bore.sections.at(-1)?.diameterMm;
  return diameterMm === undefined ? undefined : radiusM(diameterMm);
}

/** The well that a test was made in, as far as methods need it. */
export function settingOf(
  model: WellModel,
  restM: DepthM | undefined,
  window: HandWindow | undefined,
): Setting {
  return known({
    holeRadiusM: holeRadiusM(model),
    casingRadiusM: restM === undefined ? undefined : casingRadiusM(model, restM),
    window,
  });
}
