import type { DepthM, Millimetres } from '../../base/units.ts';
import { reason } from '../reasons/reason.ts';
import type { Piece } from '../tables/joinPieces.ts';
import type { Cells } from './cells.ts';

/** A row of CDIA: a casing and the depth that it was driven to. */
interface DrillingCasing {
  readonly to: DepthM;
  readonly diameter: Millimetres;
  readonly remark: string | undefined;
}

function casingsOf(rows: readonly Cells[]): DrillingCasing[] {
  return rows
    .flatMap((row) => {
      const [to, diameter] = [row.metres('CDIA_DPTH'), row.millimetres('CDIA_DIAM')];
      if (to !== undefined && diameter !== undefined)
        return [{ to, diameter, remark: row.text('CDIA_REM') }];
      row.tell('CDIA_DPTH', reason('halfCasing'), false);
      return [];
    })
    .sort((a, b) => a.to - b.to);
}

const sayCasing = ({ to, diameter, remark }: DrillingCasing) =>
  `${diameter} mm to ${to} m${remark === undefined ? '' : ` (${remark})`}`;

const isOpen = ({ component }: Piece) =>
  component.kind === 'plain' && component.outside === undefined;

/** Plain pieces without a diameter of the strings whose plain pipe ends where the casing does. */
function piecesOf({ to }: DrillingCasing, pieces: readonly Piece[]): readonly Piece[] {
  return pieces.filter((piece) => {
    const own = pieces.filter(
      ({ string, component }) => string === piece.string && component.kind === 'plain',
    );
    return isOpen(piece) && Math.max(...own.map((one) => one.to)) === to;
  });
}

/**
 * Casings of CDIA give plain pipes their diameter where PIPE gives none and the pipe ends at the
 * casing's depth. A casing at another depth was one to drill in, often drawn again (common
 * practice), and says nothing of a pipe that was set later within it: it stands in the `remark`.
 */
export function withCasings(
  pieces: readonly Piece[],
  rows: readonly Cells[],
): { readonly pieces: readonly Piece[]; readonly remark: string | undefined } {
  const diameters = new Map<Piece, Millimetres>();
  const left = casingsOf(rows).filter((casing) => {
    const found = piecesOf(casing, pieces).filter((piece) => !diameters.has(piece));
    for (const piece of found) diameters.set(piece, casing.diameter);
    return found.length === 0 || casing.remark !== undefined;
  });
  return {
    pieces: pieces.map((piece) => {
      const outside = diameters.get(piece);
      if (outside === undefined) return piece;
      return { ...piece, component: { ...piece.component, outside }, sideUnsaid: true };
    }),
    remark:
      left.length === 0 ? undefined : `Casing of the drilling: ${left.map(sayCasing).join(', ')}`,
  };
}
