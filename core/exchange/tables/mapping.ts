import { z } from 'zod';
import { ok, refused, type Result } from '../../base/result.ts';
import { materials } from '../../record/materials.ts';
import { encodings } from './decode.ts';
import { fieldsOf, tableKinds, type Field, type TableKind } from './fields.ts';
import { lengthUnits } from './units.ts';

const source = z
  .strictObject({
    column: z.string().describe('Heading of the column.').optional(),
    columns: z.array(z.string()).min(1).describe('Several columns, joined.').optional(),
    value: z.string().describe('The same for every row, not from a column.').optional(),
    unit: z.enum(lengthUnits).describe('Unit of a length.').optional(),
    unitColumn: z.string().describe('Column that names the unit, row by row.').optional(),
    offset: z
      .string()
      .regex(/^(Z|[+-]\d\d:\d\d)$/)
      .describe('Offset from UTC of times that carry none.')
      .optional(),
    words: z
      .record(z.string(), z.union([z.string(), z.null(), z.array(z.string())]))
      .describe('What the cell’s words become; null says nothing.')
      .optional(),
    understand: z
      .boolean()
      .describe('Materials: words that are not among these are understood by the table of words.')
      .optional(),
  })
  .refine(
    (one) => [one.column, one.columns, one.value].filter((way) => way !== undefined).length === 1,
    { error: 'needs one of "column", "columns" and "value"' },
  );

/** One source may stand for a list of one. */
const sources = z.preprocess(
  (given) => (Array.isArray(given) ? given : [given]),
  z.array(source).min(1),
);

/** How cells are written, for all tables or for one. */
const reading = {
  encoding: z.enum(encodings).describe('Of text; found out where absent.').optional(),
  delimiter: z.string().length(1).describe('Between cells; comma where absent.').optional(),
  decimal: z.enum(['.', ',']).describe('Decimal mark; point where absent.').optional(),
  absent: z.array(z.string()).describe('What counts as an empty cell.').optional(),
  dateOrder: z.enum(['ymd', 'dmy', 'mdy']).describe('Order in dates.').optional(),
};

const table = z.strictObject({
  kind: z.enum(tableKinds).describe('What a row of the table is.'),
  file: z.string().describe('Name of the file.'),
  sheet: z.string().describe('Name of the sheet, in a workbook.').optional(),
  headingLine: z
    .int()
    .min(1)
    .describe('Line on which the headings stand; the first where absent.')
    .optional(),
  well: z.string().describe('Column that says which well a row belongs to.'),
  fields: z
    .record(z.string(), sources)
    .describe('Where each field comes from; of several, the first that says something.'),
  sparse: z
    .boolean()
    .describe('A row whose needed columns are all empty says nothing of this kind.')
    .optional(),
  repeats: z
    .boolean()
    .describe('Wells: a well may have many rows; what the first of them says of it stands.')
    .optional(),
  ...reading,
});

/** How the columns of a set of tables become records. Settings of a table win over the set's. */
export const tableMapping = z.strictObject({
  about: z.string().describe('What the mapping is for.').optional(),
  ...reading,
  tables: z.array(table).min(1),
});

export type TableMapping = z.infer<typeof tableMapping>;
export type MappedTable = z.infer<typeof table>;
export type Source = z.infer<typeof source>;

const code = 'tables.mapping';
const isLength = (field: Field) => field.type === 'metres' || field.type === 'millimetres';

/** The sources of a field, in order of precedence. */
export function sourcesOf(mapped: MappedTable, name: string): readonly Source[] {
  return mapped.fields[name] ?? [];
}

/** A word that the mapping leads to and the record does not know. */
function strangeWord(field: Field, one: Source): string | undefined {
  if (!field.words) return undefined;
  const meant = one.value === undefined ? [] : [one.value];
  const listed = one.words === undefined ? meant : Object.values(one.words).flat();
  return listed.find((word): word is string => word !== null && !field.words!.includes(word));
}

/** What is wrong with the source of a field, as the end of a sentence. */
function faultOf(field: Field, one: Source): string | undefined {
  if (isLength(field) && one.unit === undefined && one.unitColumn === undefined)
    return `is a length: say its "unit" (${lengthUnits.join(', ')}) or "unitColumn"`;
  if (one.understand === true && field.words !== materials)
    return 'holds no material, so that "understand" means nothing for it';
  const word = strangeWord(field, one);
  if (word === undefined) return undefined;
  return `has the word "${word}", which is none of ${field.words!.join(', ')}`;
}

/** Checks what the schema cannot: fields by kind, units of lengths, words of lists. */
function faultOfTable(mapped: MappedTable): string | undefined {
  const known: Readonly<Record<string, Field>> = fieldsOf[mapped.kind];
  for (const name of Object.keys(mapped.fields)) {
    const field = known[name];
    if (!field) return `has no field "${name}"; it knows ${Object.keys(known).join(', ')}`;
    for (const one of sourcesOf(mapped, name)) {
      const fault = faultOf(field, one);
      if (fault !== undefined) return `field "${name}" ${fault}`;
    }
  }
  return missingField(mapped.kind, mapped.fields);
}

/** A needed field that no source is given for; every row would be left out. */
function missingField(kind: TableKind, given: MappedTable['fields']): string | undefined {
  const name = Object.entries(fieldsOf[kind]).find(
    ([key, field]) => field.required === true && !(key in given),
  )?.[0];
  return name === undefined ? undefined : `lacks the field "${name}"`;
}

/**
 * Reads a mapping from its JSON document. Refused with `tables.mapping` and a sentence that names
 * the place where it is not understood.
 */
export function readMapping(json: unknown): Result<TableMapping> {
  const read = tableMapping.safeParse(json);
  if (!read.success) {
    const [issue] = read.error.issues;
    const place = issue!.path.join('.') || 'the document';
    return refused(code, `The column mapping is not understood at ${place}: ${issue!.message}.`);
  }
  for (const mapped of read.data.tables) {
    const fault = faultOfTable(mapped);
    if (fault !== undefined)
      return refused(code, `The mapping of ${mapped.file} (${mapped.kind}) ${fault}.`);
  }
  return ok(read.data);
}
