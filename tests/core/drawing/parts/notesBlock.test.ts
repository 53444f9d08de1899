import { describe, expect, it } from 'vitest';
import { layNotes } from '../../../../core/drawing/parts/notesBlock.ts';
import { kit, textsOf, wordsOf } from '../sample.ts';

const notes = Array.from({ length: 10 }, (_, at) => ({
  text: `Note ${at + 1}`,
  source: `log[${at}]`,
}));
const lay = (room: number) => layNotes(kit, 'Notes', notes, 80, room)!;

describe('a block of notes', () => {
  it('is none where there is nothing to say', () => {
    expect(layNotes(kit, 'Notes', [], 80, 50)).toBeUndefined();
  });

  it('says all where there is room, each with its source', () => {
    const texts = textsOf(lay(100).draw(0, 0));
    expect(texts.map(({ text }) => text)).toEqual(['Notes', ...notes.map(({ text }) => text)]);
    expect(texts[1]!.source).toBe('log[0]');
  });

  it('counts in its last line what it leaves out', () => {
    const words = wordsOf(lay(20).draw(0, 0));
    const shown = words.filter((one) => one.startsWith('Note ')).length;
    expect(shown).toBeGreaterThan(0);
    expect(words.at(-1)).toBe(`${10 - shown} more; see the record`);
  });

  it('is no higher than its room, where a title and a line go in', () => {
    for (let room = 9; room < 60; room += 0.5) expect(lay(room).height).toBeLessThanOrEqual(room);
  });

  it('counts all where not even one goes in', () => {
    expect(wordsOf(lay(0).draw(0, 0))).toEqual(['Notes', '10 more; see the record']);
  });

  it('wraps a long note to its width', () => {
    const long = [{ text: 'The clay between two sands is bridged by the casing. '.repeat(4) }];
    const block = layNotes(kit, 'Notes', long, 60, 100)!;
    const texts = textsOf(block.draw(0, 0));
    expect(texts.length).toBeGreaterThan(4);
    for (const { width } of texts) expect(width).toBeLessThanOrEqual(60);
  });
});
