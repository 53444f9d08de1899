import { describe, expect, it } from 'vitest';
import { askedBy } from '../../../../renderer/sheet/hands/edgeKeys.ts';

const pressed = (key: string, held: object = {}) =>
  askedBy({ key, shiftKey: false, ctrlKey: false, metaKey: false, altKey: false, ...held });

describe('a key on an edge', () => {
  it('nudges up and down by a centimetre, and by more with Shift, Ctrl and the page keys', () => {
    expect(pressed('ArrowUp')).toEqual({ kind: 'nudge', by: -1, stepM: 0.01, apart: false });
    expect(pressed('ArrowDown', { shiftKey: true })).toMatchObject({ by: 1, stepM: 0.1 });
    expect(pressed('ArrowDown', { ctrlKey: true })).toMatchObject({ by: 1, stepM: 0.5 });
    expect(pressed('PageUp')).toMatchObject({ by: -1, stepM: 1 });
  });

  it('moves one part alone with Alt', () => {
    expect(pressed('ArrowUp', { altKey: true })).toMatchObject({ apart: true });
  });

  it('walks from edge to edge, and leads to the row and back', () => {
    expect(pressed('ArrowLeft')).toEqual({ kind: 'walk', by: -1 });
    expect(pressed('ArrowRight')).toEqual({ kind: 'walk', by: 1 });
    expect(pressed('Home')).toEqual({ kind: 'end', at: 'first' });
    expect(pressed('Enter')).toEqual({ kind: 'row' });
    expect(pressed('Escape')).toEqual({ kind: 'back' });
  });

  it('is left alone where it is for the sheet or the program', () => {
    for (const key of ['+', '-', '0', 'z', 'Tab']) expect(pressed(key)).toBeUndefined();
    expect(pressed('Enter', { ctrlKey: true })).toBeUndefined();
  });
});
