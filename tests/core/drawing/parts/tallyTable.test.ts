import { describe, expect, it } from 'vitest';
import { layTallyTable, tallyPieces } from '../../../../core/drawing/parts/tallyTable.ts';
import { resolve } from '../../model/well.ts';
import { kit, textsOf, wordsOf } from '../sample.ts';

const pipe = { outside: 110, wall: 4.2, length: 3, insertion: 0.1 };
const string = {
  components: [
    { kind: 'screen' as const, ...pipe, insertion: 0 },
    { kind: 'plain' as const, ...pipe, count: 2 },
  ],
  set: { by: 'bottom' as const, depth: 8.5 },
};

const cells = (strings: (typeof string & { name?: string })[], room = 200) =>
  wordsOf(layTallyTable(kit, resolve({ strings }), 90, room)!.draw(0, 0));

describe('the tally table', () => {
  it('counts every piece from the top with its length, joint and depths', () => {
    const shown = cells([string]).join(' | ');
    // Top 0.30 m above ground: 3 + 2.9 + 2.9 = 8.80 m less 8.50 m.
    expect(shown).toContain('1 | plain casing 110 × 4.2 | 3.00 | 0.10 | -0.30 | 2.70');
    expect(shown).toContain('3 | screen 110 × 4.2 | 3.00 | – | 5.50 | 8.50');
  });

  it('names the strings where there are several', () => {
    expect(cells([string])).not.toContain('String 1');
    const two = cells([string, { ...string, name: 'Inner' }]);
    expect(two).toContain('String 1');
    expect(two).toContain('Inner');
  });

  it('leaves out what is told beside the section before a piece takes a second line', () => {
    const screen = { ...string.components[0]!, slotWidth: 0.75, openArea: 8, material: 'uPVC' };
    const model = resolve({ strings: [{ ...string, components: [screen] }] });
    const words = (width: number) => wordsOf(layTallyTable(kit, model, width, 200)!.draw(0, 0));
    expect(words(140)).toContain('screen uPVC 110 × 4.2, slot 0.75, open 8 %');
    expect(words(88)).toContain('screen uPVC 110 × 4.2, slot 0.75');
    expect(words(76)).toContain('screen uPVC 110 × 4.2');
  });

  it('gives a piece a second line where its size would not go in else', () => {
    const plain = { ...string.components[1]!, count: 1, material: 'galvanised steel, welded' };
    const model = resolve({ strings: [{ ...string, components: [plain] }] });
    const said = wordsOf(layTallyTable(kit, model, 82, 200)!.draw(0, 0)).join(' ');
    expect(said).toContain('110 × 4.2');
    expect(said).not.toContain('…');
  });

  it('is none without a string', () => {
    expect(layTallyTable(kit, resolve({}), 90, 200)).toBeUndefined();
  });

  it('keeps to its room and counts the pieces that it leaves out', () => {
    const model = resolve({
      strings: [{ ...string, components: [{ kind: 'plain', ...pipe, count: 40 }] }],
    });
    const block = layTallyTable(kit, model, 90, 60)!;
    expect(block.height).toBeLessThanOrEqual(60);
    const words = wordsOf(block.draw(0, 0));
    const shown = words.filter((one) => one.startsWith('plain')).length;
    expect(words.at(-1)).toBe(`${40 - shown} more on a later sheet`);
    expect(block.shows).toBe(shown + 1);
  });

  it('goes on elsewhere with the rows that it did not show, under their heads', () => {
    const model = resolve({
      strings: [{ ...string, components: [{ kind: 'plain', ...pipe, count: 40 }] }],
    });
    const { shows } = layTallyTable(kit, model, 90, 60)!;
    const pieces = tallyPieces(kit, model, 160, shows!);
    const words = pieces.flatMap((piece) => wordsOf(piece.draw(0, 0)));
    expect(words.slice(0, 2)).toEqual(['Tally, goes on', 'No.']);
    expect(words.filter((one) => one.startsWith('plain'))).toHaveLength(41 - shows!);
    expect(words).toContain(String(shows));
    expect(words.at(-1)).toBe('8.50');
  });

  it('shows all where there is room, and says nothing of rows', () => {
    expect(layTallyTable(kit, resolve({ strings: [string] }), 90, 200)!.shows).toBeUndefined();
  });

  it('leads each row back to its piece', () => {
    const texts = textsOf(layTallyTable(kit, resolve({ strings: [string] }), 90, 200)!.draw(0, 0));
    expect(texts.at(-1)!.source).toBe('strings[0].components[0]');
  });
});
