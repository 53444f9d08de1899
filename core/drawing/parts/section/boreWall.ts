import type { PaperMm } from '../../../base/units.ts';
import type { BoreModel, BoreSectionModel } from '../../../model/wellModel.ts';
import type { Item } from '../../items.ts';
import type { Kit } from '../../kit.ts';
import { letter } from '../../letters.ts';
import { dashed, letterings, solid } from '../../pens.ts';
import { shownMiddle, shownPart, shows, yAt } from '../../scale.ts';
import { group, line, polyline, type Point } from '../../shapes.ts';
import type { View } from '../columns.ts';
import { centreOf, edgeAt, isCut, sides, unknownHalf } from './across.ts';

/** A narrow zigzag where a part is wider than the column and was cut. */
function breakLine(x: PaperMm, from: PaperMm, to: PaperMm): Item {
  const teeth = Math.max(2, Math.round((to - from) / 2.2));
  const points = Array.from({ length: teeth + 1 }, (_, at): Point => {
    const swing = at === 0 || at === teeth ? 0 : at % 2 === 0 ? 0.7 : -0.7;
    return [x + swing, from + ((to - from) * at) / teeth];
  });
  return polyline(points, solid('narrow'));
}

/** The wall of one section, both sides; a break line where it is wider than the column. */
function drawSection(view: View, section: BoreSectionModel): Item[] {
  const part = shownPart(view.axis, section.fromM, section.toM);
  if (!part) return [];
  const from = yAt(view.axis, part.fromM);
  const to = yAt(view.axis, part.toM);
  const cut = isCut(view, section.diameterMm);
  return sides.map((side) => {
    const x = edgeAt(view, side, section.diameterMm);
    return cut ? breakLine(x, from, to) : line([x, from], [x, to], solid('wide'));
  });
}

/** Steps where the diameter changes, and the foot of the last section. */
function drawSteps(view: View, sections: readonly BoreSectionModel[]): Item[] {
  return sections.flatMap((section, at) => {
    const below = sections[at + 1];
    if (!shows(view.axis, section.toM, view.first)) return [];
    const y = yAt(view.axis, section.toM);
    if (!below) {
      const ends = sides.map((side) => edgeAt(view, side, section.diameterMm));
      return [line([ends[0]!, y], [ends[1]!, y], solid('wide'), section.path)];
    }
    return sides.map((side) =>
      line(
        [edgeAt(view, side, section.diameterMm), y],
        [edgeAt(view, side, below.diameterMm), y],
        solid('wide'),
        section.path,
      ),
    );
  });
}

/**
 * A hole of which only the depth is known: dashed walls with a question mark, inside since leaders
 * come to the wall from outside.
 */
function drawUnknownHole(kit: Kit, view: View, fromM: number, toM: number): Item[] {
  const part = shownPart(view.axis, fromM, toM);
  if (!part) return [];
  const top = yAt(view.axis, part.fromM);
  const foot = yAt(view.axis, part.toM);
  const half = unknownHalf(view);
  const centre = centreOf(view);
  const walls = sides.map((side) =>
    line([centre + side * half, top], [centre + side * half, foot], dashed('medium')),
  );
  const floor = shows(view.axis, toM, view.first)
    ? [line([centre - half, foot], [centre + half, foot], dashed('medium'))]
    : [];
  const middle = yAt(view.axis, shownMiddle(view.axis, part)) + letterings.large / 2;
  return [
    ...walls,
    ...floor,
    ...letter(kit, '?', centre + half - 0.8, middle, { lettering: 'normal', anchor: 'end' }),
  ];
}

/** The depth at which a tape stopped after drilling, dashed, since the hole itself goes deeper. */
function drawFound(view: View, bore: BoreModel): Item[] {
  const { foundM } = bore;
  if (foundM === undefined || !shows(view.axis, foundM, view.first)) return [];
  const section =
    bore.sections.find(({ fromM, toM }) => fromM < foundM && foundM <= toM) ?? bore.sections.at(-1);
  if (!section) return [];
  const y = yAt(view.axis, foundM);
  const ends = sides.map((side) => edgeAt(view, side, section.diameterMm));
  return [line([ends[0]!, y], [ends[1]!, y], dashed('narrow'), 'bore.depthFound')];
}

/** The wall of the hole, with its steps and foot; what is not known is dashed. */
export function drawBoreWall(kit: Kit, bore: BoreModel, view: View): Item {
  const { sections, depthM } = bore;
  const knownTo = sections.at(-1)?.toM ?? 0;
  const unknown =
    depthM !== undefined && depthM > knownTo + 0.005
      ? drawUnknownHole(kit, view, knownTo, depthM)
      : [];
  return group(
    'boreWall',
    [
      ...sections.map((one) => group('wall', drawSection(view, one), { source: one.path })),
      ...drawSteps(view, sections),
      ...unknown,
      ...drawFound(view, bore),
    ],
    { source: 'bore' },
  );
}
