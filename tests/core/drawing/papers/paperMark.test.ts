import { expect, it } from 'vitest';
import { paperMark } from '../../../../core/drawing/papers/paperMark.ts';

const making = { madeAt: '2026-01-31T12:00:00Z', paperId: '0'.repeat(32) };

it('names well, revision and record where they are known', () => {
  const record = { schemaVersion: 1, identity: { number: 'KA-12', name: 'School' } } as const;
  const recordHash = 'a'.repeat(64);
  expect(paperMark(record, { ...making, revision: 4, recordHash })).toEqual({
    ...making,
    title: 'KA-12 – School',
    author: '',
    wellNumber: 'KA-12',
    revision: 4,
    recordHash,
  });
});

it('is silent about what nobody wrote', () => {
  expect(paperMark({ schemaVersion: 1 }, making)).toEqual({ ...making, title: '', author: '' });
});
