import { describe, expect, it } from 'vitest';
import { checked, migrate, migrations } from '../../../core/record/migrations.ts';
import type { Migration, RecordDocument } from '../../../core/record/migrations/migration.ts';
import { stringsAndLevels } from '../../../core/record/migrations/stringsAndLevels.ts';
import { readRecord } from '../../../core/record/read.ts';
import { currentVersion } from '../../../core/record/schema.ts';

const called = new Set<string>();

interface Pair {
  readonly says: string;
  readonly before: RecordDocument;
  readonly after: RecordDocument;
}

/** A step's pairs, absent fields first. A step without pairs here fails the last test. */
function describeStep(step: Migration, pairs: readonly Pair[]): void {
  describe(`migration to ${step.version}, ${step.name}`, () => {
    it.each(pairs)('$says', ({ before, after }) => {
      const given = JSON.stringify(before);
      expect(step.change(before)).toEqual(after);
      expect(JSON.stringify(before)).toBe(given);
      called.add(step.name);
    });
  });
}

describeStep(stringsAndLevels, [
  { says: 'leaves an empty document empty', before: {}, after: {} },
  {
    says: 'keeps what it does not know',
    before: { notes: 'n', own: { casing: [] } },
    after: { notes: 'n', own: { casing: [] } },
  },
  {
    says: 'makes a string of the casing and its foot',
    before: {
      casing: [
        { type: 'cap', od: 125 },
        { type: 'screen', od: 125, thickness: 5, length: 2.9, slot: 0.5 },
      ],
      casingBottom: 31.4,
    },
    after: {
      strings: [
        {
          components: [
            { kind: 'cap', outside: 125 },
            { kind: 'screen', outside: 125, wall: 5, length: 2.9, slot: 0.5 },
          ],
          set: { by: 'bottom', depth: 31.4 },
        },
      ],
    },
  },
  {
    says: 'sets a string by nothing where the foot is not known',
    before: { casing: [{ type: 'plain' }] },
    after: { strings: [{ components: [{ kind: 'plain' }] }] },
  },
  {
    says: 'keeps a foot without casing',
    before: { casingBottom: 20 },
    after: { strings: [{ components: [], set: { by: 'bottom', depth: 20 } }] },
  },
  {
    says: 'touches no strings that are there already',
    before: { strings: [], casing: [{ type: 'plain' }] },
    after: { strings: [], casing: [{ type: 'plain' }] },
  },
  {
    says: 'gives intervals their new names and passes what is no interval',
    before: { log: [{ top: 0, base: 2, material: 'clay' }, 'gap', { top: 2, from: 3 }] },
    after: { log: [{ from: 0, to: 2, material: 'clay' }, 'gap', { top: 2, from: 3 }] },
  },
  {
    says: 'makes a rest level below ground, dated by its day',
    before: { swl: 6.2, swlDate: '2019-11-02' },
    after: { levels: [{ at: '2019-11-02', reading: 6.2, datum: 'ground', state: 'static' }] },
  },
  {
    says: 'adds an undated rest level to the levels that are there',
    before: { levels: [{ reading: 9, datum: 'casingTop' }], swl: 6.2 },
    after: {
      levels: [
        { reading: 9, datum: 'casingTop' },
        { reading: 6.2, datum: 'ground', state: 'static' },
      ],
    },
  },
  {
    says: 'leaves a date without a level where it was',
    before: { swlDate: '2019-11-02' },
    after: { swlDate: '2019-11-02' },
  },
]);

describe('migrate', () => {
  it('brings a draft to a record that reads without troubles', () => {
    const reading = readRecord({
      casing: [{ type: 'plain', od: 125, thickness: 5, length: 3 }],
      casingBottom: 12,
      log: [{ top: 0, base: 12, material: 'sand' }],
      swl: 4.1,
      swlDate: '2019-11-02',
    });
    expect(reading).toMatchObject({ kind: 'ok', troubles: [] });
    expect(reading.kind === 'ok' && reading.record.schemaVersion).toBe(currentVersion);
  });

  it('changes nothing but the version of a record without fields', () => {
    expect(migrate({}, 0)).toEqual({ ok: true, value: { schemaVersion: currentVersion } });
  });

  it('passes a record of the latest version as it is', () => {
    const document = { schemaVersion: currentVersion, casing: 'kept' };
    const outcome = migrate(document, currentVersion);
    expect(outcome.ok && outcome.value).toBe(document);
  });

  it('names the step that failed', () => {
    expect(migrate({ log: 'none' }, 0)).toEqual({
      ok: false,
      error: { version: 1, name: 'stringsAndLevels', reason: 'log is not a list' },
    });
  });
});

describe('checked', () => {
  const step = (version: number): Migration => ({
    version,
    name: `to${version}`,
    change: (d) => d,
  });

  it('takes steps that rise by one to the latest', () => {
    expect(checked([step(1), step(2)], 2)).toHaveLength(2);
  });

  it('refuses a gap, a repetition and an end before the latest', () => {
    expect(() => checked([step(1), step(3)], 3)).toThrow('to3 makes version 3 where 2 is next');
    expect(() => checked([step(1), step(1)], 2)).toThrow('where 2 is next');
    expect(() => checked([step(1)], 2)).toThrow('end at version 1; the schema is at 2');
  });
});

describe('all migrations', () => {
  it('are called by a pair above', () => {
    const uncalled = migrations.map(({ name }) => name).filter((name) => !called.has(name));
    expect(uncalled).toEqual([]);
  });
});
