import { describe, expect, it } from 'vitest';
import { readMapping } from '../../../../core/exchange/index.ts';

const from = { column: 'Top', unit: 'm' };
const to = { column: 'Base', unit: 'm' };
const log = { kind: 'log', file: 'log.csv', well: 'No', fields: { from, to } };

function sentenceFor(table: object): string {
  const read = readMapping({ tables: [table] });
  return read.ok ? 'no refusal' : read.error.sentence;
}

describe('a column mapping', () => {
  it('is taken when it is whole, a source alone as a list of one', () => {
    const read = { ...log, fields: { from: [from], to: [to] } };
    expect(readMapping({ tables: [log] })).toEqual({ ok: true, value: { tables: [read] } });
  });

  it('that is not one is refused with the place', () => {
    const read = readMapping({ tables: [{ ...log, kind: 'loge' }] });
    expect(read.ok || read.error.code).toBe('tables.mapping');
    expect(read.ok || read.error.sentence).toMatch(/tables\.0\.kind/);
    expect(readMapping(null).ok).toBe(false);
  });

  it('names the fields that a kind of table knows when one is not known', () => {
    const fields = { ...log.fields, colour: { column: 'C' }, color: { column: 'C' } };
    expect(sentenceFor({ ...log, fields })).toMatch(
      /log\.csv \(log\) has no field "color"; it knows .*colour/,
    );
  });

  it('must say the unit of a length', () => {
    const fields = { from: { column: 'Top' }, to };
    expect(sentenceFor({ ...log, fields })).toMatch(/field "from" is a length: say its "unit"/);
  });

  it('must give what a row cannot do without', () => {
    expect(sentenceFor({ ...log, fields: { from } })).toMatch(/lacks the field "to"/);
  });

  it('may only lead to words that the record knows', () => {
    const material = { column: 'Code', words: { CLY: 'claye' } };
    expect(sentenceFor({ ...log, fields: { from, to, material } })).toMatch(
      /field "material" has the word "claye"/,
    );
  });

  it('takes a field from one place only', () => {
    const words = { column: 'A', value: 'b' };
    expect(sentenceFor({ ...log, fields: { from, to, words } })).toMatch(
      /at tables\.0\.fields\.words\.0: needs one of "column", "columns" and "value"/,
    );
  });
});
