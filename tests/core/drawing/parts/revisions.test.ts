import { describe, expect, it } from 'vitest';
import { drawAsBuilt } from '../../../../core/drawing/papers/asBuilt.ts';
import { revisionPieces } from '../../../../core/drawing/parts/revisions.ts';
import { group } from '../../../../core/drawing/shapes.ts';
import { resolve, record } from '../../model/well.ts';
import { kit, wordsIn } from '../trial.ts';

const first = { number: 1, on: '2026-01-31T12:00:00Z', changes: ['First revision'] };
const second = {
  number: 2,
  on: '2026-03-02T08:00:00Z',
  changes: ['Screen: 24.00–30.00 m (was 23.00–29.00 m)', 'Notes added: dry'],
};
const words = (notes: Parameters<typeof revisionPieces>[1]) =>
  revisionPieces(kit, notes, 176).flatMap((piece) => wordsIn(group('piece', piece.draw(0, 0))));

describe('the table of revisions', () => {
  it('has the newest first, each with its day and what changed', () => {
    expect(words([first, second])).toEqual([
      'Revisions',
      'Rev.',
      'Date',
      'What changed since the revision before',
      '2',
      '2026-03-02',
      'Screen: 24.00–30.00 m (was 23.00–29.00 m)',
      'Notes added: dry',
      '1',
      '2026-01-31',
      'First revision',
    ]);
  });

  it('has a draft above them all, without a number', () => {
    const draft = { on: '2026-03-04T08:00:00Z', changes: ['Draft'] };
    expect(words([first, second, draft]).slice(4, 8)).toEqual(['–', '2026-03-04', 'Draft', '2']);
  });

  it('has a column for names where somebody is named', () => {
    expect(words([{ ...second, by: 'A. Person' }])).toContain('A. Person');
    expect(words([second])).not.toContain('By');
  });

  it('is absent without revisions', () => {
    expect(revisionPieces(kit, [], 176)).toEqual([]);
  });

  it('stands on a page of the sheet', () => {
    const bare = { identity: { number: 'E-01' } };
    const made = { madeAt: '2026-03-02T08:00:00Z', paperId: '0'.repeat(32), revision: 2 };
    const options = { ...made, paper: 'A4', fonts: kit.fonts, revisions: [first, second] } as const;
    const { pages } = drawAsBuilt(record(bare), resolve(bare), options);
    expect(wordsIn(group('page', pages.at(-1)!.items))).toContain('Notes added: dry');
  });
});
