import { describe, expect, it } from 'vitest';
import { guidelinesOf } from '../../../../core/water/guidelines/chooseGuidelines.ts';
import type { GuidelineFile } from '../../../../core/water/guidelines/guidelineSet.ts';
import { holdGuidelines } from '../../../../core/water/guidelines/holdGuidelines.ts';
import { shippedGuidelines } from '../../../../core/water/guidelines/shippedGuidelines.ts';

const words = { en: 'Ours', fr: 'La nôtre', pt: 'A nossa' };

/** A country's values, invented. */
const own: GuidelineFile = {
  id: 'ours',
  version: '3',
  name: words,
  basedOn: 'who2022',
  sources: { decree: { title: words, mark: 'read' } },
  parameters: {
    nitrate: {
      values: {
        health: { bound: 'most', value: 10, as: 'N', basis: 'health', source: 'decree' },
      },
    },
    iron: {
      values: { health: { bound: 'most', value: 1, basis: 'health', source: 'decree' } },
    },
    boron: {
      names: { en: 'boron', fr: 'bore', pt: 'boro' },
      unit: 'mg/l',
      values: { health: { bound: 'most', value: 2.4, basis: 'health', source: 'decree' } },
    },
  },
  without: ['uranium', 'manganese.stains'],
};

const held = (id: string, files: readonly GuidelineFile[]) => {
  const result = holdGuidelines(id, files);
  if (!result.ok) throw new Error(result.error.sentence);
  return result.value;
};

describe('a set of the user', () => {
  const set = held('ours', [own, ...shippedGuidelines]);
  const byId = (id: string) => set.parameters.find((one) => one.id === id);

  it('overrides values one by one, in their own form, and says who set them', () => {
    const [nitrate] = byId('nitrate')!.values;
    expect(nitrate).toMatchObject({ value: 10, unit: 'mg/l', as: 'N', setBy: 'ours' });
    expect(byId('nitrate')).toMatchObject({ unit: 'mg/l', as: 'NO3' });
    expect(byId('iron')!.values.map(({ key, setBy }) => [key, setBy])).toEqual([
      ['stains', 'who2022'],
      ['health', 'ours'],
    ]);
  });

  it('takes the rest, with names and aliases, and adds its own at the end', () => {
    expect(set.basedOn).toEqual(['who2022']);
    expect(byId('iron')!.aliases).toContain('Fe');
    expect(byId('fluoride')!.values).toMatchObject([{ value: 1.5, setBy: 'who2022' }]);
    expect(set.parameters.at(-1)?.id).toBe('boron');
  });

  it('leaves out parameters and values that it does not ask for', () => {
    expect(byId('uranium')).toBeUndefined();
    expect(byId('manganese')!.values.map(({ key }) => key)).toEqual(['health']);
  });

  it('keeps the figures of others in their unit where it changes the unit of a parameter', () => {
    const inMicrograms = {
      ...own,
      parameters: { arsenic: { unit: 'µg/l' } },
      without: [],
    };
    const arsenic = held('ours', [inMicrograms, ...shippedGuidelines]).parameters.find(
      ({ id }) => id === 'arsenic',
    );
    expect(arsenic).toMatchObject({ unit: 'µg/l', values: [{ value: 0.01, unit: 'mg/l' }] });
  });
});

describe('a set is refused', () => {
  it('where what it is based on is not there, or goes round', () => {
    expect(holdGuidelines('ours', [own])).toMatchObject({
      ok: false,
      error: { code: 'guidelinesUnknown' },
    });
    expect(holdGuidelines('nobody', shippedGuidelines)).toMatchObject({
      ok: false,
      error: { code: 'guidelinesUnknown' },
    });
    expect(holdGuidelines('ours', [{ ...own, basedOn: 'ours' }])).toMatchObject({
      ok: false,
      error: { code: 'guidelinesRound' },
    });
  });

  it('where a source is not explained, or a new parameter has no name', () => {
    const result = holdGuidelines('ours', [
      { ...own, sources: {}, parameters: { ...own.parameters, zinc: { unit: 'mg/l' } } },
      ...shippedGuidelines,
    ]);
    expect(result).toMatchObject({ ok: false, error: { code: 'guidelinesIncomplete' } });
    if (!result.ok) expect(result.error.sentence).toContain('zinc, nitrate.health, iron.health');
  });

  it('and then the shipped one stands in', () => {
    expect(guidelinesOf('ours', [own]).id).toBe('ours');
    expect(guidelinesOf('nobody').id).toBe('who2022');
    expect(guidelinesOf(undefined).id).toBe('who2022');
  });
});
