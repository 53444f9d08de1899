import type { Component } from '../../record/strings.ts';
import type { Piece } from './joinPieces.ts';
import type { Values } from './readRow.ts';

interface PieceValues {
  readonly from: number;
  readonly to: number;
  readonly string?: string;
  readonly inside?: number;
  readonly diameter?: number;
  readonly [field: string]: unknown;
}

interface Bore {
  readonly outside?: number;
  readonly wall?: number;
  readonly said?: string;
}

/** Sums and differences of depths, without the noise of binary fractions. */
const tidy = (value: number) => Number(value.toPrecision(12));

/**
 * The outside diameter, as given, or from the inside and the wall. An inside diameter alone stays
 * in words, since the record's diameters are outside ones; a diameter of unsaid kind is taken for
 * the outside one, and the remark says so.
 */
function diametersOf(values: PieceValues): Bore {
  const { inside, diameter } = values;
  const outside = values['outside'] as number | undefined;
  const wall = values['wall'] as number | undefined;
  if (outside !== undefined) {
    if (wall !== undefined || inside === undefined) return { outside };
    if (inside >= outside) return { outside, said: `Inside diameter as given: ${inside} mm.` };
    return { outside, wall: tidy((outside - inside) / 2) };
  }
  if (inside !== undefined && wall !== undefined) return { outside: tidy(inside + 2 * wall) };
  if (inside !== undefined) return { said: `Inside diameter ${inside} mm.` };
  if (diameter === undefined) return {};
  return { outside: diameter, said: 'The source does not say of which side its diameter is.' };
}

const notOfComponent = ['from', 'to', 'string', 'inside', 'diameter'];

/** A row of the pieces as a component and where it stands. */
export function pieceOf(row: Values): Piece {
  const { from, to, string } = row as PieceValues;
  const rest: Values = Object.fromEntries(
    Object.entries(row).filter(([name]) => !notOfComponent.includes(name)),
  );
  const { said, ...diameters } = diametersOf(row as PieceValues);
  const remark = [rest['remark'], said].filter(Boolean).join(' ');
  const component = {
    ...rest,
    ...diameters,
    length: tidy(to - from),
    ...(remark === '' ? {} : { remark }),
  } as unknown as Component;
  return { from, to, component, ...(string === undefined ? {} : { string }) };
}
