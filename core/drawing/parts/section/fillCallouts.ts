import type { PaperMm } from '../../../base/units.ts';
import type { AnnulusZone, BoreModel } from '../../../model/wellModel.ts';
import { depthFigure, plainFigure } from '../../figures.ts';
import type { Kit } from '../../kit.ts';
import { bound } from '../../letters.ts';
import type { Callout } from '../../labels/callout.ts';
import { depthAt, shownMiddle, shownPart, shows, yAt } from '../../scale.ts';
import type { View } from '../columns.ts';
import { centreOf, edgeAt, halfOf, unknownHalf } from './across.ts';
import type { Built } from './built.ts';

/** `gravel pack 1.5–3 mm`; a fill that is the sanitary seal says so. */
export function fillWords(kit: Kit, zone: AnnulusZone): string {
  const { words } = kit;
  const grain = [zone.grainMinMm, zone.grainMaxMm]
    .filter((one) => one !== undefined)
    .map((one) => plainFigure(kit, one, 2))
    .join('–');
  const name = zone.sanitary
    ? `${words.sanitarySeal}, ${words.fills[zone.fill]}`
    : words.fills[zone.fill];
  return grain === '' ? name : `${name} ${grain}${bound}mm`;
}

function holeDiameterAt(bore: BoreModel, depthM: number): number | undefined {
  return bore.sections.find(({ fromM, toM }) => fromM <= depthM && depthM <= toM)?.diameterMm;
}

/** What a zone says at its middle, and the depth of its foot. */
interface ZoneCallouts {
  readonly body: Callout;
  readonly foot: Callout;
  /** Upper and lower edge of what the page shows of it. */
  readonly edges: readonly [PaperMm, PaperMm];
}

function zoneCallouts(kit: Kit, zone: AnnulusZone, bore: BoreModel, view: View): ZoneCallouts[] {
  const part = shownPart(view.axis, zone.fromM, zone.toM);
  if (!part) return [];
  const middleM = shownMiddle(view.axis, part);
  const ring =
    zone.rings.find(({ fromM, toM }) => fromM <= middleM && middleM <= toM) ?? zone.rings[0];
  const x = ring
    ? centreOf(view) + (halfOf(view, ring.innerMm) + halfOf(view, ring.outerMm)) / 2
    : centreOf(view) + unknownHalf(view);
  const edgeMm = holeDiameterAt(bore, zone.toM) ?? ring?.outerMm;
  const edge = edgeMm === undefined ? x : edgeAt(view, 1, edgeMm);
  const foot: Callout = {
    depthM: zone.toM,
    at: [edge, yAt(view.axis, zone.toM)],
    figure: depthFigure(kit, zone.toM),
    text: '',
    source: zone.path,
  };
  const body: Callout = {
    depthM: middleM,
    at: [x, yAt(view.axis, middleM)],
    text: fillWords(kit, zone),
    dot: true,
    source: zone.path,
  };
  return [{ body, foot, edges: [yAt(view.axis, part.fromM), yAt(view.axis, part.toM)] }];
}

/** Leaders nearer than this read as one line. */
const leadersApart: PaperMm = 1;

/**
 * Zones beside each other whose middles stand at one height share it out, the outer one first, so
 * that no leader lies on another.
 */
function bodiesApart(zones: readonly ZoneCallouts[], view: View): Callout[] {
  return zones.map(({ body, edges: [top, foot] }) => {
    const [x, y] = body.at;
    const level = zones
      .filter((other) => Math.abs(other.body.at[1] - y) < leadersApart)
      .toSorted((a, b) => b.body.at[0] - a.body.at[0]);
    if (level.length === 1 || view.axis.leftOut) return body;
    const rank = level.findIndex((other) => other.body === body) + 1;
    const at = [x, top + ((foot - top) * rank) / (level.length + 1)] as const;
    return { ...body, at, depthM: depthAt(view.axis, at[1]) };
  });
}

/** The foot of each diameter, and the depth found again before casing. */
function boreCallouts(kit: Kit, bore: BoreModel, view: View): Callout[] {
  const { words } = kit;
  const entry = (depthM: number, text: string, source: string): Callout => {
    const mm = holeDiameterAt(bore, depthM);
    const x = mm === undefined ? centreOf(view) + unknownHalf(view) : edgeAt(view, 1, mm);
    const at = [x, yAt(view.axis, depthM)] as const;
    return { depthM, at, figure: depthFigure(kit, depthM), text, source };
  };
  const size = (mm: number) =>
    [words.quantities.hole, words.diameter, plainFigure(kit, mm, 0)].join(bound);
  const steps = bore.sections.map(({ toM, diameterMm, path }) =>
    entry(toM, size(diameterMm), path),
  );
  const deeper = bore.depthM !== undefined && bore.depthM > (bore.sections.at(-1)?.toM ?? -1);
  return [
    ...steps,
    ...(deeper ? [entry(bore.depthM!, words.holeFoot, 'bore.depthReached')] : []),
    ...(bore.foundM === undefined ? [] : [entry(bore.foundM, words.holeFound, 'bore.depthFound')]),
  ];
}

/** Figures that would say the same depth twice give way to the one that has words. */
function withoutRepeats(callouts: readonly Callout[]): Callout[] {
  return callouts.filter(
    (one, at) =>
      one.figure === undefined ||
      !callouts.some(
        (other, otherAt) =>
          otherAt !== at &&
          other.figure === one.figure &&
          (one.text === '' ? other.text !== '' || otherAt < at : false),
      ),
  );
}

/** What stands right of the section: fills with their depths, diameters, the foot of the hole. */
export function fillCallouts(kit: Kit, model: Built, view: View): Callout[] {
  const { annulus, bore } = model;
  const zones = annulus.flatMap((zone) => zoneCallouts(kit, zone, bore, view));
  const all = [
    ...bodiesApart(zones, view),
    ...zones.map(({ foot }) => foot),
    ...boreCallouts(kit, bore, view),
  ];
  return withoutRepeats(all).filter(({ depthM }) => shows(view.axis, depthM, view.first));
}
