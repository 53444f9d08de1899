import type { Finding } from '../base/finding.ts';
import { found } from './findings.ts';
import type { StringModel } from './wellModel.ts';

function checkOutsides({ pieces }: StringModel, string: string | number): Finding[] {
  const lacking = pieces.filter(({ outsideMm }) => outsideMm === undefined);
  const [highest, lowest] = [lacking[0], lacking.at(-1)];
  if (!highest || !lowest) return [];
  return [
    found(
      'string.noDiameter',
      `${lowest.path}.outside`,
      { string, count: lacking.length, of: pieces.length },
      { fromM: highest.topM, toM: lowest.bottomM },
    ),
  ];
}

/** A wall is missed for the inside that it would tell; a cap has none. */
function checkWalls({ pieces }: StringModel, string: string | number): Finding[] {
  const pipes = pieces.filter(({ kind }) => kind !== 'cap');
  const lacking = pipes.filter(
    ({ wallMm, insideMm }) => wallMm === undefined && insideMm === undefined,
  );
  const lowest = lacking.at(-1);
  if (!lowest) return [];
  const values = { string, count: lacking.length, of: pipes.length };
  return [found('string.noWall', `${lowest.path}.wall`, values)];
}

/**
 * Diameters and walls that a string lacks. Most strings lack them in every piece: each is said
 * once with the count of pieces, at the lowest of them.
 */
export function checkMissingSizes(model: StringModel, string: string | number): Finding[] {
  return [...checkOutsides(model, string), ...checkWalls(model, string)];
}
