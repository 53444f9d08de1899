import { filled } from '../../../base/text/filled.ts';
import type { RecordPath } from '../../../base/recordPath.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { pumpKinds } from '../../../water/pump/kinds.ts';
import { partsAtDepth } from '../../../water/pump/partsOf.ts';
import type { PumpPart } from '../../../water/pump/ranking.ts';
import { plainFigure } from '../../figures.ts';
import { carePlan } from './care.ts';
import type { CommitteeKit } from './committeeKit.ts';
import type { WellFacts } from './facts.ts';

/** A part of the pump that hangs in the well, or wears, in words. */
export interface KeptPart {
  readonly says: string;
  readonly source: RecordPath;
}

/** What hangs between the outlet and the intake, by the depth that the pump was set at. */
function hangingParts({ pump }: WellRecord, { depth }: WellFacts): PumpPart[] {
  const kind = pumpKinds.find(({ recordKind }) => recordKind === pump?.kind);
  const depthM = pump?.kind === 'bucketAndWindlass' ? depth?.m : pump?.intake;
  if (!kind || depthM === undefined) return [];
  return partsAtDepth(kind, depthM, pump?.outletHeight);
}

function sayPart(kit: CommitteeKit, { pump }: WellRecord, { id, lengthM }: PumpPart): KeptPart[] {
  if (id === 'washers' || lengthM === undefined) return [];
  const { keep } = kit.own;
  const isRiser = id === 'riserPipe';
  const across = isRiser ? pump?.riserDiameter : undefined;
  const written = isRiser ? pump?.riserMaterial : id === 'pumpRod' ? pump?.rods : undefined;
  const says = [
    filled(keep.about, { m: String(Math.ceil(lengthM)) }),
    across === undefined ? '' : filled(keep.across, { mm: plainFigure(kit, across, 0) }),
    written ?? '',
  ].filter((one) => one !== '');
  const source = isRiser ? 'pump.riserMaterial' : id === 'pumpRod' ? 'pump.rods' : 'pump.intake';
  return [{ says: `${keep.parts[id]}${kit.words.colon} ${says.join(', ')}`, source }];
}

/** Parts to keep or to find again, the long ones first. Lengths are rounded up to whole metres. */
export function partsToKeep(kit: CommitteeKit, record: WellRecord, facts: WellFacts): KeptPart[] {
  const hanging = hangingParts(record, facts).flatMap((part) => sayPart(kit, record, part));
  return [...hanging, { says: kit.own.keep.wear[carePlan(facts.kind)], source: 'pump.kind' }];
}
