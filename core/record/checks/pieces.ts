import type { WellRecord } from '../schema.ts';
import type { Component } from '../strings.ts';
import type { Trouble } from '../trouble.ts';
import { notLess } from './figure.ts';

function checkPiece(path: string, piece: Component): Trouble[] {
  const length = { path: `${path}.length`, value: piece.length };
  return [
    ...notLess(
      { path: `${path}.outside`, value: piece.outside },
      { path: `twice ${path}.wall`, value: piece.wall && 2 * piece.wall },
      'less than',
    ),
    ...notLess(length, { path: `${path}.insertion`, value: piece.insertion }, 'less than'),
    ...notLess(
      { path: `${path}.slotSpacing`, value: piece.slotSpacing },
      { path: `${path}.slotWidth`, value: piece.slotWidth },
      'less than',
    ),
    ...(piece.centralisers ?? []).flatMap((height, at) =>
      notLess(length, { path: `${path}.centralisers[${at}]`, value: height }, 'less than'),
    ),
  ];
}

/** Pieces of the strings whose sizes cannot all be true. */
export function checkPieces({ strings }: WellRecord): Trouble[] {
  return (strings ?? []).flatMap(({ components }, string) =>
    components.flatMap((piece, at) => checkPiece(`strings[${string}].components[${at}]`, piece)),
  );
}
