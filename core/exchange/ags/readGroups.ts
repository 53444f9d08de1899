import { reason, type Reason } from '../reasons/reason.ts';
import { told, type TableTrouble } from '../tables/trouble.ts';

/** One DATA row with the line of the file on which it begins, from 1. */
export interface AgsRow {
  readonly line: number;
  readonly cells: ReadonlyMap<string, string>;
}

/** A group of an AGS 4 file. Units and types go by heading. */
export interface AgsGroup {
  readonly name: string;
  readonly line: number;
  readonly units: ReadonlyMap<string, string>;
  readonly rows: readonly AgsRow[];
}

export interface AgsGroups {
  readonly groups: ReadonlyMap<string, AgsGroup>;
  readonly troubles: readonly TableTrouble[];
}

interface Line {
  readonly line: number;
  readonly fields: readonly string[];
}

interface OpenGroup {
  readonly name: string;
  readonly line: number;
  headings: readonly string[];
  readonly units: Map<string, string>;
  readonly rows: AgsRow[];
}

const trouble = (file: string, line: number, says: Reason): TableTrouble => ({
  ...{ file, line, column: '', kept: false },
  ...told(says),
});

/** Where a field ends: at the closing quotation mark, or at the comma of one without marks. */
function endOfField(text: string, start: number): number {
  if (text[start] !== '"') {
    const end = text.slice(start).search(/[,\n]/);
    return end < 0 ? text.length : start + end;
  }
  let at = start + 1;
  for (; at < text.length; at++) {
    if (text[at] !== '"') continue;
    if (text[at + 1] !== '"') return at + 1;
    at++;
  }
  return at;
}

const fieldText = (raw: string) =>
  raw.startsWith('"')
    ? raw.slice(1, raw.endsWith('"') ? -1 : undefined).replaceAll('""', '"')
    : raw;

/**
 * Lines of fields. A field stands in double quotes, one within it is doubled (AGS 4, rules 5 and
 * 5a, from memory); a line may break within a field, as some programs write.
 */
function readLines(text: string): Line[] {
  const lines: Line[] = [];
  let fields: string[] = [];
  let [line, began, at] = [1, 1, 0];
  while (at < text.length) {
    const end = endOfField(text, at);
    const raw = text.slice(at, end);
    fields.push(fieldText(raw).trim());
    line += raw.split('\n').length - 1;
    const stop = text.slice(end).search(/[,\n]/);
    at = stop < 0 ? text.length : end + stop + 1;
    if (stop >= 0 && text[end + stop] === ',') continue;
    if (fields.some((field) => field !== '')) lines.push({ line: began, fields });
    fields = [];
    began = ++line;
  }
  return lines;
}

function rowOf({ line, fields }: Line, headings: readonly string[]): AgsRow {
  return { line, cells: new Map(headings.map((name, at) => [name, fields[at + 1] ?? ''])) };
}

/** A row is longer than its headings only by fields that say nothing, or it is not understood. */
const overflows = ({ fields }: Line, headings: readonly string[]) =>
  fields.slice(headings.length + 1).some((field) => field !== '');

function addData(file: string, one: Line, group: OpenGroup): TableTrouble[] {
  if (overflows(one, group.headings)) {
    const [fields, headings] = [one.fields.length - 1, group.headings.length];
    const says = reason('longRow', { fields, headings, group: group.name });
    return [trouble(file, one.line, reason('leftOut', { says }))];
  }
  group.rows.push(rowOf(one, group.headings));
  return [];
}

/** A group that stands twice goes on where it was, under the headings of its second time. */
function openGroup(groups: Map<string, OpenGroup>, { line, fields }: Line): OpenGroup {
  const name = fields[1] ?? '';
  const group = groups.get(name) ?? { name, line, headings: [], units: new Map(), rows: [] };
  groups.set(name, group);
  return group;
}

function takeLine(file: string, one: Line, group: OpenGroup): TableTrouble[] {
  switch (one.fields[0]) {
    case 'HEADING':
      group.headings = one.fields.slice(1);
      return [];
    case 'UNIT':
      for (const [name, unit] of rowOf(one, group.headings).cells) group.units.set(name, unit);
      return [];
    case 'TYPE':
      return [];
    case 'DATA':
      return addData(file, one, group);
    default:
      return [trouble(file, one.line, reason('strangeLine', { word: one.fields[0]! }))];
  }
}

/** The groups of an AGS 4 file, with the lines that could not be taken. Never throws. */
export function readGroups(file: string, text: string): AgsGroups {
  const groups = new Map<string, OpenGroup>();
  const troubles: TableTrouble[] = [];
  let group: OpenGroup | undefined;
  for (const one of readLines(text.replace(/^\uFEFF/, '').replaceAll(/\r\n?/g, '\n'))) {
    if (one.fields[0] === 'GROUP') group = openGroup(groups, one);
    else if (group) troubles.push(...takeLine(file, one, group));
    else troubles.push(trouble(file, one.line, reason('beforeGroups')));
  }
  return { groups, troubles };
}
