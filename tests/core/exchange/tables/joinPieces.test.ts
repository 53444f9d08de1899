import { describe, expect, it } from 'vitest';
import {
  hasDiameter,
  joinPieces,
  recordString,
  type Piece,
} from '../../../../core/exchange/tables/joinPieces.ts';
import { pieceOf } from '../../../../core/exchange/tables/pieceOf.ts';

function piece(from: number, to: number, outside: number, string?: string): Piece {
  const component = { kind: 'plain' as const, outside, length: to - from };
  return { from, to, component, ...(string === undefined ? {} : { string }) };
}

const ranges = (pieces: readonly Piece[]) =>
  joinPieces(pieces).strings.map((one) => one.pieces.map(({ from, to }) => [from, to]));

describe('pieces given by their depths', () => {
  it('whose ends meet are one string, in whatever order they come', () => {
    const pieces = [piece(30, 33, 110), piece(0, 20, 110), piece(20, 30, 110)];
    expect(ranges(pieces)).toEqual([
      [
        [0, 20],
        [20, 30],
        [30, 33],
      ],
    ]);
  });

  it('that overlap are strings of their own, the shallowest and widest first', () => {
    expect(ranges([piece(0, 60, 125), piece(0, 6, 450), piece(50, 80, 90)])).toEqual([
      [[0, 6]],
      [[0, 60]],
      [[50, 80]],
    ]);
  });

  it('go on below the string of their own diameter where two end at one depth', () => {
    expect(ranges([piece(0, 6, 450), piece(0, 6, 300), piece(6, 20, 300)])).toEqual([
      [[0, 6]],
      [
        [0, 6],
        [6, 20],
      ],
    ]);
  });

  it('stay apart where the source gives them to different strings', () => {
    expect(ranges([piece(0, 10, 50, 'A'), piece(10, 20, 50, 'B')])).toEqual([
      [[0, 10]],
      [[10, 20]],
    ]);
  });

  it('tell the gap above the lower one when nothing is given between them', () => {
    const above = piece(0, 10, 110);
    const below = piece(12, 15, 110);
    const { strings, gaps } = joinPieces([above, below]);
    expect(strings).toHaveLength(2);
    expect(gaps).toEqual([{ above, below }]);
  });

  it('have no gap beside a piece that runs past them', () => {
    expect(joinPieces([piece(0, 96, 323), piece(14, 61, 323), piece(72, 95, 323)]).gaps).toEqual(
      [],
    );
  });

  it('are counted from the bottom in the record and hang from no insertion', () => {
    const [string] = joinPieces([piece(-0.5, 20, 110), piece(20, 23, 110)]).strings;
    expect(recordString(string!)).toEqual({
      components: [
        { kind: 'plain', outside: 110, length: 3 },
        { kind: 'plain', outside: 110, length: 20.5 },
      ],
      set: { by: 'bottom', depth: 23 },
    });
  });
});

describe('the diameters of a piece', () => {
  const row = { from: 0, to: 2.9, kind: 'plain' };

  it('stay as they are given, outside, inside and wall', () => {
    expect(pieceOf({ ...row, inside: 103.2, wall: 5.3, remark: 'old' }).component).toEqual({
      kind: 'plain',
      inside: 103.2,
      wall: 5.3,
      length: 2.9,
      remark: 'old',
    });
    const { component } = pieceOf({ ...row, inside: 100, outside: 110 });
    expect(component).toMatchObject({ inside: 100, outside: 110 });
    expect(component.wall).toBeUndefined();
  });

  it('are not taken from one whose side is not said where another is given', () => {
    expect(pieceOf({ ...row, inside: 100, diameter: 4 }).component.outside).toBeUndefined();
  });

  it('tell two strings apart also where only the inside is published', () => {
    const inner = (from: number, to: number, inside: number) =>
      pieceOf({ ...row, from, to, inside });
    const pieces = [inner(0, 20, 150), inner(0, 20, 100), inner(20, 30, 100)];
    expect(joinPieces(pieces).strings.map((one) => recordString(one).components)).toMatchObject([
      [{ inside: 150 }],
      [{ inside: 100 }, { inside: 100 }],
    ]);
  });

  it('answer to the outside, the inside, and the inside with its walls', () => {
    const one = pieceOf({ ...row, inside: 103.2, wall: 5.3 });
    expect([103.2, 113.8, 110].map((mm) => hasDiameter(one, mm))).toEqual([true, true, false]);
  });

  it('say on the string when the source leaves the side open', () => {
    const [string] = joinPieces([pieceOf({ ...row, diameter: 110 })]).strings;
    expect(recordString(string!)).toMatchObject({
      components: [{ outside: 110 }],
      remark: expect.stringMatching(/does not say of which side/),
    });
  });
});
