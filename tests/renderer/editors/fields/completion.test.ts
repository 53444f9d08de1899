import { describe, expect, it } from 'vitest';
import { choiceField } from '../../../../renderer/editors/fields/choice.ts';
import { completed, completionsOf } from '../../../../renderer/editors/fields/completion.ts';
import { materialField } from '../../../../renderer/editors/fields/ground.ts';

const field = choiceField(
  'fill',
  'Fill',
  { pack: 'gravel pack', grout: 'cement grout', clay: 'clay seal', backfill: 'backfill' },
  {},
  { pack: 'p', clay: 'g' },
);

describe('words that answer to what is typed', () => {
  it('are all of them, in their order, where nothing is typed', () => {
    expect(completionsOf(field, ' ')).toEqual(field.options);
  });

  it('begin with the one whose code it is, then those that begin so, then a later part', () => {
    expect(completionsOf(field, 'g')).toEqual(['clay seal', 'gravel pack', 'cement grout']);
    expect(completionsOf(field, 'gr')).toEqual(['gravel pack', 'cement grout']);
    expect(completionsOf(field, 'SEAL')).toEqual(['clay seal']);
    expect(completionsOf(field, 'zzz')).toEqual([]);
  });

  it('answer behind a stroke to what stands behind it, and take its place', () => {
    const material = materialField();
    expect(completionsOf(material, 's/-grav')[0]).toBe('gravel');
    expect(completed(material, 's/-grav', 'gravel')).toBe('s/-gravel');
    expect(completed(field, 'gr', 'gravel pack')).toBe('gravel pack');
  });
});
