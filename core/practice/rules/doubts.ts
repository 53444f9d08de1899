import type { StringModel, WellModel } from '../../model/wellModel.ts';
import type { Missing } from './rule.ts';

/**
 * What keeps a string's depths from being certain: nothing told where it stands, or a piece of
 * its tally has no length.
 */
export function doubtsOf({ findings }: WellModel, { placedBy, path }: StringModel): Missing[] {
  if (placedBy === 'holeBottom' || placedBy === 'ground')
    return [{ what: 'measuredDepth', path: `${path}.measuredDepth` }];
  const short = findings.find(
    (finding) => finding.code === 'string.noLength' && finding.path.startsWith(`${path}.`),
  );
  return short ? [{ what: 'strings', path: short.path }] : [];
}
