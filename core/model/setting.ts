import type { Finding } from '../base/finding.ts';
import type { RecordPath } from '../base/recordPath.ts';
import type { DepthM, Metres } from '../base/units.ts';
import type { WellRecord } from '../record/schema.ts';
import type { CasingString } from '../record/strings.ts';
import { tapeToleranceM } from './bore.ts';
import { found, type Resolved } from './findings.ts';
import { roundDepth } from './range.ts';
import type { PlacedBy, StringModel } from './wellModel.ts';

export interface Placing {
  readonly bottomM: DepthM;
  readonly placedBy: PlacedBy;
}

/** The name of a string on this well, else its number from 1. */
export function stringLabel(string: CasingString | undefined, index: number): string | number {
  return string?.name?.trim() || index + 1;
}

function finite(value: number | undefined): number | undefined {
  return Number.isFinite(value) ? value : undefined;
}

/** Where the record says itself that a string stands. */
function writtenPlacing(record: WellRecord, index: number, tallyM: Metres): Placing | undefined {
  const string = record.strings?.[index];
  const byBottom = string?.set?.by === 'bottom' ? finite(string.set.depth) : undefined;
  if (byBottom !== undefined) return { bottomM: byBottom, placedBy: 'bottom' };
  const byTop = string?.set?.by === 'stickUp' ? finite(string.set.height) : undefined;
  if (byTop !== undefined) return { bottomM: tallyM - byTop, placedBy: 'stickUp' };
  // The height measured at the finished well is that of the last string set.
  const isLast = index === (record.strings?.length ?? 0) - 1;
  const aboveGround = isLast ? finite(record.headworks?.casingAboveGround) : undefined;
  if (aboveGround !== undefined) return { bottomM: tallyM - aboveGround, placedBy: 'headworks' };
  const measured = finite(string?.measuredDepth);
  return measured === undefined ? undefined : { bottomM: measured, placedBy: 'measured' };
}

/**
 * Where a string stands. In order: its own setting, the casing height measured at the headworks
 * (last string only), the depth measured after setting. Where nothing tells, the last string is
 * taken to stand on the bottom of the hole and any other to start at ground, with a finding.
 */
export function placeString(
  record: WellRecord,
  index: number,
  tallyM: Metres,
  holeM: DepthM | undefined,
): Resolved<Placing> {
  const written = writtenPlacing(record, index, tallyM);
  if (written) return { value: { ...written, bottomM: roundDepth(written.bottomM) }, findings: [] };
  const path = `strings[${index}].set`;
  const string = stringLabel(record.strings?.[index], index);
  if (holeM !== undefined && index === (record.strings?.length ?? 0) - 1)
    return {
      value: { bottomM: holeM, placedBy: 'holeBottom' },
      findings: [found('string.placedAtHoleBottom', path, { string, bottomM: holeM })],
    };
  return {
    value: { bottomM: roundDepth(tallyM), placedBy: 'ground' },
    findings: [found('string.placedAtGround', path, { string })],
  };
}

/** Whether what was measured after setting agrees with where the tally puts the string. */
export function checkPlacing(record: WellRecord, model: StringModel): Finding[] {
  const findings: Finding[] = [];
  const string = stringLabel(record.strings?.[model.index], model.index);
  const differs = (a: number, b: number) => roundDepth(Math.abs(a - b)) > tapeToleranceM;
  const measuredM = finite(record.strings?.[model.index]?.measuredDepth);
  if (measuredM !== undefined && differs(measuredM, model.bottomM)) {
    const path: RecordPath = `${model.path}.measuredDepth`;
    const { bottomM: tallyBottomM } = model;
    const differenceM = Math.abs(measuredM - tallyBottomM);
    findings.push(
      found(
        'string.measuredElsewhere',
        path,
        { string, measuredM, tallyBottomM, differenceM },
        { fromM: Math.min(measuredM, tallyBottomM), toM: Math.max(measuredM, tallyBottomM) },
      ),
    );
  }
  const aboveM = finite(record.headworks?.casingAboveGround);
  const isLast = model.index === (record.strings?.length ?? 0) - 1;
  if (isLast && aboveM !== undefined && differs(aboveM, model.stickUpM))
    findings.push(
      found(
        'string.stickUpElsewhere',
        'headworks.casingAboveGround',
        { string, measuredM: aboveM, stickUpM: model.stickUpM },
        { fromM: model.topM },
      ),
    );
  return findings;
}
