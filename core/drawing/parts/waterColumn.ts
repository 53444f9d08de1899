import type { RecordPath } from '../../base/recordPath.ts';
import type { DepthM, PaperMm } from '../../base/units.ts';
import type { Range } from '../../model/range.ts';
import { intervalsOf } from '../../model/strata.ts';
import type { SampleModel, Stratum, StrikeModel, WellModel } from '../../model/wellModel.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { spread } from '../labels/spread.ts';
import { letter } from '../letters.ts';
import { black, letterings, solid } from '../pens.ts';
import { shownPart, shows, yAt } from '../scale.ts';
import { group, line, polygon, type Point } from '../shapes.ts';
import { wordsRoom, type View } from './columns.ts';

/** What the column shows of a well. */
type Ground = Pick<WellModel, 'strata' | 'samples' | 'strikes'>;

/** Half the height of a sample's sign. */
const signReach: PaperMm = 0.85;

/** A sample: a small filled diamond. */
export function sampleSign([x, y]: Point, source?: string, r: PaperMm = signReach): Item {
  return polygon(
    [
      [x, y - r],
      [x + r, y],
      [x, y + r],
      [x - r, y],
    ],
    { fill: black, source },
  );
}

/** A strike: an arrow that points at the ground. */
export function strikeSign([x, y]: Point, length: number, source?: string): Item[] {
  return [
    line([x - length, y], [x - 1.4, y], solid('medium'), source),
    polygon(
      [
        [x, y],
        [x - 1.8, y - 0.7],
        [x - 1.8, y + 0.7],
      ],
      { fill: black, source },
    ),
  ];
}

/** The rise to the level that the water came to; its head only where the page shows that level. */
function riseSign(x: PaperMm, from: PaperMm, to: PaperMm, ends: boolean, source: string): Item[] {
  const up = to < from ? 1 : -1;
  if (!ends) return [line([x, from], [x, to], solid('thin'), source)];
  return [
    line([x, from], [x, to + up * 1.2], solid('thin'), source),
    polygon(
      [
        [x, to],
        [x - 0.5, to + up * 1.4],
        [x + 0.5, to + up * 1.4],
      ],
      { fill: black, source },
    ),
    line([x - 0.6, to], [x + 0.6, to], solid('thin'), source),
  ];
}

/** Room of a number with a little air, so that two of them can be told apart. */
const numberHeight: PaperMm = letterings.small * 1.4;

/** Where the middles of the strikes' numbers stand: at their arrows, apart where those are near. */
function numberMiddles(strikes: readonly StrikeModel[], view: View): Map<StrikeModel, PaperMm> {
  const shown = strikes
    .filter(({ depthM }) => shows(view.axis, depthM, view.first))
    .sort((a, b) => a.depthM - b.depthM);
  const wanted = shown.map(({ depthM }) => yAt(view.axis, depthM));
  const { top, foot } = wordsRoom(view);
  const tops = spread(
    wanted.map((middle) => ({ middle, height: numberHeight })),
    top,
    foot,
  );
  return new Map(shown.map((one, at) => [one, (tops?.[at] ?? wanted[at]!) + numberHeight / 2]));
}

/**
 * A strike with its number and its rise. Rises stand in turn on two lines, since those of
 * neighbouring strikes end at about the same level and would hide each other.
 */
function drawStrike(
  kit: Kit,
  strike: StrikeModel,
  number: number,
  numberY: PaperMm,
  view: View,
): Item[] {
  const { x, width } = view.columns.water;
  const { depthM, riseM, path } = strike;
  const right = x + width;
  const seen = shows(view.axis, depthM, view.first);
  const y = yAt(view.axis, depthM);
  const arrow = seen
    ? [
        ...strikeSign([right - 2.2, y], 2.6, path),
        ...letter(kit, String(number), right - 5.2, numberY + letterings.small / 2, {
          anchor: 'end',
          source: path,
        }),
      ]
    : [];
  const range = riseM === undefined ? undefined : shownPart(view.axis, riseM, depthM);
  const rise = range
    ? riseSign(
        x + 0.9 + ((number - 1) % 2) * 1,
        yAt(view.axis, range.toM),
        yAt(view.axis, range.fromM),
        range.fromM === riseM,
        path,
      )
    : [];
  return arrow.length + rise.length > 0
    ? [group('strike', [...arrow, ...rise], { source: path })]
    : [];
}

/** A sign at the log's edge, where its depth is on the page. */
function drawSample(depthM: DepthM, source: RecordPath, r: PaperMm, view: View): Item[] {
  if (!shows(view.axis, depthM, view.first)) return [];
  const { x, width } = view.columns.water;
  return [sampleSign([x + width - 1.1, yAt(view.axis, depthM)], source, r)];
}

const middleOf = ({ fromM, toM }: Range): DepthM => (fromM + toM) / 2;

/** Signs of samples that follow each other closely are smaller, so that each can be told apart. */
function reachOf(depths: readonly DepthM[], view: View): PaperMm {
  const inOrder = depths.map((depthM) => yAt(view.axis, depthM)).sort((a, b) => a - b);
  const pitches = inOrder.slice(1).map((y, at) => y - inOrder[at]!);
  return Math.max(0.3, Math.min(signReach, 0.45 * Math.min(...pitches, Infinity)));
}

/** A stratum that is said to be sampled, though none of the samples listed came from it. */
export function sampledAsWhole(stratum: Stratum, samples: readonly SampleModel[]): boolean {
  const listed = samples.some(
    (one) => middleOf(one) >= stratum.fromM && middleOf(one) <= stratum.toM,
  );
  return !listed && intervalsOf(stratum).some(({ sampled }) => sampled);
}

/**
 * Samples at their depth. Where the log alone says that a stratum was sampled, at its middle: it
 * does not say from which depth.
 */
function drawSamples({ strata, samples }: Ground, view: View): Item[] {
  const depths = samples.map(middleOf);
  const r = reachOf(depths, view);
  return [
    ...samples.flatMap(({ path }, at) => drawSample(depths[at]!, path, r, view)),
    ...strata
      .filter((one) => sampledAsWhole(one, samples))
      .flatMap((one) => drawSample(middleOf(one), `${one.path}.sampled`, signReach, view)),
  ];
}

/** Samples at the log's edge, strikes as numbered arrows with the rise to their rest level. */
export function drawWaterColumn(kit: Kit, ground: Ground, view: View): Item {
  const { strikes } = ground;
  const middles = numberMiddles(strikes, view);
  return group('waterColumn', [
    ...drawSamples(ground, view),
    ...strikes.flatMap((one, at) => drawStrike(kit, one, at + 1, middles.get(one) ?? 0, view)),
  ]);
}
