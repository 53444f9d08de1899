import { describe, expect, it } from 'vitest';
import { chapterIds } from '../../../renderer/editors/chapter.ts';
import { choiceWords, fieldWords } from '../../../renderer/parts/words.ts';
import { say } from '../../../renderer/parts/words.ts';

/** Each text with its place; one that is made of something is made with a sample of it. */
function spoken(node: unknown, place: string): [string, string][] {
  if (typeof node === 'string') return [[place, node]];
  if (typeof node === 'function') return [[place, String(node(2, 3, 4))]];
  return Object.entries(node as object).flatMap(([key, inner]) => spoken(inner, `${place}.${key}`));
}
const all = [
  ...spoken(say, 'say'),
  ...spoken(fieldWords, 'field'),
  ...spoken(choiceWords, 'choice'),
];

describe('the words of the interface', () => {
  it('are all there, without a space at an end or two in a row', () => {
    expect(all.filter(([, text]) => text === '' || /^\s|\s$|\s\s/.test(text))).toEqual([]);
  });

  it('have nothing in them of a value that was not filled in', () => {
    expect(all.filter(([, text]) => /undefined|null|NaN|\$\{|\[object/.test(text))).toEqual([]);
  });

  it('name every chapter, each by another name', () => {
    const names = chapterIds.map((id) => say.folder.chapters[id]);
    expect(new Set(names).size).toBe(chapterIds.length);
    expect(names).not.toContain(undefined);
  });

  it('tell the words of each list apart', () => {
    const alike = Object.entries(choiceWords).filter(
      ([, words]) => new Set(Object.values(words)).size < Object.keys(words).length,
    );
    expect(alike).toEqual([]);
  });

  it('count one thing as one', () => {
    expect([say.archive.count(1), say.archive.count(2)]).toEqual(['1 well', '2 wells']);
    expect(say.saving.unread(1)).toMatch(/^One entry /);
    expect(say.saving.unread(3)).toMatch(/^3 entries /);
    expect(say.saving.troubles(1)).toContain('One trouble');
  });

  it('say of an entry that cannot be read what it was and how to write it', () => {
    const { number, day, moment, whole, list } = say.reading;
    for (const sentence of [number, day, moment, whole, list].map((words) => words('x7')))
      expect(sentence).toMatch(/^“x7” is not .+\. Write (it|them) like .+\.$/);
  });
});
