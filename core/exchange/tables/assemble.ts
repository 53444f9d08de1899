import type { AnnulusFill } from '../../record/annulus.ts';
import { currentVersion, wellRecord, type WellRecord } from '../../record/schema.ts';
import { reason } from '../reasons/reason.ts';
import type { TableKind } from './fields.ts';
import {
  hasDiameter,
  joinPieces,
  recordString,
  type JoinedString,
  type Piece,
} from './joinPieces.ts';
import { sourcesOf, type MappedTable } from './mapping.ts';
import { pieceOf } from './pieceOf.ts';
import { nest, type Values } from './readRow.ts';
import { told, type TableTrouble } from './trouble.ts';

/** A row that was read, with where it stands. */
export interface Entry {
  readonly mapped: MappedTable;
  readonly line: number;
  readonly values: Values;
}

export interface Assembled {
  readonly record: WellRecord;
  readonly troubles: readonly TableTrouble[];
}

interface Ranged {
  readonly from?: number;
  readonly to?: number;
}

const byDepth = (a: Ranged, b: Ranged) =>
  (a.from ?? 0) - (b.from ?? 0) || (a.to ?? 0) - (b.to ?? 0);

/** Sections that give their lower end only begin where the one above ends. */
function chainSections(rows: readonly Values[]): Values[] {
  const byEnd = rows.toSorted((a, b) => Number(a['to']) - Number(b['to']));
  return byEnd.map((row, at) => ({ from: byEnd[at - 1]?.['to'] ?? 0, ...row }));
}

/** Told at the lower piece, since that is the row to correct or to complete. */
function gapTrouble(below: Entry, aboveM: number, belowM: number): TableTrouble {
  return {
    file: below.mapped.file,
    line: below.line,
    column: sourcesOf(below.mapped, 'from')[0]?.column ?? '',
    ...told(reason('gapBetween', { above: aboveM, below: belowM })),
    kept: true,
  };
}

/** Strings of all pieces; each piece is led back to its row by identity. */
function stringsOf(entries: readonly Entry[]) {
  const entryOf = new Map<Piece, Entry>(entries.map((entry) => [pieceOf(entry.values), entry]));
  const { strings, gaps } = joinPieces([...entryOf.keys()]);
  const troubles = gaps.map(({ above, below }) =>
    gapTrouble(entryOf.get(below)!, above.to, below.from),
  );
  return { strings, troubles };
}

/** The string that a fill says it surrounds, by name or by the diameter of one of its pieces. */
function stringAround(values: Values, strings: readonly JoinedString[]): number {
  const { string, aroundDiameter, from, to } = values;
  const meant = (piece: Piece) =>
    (string === undefined || piece.string === string) &&
    (aroundDiameter === undefined || hasDiameter(piece, Number(aroundDiameter)));
  const reached = (piece: Piece) => piece.from < Number(to) && piece.to > Number(from);
  const beside = strings.findIndex(({ pieces }) =>
    pieces.some((piece) => meant(piece) && reached(piece)),
  );
  return beside < 0 ? strings.findIndex(({ pieces }) => pieces.some(meant)) : beside;
}

function noStringTrouble({ mapped, line, values }: Entry): TableTrouble {
  const name = values['string'] === undefined ? 'aroundDiameter' : 'string';
  return {
    file: mapped.file,
    line,
    column: sourcesOf(mapped, name)[0]?.column ?? '',
    ...told(reason('noString', { name: values[name] as string | number })),
    kept: false,
  };
}

/** A fill that names a string gets its index; one that names none leaves it open. */
function fillsOf(entries: readonly Entry[], strings: readonly JoinedString[]) {
  const fills: AnnulusFill[] = [];
  const troubles: TableTrouble[] = [];
  for (const entry of entries) {
    const { string, aroundDiameter, ...rest } = entry.values;
    const says = string !== undefined || aroundDiameter !== undefined;
    const around = says ? stringAround(entry.values, strings) : undefined;
    if (around === -1) troubles.push(noStringTrouble(entry));
    else fills.push({ ...rest, ...(around === undefined ? {} : { around }) } as AnnulusFill);
  }
  return { fills: fills.sort(byDepth), troubles };
}

const filled = <T>(name: string, list: readonly T[]) => (list.length === 0 ? {} : { [name]: list });

function boreOf(sections: readonly Values[], bore: unknown) {
  if (sections.length === 0) return bore === undefined ? {} : { bore };
  return { bore: { ...(bore as object | undefined), sections: chainSections(sections) } };
}

/** A well's record from all rows that name the well. Without a number of its own its key is it. */
export function assemble(well: string, entries: readonly Entry[]): Assembled {
  const of = (kind: TableKind) => entries.filter(({ mapped }) => mapped.kind === kind);
  const valuesOf = (kind: TableKind) => of(kind).map(({ values }) => values);
  const { bore, identity, ...chapters } = nest(valuesOf('wells')[0] ?? {});
  const { strings, troubles } = stringsOf(of('pieces'));
  const annulus = fillsOf(of('fills'), strings);
  // Every row has been checked, so what the schema refuses here is a defect and may throw.
  const record = wellRecord.parse({
    schemaVersion: currentVersion,
    identity: { number: well, ...(identity as object | undefined) },
    ...chapters,
    ...boreOf(valuesOf('sections'), bore),
    ...filled('log', valuesOf('log').toSorted(byDepth)),
    ...filled('strings', strings.map(recordString)),
    ...filled('annulus', annulus.fills),
    ...filled('levels', valuesOf('levels')),
    ...filled('strikes', valuesOf('strikes')),
  });
  return { record, troubles: [...troubles, ...annulus.troubles] };
}
