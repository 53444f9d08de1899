import type { Component } from '../../record/strings.ts';
import type { Piece } from './joinPieces.ts';
import type { Values } from './readRow.ts';

interface PieceValues {
  readonly from: number;
  readonly to: number;
  readonly string?: string;
  readonly outside?: number;
  readonly inside?: number;
  readonly diameter?: number;
}

/** Differences of depths, without the noise of binary fractions. */
const tidy = (value: number) => Number(value.toPrecision(12));

/** A diameter of which the source does not say the side; passed over where it says another. */
function unsidedOf({ outside, inside, diameter }: PieceValues): number | undefined {
  return outside === undefined && inside === undefined ? diameter : undefined;
}

const notOfComponent = ['from', 'to', 'string', 'diameter'];

/** A row of the pieces as a component and where it stands. Diameters stay as they are given. */
export function pieceOf(row: Values): Piece {
  const values = row as unknown as PieceValues;
  const { from, to, string } = values;
  const rest = Object.entries(row).filter(([name]) => !notOfComponent.includes(name));
  const unsided = unsidedOf(values);
  const component = {
    ...Object.fromEntries(rest),
    ...(unsided === undefined ? {} : { outside: unsided }),
    length: tidy(to - from),
  } as Component;
  const sideUnsaid = unsided !== undefined;
  return { from, to, component, sideUnsaid, ...(string === undefined ? {} : { string }) };
}
