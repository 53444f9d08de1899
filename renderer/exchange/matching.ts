import type {
  Detected,
  OpenedImport,
  OpenedTable,
  TableMapping,
} from '../../core/contract/importsShape.ts';
import { fieldsOf, tableKinds, type TableKind } from '../../core/exchange/tables/fields.ts';

type Mapped = TableMapping['tables'][number];
type Fields = Mapped['fields'];
type Source = Fields[string][number];

/** How a table is written, as shown and overruled. */
export type Layout = Omit<Detected, 'dateOrderOpen'>;

/** A way to read each row: one of a table's kinds with its columns. */
export interface KindMatch {
  readonly kind: TableKind;
  readonly fields: Fields;
  readonly repeats?: boolean;
}

/** What is chosen for one table. */
export interface Match {
  readonly file: string;
  readonly sheet?: string;
  readonly layout: Layout;
  /** Heading of the column that names the well; empty while none is chosen. */
  readonly well: string;
  readonly kinds: readonly KindMatch[];
}

/** What a column may be: the well's number, or a field of a kind. */
export const wellUse = 'well';

/** A level read from the casing's top; the kind's field alone reads from the ground. */
const fromCasingTop = 'levels.reading.casingTop';

/** Every use of a column, by kind. */
export const usesByKind: readonly { readonly kind: TableKind; readonly uses: readonly string[] }[] =
  tableKinds.map((kind) => ({
    kind,
    uses: Object.keys(fieldsOf[kind])
      .filter((field) => !(kind === 'levels' && field === 'datum'))
      .flatMap((field) => {
        const use = `${kind}.${field}`;
        return use === 'levels.reading' ? [use, fromCasingTop] : [use];
      }),
  }));

export const isCasingTop = (use: string) => use === fromCasingTop;

const kindOf = (use: string) => use.slice(0, use.indexOf('.')) as TableKind;

/** The field of a use, as its kind names it. */
export function fieldOf(use: string): string {
  return isCasingTop(use) ? 'reading' : use.slice(use.indexOf('.') + 1);
}

function layoutOf(layout: Layout): Layout {
  const { encoding, delimiter, headingLine, decimal, dateOrder, absent } = layout;
  return {
    ...(encoding ? { encoding } : {}),
    ...(delimiter ? { delimiter } : {}),
    ...{ headingLine, decimal, dateOrder },
    ...(absent && absent.length > 0 ? { absent } : {}),
  };
}

function kindMatch({ kind, fields, repeats }: Mapped): KindMatch {
  return { kind, fields, ...(repeats ? { repeats } : {}) };
}

function matchOf(table: OpenedTable, mapping: TableMapping | undefined): Match {
  const mapped = (mapping?.tables ?? []).filter(
    ({ file, sheet }) => file === table.file && sheet === table.sheet,
  );
  const [first] = mapped;
  return {
    file: table.file,
    ...(table.sheet === undefined ? {} : { sheet: table.sheet }),
    layout: layoutOf({ ...table.detected, ...withoutAbsent(first, mapping) }),
    well: first?.well ?? '',
    kinds: mapped.map(kindMatch),
  };
}

const layoutKeys = [
  ...(['encoding', 'delimiter', 'headingLine'] as const),
  ...(['decimal', 'dateOrder', 'absent'] as const),
];

/** What a mapping says of the layout; what it does not say is as it was found out. */
function withoutAbsent(
  mapped: Mapped | undefined,
  mapping: TableMapping | undefined,
): Partial<Layout> {
  const said = layoutKeys.flatMap((key) => {
    const value = mapped?.[key] ?? (key === 'headingLine' ? undefined : mapping?.[key]);
    return value === undefined ? [] : [[key, value]];
  });
  return Object.fromEntries(said) as Partial<Layout>;
}

/** What a mapping chooses for each of the tables that were opened. */
export function matchesOf({ tables }: OpenedImport, mapping: TableMapping | undefined): Match[] {
  return tables.map((table) => matchOf(table, mapping));
}

