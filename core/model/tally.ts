import type { Finding } from '../base/finding.ts';
import { known } from '../base/known.ts';
import type { RecordPath } from '../base/recordPath.ts';
import type { DepthM, Metres } from '../base/units.ts';
import type { WellRecord } from '../record/schema.ts';
import type { CasingString } from '../record/strings.ts';
import { found, type Resolved } from './findings.ts';
import { checkMissingSizes } from './missingSizes.ts';
import { sizeComponent, type SizedComponent } from './pieceSize.ts';
import { isRange, roundDepth } from './range.ts';
import { placeString, stringLabel, type Placing } from './setting.ts';
import type { PieceModel, StringModel } from './wellModel.ts';

/**
 * How far a piece goes into the one below. A joint longer than either piece is no joint: it is
 * counted as 0 and said.
 */
function jointM(piece: SizedComponent, below: SizedComponent | undefined): Metres {
  if (!below) return 0;
  return piece.insertionM < Math.min(piece.lengthM, below.lengthM) ? piece.insertionM : 0;
}

function checkJoints(pieces: readonly SizedComponent[], string: string | number): Finding[] {
  const bad = pieces.filter((piece, at) => {
    const below = pieces[at - 1];
    return below && jointM(piece, below) !== piece.insertionM;
  });
  return [...new Map(bad.map((piece) => [piece.path, piece])).values()].map(
    ({ path, insertionM, component }) =>
      found('string.insertionTooLong', `${path}.insertion`, {
        string,
        piece: component.kind,
        insertionM,
      }),
  );
}

/** Sum of lengths less the joints, bottom-up. */
function tallyLength(pieces: readonly SizedComponent[]): Metres {
  return roundDepth(
    pieces.reduce((sum, piece, at) => sum + piece.lengthM - jointM(piece, pieces[at - 1]), 0),
  );
}

function centraliserDepths({ component, lengthM }: SizedComponent, bottomM: DepthM): DepthM[] {
  return (component.centralisers ?? [])
    .filter((heightM) => heightM >= 0 && heightM <= lengthM)
    .map((heightM) => roundDepth(bottomM - heightM))
    .sort((a, b) => a - b);
}

function checkCentralisers(
  { component, path, lengthM }: SizedComponent,
  string: string | number,
): Finding[] {
  return (component.centralisers ?? []).flatMap((heightM, at) =>
    heightM >= 0 && heightM <= lengthM
      ? []
      : [
          found('string.centraliserOffPiece', `${path}.centralisers[${at}]`, {
            string,
            piece: component.kind,
            heightM,
            lengthM,
          }),
        ],
  );
}

function pieceAt(piece: SizedComponent, bottomM: DepthM, insertionM: Metres): PieceModel {
  const { component, outsideMm, upperOutsideMm, wallMm, insideMm } = piece;
  const { material, slotWidth, slotSpacing, openArea } = component;
  return {
    kind: component.kind,
    topM: roundDepth(bottomM - piece.lengthM),
    bottomM,
    ...known({ outsideMm, upperOutsideMm, wallMm, insideMm, material }),
    ...known({
      slotWidthMm: slotWidth,
      slotSpacingMm: slotSpacing,
      openAreaPercent: openArea,
    }),
    insertionM,
    centralisersM: centraliserDepths(piece, bottomM),
    path: piece.path,
  };
}

/** Stands the pieces one on the other, the first with its lower end at `bottomM`; bottom-up. */
function stack(pieces: readonly SizedComponent[], bottomM: DepthM): PieceModel[] {
  const stood: PieceModel[] = [];
  for (const [at, piece] of pieces.entries()) {
    const insertionM = jointM(piece, pieces[at - 1]);
    const seatM = roundDepth((stood.at(-1)?.topM ?? bottomM) + insertionM);
    stood.push(pieceAt(piece, seatM, insertionM));
  }
  return stood;
}

function loosePieces(components: readonly SizedComponent[]): SizedComponent[] {
  return components.flatMap((sized) =>
    sized.lengthM > 0 ? Array<SizedComponent>(sized.count).fill(sized) : [],
  );
}

function capPath(string: CasingString, path: string): string | undefined {
  const at = string.components.findIndex(({ kind, count }) => kind === 'cap' && count !== 0);
  return at === 0 ? `${path}.components[${at}]` : undefined;
}

function stringModel(
  string: CasingString,
  index: number,
  pieces: readonly PieceModel[],
  { bottomM, placedBy }: Placing,
): StringModel | undefined {
  const topM = pieces.at(-1)?.topM ?? bottomM;
  const path = `strings[${index}]`;
  const placed = pieces.every((piece) => isRange({ fromM: piece.topM, toM: piece.bottomM }));
  if (!placed || pieces.length === 0) return undefined;
  return {
    index,
    ...known({ name: string.name, capPath: capPath(string, path) }),
    path,
    pieces: pieces.toReversed(),
    topM,
    bottomM,
    tallyM: roundDepth(bottomM - topM),
    stickUpM: roundDepth(-topM),
    placedBy,
  };
}

function resolveString(
  record: WellRecord,
  string: CasingString,
  index: number,
  holeM: DepthM | undefined,
): Resolved<StringModel | undefined> {
  const path = `strings[${index}]`;
  const label = stringLabel(string, index);
  const sized = string.components.map((component, at) =>
    sizeComponent(component, `${path}.components[${at}]`, label),
  );
  const loose = loosePieces(sized.map(({ value }) => value));
  const placing = placeString(record, index, tallyLength(loose), holeM);
  const value = stringModel(string, index, stack(loose, placing.value.bottomM), placing.value);
  const findings = [
    ...sized.flatMap((one) => one.findings),
    ...checkJoints(loose, label),
    ...sized.flatMap((one) => checkCentralisers(one.value, label)),
    ...(value ? checkMissingSizes(value, label) : []),
  ];
  return {
    value,
    findings: [
      ...findings,
      ...(value ? placing.findings : [found('string.noPieces', path, { string: label })]),
    ],
  };
}

/** The cap at a string's foot that has no length and is therefore none of its pieces. */
export function looseCap({ capPath, pieces }: StringModel): RecordPath | undefined {
  return pieces.at(-1)?.kind === 'cap' ? undefined : capPath;
}

/**
 * The strings, each stood up from its tally. A string of which no piece has a length is left
 * out. `holeM` is the depth of the hole where it is known.
 */
export function resolveStrings(
  record: WellRecord,
  holeM: DepthM | undefined,
): Resolved<StringModel[]> {
  const resolved = (record.strings ?? []).map((string, index) =>
    resolveString(record, string, index, holeM),
  );
  return {
    value: resolved.flatMap(({ value }) => (value ? [value] : [])),
    findings: resolved.flatMap(({ findings }) => findings),
  };
}
