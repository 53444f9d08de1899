import { describe, expect, it } from 'vitest';
import { planWell, type KnownWell } from '../../../core/exchange/plan.ts';
import { currentVersion, type WellRecord } from '../../../core/record/schema.ts';

const record = (identity: Readonly<Record<string, string>>, more: object = {}): WellRecord => ({
  schemaVersion: currentVersion,
  identity,
  ...more,
});

const there = record(
  { id: 'a', number: 'W-1', client: 'District' },
  {
    site: { village: 'Kolo', latitude: 12.5, longitude: -1.5 },
    log: [{ from: 0, to: 2, material: 'clay' }],
  },
);

const known: KnownWell[] = [{ id: 'a', document: there as unknown as KnownWell['document'] }];
const wells = {
  byId: (id: string) => known.find((one) => one.id === id),
  byNumber: (number: string) => (number === 'W-1' ? known : []),
};

describe('a well that comes in', () => {
  it('is new where neither its id nor its number is there', () => {
    expect(planWell(record({ number: 'W-2' }), false, wells)).toEqual({
      kind: 'new',
      document: record({ number: 'W-2' }),
    });
    expect(planWell(record({}), false, wells).kind).toBe('new');
  });

  it('is the same where all that it says is there', () => {
    expect(planWell(there, true, wells).kind).toBe('same');
    const less = record({ number: 'W-1' }, { site: { village: 'kolo' } });
    expect(planWell(record({ number: 'W-1' }), false, wells)).toMatchObject({
      kind: 'same',
      id: 'a',
    });
    expect(planWell(less, false, wells).kind).toBe('alike');
  });

  it('is laid over what is there, and takes nothing away', () => {
    const { kind, document } = planWell(
      record({ id: 'a', name: 'Pump' }, { levels: [{ reading: 8, datum: 'ground' }] }),
      false,
      wells,
    );
    expect(kind).toBe('changed');
    expect(document).toEqual({
      ...there,
      identity: { ...there.identity, name: 'Pump' },
      levels: [{ reading: 8, datum: 'ground' }],
    });
  });

  it('takes the place of what is there where the file holds all of it', () => {
    const whole = record({ id: 'a', number: 'W-1' });
    expect(planWell(whole, true, wells)).toEqual({ kind: 'changed', id: 'a', document: whole });
  });

  it('of the same number is asked about, unless its place speaks against it', () => {
    const at = (site: object) =>
      planWell(record({ number: 'W-1', name: 'x' }, { site }), false, wells).kind;
    expect(at({})).toBe('alike');
    expect(at({ village: 'KOLO' })).toBe('alike');
    expect(at({ latitude: 12.501, longitude: -1.5 })).toBe('alike');
    expect(at({ latitude: 13.5, longitude: -1.5 })).toBe('new');
    expect(at({ village: 'Bari' })).toBe('new');
  });
});
