import { describe, expect, it } from 'vitest';
import { figures } from '../../../core/practice/figures.ts';
import { holdPractice } from '../../../core/practice/holdPractice.ts';
import { practiceOf } from '../../../core/practice/choosePractice.ts';
import { shippedPractices } from '../../../core/practice/shippedPractices.ts';
import type { PracticeFile } from '../../../core/practice/practice.ts';

const words = { en: 'Ours', fr: 'La nôtre', pt: 'A nossa' };

const own: PracticeFile = {
  id: 'ours',
  version: '2',
  name: words,
  scope: words,
  basedOn: 'machineRock',
  sources: { code: { title: words, mark: 'read' } },
  figures: {
    sanitarySealToM: { value: 8, source: 'code' },
    latrineM: { value: 50, source: 'code' },
  },
};

const held = (id: string, files: readonly PracticeFile[]) => {
  const result = holdPractice(id, files);
  if (!result.ok) throw new Error(result.error.sentence);
  return result.value;
};

describe('a shipped practice', () => {
  it.each(shippedPractices.map(({ id }) => id))('%s has every figure with its source', (id) => {
    const practice = held(id, shippedPractices);
    for (const figure of Object.keys(figures) as (keyof typeof figures)[]) {
      expect(practice.figures[figure].value, figure).toBeGreaterThanOrEqual(0);
      expect(practice.figures[figure].source.title.en, figure).not.toBe('');
    }
  });

  it('in rock overrides some figures of the one that it is based on', () => {
    const rock = held('machineRock', shippedPractices);
    expect(rock.basedOn).toEqual(['handDrilled']);
    expect(rock.figures.sanitarySealToM).toMatchObject({ value: 6, setBy: 'machineRock' });
    expect(rock.figures.latrineM).toMatchObject({ value: 30, setBy: 'handDrilled' });
  });
});

describe('a practice of the user', () => {
  const files = [own, ...shippedPractices];

  it('takes what it leaves out from those that it is based on, the nearest first', () => {
    const { figures: all, basedOn } = held('ours', files);
    expect(basedOn).toEqual(['machineRock', 'handDrilled']);
    expect(all.sanitarySealToM).toMatchObject({ value: 8, setBy: 'ours' });
    expect(all.clayOnPackM).toMatchObject({ value: 1, setBy: 'machineRock' });
    expect(all.turbidityNtu).toMatchObject({ value: 5, setBy: 'handDrilled' });
  });

  it('is refused where what it is based on is not there, or goes round', () => {
    expect(holdPractice('ours', [own])).toMatchObject({
      ok: false,
      error: { code: 'practiceUnknown' },
    });
    const round = { ...own, basedOn: 'ours' };
    expect(holdPractice('ours', [round])).toMatchObject({
      ok: false,
      error: { code: 'practiceRound' },
    });
  });

  it('is refused where a figure or its source stands nowhere', () => {
    const alone: PracticeFile = { ...own, basedOn: undefined as never };
    expect(holdPractice('ours', [alone])).toMatchObject({
      ok: false,
      error: { code: 'practiceIncomplete' },
    });
  });
});

describe('the practice of a well', () => {
  it('is the one that its record names', () => {
    const record = { schemaVersion: 1, identity: { practice: 'ours' } } as const;
    expect(practiceOf(record, [own]).id).toBe('ours');
  });

  it('is the general one for its way of drilling, also where the named one is not there', () => {
    expect(practiceOf({ schemaVersion: 1 }).id).toBe('handDrilled');
    const rock = { schemaVersion: 1, bore: { method: 'downTheHoleHammer' } } as const;
    expect(practiceOf(rock).id).toBe('machineRock');
    expect(practiceOf({ ...rock, identity: { practice: 'gone' } }).id).toBe('machineRock');
  });
});
