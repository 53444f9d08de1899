import { describe, expect, it } from 'vitest';
import { admitPractice } from '../../../core/practice/admitPractice.ts';
import { readPractice, readPracticeText } from '../../../core/practice/readPractice.ts';
import { shippedPractices } from '../../../core/practice/shippedPractices.ts';

const written = {
  id: 'ourProgramme',
  version: '2026-1',
  name: 'Our programme',
  scope: { fr: 'Nos forages' },
  basedOn: 'handDrilled',
  sources: { contract: { title: 'Contract, annex 3', mark: 'read' } },
  figures: { latrineM: { value: 50, source: 'contract' } },
  currency: 'XOF',
  prices: { cementSack: { each: 5200, per: 'sack' } },
};

const read = (change: object = {}) => {
  const result = readPractice({ ...written, ...change });
  return result.ok ? result.value : result.error.sentence;
};

describe('reading a practice', () => {
  it.each(shippedPractices)('takes $id as it is shipped', (file) => {
    expect(readPractice(file)).toEqual({ ok: true, value: file });
  });

  it('lets a text stand for all languages, and the one that is there for those that lack', () => {
    expect(read()).toMatchObject({
      name: { en: 'Our programme', fr: 'Our programme', pt: 'Our programme' },
      scope: { en: 'Nos forages', fr: 'Nos forages', pt: 'Nos forages' },
    });
  });

  it('takes a practice without figures', () => {
    const { figures, sources } = read({ figures: undefined, sources: undefined }) as {
      figures: object;
      sources: object;
    };
    expect({ figures, sources }).toEqual({ figures: {}, sources: {} });
  });

  it.each([
    [{ id: 'our programme' }, 'id: write an id of letters'],
    [{ version: 2 }, 'version: write the version as a text'],
    [{ name: {} }, 'name: write the name as a text'],
    [{ figures: { latrineMetres: {} } }, 'figures.latrineMetres: there is no such figure'],
    [
      { figures: { latrinM: { value: 1, source: 'contract' } } },
      'figures.latrinM: there is no such figure; is latrineM meant?',
    ],
    [{ figures: { latrineM: { value: -1, source: 'a' } } }, 'write a number from 0 up in m'],
    [{ figures: { cementSackKg: { value: 0, source: 'a' } } }, 'write a number above 0 in kg'],
    [{ figures: { openAreaLeastPercent: { value: 101, source: 'a' } } }, 'from 0 to 100 %'],
    [{ figures: { latrineM: 30 } }, 'figures.latrineM: write a figure as an object'],
    [{ without: ['no.suchRule'] }, 'without[0]: there is no such rule as “no.suchRule”'],
    [{ prices: { cementSack: { each: -3, per: 'sack' } } }, 'prices.cementSack.each: a price'],
    [{ figurs: {} }, 'figurs: there is no such key; is figures meant?'],
  ])('says where %j is wrong and what to write', (change, says) => {
    expect(read(change)).toContain(says);
  });

  it('refuses what is no object, and a text that is no JSON', () => {
    expect(readPractice([])).toMatchObject({ ok: false, error: { code: 'practiceUnread' } });
    expect(readPracticeText('{')).toMatchObject({ ok: false, error: { code: 'practiceUnread' } });
    expect(readPracticeText(`\uFEFF${JSON.stringify(written)}`).ok).toBe(true);
  });
});

describe('a practice among others', () => {
  const ours = readPractice(written);
  if (!ours.ok) throw new Error(ours.error.sentence);

  it('is held with what it is based on, in place of the one with its id', () => {
    const older = { ...ours.value, version: '2025-1' };
    const held = admitPractice(ours.value, [older]);
    expect(held).toMatchObject({ ok: true, value: { version: '2026-1', currency: 'XOF' } });
  });

  it('may not bear the id of one that comes with the program', () => {
    expect(admitPractice({ ...ours.value, id: 'machineRock' }, [])).toMatchObject({
      ok: false,
      error: { code: 'practiceShipped' },
    });
  });

  it('is refused where the source of a figure stands nowhere', () => {
    const figures = { latrineM: { value: 50, source: 'nowhere' } };
    expect(admitPractice({ ...ours.value, figures }, [])).toMatchObject({
      ok: false,
      error: { code: 'practiceIncomplete' },
    });
  });
});
