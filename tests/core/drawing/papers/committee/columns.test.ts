import { describe, expect, it } from 'vitest';
import { layColumns } from '../../../../../core/drawing/papers/committee/columns.ts';
import { resolveWell } from '../../../../../core/model/resolveWell.ts';
import type { WellRecord } from '../../../../../core/record/schema.ts';
import { guidelinesOf } from '../../../../../core/water/guidelines/chooseGuidelines.ts';
import { well } from '../../../../demo-data/wells.ts';
import { within } from '../../trial.ts';
import { kitIn, saidBy } from './kit.ts';

function columns(record: WellRecord, height?: number) {
  const guidelines = guidelinesOf(undefined);
  const content = {
    record,
    model: resolveWell(record),
    guidelines,
    facts: { madeAt: '' },
    images: {},
  };
  return layColumns(kitIn('en', record), content, 180, height);
}

function noteLines(record: WellRecord, height?: number): number {
  const items = columns(record, height).draw(20, 20).flatMap(within);
  const notes = items.filter((one) => one.kind === 'group' && one.name === 'notes');
  return notes.flatMap((one) => (one.kind === 'group' ? one.items : [])).length;
}

describe('the two columns under the picture', () => {
  const record = well('hand-drilled-32m.json');

  it('hold people, tests of the water, chlorine and room for notes', () => {
    const { own } = kitIn();
    for (const { title } of [own.call, own.quality, own.chlorine])
      expect(saidBy(columns(record))).toContain(title);
    expect(noteLines(record)).toBeGreaterThan(0);
  });

  it('give what is to spare to the notes', () => {
    expect(columns(record, 120).height).toBeCloseTo(120, 6);
    expect(noteLines(record, 120)).toBeGreaterThan(noteLines(record) + 4);
  });

  it('leave a line for the telephone of whose number the record has none', () => {
    const words = saidBy(columns(record));
    expect(words).toContain('Mechanic');
    expect(words).toContain('+999 01 20 45 11');
  });
});
