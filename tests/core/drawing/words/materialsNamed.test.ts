import { describe, expect, it } from 'vitest';
import { languages } from '../../../../core/base/language.ts';
import { materialsNamed } from '../../../../core/drawing/words/materialsNamed.ts';
import { sheetWordsIn } from '../../../../core/drawing/words/languages.ts';
import { materials } from '../../../../core/record/materials.ts';

const named = (typed: string) => materialsNamed(typed).map(({ material }) => material);

describe('materials are known by a word', () => {
  it.each([
    ['sable', 'sand'],
    ['SABLEUSE', 'sand'],
    ['areia', 'sand'],
    ['sandy', 'sand'],
    ['argile', 'clay'],
    ['argila', 'clay'],
    ['gres', 'sandstone'],
    ['grès', 'sandstone'],
    ['remblai', 'madeGround'],
    ['végétale', 'topsoil'],
    ['loess', 'loess'],
    ['sel', 'salt'],
  ])('of one of the page’s languages: %s is %s', (typed, material) => {
    expect(named(typed)).toContain(material);
  });

  it('by a beginning of four letters, and by fewer only where they are the whole word', () => {
    expect(named('sabl')).toContain('sand');
    expect(named('sab')).toEqual([]);
    expect(named('tuf')).toEqual(['tuff']);
    expect(named('s')).toEqual([]);
    expect(named('')).toEqual([]);
  });

  it('each once, with the name as a sheet writes it', () => {
    expect(materialsNamed('laterit')).toEqual([{ material: 'laterite', name: 'laterite' }]);
    expect(materialsNamed('grès')).toEqual([{ material: 'sandstone', name: 'grès' }]);
  });

  it('and every name of every language finds its own, but for what the log says besides', () => {
    for (const language of languages)
      for (const material of materials.filter((one) => one !== 'other')) {
        const [noun = ''] = sheetWordsIn(language).materials[material].noun.split(' ');
        expect(named(noun), `${noun} in ${language}`).toContain(material);
      }
    expect(named('description')).toEqual([]);
  });
});
