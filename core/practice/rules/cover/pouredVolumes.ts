import { known } from '../../../base/known.ts';
import { valueAt, type RecordPath } from '../../../base/recordPath.ts';
import type { Litres } from '../../../base/units.ts';
import { pouredLitres, sumKnown } from '../../../model/volumes.ts';
import type { AnnulusZone } from '../../../model/wellModel.ts';
import type { AnnulusFill, FillKind } from '../../../record/annulus.ts';
import type { JudgedWell, Missing } from '../rule.ts';
import { givesWater } from '../stage.ts';
import { untoldSizes } from './untoldSizes.ts';

/** A fill with what was poured of it and what its space holds. */
export interface PouredFill {
  readonly fill: FillKind;
  readonly path: RecordPath;
  readonly fromM: number;
  readonly toM: number;
  readonly poured: Litres;
  readonly computed: Litres;
  /** What one sack fills, where the record counts whole sacks. */
  readonly sack?: Litres;
}

const fallen: readonly FillKind[] = ['naturalCollapse', 'open'];
/** Fills whose quantity a supervisor asks for. */
const asked: readonly FillKind[] = [
  'gravelPack',
  'formationStabiliser',
  'claySeal',
  'bentonite',
  'cementGrout',
];

/** Litres outside these are slips of the pen: no hole holds so much, and nobody fills so little. */
const [leastLitres, mostLitres] = [0.001, 1e9];

/** Litres of a fill as written in all, else the sum of its pours. */
function litresPoured(entry: AnnulusFill): Litres | undefined {
  const inAll = pouredLitres(entry);
  if (inAll !== undefined || !entry.pours?.length) return inAll;
  const { fill, from, to, sackMass, waterCement } = entry;
  return sumKnown(
    entry.pours.map(({ litres, sacks }) =>
      pouredLitres({ fill, from, to, ...known({ sackMass, waterCement, litres, sacks }) }),
    ),
  );
}

/** Whole sacks of which the last may have stayed half full. */
function wholeSacks({ litres, sacks, pours = [] }: AnnulusFill): number | undefined {
  if (litres !== undefined || pours.some((pour) => pour.litres !== undefined)) return undefined;
  const count = sacks ?? sumKnown(pours.map((pour) => pour.sacks));
  return count !== undefined && Number.isInteger(count) && count > 0 ? count : undefined;
}

interface Volumes {
  readonly fills: readonly PouredFill[];
  readonly missing: readonly Missing[];
}

function volumesOf(well: JudgedWell, path: RecordPath, zones: readonly AnnulusZone[]): Volumes {
  const entry = valueAt(well.record, path) as AnnulusFill;
  const poured = litresPoured(entry);
  const computed = sumKnown(zones.map(({ litres }) => litres));
  const fromM = Math.min(...zones.map((zone) => zone.fromM));
  const toM = Math.max(...zones.map((zone) => zone.toM));
  if (poured === undefined || !(poured >= 0 && poured < mostLitres)) {
    const wanted =
      asked.includes(entry.fill) &&
      givesWater(well.record) &&
      well.record.identity?.state !== 'laidOut';
    return { fills: [], missing: wanted ? [{ what: 'poured', path, fromM, toM }] : [] };
  }
  if (computed === undefined || !(computed > leastLitres && computed < mostLitres))
    return { fills: [], missing: zones.flatMap((zone) => untoldSizes(well.model, zone)) };
  const sacks = wholeSacks(entry);
  const sack = sacks === undefined ? undefined : poured / sacks;
  const { fill } = entry;
  return {
    fills: [{ fill, path, fromM, toM, poured, computed, ...known({ sack }) }],
    missing: [],
  };
}

/** Every fill that was poured, with its volumes; a fill that others part is counted once. */
export function pouredVolumes(well: JudgedWell): Volumes {
  const zones = well.model.annulus.filter(
    ({ path, fill }) => path !== undefined && !fallen.includes(fill as FillKind),
  );
  const paths = [...new Set(zones.map(({ path }) => path!))];
  const all = paths.map((path) =>
    volumesOf(
      well,
      path,
      zones.filter((zone) => zone.path === path),
    ),
  );
  return {
    fills: all.flatMap(({ fills }) => fills),
    missing: all.flatMap(({ missing }) => missing),
  };
}