/** The mapping of all that was chosen; undefined where nothing was. */
export function mappingOf(matches: readonly Match[]): TableMapping | undefined {
  const tables = matches.flatMap(({ file, sheet, layout, well, kinds }) =>
    kinds.map((one) => ({
      ...one,
      ...{ file, well },
      ...(sheet === undefined ? {} : { sheet }),
      ...(kinds.length > 1 && one.kind !== 'wells' ? { sparse: true } : {}),
      ...layout,
    })),
  );
  return tables.length === 0 ? undefined : ({ tables } as TableMapping);
}

const isOf = (column: string) => (source: Source) =>
  source.column === column || source.columns?.includes(column) === true;

/** What a column is taken for first; empty where for nothing. */
export function useOf({ well, kinds }: Match, column: string): string {
  if (column === well) return wellUse;
  for (const { kind, fields } of kinds) {
    const name = Object.keys(fields).find((one) => fields[one]!.some(isOf(column)));
    if (name === undefined) continue;
    const top =
      kind === 'levels' && name === 'reading' && fields['datum']?.[0]?.value === 'casingTop';
    return top ? fromCasingTop : `${kind}.${name}`;
  }
  return '';
}

/** The unit of a column that is a length; undefined where it is none. */
export function unitOf({ kinds }: Match, column: string): string | undefined {
  const sources = kinds.flatMap(({ fields }) => Object.values(fields).flat());
  const source = sources.find((one) => isOf(column)(one) && (one.unit || one.unitColumn));
  return source && (source.unit ?? '');
}

/** The column alone is taken out; what stands for nothing more goes with it. */
function without(kinds: readonly KindMatch[], column: string): KindMatch[] {
  return kinds.flatMap((one) => {
    const fields = Object.entries(one.fields).flatMap(([name, sources]) => {
      const left = sources.filter((source) => !isOf(column)(source));
      return left.length === 0 ? [] : [[name, left] as const];
    });
    const fromColumns = fields.some(([, sources]) =>
      sources.some(({ value }) => value === undefined),
    );
    return fromColumns ? [{ ...one, fields: Object.fromEntries(fields) }] : [];
  });
}

function sourceOf(kind: TableKind, field: string, column: string): Source {
  const { type } = fieldsOf[kind][field]!;
  if (type === 'metres') return { column, unit: 'm' };
  return type === 'millimetres' ? { column, unit: 'mm' } : { column };
}

/** Fields that a use brings with it: words are understood and kept, levels have a datum. */
function fieldsFor(use: string, column: string): Fields {
  const [kind, field] = [kindOf(use), fieldOf(use)];
  if (use === 'log.material') {
    const understood = [{ column, understand: true }];
    return { material: understood, qualifiers: understood, words: [{ column }] };
  }
  const datum = { datum: [{ value: isCasingTop(use) ? 'casingTop' : 'ground' }] };
  return {
    [field]: [sourceOf(kind, field, column)],
    ...(use.startsWith('levels.reading') ? datum : {}),
  };
}

function added(kinds: readonly KindMatch[], use: string, column: string): KindMatch[] {
  const [kind, fields] = [kindOf(use), fieldsFor(use, column)];
  if (!kinds.some((one) => one.kind === kind)) return [...kinds, { kind, fields }];
  return kinds.map((one) =>
    one.kind === kind ? { ...one, fields: { ...one.fields, ...fields } } : one,
  );
}

/** Takes a column for something else, or for nothing. */
export function withUse(match: Match, column: string, use: string): Match {
  const well = match.well === column ? '' : match.well;
  const kinds = without(match.kinds, column);
  if (use === '') return { ...match, well, kinds };
  if (use === wellUse) return { ...match, well: column, kinds };
  return { ...match, well, kinds: added(kinds, use, column) };
}

/** Says in which unit a column is. */
export function withUnit(match: Match, column: string, unit: string): Match {
  const changed = (source: Source) => {
    if (!isOf(column)(source) || !(source.unit || source.unitColumn)) return source;
    const rest = { ...source };
    delete rest.unitColumn;
    return { ...rest, unit: unit as NonNullable<Source['unit']> };
  };
  return {
    ...match,
    kinds: match.kinds.map((one) => ({
      ...one,
      fields: Object.fromEntries(
        Object.entries(one.fields).map(([name, sources]) => [name, sources.map(changed)]),
      ),
    })),
  };
}
