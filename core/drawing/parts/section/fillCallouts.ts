import type { AnnulusZone, BoreModel, WellModel } from '../../../model/wellModel.ts';
import { depthFigure, plainFigure } from '../../figures.ts';
import type { Kit } from '../../kit.ts';
import type { Callout } from '../../labels/callout.ts';
import { shownPart, shows, yAt } from '../../scale.ts';
import type { View } from '../columns.ts';
import { centreOf, edgeAt, halfOf, unknownHalf } from './across.ts';

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
  return grain === '' ? name : `${name} ${grain} mm`;
}

function holeDiameterAt(bore: BoreModel, depthM: number): number | undefined {
  return bore.sections.find(({ fromM, toM }) => fromM <= depthM && depthM <= toM)?.diameterMm;
}

function zoneCallouts(kit: Kit, zone: AnnulusZone, bore: BoreModel, view: View): Callout[] {
  const part = shownPart(view.axis, zone.fromM, zone.toM);
  if (!part) return [];
  const middleM = (part.fromM + part.toM) / 2;
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
  return [body, foot];
}

function boreCallouts(kit: Kit, bore: BoreModel, view: View): Callout[] {
  const { words } = kit;
  return bore.sections.flatMap((section) => {
    const part = shownPart(view.axis, section.fromM, section.toM);
    if (!part) return [];
    const atM = part.fromM + Math.min(0.35 * (part.toM - part.fromM), 1.5);
    return [
      {
        depthM: atM,
        at: [edgeAt(view, 1, section.diameterMm), yAt(view.axis, atM)] as const,
        text: `${words.quantities.hole} ${words.diameter} ${plainFigure(kit, section.diameterMm, 0)} mm`,
        source: section.path,
      },
    ];
  });
}

function footCallout(kit: Kit, bore: BoreModel, view: View): Callout[] {
  const { words } = kit;
  const edgeOf = (depthM: number) => {
    const mm = holeDiameterAt(bore, depthM);
    return mm === undefined ? centreOf(view) + unknownHalf(view) : edgeAt(view, 1, mm);
  };
  const entry = (depthM: number, text: string, source: string): Callout => ({
    depthM,
    at: [edgeOf(depthM), yAt(view.axis, depthM)],
    figure: depthFigure(kit, depthM),
    text,
    source,
  });
  return [
    ...(bore.depthM === undefined ? [] : [entry(bore.depthM, words.holeFoot, 'bore.depthReached')]),
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
export function fillCallouts(kit: Kit, model: WellModel, view: View): Callout[] {
  const { annulus, bore } = model;
  const all = [
    ...annulus.flatMap((zone) => zoneCallouts(kit, zone, bore, view)),
    ...boreCallouts(kit, bore, view),
    ...footCallout(kit, bore, view),
  ];
  return withoutRepeats(all).filter(({ depthM }) => shows(view.axis, depthM, view.first));
}
