import type { RecordPath } from '../../core/base/recordPath.ts';
import type { WellModel } from '../../core/model/wellModel.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import type { Rows } from '../state/rows.ts';
import type { Starts } from '../state/field.ts';
import type { EntryField } from './fields/entryField.ts';

/** A form over one object of the record. */
export interface FormBlock {
  readonly kind: 'form';
  readonly heading: string;
  /** Path of the object; empty for the record itself. */
  readonly base: RecordPath;
  readonly fields: readonly EntryField[];
}

/** A sentence about a field of a row, in the language in use. */
export interface RowLook {
  readonly path: RecordPath;
  readonly said: string;
}

/** What is said at rows, by their index, and of a table as a whole. */
export interface TableLooks {
  readonly rows: ReadonlyMap<number, readonly RowLook[]>;
  readonly whole: readonly RowLook[];
}

/** Columns in the table; the rest of a row stands below it, for the row selected. */
export interface TableShape {
  readonly heading: string;
  readonly columns: readonly EntryField[];
  readonly more: readonly EntryField[];
  readonly starts?: (rows: readonly unknown[]) => Starts;
  /** Fields that rows can be put in order of, the first weighing most, and how that is called. */
  readonly sort?: { readonly by: readonly string[]; readonly label: string };
  /** Each row reaches from one depth to another: it can be split, and joined with the next. */
  readonly intervals?: boolean;
  /** What a row says in words, kept in the remarks of the one that it is joined to. */
  readonly describe?: (row: unknown) => string;
  /** What else can be done with the whole table. */
  readonly deed?: 'makeLog' | 'takeReadings';
  /** What the program makes of the rows, said at each and of all of them. */
  readonly looks?: (record: WellRecord, model: WellModel, list: RecordPath) => TableLooks;
  /** A column that is computed, not typed. */
  readonly computed?: {
    readonly label: string;
    readonly text: (model: WellModel, path: RecordPath) => string;
  };
}

export interface TableBlock extends TableShape {
  readonly kind: 'table';
  readonly list: RecordPath;
}

/** A list of objects that each have a form and a table of their own. */
export interface StackBlock {
  readonly kind: 'stack';
  readonly heading: string;
  readonly list: RecordPath;
  readonly title: (number: number) => string;
  readonly fields: readonly EntryField[];
  /** Name of the list inside, with its table. */
  readonly inner: string;
  readonly table: TableShape;
  /** The table again, where what can be typed in it hangs on a field of its item. */
  readonly tableBy?: {
    readonly field: string;
    readonly table: (value: unknown) => TableShape;
  };
  /** Buttons that put one more at the end, each with what it starts as. */
  readonly adds: readonly { readonly label: string; readonly item: object }[];
}

/** Photos and scans, which are shown by whoever mounts the editor. */
export interface PhotosBlock {
  readonly kind: 'photos';
}

/** What computed parts of a chapter are called; they are shown by whoever mounts the editor. */
export type CompletionViewId = 'proposals' | 'pours' | 'quantities' | 'differences';
export type QualityViewId = 'quality' | 'disinfection';
export type WaterViewId = 'levels' | 'tests' | 'safeRate' | 'development';
export type HandoverViewId = 'marks' | 'issues';
export type ViewId =
  CompletionViewId | WaterViewId | QualityViewId | HandoverViewId | 'siting' | 'pumps';

export interface ViewBlock {
  readonly kind: 'view';
  readonly view: ViewId;
}

/** A part of a chapter that stands folded until it is wanted, so that nobody has to walk past it. */
export interface FoldBlock {
  readonly kind: 'fold';
  readonly heading: string;
  /** Whether the record has anything to show in it; always where absent. */
  readonly isThere?: (record: WellRecord) => boolean;
  /** Whether it stands open to begin with. */
  readonly isOpen?: (record: WellRecord) => boolean;
  /** Whether a path of the record is shown in it, which opens it when the path is asked for. */
  readonly holds: (path: RecordPath) => boolean;
  readonly blocks: readonly (FormBlock | TableBlock | ViewBlock)[];
}

export type Block = FormBlock | TableBlock | StackBlock | PhotosBlock | FoldBlock;

export const chapterIds = [
  'well',
  'site',
  'ground',
  'completion',
  'water',
  'pump',
  'handover',
] as const;
export type ChapterId = (typeof chapterIds)[number];

export function rowsOf(table: TableShape, list: RecordPath): Rows & { fields: EntryField[] } {
  const fields = [...table.columns, ...table.more];
  return { list, fields, ...(table.starts ? { starts: table.starts } : {}) };
}
