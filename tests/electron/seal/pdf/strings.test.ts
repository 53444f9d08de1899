import { describe, expect, it } from 'vitest';
import {
  readMoment,
  readString,
  writeMoment,
  writeString,
} from '../../../../electron/seal/pdf/strings.ts';

describe('a PDF string', () => {
  it('is plain where its letters are, else UTF-16', () => {
    expect(writeString('supervisor')).toBe('(supervisor)');
    expect(writeString('Ɓali')).toBe('<feff018100' + '61006c0069>');
    expect(writeString('a (b)')).toBe('<feff006100200028' + '00620029>');
  });

  it.each(['', 'Délio Kalvāro', 'back\\slash', '(', 'line\nline', 'Ɓ 𝔸'])(
    'comes back as it was: %j',
    (text) => {
      expect(readString(writeString(text))).toBe(text);
    },
  );

  it('of other programs is read with its escapes', () => {
    // ISO 32000-1, 7.3.4.2, table 3 (from memory).
    expect(readString('(a\\(b\\)\\\\c\\101\\nd\\\ne)')).toBe('a(b)\\cA\nde');
    expect(readString('<41 4 2>')).toBe('AB');
  });
});

describe('a moment in a PDF', () => {
  it('is written in universal time', () => {
    expect(writeMoment('2026-03-04T10:15:00+02:00')).toBe("(D:20260304081500+00'00')");
  });

  it('is read in whatever zone it has', () => {
    expect(readMoment("(D:20260304101500+02'00')")).toBe('2026-03-04T08:15:00.000Z');
    expect(readMoment('(D:20260304101500Z)')).toBe('2026-03-04T10:15:00.000Z');
    expect(readMoment('(4 March)')).toBeUndefined();
    expect(readMoment('(D:20269904101500Z)')).toBeUndefined();
  });
});
