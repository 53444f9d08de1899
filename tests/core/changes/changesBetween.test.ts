import { describe, expect, it } from 'vitest';
import { languages } from '../../../core/base/language.ts';
import { changesBetween } from '../../../core/changes/changesBetween.ts';
import { sayChanges } from '../../../core/changes/sayChanges.ts';
import { chapters } from '../../../core/changes/chapters.ts';
import type { WellRecord } from '../../../core/record/schema.ts';
import { wellRecord } from '../../../core/record/schema.ts';
import { demoWells } from '../../sheets/wells.ts';
import { record } from '../model/well.ts';

const said = (before: WellRecord, now: WellRecord) =>
  sayChanges(changesBetween(before, now, 'en'), 'en');

const screened = (bottom: number) =>
  record({
    strings: [
      {
        set: { by: 'bottom', depth: bottom },
        components: [
          { kind: 'screen', length: 6, outside: 110, wall: 4.2, material: 'uPVC' },
          { kind: 'plain', length: 24.5, outside: 110, wall: 4.2, material: 'uPVC' },
        ],
      },
    ],
  });

describe('what changed between two records', () => {
  it('says where a screen stands and stood', () => {
    expect(said(screened(29), screened(30))).toContain('Screen: 24.00–30.00 m (was 23.00–29.00 m)');
  });

  it('says what was added and what was removed', () => {
    const level = { at: '2026-05-03T07:10:00+00:00', reading: 8.42, datum: 'ground' } as const;
    const [none, one] = [record({}), record({ levels: [{ ...level, state: 'static' }] })];
    expect(said(none, one)).toEqual(['Rest level of 2026-05-03 added: 8.42 m']);
    expect(said(one, none)).toEqual(['Rest level of 2026-05-03 removed: 8.42 m']);
  });

  it('names only the parts of an entry that differ', () => {
    const fill = { from: 0, to: 3, fill: 'cementGrout', sanitary: true } as const;
    const [before, now] = [
      { ...fill, litres: 40 },
      { ...fill, litres: 44 },
    ];
    expect(said(record({ annulus: [before] }), record({ annulus: [now] }))).toEqual([
      'Sanitary seal, cement grout: 44 L (was 40 L)',
    ]);
  });

  it('has a dash for what was not known before', () => {
    const [before, now] = [
      { kind: 'directAction' },
      { kind: 'directAction', model: 'DA-15' },
    ] as const;
    expect(said(record({ pump: before }), record({ pump: now }))).toEqual(['Pump: DA-15 (was –)']);
  });

  it('names the chapter where what changed has no words of its own', () => {
    const now = record({ bore: { remark: 'Two bits worn out' } });
    expect(said(record({ bore: {} }), now)).toEqual(['Hole: other entries changed']);
  });

  it('says that nothing changed where nothing did', () => {
    for (const [, one] of demoWells)
      expect(said(one, structuredClone(one))).toEqual(['No entry changed']);
  });

  it('tells two readings of one moment apart', () => {
    const level = { at: '2026-05-03', datum: 'ground', state: 'static' } as const;
    const two = [
      { ...level, reading: 8 },
      { ...level, reading: 9 },
    ];
    const other = [
      { ...level, reading: 8 },
      { ...level, reading: 9.5 },
    ];
    expect(said(record({ levels: two }), record({ levels: other }))).toEqual([
      'Rest level of 2026-05-03: 9.50 m (was 9.00 m)',
    ]);
  });
});

describe('sentences of changes', () => {
  const [, first] = demoWells[0]!;
  const [, second] = demoWells[1]!;

  it('are bounded in number, and the others counted', () => {
    const changes = changesBetween(first, second, 'en');
    const sentences = sayChanges(changes, 'en', { sentences: 5, letters: 40 });
    expect(sentences).toHaveLength(5);
    expect(sentences.at(-1)).toBe(`and ${changes.length - 4} more`);
  });

  it('cut a value without end', () => {
    const now = record({ notes: 'word '.repeat(400) });
    expect(said(record({}), now)[0]!.length).toBeLessThan(120);
    expect(said(record({}), now)[0]).toMatch(/…$/);
  });

  it.each(languages)('of any two demo wells leave no place unfilled in %s', (language) => {
    for (const [, before] of demoWells)
      for (const [, now] of demoWells) {
        const all = sayChanges(changesBetween(before, now, language), language, {
          sentences: 500,
          letters: 200,
        });
        expect(all.filter((one) => /[{}]|undefined|NaN/.test(one))).toEqual([]);
      }
  });

  it('keep a value that looks like a place as it was written', () => {
    const now = record({ notes: '$& {before}' });
    expect(said(record({}), now)).toEqual(['Notes added: $& {before}']);
  });
});

it('every chapter of the record is compared', () => {
  const all = Object.keys(wellRecord.shape).filter((key) => key !== 'schemaVersion');
  expect([...chapters].sort()).toEqual(all.sort());
});
