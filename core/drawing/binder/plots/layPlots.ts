import { filled } from '../../../base/text/filled.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Material } from '../../../record/materials.ts';
import { waterWords } from '../../../water/sayWater.ts';
import type { Page } from '../../items.ts';
import { flowed, type Piece } from '../../parts/flow/flow.ts';
import { gapPiece, textPieces } from '../../parts/flow/pieces.ts';
import type { BinderContent, BinderKit, LaidPart, PartMark } from '../binder.ts';
import type { BinderQuality, BinderResult, BinderWell } from '../binderWell.ts';
import { binderPage, bodyOf, partTitle, partTitleHeight, under } from '../page.ts';
import { headingPiece } from '../prose.ts';
import { histogramPiece } from './histogram.ts';
import { stripPiece } from './strip.ts';
import { outcomeKeyPiece, outcomePieces, outcomeRow } from './success.ts';

/** Holes that were drilled: what is only laid out is in no plot of depths. */
const isDrilled = ({ state }: BinderWell) => state !== 'laidOut';

function distributions(kit: BinderKit, wells: readonly BinderWell[], width: PaperMm): Piece[] {
  const { plots } = kit.own;
  const drilled = wells.filter(isDrilled);
  const known = (values: readonly (number | undefined)[]) =>
    values.filter((value) => value !== undefined);
  const safe = drilled.filter((well) => well.yield?.basis === 'safe');
  const others = drilled.filter((well) => well.yield && well.yield.basis !== 'safe');
  const yields = (of: readonly BinderWell[]) => known(of.map((well) => well.yield?.m3h));
  const all = [
    { title: plots.depths, unit: 'm', values: known(drilled.map(({ drilledM }) => drilledM)) },
    { title: plots.safeYields, unit: 'm³/h', values: yields(safe) },
    { title: plots.otherYields, unit: 'm³/h', values: yields(others) },
  ];
  return all.map((one) => histogramPiece(kit, { ...one, wells: drilled.length }, width));
}

function years(wells: readonly BinderWell[]): (number | undefined)[] {
  const known = [...new Set(wells.flatMap(({ year }) => year ?? []))].sort((a, b) => a - b);
  return wells.some(({ year }) => year === undefined) ? [...known, undefined] : known;
}

/** Materials, that of most wells first. */
function geologies(wells: readonly BinderWell[]): (Material | undefined)[] {
  const counts = new Map<Material, number>();
  for (const { geology } of wells) if (geology) counts.set(geology, (counts.get(geology) ?? 0) + 1);
  const known = [...counts].sort(([, a], [, b]) => b - a).map(([material]) => material);
  return wells.some(({ geology }) => geology === undefined) ? [...known, undefined] : known;
}

function success(kit: BinderKit, wells: readonly BinderWell[], width: PaperMm): Piece[] {
  const { own, words } = kit;
  const drilled = wells.filter(isDrilled);
  const byYear = years(drilled).map((year) =>
    outcomeRow(
      year === undefined ? own.noYear : String(year),
      drilled.filter((well) => well.year === year),
    ),
  );
  const byGeology = geologies(drilled).map((material) =>
    outcomeRow(
      material === undefined ? own.plots.noLog : words.materials[material].noun,
      drilled.filter(({ geology }) => geology === material),
    ),
  );
  return [
    headingPiece(kit, own.plots.byYear, width),
    outcomeKeyPiece(kit),
    ...outcomePieces(kit, byYear, width),
    gapPiece(6),
    headingPiece(kit, own.plots.byGeology, width),
    outcomeKeyPiece(kit),
    ...outcomePieces(kit, byGeology, width),
    gapPiece(3),
    ...textPieces(kit, own.plots.successSays, width),
  ];
}

interface SetResults {
  readonly set: BinderQuality['set'];
  readonly wells: number;
  readonly byParameter: ReadonlyMap<string, BinderResult[]>;
}

/** Results by the set that they were compared with, and by parameter. */
function resultsBySet(wells: readonly BinderWell[]): SetResults[] {
  const found = new Map<string, { set: BinderQuality['set']; all: BinderQuality[] }>();
  for (const { quality } of wells) {
    if (!quality) continue;
    const key = `${quality.set.id} ${quality.set.version}`;
    const there = found.get(key) ?? { set: quality.set, all: [] };
    there.all.push(quality);
    found.set(key, there);
  }
  return [...found.values()].map(({ set, all }) => {
    const byParameter = new Map<string, BinderResult[]>();
    for (const result of all.flatMap(({ results }) => results)) {
      const there = byParameter.get(result.parameter);
      if (there) there.push(result);
      else byParameter.set(result.parameter, [result]);
    }
    return { set, wells: all.length, byParameter };
  });
}

function quality(kit: BinderKit, wells: readonly BinderWell[], width: PaperMm): Piece[] {
  const { own, words } = kit;
  const sets = resultsBySet(wells);
  const { reservation } = waterWords(words.language).quality;
  return [
    ...textPieces(kit, reservation, width, { face: 'bold' }),
    ...textPieces(kit, own.plots.qualitySays, width),
    gapPiece(3),
    ...(sets.length === 0 ? textPieces(kit, own.colophon.noSamples, width) : []),
    ...sets.flatMap(({ set, wells: sampled, byParameter }) => {
      const values = {
        name: set.name[words.language],
        n: String(sampled),
        of: String(wells.length),
      };
      return [
        headingPiece(kit, filled(own.plots.set, values), width),
        ...[...byParameter.values()].map((results) => stripPiece(kit, { results }, width)),
        gapPiece(3),
      ];
    }),
  ];
}

/** How depths and yields are spread, what drilling found by year and ground, and water quality. */
export function layPlots(kit: BinderKit, content: BinderContent): LaidPart {
  const { plots, parts } = kit.own;
  const body = bodyOf(kit);
  const { wells } = content;
  const { width } = body;
  const all = [
    [plots.spread, distributions(kit, wells, width)],
    [plots.success, success(kit, wells, width)],
    [plots.quality, quality(kit, wells, width)],
  ] as const;
  const pages: Page[] = [];
  const marks: PartMark[] = [];
  for (const [title, pieces] of all) {
    marks.push({ title, page: pages.length });
    for (const items of flowed(pieces, [under(body, partTitleHeight)]))
      pages.push(binderPage(kit, content, parts.plots, [partTitle(kit, title, body), ...items]));
  }
  return { pages, marks };
}
