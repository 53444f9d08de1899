import type { WellRecord } from '../../record/schema.ts';
import type { Losing } from '../losses.ts';
import type { LaidString } from './layPieces.ts';

function loseSetting({ index, string: { set }, bottomM, placedBy }: LaidString, { lose }: Losing) {
  const path = `strings[${index}].set`;
  if (placedBy === 'holeBottom' || placedBy === 'ground')
    lose(
      path,
      'Nothing tells where the string stands; its depths are taken as the sheet has them.',
    );
  else if (set?.by !== 'bottom' || set.depth !== bottomM)
    lose(path, 'It comes back as set by the depth of its lower end.');
}

/**
 * Whether each component is one piece of a millimetre at least, so that pieces by depth lead back
 * to the same tally.
 */
function isOneToOne({ string, pieces }: LaidString): boolean {
  if (pieces.some(({ from, to }) => to - from < 0.001)) return false;
  const paths = new Set(pieces.map(({ path }) => path));
  return pieces.length === string.components.length && paths.size === pieces.length;
}

function losePieces(laid: LaidString, { lose }: Losing): void {
  const { index, pieces } = laid;
  const path = `strings[${index}].components`;
  if (!isOneToOne(laid))
    lose(path, 'Alike pieces come back one by one, and one without a length not at all.');
  else
    for (const { component, path: own } of pieces)
      if (component.count !== undefined)
        lose(`${own}.count`, 'A piece that is one comes back without a count.');
  for (const piece of pieces)
    if (piece.component.length !== Number((piece.to - piece.from).toPrecision(12)))
      lose(
        `${piece.path}.length`,
        'It comes back without the part that goes into the piece below.',
      );
}

/** What pieces by depth do not tell of a tally: joints, counts, and how a string was set. */
export function loseTally(
  record: WellRecord,
  strings: readonly LaidString[],
  losing: Losing,
): void {
  if (strings.length < (record.strings ?? []).length)
    losing.lose('strings', 'A string without a single length is left out.');
  for (const string of strings) {
    loseSetting(string, losing);
    losePieces(string, losing);
  }
}
