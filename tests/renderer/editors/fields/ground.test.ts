import { afterEach, describe, expect, it } from 'vitest';
import {
  groundParts,
  materialField,
  secondsField,
} from '../../../../renderer/editors/fields/ground.ts';
import type { Reading } from '../../../../renderer/state/field.ts';
import { speech } from '../../../../renderer/state/language.svelte.ts';

const value = (reading: Reading) => (reading.ok ? reading.value : reading.sentence);
afterEach(() => (speech.language = 'en'));

describe('a material with second materials behind strokes', () => {
  it.each([
    ['s/c', { material: 's', qualifiers: 'c' }],
    ['sand / -clay', { material: 'sand', qualifiers: 'slightly clay' }],
    ['g/+s/-si', { material: 'g', qualifiers: 'very s; slightly si' }],
    ['s/c/', { material: 's', qualifiers: 'c' }],
  ])('%s is meant for two fields', (text, parts) => expect(groundParts(text)).toEqual(parts));

  it.each(['s', 's/', 's/-', 's/ +', ''])('“%s” has nothing behind a stroke yet', (text) => {
    expect(groundParts(text)).toBeUndefined();
  });

  it('has the degree in the words of the language in use', () => {
    speech.language = 'fr';
    expect(groundParts('s/-a')?.['qualifiers']).toBe('légèrement a');
  });

  it('completes the word behind the last stroke and its sign', () => {
    const { wordAt } = materialField();
    expect(['s', 's/c', 's/-c', 's/c/+g'].map((text) => wordAt?.(text))).toEqual([0, 2, 3, 5]);
  });
});

describe('a material', () => {
  it('is read by its code, its word or the beginning of its word', () => {
    const { read } = materialField();
    expect(['s', 'SI', 'sand', 'grav'].map((text) => value(read(text)))).toEqual([
      'sand',
      'silt',
      'sand',
      'gravel',
    ]);
  });

  it('is read in the words and codes of the language in use', () => {
    speech.language = 'fr';
    expect(['s', 'a', 'gres'].map((text) => value(materialField().read(text)))).toEqual([
      'sand',
      'clay',
      'sandstone',
    ]);
    speech.language = 'pt';
    expect(['a', 'ag', 'areia'].map((text) => value(materialField().read(text)))).toEqual([
      'sand',
      'clay',
      'sand',
    ]);
  });
});

describe('second materials', () => {
  const field = secondsField('qualifiers', 'With');
  const seconds = [{ material: 'sand' }, { material: 'clay', degree: 'slightly' }];

  it('have semicolons between and a degree before, and come back the same', () => {
    expect(value(field.read('sand; slightly clay'))).toEqual(seconds);
    expect(field.write(seconds)).toBe('sand; slightly clay');
    expect(value(field.read(field.write(seconds)))).toEqual(seconds);
  });

  it('may be written as codes, or as the adjectives that sheets print', () => {
    expect(value(field.read('s; slightly c'))).toEqual(seconds);
    expect(value(field.read('sandy; slightly clayey'))).toEqual(seconds);
  });

  it('are nothing where nothing was typed, and refused by the part that is wrong', () => {
    expect(field.read(' ; ')).toEqual({ ok: true, value: undefined });
    expect(value(field.read('sand; slightly zzz'))).toContain('“zzz” is not in the list');
  });

  it('complete the last one, behind its degree', () => {
    const at = (text: string) => text.slice(field.wordAt?.(text));
    expect(at('sand; sl')).toBe('sl');
    expect(at('sand; slightly cl')).toBe('cl');
    expect(at('sand')).toBe('sand');
  });
});
