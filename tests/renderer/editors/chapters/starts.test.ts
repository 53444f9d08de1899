import { afterEach, describe, expect, it } from 'vitest';
import { chapterIds, type TableShape } from '../../../../renderer/editors/chapter.ts';
import { chapters } from '../../../../renderer/editors/chapters/index.ts';
import {
  fromWhereItEnded,
  sampleAfterSample,
  together,
} from '../../../../renderer/editors/chapters/starts.ts';
import { speech } from '../../../../renderer/state/language.svelte.ts';

function tableOf(list: string): TableShape {
  const blocks = chapterIds.flatMap((id) => chapters[id]());
  for (const block of blocks) {
    if (block.kind === 'table' && block.list === list) return block;
    if (block.kind === 'stack' && block.inner === list) return block.table;
  }
  throw new Error(`No table ${list}`);
}
const startOf = (list: string, ...rows: object[]) => tableOf(list).starts?.(rows);
afterEach(() => (speech.language = 'en'));

describe('what the next row starts with', () => {
  it('of intervals is where the last one ended, the ground at first', () => {
    expect(fromWhereItEnded([])).toEqual({ from: '0' });
    expect(startOf('log', { from: 0, to: 2.5 })).toEqual({ from: '2.5' });
    expect(startOf('annulus', { from: 0, to: 5 })).toEqual({ from: '5' });
  });

  it('of samples reaches as far as the last one, a metre at first', () => {
    expect(sampleAfterSample([])).toEqual({ from: '0', to: '1' });
    expect(sampleAfterSample([{ from: 3, to: 4 }])).toEqual({ from: '4', to: '5' });
    expect(sampleAfterSample([{ from: 0.1, to: 0.3 }])).toEqual({ from: '0.3', to: '0.5' });
    expect(sampleAfterSample([{ from: 2, to: 2 }])).toEqual({ from: '2', to: '3' });
  });

  it('is written with the decimal mark of the language in use', () => {
    speech.language = 'fr';
    expect(sampleAfterSample([{ from: 0, to: 0.5 }])).toEqual({ from: '0,5', to: '1' });
  });

  it('of pipes is the size, joint and length of the last one', () => {
    const pipe = { kind: 'plain', count: 6, length: 2.9, outside: 125, wall: 6.5, insertion: 0.1 };
    expect(startOf('components', pipe)).toEqual({
      length: '2.9',
      outside: '125',
      wall: '6.5',
      insertion: '0.1',
    });
  });

  it('of pipes is no length after a fitting', () => {
    expect(startOf('components', { kind: 'cap', length: 0.05, outside: 125 })).toEqual({
      outside: '125',
    });
    expect(startOf('components')).toEqual({});
  });

  it('of sections, levels, readings and marks is what seldom changes', () => {
    expect(startOf('bore.sections', { from: 0, to: 5, method: 'mudRotary' })).toEqual({
      from: '5',
      method: 'mud rotary',
    });
    expect(startOf('levels', { reading: 8, datum: 'casingTop', state: 'static' })).toEqual({
      datum: 'casing top',
    });
    expect(startOf('series', { minutes: 5, reading: 9, step: 2 })).toEqual({ step: '2' });
    expect(startOf('marks', { role: 'client', on: '2025-03-09' })).toEqual({ on: '2025-03-09' });
  });

  it('may come from several, the later ones first', () => {
    const made = together(fromWhereItEnded, () => ({ from: '9', method: 'x' }));
    expect(made([])).toEqual({ from: '9', method: 'x' });
  });

  it('is read back by its own fields, so that a row can be made of it', () => {
    for (const list of ['samples', 'log', 'annulus', 'bore.sections']) {
      const table = tableOf(list);
      const starts = table.starts?.([{ from: 0, to: 1.5 }]) ?? {};
      for (const [name, text] of Object.entries(starts))
        expect(table.columns.find((field) => field.name === name)?.read(text).ok).toBe(true);
    }
  });
});
