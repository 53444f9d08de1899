import { known } from '../base/known.ts';
import type { Metres } from '../base/units.ts';
import type { SitePipe } from '../record/layingOut.ts';
import type { CasingString, Component } from '../record/strings.ts';
import { cmOf, metresOf, type Centimetres } from './centimetres.ts';
import type { Fitted } from './fitString.ts';
import type { Piece } from './plainPipes.ts';
import type { TallyLine } from './proposal.ts';
import type { Found } from './search.ts';
import type { PipeKind } from './stock.ts';

type PipePart = Exclude<TallyLine['kind'], 'cap'>;

/** Deals the pipes of each kind out, one after the other. */
function dealer(): (kind: PipeKind) => number {
  const dealt = new Map<PipeKind, number>();
  return (kind) => {
    const count = dealt.get(kind) ?? 0;
    dealt.set(kind, count + 1);
    return kind.pipes[count]!;
  };
}

function cutTo({ cutCm }: Piece): { cutToM?: Metres } {
  return cutCm === undefined ? {} : { cutToM: metresOf(cutCm) };
}

/** The tally of a string, the cap first and then from the bottom up. */
export function tallyOf({ stretch }: Found, { sump, top, footCm }: Fitted): TallyLine[] {
  const deal = dealer();
  const parts: readonly (readonly [PipePart, readonly Piece[]])[] = [
    ['sump', sump],
    ['screen', stretch.pieces],
    ['plain', top],
  ];
  const footM = metresOf(footCm);
  const lines: TallyLine[] = [{ number: 1, kind: 'cap', lengthM: 0, topM: footM, bottomM: footM }];
  let seatCm: Centimetres = footCm;
  for (const [kind, pieces] of parts)
    for (const piece of pieces) {
      const lengthCm = piece.cutCm ?? piece.kind.lengthCm;
      const bottomCm = lines.length === 1 ? seatCm : seatCm + piece.kind.insertionCm;
      lines.push({
        number: lines.length + 1,
        kind,
        pipe: deal(piece.kind),
        ...cutTo(piece),
        lengthM: metresOf(lengthCm),
        topM: metresOf(bottomCm - lengthCm),
        bottomM: metresOf(bottomCm),
      });
      seatCm = bottomCm - lengthCm;
    }
  return lines;
}

/** One in the middle of each piece, as far as that lies below ground. */
function centralisersOf({ lengthM, topM, bottomM }: TallyLine): Metres[] {
  return topM + bottomM > 0 ? [metresOf(Math.floor(cmOf(lengthM) / 2))] : [];
}

function componentOf(line: TallyLine, pipe: SitePipe): Component {
  const { kind, lengthM } = line;
  const { material, outside, wall, joint, insertion, slotWidth, openArea } = pipe;
  const centralisers = centralisersOf(line);
  return {
    kind,
    ...known({ material, outside, wall }),
    length: lengthM,
    ...known({ joint, insertion }),
    ...(kind === 'screen' ? known({ slotWidth, openArea }) : {}),
    ...(centralisers.length > 0 ? { centralisers } : {}),
  };
}

/** Rows that say the same but for how many are one row. */
function gather(components: readonly Component[]): Component[] {
  const rows: { row: Component; count: number }[] = [];
  for (const row of components) {
    const last = rows.at(-1);
    if (last && JSON.stringify(last.row) === JSON.stringify(row)) last.count += 1;
    else rows.push({ row, count: 1 });
  }
  return rows.map(({ row: { kind, ...rest }, count }) =>
    count === 1 ? { kind, ...rest } : { kind, count, ...rest },
  );
}

/** The string of a tally, as the record holds it. */
export function stringOf(tally: readonly TallyLine[], pipes: readonly SitePipe[]): CasingString {
  const lines = tally.flatMap((line) =>
    line.pipe === undefined ? [] : [{ line, pipe: pipes[line.pipe]! }],
  );
  const components = lines.map(({ line, pipe }) => componentOf(line, pipe));
  const { material, outside } = lines[0]!.pipe;
  return {
    components: [{ kind: 'cap', ...known({ material, outside }) }, ...gather(components)],
    set: { by: 'bottom', depth: tally[0]!.bottomM },
  };
}
