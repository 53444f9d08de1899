import { describe, expect, it } from 'vitest';
import { wayOf } from '../../../renderer/editors/chapterKeys.ts';

const key = (name: string, held: object = {}, code = '') => ({
  key: name,
  code,
  shiftKey: false,
  altKey: false,
  ctrlKey: false,
  metaKey: false,
  ...held,
});

describe('keys that lead through the well folder', () => {
  it('go from block to block', () => {
    expect(wayOf(key('Enter'))).toEqual({ kind: 'block', by: 1 });
    expect(wayOf(key('Enter', { shiftKey: true }))).toEqual({ kind: 'block', by: -1 });
    expect(wayOf(key('ArrowDown', { ctrlKey: true }))).toEqual({ kind: 'block', by: 1 });
    expect(wayOf(key('ArrowUp', { ctrlKey: true }))).toEqual({ kind: 'block', by: -1 });
  });

  it('turn chapters, and open each by its number', () => {
    expect(wayOf(key('PageDown', { altKey: true }))).toEqual({ kind: 'chapter', by: 1 });
    expect(wayOf(key('PageUp', { altKey: true }))).toEqual({ kind: 'chapter', by: -1 });
    expect(wayOf(key('3', { altKey: true }, 'Digit3'))).toEqual({ kind: 'open', at: 2 });
  });

  it('know a digit by where it lies, since some boards need Shift for it', () => {
    expect(wayOf(key('"', { altKey: true }, 'Digit3'))).toEqual({ kind: 'open', at: 2 });
  });

  it('leave other keys alone, AltGr among them', () => {
    expect(wayOf(key('3', {}, 'Digit3'))).toBeUndefined();
    expect(wayOf(key('#', { altKey: true, ctrlKey: true }, 'Digit3'))).toBeUndefined();
    expect(wayOf(key('ArrowDown'))).toBeUndefined();
    expect(wayOf(key('PageDown', { ctrlKey: true }))).toBeUndefined();
  });
});
