import { describe, expect, it } from 'vitest';
import { editsBetween, misspelledKeys, nearest } from '../../../core/record/spelling.ts';

describe('editsBetween', () => {
  // Kitten and sitting: the textbook pair for edit distances (common practice).
  it.each([
    ['kitten', 'sitting', 3],
    ['lenght', 'length', 1],
    ['', 'abc', 3],
    ['abc', '', 3],
    ['form', 'from', 1],
    ['same', 'same', 0],
  ])('makes %s of %s in %i', (a, b, edits) => {
    expect(editsBetween(a, b)).toBe(edits);
  });
});

describe('nearest', () => {
  it('does not mind case and joining marks', () => {
    expect(nearest('Gravel Pack', ['gravelPack', 'claySeal'])).toBe('gravelPack');
    expect(nearest('clay_seal', ['gravelPack', 'claySeal'])).toBe('claySeal');
  });

  it('takes no word that is as far off as another word would be', () => {
    expect(nearest('salt', ['silt'])).toBe('silt');
    expect(nearest('rope', ['clay'])).toBeUndefined();
    expect(nearest('is', ['at', 'as'])).toBeUndefined();
  });
});

describe('misspelledKeys', () => {
  it('looks at every depth that the schema knows and no further', () => {
    const document = { idenity: 1, site: { comittee: {}, committee: {} }, own: { lenght: 3 } };
    expect(misspelledKeys(document).map(({ path }) => path)).toEqual(['idenity']);
  });

  it('is silent about an unknown key whose like is present', () => {
    expect(misspelledKeys({ log: [{ from: 0, form: 1, to: 2 }] })).toEqual([]);
  });

  it('knows the fields of both ways to set a string', () => {
    const trouble = misspelledKeys({ strings: [{ set: { by: 'stickUp', hieght: 0.5 } }] });
    expect(trouble[0]!.sentence).toBe('strings[0].set.hieght: no such field; did you mean height?');
  });
});
