import { describe, expect, it } from 'vitest';
import { holdGuidelines } from '../../../../core/water/guidelines/holdGuidelines.ts';
import {
  readGuidelines,
  readGuidelinesText,
} from '../../../../core/water/guidelines/readGuidelines.ts';
import { shippedGuidelines } from '../../../../core/water/guidelines/shippedGuidelines.ts';

const written = {
  id: 'ours',
  version: '1',
  name: 'Decree on drinking water',
  basedOn: 'who2022',
  sources: { decree: { title: { fr: 'Décret' }, mark: 'read' } },
  parameters: {
    nitrate: {
      values: {
        health: { bound: 'most', value: 10, as: 'NO3-N', basis: 'health', source: 'decree' },
      },
    },
  },
};

describe('a set of the user is read', () => {
  it('from its file; a text in one language stands for all', () => {
    const read = readGuidelinesText(`\uFEFF${JSON.stringify(written)}`);
    expect(read).toMatchObject({
      ok: true,
      value: {
        name: { en: 'Decree on drinking water', pt: 'Decree on drinking water' },
        sources: { decree: { title: { en: 'Décret' } } },
        parameters: { nitrate: { values: { health: { as: 'N' } } } },
      },
    });
    if (read.ok) expect(holdGuidelines('ours', [read.value, ...shippedGuidelines]).ok).toBe(true);
  });

  it('and so are the shipped ones', () => {
    for (const file of shippedGuidelines)
      expect(readGuidelines(file)).toEqual({ ok: true, value: file });
  });
});

describe('a set is refused with every fault', () => {
  const faultsOf = (part: object) => {
    const read = readGuidelines({ ...written, ...part });
    return read.ok ? '' : read.error.sentence;
  };
  const nitrate = (value: object) => ({
    parameters: {
      nitrate: {
        values: {
          health: { bound: 'most', value: 10, basis: 'health', source: 'decree', ...value },
        },
      },
    },
  });

  it.each([
    [{ id: 'not an id' }, 'id: write an id'],
    [{ limits: {} }, 'limits: there is no such key'],
    [nitrate({ value: -1 }), 'parameters.nitrate.values.health.value: write a number from 0 up'],
    [nitrate({ unit: 'spoons' }), 'values.health.unit: write a unit'],
    [nitrate({ as: 'gold' }), 'values.health.as: write a form'],
    [nitrate({ basis: 'hearsay' }), 'values.health.basis: write one of health'],
    [
      {
        parameters: {
          iron: {
            bands: {
              source: 'decree',
              list: [
                { id: 'low', from: 2 },
                { id: 'high', from: 1 },
              ],
            },
          },
        },
      },
      'bands.list: write the bands from the lowest up',
    ],
  ])('%o', (part, fault) => {
    expect(faultsOf(part)).toContain(fault);
  });

  it('where it is no object, or no JSON', () => {
    expect(readGuidelines(7)).toMatchObject({ ok: false, error: { code: 'guidelinesUnread' } });
    expect(readGuidelinesText('{')).toMatchObject({ ok: false });
  });
});
