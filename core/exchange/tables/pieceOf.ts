import type { Component } from '../../record/strings.ts';
import type { Piece } from './joinPieces.ts';
import type { Values } from './readRow.ts';

interface PieceValues {
  readonly from: number;
  readonly to: number;
  readonly string?: string;
  readonly outside?: number;
  readonly inside?: number;
  readonly wall?: number;
  readonly diameter?: number;
  readonly remark?: string;
}

interface Diameters {
  readonly outside?: number;
  readonly wall?: number;
}

/** Sums and differences of depths, without the noise of binary fractions. */
const tidy = (value: number) => Number(value.toPrecision(12));

/** The outside diameter, as given, or from the inside and the wall. */
function diametersOf(values: PieceValues): Diameters {
  const { inside, wall, diameter } = values;
  const outside = values.outside ?? (inside === undefined ? diameter : undefined);
  if (inside === undefined) return outside === undefined ? {} : { outside };
  if (outside === undefined) return wall === undefined ? {} : { outside: tidy(inside + 2 * wall) };
  if (wall !== undefined || inside >= outside) return { outside };
  return { outside, wall: tidy((outside - inside) / 2) };
}

/** An inside diameter that gave neither outside nor wall is kept in words. */
function remarkOf({ remark, inside, ...given }: PieceValues, found: Diameters): string {
  const used = inside === undefined || (given.wall ?? found.wall) !== undefined;
  const said = used ? '' : `Inside diameter ${inside} mm`;
  return [remark, said].filter(Boolean).join('; ');
}

const notOfComponent = ['from', 'to', 'string', 'inside', 'diameter', 'remark'];

/** A row of the pieces as a component and where it stands. */
export function pieceOf(row: Values): Piece {
  const values = row as unknown as PieceValues;
  const { from, to, string } = values;
  const rest = Object.entries(row).filter(([name]) => !notOfComponent.includes(name));
  const diameters = diametersOf(values);
  const remark = remarkOf(values, diameters);
  const component = {
    ...Object.fromEntries(rest),
    ...diameters,
    length: tidy(to - from),
    ...(remark === '' ? {} : { remark }),
  } as Component;
  const sideUnsaid = diameters.outside !== undefined && diameters.outside === values.diameter;
  return { from, to, component, sideUnsaid, ...(string === undefined ? {} : { string }) };
}
