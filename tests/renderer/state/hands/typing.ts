import { valueAt, type RecordPath } from '../../../../core/base/recordPath.ts';
import type { WellRecord } from '../../../../core/record/schema.ts';
import { chapters } from '../../../../renderer/editors/chapters/index.ts';
import { enter, type Desk } from '../../../../renderer/state/desk.ts';
import type { Field } from '../../../../renderer/state/field.ts';

interface Place {
  readonly base: RecordPath;
  readonly field: Field;
}

/** Every field that the tables and forms offer for a record, with where it stands. */
function placesOf(record: WellRecord): Place[] {
  const blocks = Object.values(chapters).flatMap((make) => make());
  const rowsOf = (list: RecordPath) => {
    const rows = valueAt(record, list);
    return Array.isArray(rows) ? rows.map((_, at) => `${list}[${at}]`) : [];
  };
  return blocks.flatMap((block) => {
    if (block.kind === 'form') return block.fields.map((field) => ({ base: block.base, field }));
    if (block.kind === 'stack')
      return rowsOf(block.list).flatMap((base) => block.fields.map((field) => ({ base, field })));
    if (block.kind === 'photos' || block.kind === 'fold') return [];
    const fields = [...block.columns, ...block.more];
    return rowsOf(block.list).flatMap((base) => fields.map((field) => ({ base, field })));
  });
}

/** Types a value into the field whose text would be kept under a path, as the tables do. */
export function typedInto(desk: Desk, typedAs: RecordPath, value: unknown): Desk {
  const place = placesOf(desk.record).find(
    ({ base, field }) => [base, field.name].filter(Boolean).join('.') === typedAs,
  );
  if (!place) throw new Error(`No table offers ${typedAs}`);
  return enter(desk, place.base, place.field, place.field.write(value));
}
