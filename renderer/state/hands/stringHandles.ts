import { roundDepth } from '../../../core/model/range.ts';
import { stringLabel } from '../../../core/model/setting.ts';
import type { StringModel, WellModel } from '../../../core/model/wellModel.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import type { Setting } from '../../../core/record/strings.ts';
import type { Handle, Ring, Write } from './handle.ts';
import { aboveGroundM, inHoleM } from './limits.ts';

/**
 * A string is moved as a whole: by its stick-up where that set it, else by its foot, also where
 * nothing told yet where it stands.
 */
function settingWrite(
  string: StringModel,
  by: Setting['by'],
  end: 'top' | 'foot',
): Pick<Write, 'typedAs' | 'value'> {
  const footAt = (depthM: number) => (end === 'foot' ? depthM : depthM + string.tallyM);
  const topAt = (depthM: number) => (end === 'top' ? depthM : depthM - string.tallyM);
  const set = `${string.path}.set`;
  return by === 'stickUp'
    ? {
        typedAs: `${set}.height`,
        value: (depthM) => ({ by, height: roundDepth(-topAt(depthM)) }),
      }
    : { typedAs: `${set}.depth`, value: (depthM) => ({ by, depth: roundDepth(footAt(depthM)) }) };
}

/** What is written is round: the foot's depth or the stick-up, whichever end is held. */
function roundFrom({ tallyM }: StringModel, by: Setting['by'], end: 'top' | 'foot'): number {
  if (by === 'stickUp') return end === 'top' ? 0 : tallyM;
  return end === 'foot' ? 0 : -tallyM;
}

function widthOf({ pieces }: StringModel, end: 'top' | 'foot'): Ring | undefined {
  const piece = end === 'top' ? pieces[0] : pieces.at(-1);
  const outer = piece?.outsideMm ?? piece?.insideMm;
  return outer === undefined ? undefined : { inner: 0, outer };
}

function endHandle(
  record: WellRecord,
  model: WellModel,
  string: StringModel,
  end: 'top' | 'foot',
): Handle {
  const by = record.strings?.[string.index]?.set?.by ?? 'bottom';
  const { tallyM, index, path, topM, bottomM } = string;
  const leastFootM = Math.min(bottomM, tallyM - aboveGroundM);
  const mostFootM = inHoleM(model, bottomM);
  const less = end === 'foot' ? 0 : tallyM;
  const ringMm = widthOf(string, end);
  return {
    id: `${path} ${end}`,
    edge: { kind: 'string', end, label: stringLabel(record.strings?.[index], index), tallyM },
    lane: 'inside',
    depthM: end === 'foot' ? bottomM : topM,
    leastM: roundDepth(leastFootM - less),
    mostM: roundDepth(mostFootM - less),
    roundFromM: roundDepth(roundFrom(string, by, end)),
    row: path,
    writes: [{ path: `${path}.set`, role: 'own', ...settingWrite(string, by, end) }],
    ...(ringMm && { ringMm }),
  };
}

/** Joints come from the tally: they can be chosen, and not moved by themselves. */
function jointHandles(record: WellRecord, { pieces, index, path }: StringModel): Handle[] {
  return pieces.slice(1).map((piece, at) => ({
    id: `${path} joint ${at}`,
    edge: { kind: 'joint', label: stringLabel(record.strings?.[index], index) },
    lane: 'joints',
    depthM: piece.topM,
    leastM: piece.topM,
    mostM: piece.topM,
    roundFromM: 0,
    row: piece.path,
    writes: [],
    ...(piece.outsideMm === undefined ? {} : { ringMm: { inner: 0, outer: piece.outsideMm } }),
  }));
}

/** Both ends of each string, and its joints. */
export function stringHandles(record: WellRecord, model: WellModel): Handle[] {
  return model.strings.flatMap((string) => [
    ...jointHandles(record, string),
    endHandle(record, model, string, 'top'),
    endHandle(record, model, string, 'foot'),
  ]);
}
