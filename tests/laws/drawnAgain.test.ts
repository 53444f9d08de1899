import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { languages } from '../../core/base/language.ts';
import { Memory } from '../../core/base/memory.ts';
import { drawAsBuilt, type AsBuiltOptions } from '../../core/drawing/papers/asBuilt.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import { deepFreeze } from '../../core/record/freeze.ts';
import type { LogInterval } from '../../core/record/log.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { readFonts } from '../../electron/files/fonts.ts';
import { fileNames, well } from '../demo-data/wells.ts';
import { garbageWell } from './garbageWell.ts';
import { randomWell } from './randomWell.ts';

type Edit = (record: WellRecord) => WellRecord;

const options: AsBuiltOptions = {
  paper: 'A4',
  fonts: readFonts().metrics,
  madeAt: '2026-01-15T08:00:00Z',
  paperId: '0'.repeat(32),
};

function draw(record: WellRecord, more: Partial<AsBuiltOptions>) {
  return drawAsBuilt(record, resolveWell(record), { ...options, ...more });
}

const chapters = ['log', 'bore', 'strings', 'annulus', 'levels', 'strikes', 'pump'] as const;

/** A chapter of another well in the place of this one's. */
const chapterTaken: fc.Arbitrary<Edit> = fc
  .tuple(fc.constantFrom(...chapters), fc.oneof(randomWell, garbageWell))
  .map(([chapter, other]) => (record) => {
    const next = { ...record };
    delete next[chapter];
    return { ...next, ...(other[chapter] && { [chapter]: other[chapter] }) };
  });

const row: fc.Arbitrary<Partial<LogInterval>> = fc.oneof(
  fc.record({ colour: fc.string({ maxLength: 40 }) }),
  fc.record({ remarks: fc.lorem({ maxCount: 30 }) }),
  fc.record({ to: fc.integer({ min: 0, max: 9000 }).map((cm) => cm / 100) }),
  fc.record({ material: fc.constantFrom('clay', 'sand', 'granite') }),
  fc.record({ minutesPerMetre: fc.integer({ min: 1, max: 200 }) }),
  fc.record({ boundary: fc.constantFrom('gradual', 'uncertain'), sampled: fc.boolean() }),
);

/** One row of the log changed, as a letter changes it; others taken out. */
const rowChanged: fc.Arbitrary<Edit> = fc
  .tuple(fc.nat(), row, fc.boolean())
  .map(([at, change, out]) => (record) => {
    const log = record.log ?? [];
    const index = at % Math.max(1, log.length);
    const changed = log.map((one, here) => (here === index ? { ...one, ...change } : one));
    return { ...record, log: out ? changed.toSpliced(index, 1) : changed };
  });

const worded: fc.Arbitrary<Edit> = fc
  .tuple(fc.string(), fc.lorem({ maxCount: 60 }))
  .map(([name, notes]) => (record) => ({
    ...record,
    notes,
    identity: { ...record.identity, id: '1', name },
  }));

const edit = fc.oneof({ weight: 4, arbitrary: rowChanged }, chapterTaken, worded);

/** How the sheet is asked for while edits go on. */
const asked = fc.record({
  paper: fc.constantFrom('A4', 'A4', 'A3'),
  language: fc.constantFrom('en', 'en', ...languages),
  revision: fc.integer({ min: 1, max: 3 }),
});

describe('a sheet that is drawn again with a memory', () => {
  it('is the sheet drawn from nothing, whatever was edited before', () => {
    const start = fc.oneof(randomWell, garbageWell, fc.constantFrom(...fileNames.map(well)));
    const steps = fc.array(fc.tuple(edit, asked), { minLength: 3, maxLength: 8 });
    fc.assert(
      fc.property(start, steps, (first, edits) => {
        const memory = new Memory();
        let record = first;
        for (const [change, how] of edits) {
          record = deepFreeze(change(record));
          const again = JSON.stringify(draw(record, { ...how, memory }));
          expect(again === JSON.stringify(draw(record, how)), JSON.stringify(record)).toBe(true);
        }
      }),
      { numRuns: 40, seed: 20240607 },
    );
  }, 120_000);

  it('keeps the items of what an edit left alone', () => {
    const memory = new Memory();
    const record = well('sixty-intervals-58m.json');
    const before = draw(record, { memory });
    const log = record.log!.map((one, at) => (at === 5 ? { ...one, colour: 'white' } : one));
    const after = draw({ ...record, log }, { memory });
    const kept = (page: number) =>
      after.pages[page]!.items.filter((item, at) => item === before.pages[page]!.items[at]);
    expect(after.pages[1]).toBe(before.pages[1]);
    expect(kept(0)).toHaveLength(after.pages[0]!.items.length - 1);
  });
});
