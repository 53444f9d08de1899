import { describe, expect, it } from 'vitest';
import { decode } from '../../../../core/exchange/tables/decode.ts';

const wide = (text: string, big: boolean, mark: boolean) => {
  const codes = [...(mark ? '\uFEFF' : ''), ...text].map((letter) => letter.charCodeAt(0));
  return Uint8Array.from(
    codes.flatMap((code) => (big ? [code >> 8, code & 255] : [code & 255, code >> 8])),
  );
};

describe('text of a file', () => {
  const text = 'Numéro;Profondeur\nF-1;12,5 m²\n';

  it.each([
    ['UTF-8', new TextEncoder().encode(text), 'utf-8'],
    ['UTF-8 with its mark', new TextEncoder().encode(`\uFEFF${text}`), 'utf-8'],
    ['UTF-16, little end first', wide(text, false, true), 'utf-16le'],
    ['UTF-16, big end first', wide(text, true, true), 'utf-16be'],
    ['UTF-16 without its mark', wide(text, false, false), 'utf-16le'],
    ['UTF-16, big end first, without its mark', wide(text, true, false), 'utf-16be'],
    [
      'Windows-1252',
      Uint8Array.from([...text].map((letter) => letter.charCodeAt(0))),
      'windows-1252',
    ],
  ])('is found out in %s', (_, bytes, encoding) => {
    expect(decode(bytes)).toEqual({ text, encoding });
  });

  it('has the signs that Windows-1252 has and Latin-1 has not', () => {
    expect(decode(Uint8Array.from([0x80, 0x92, 0x9c])).text).toBe('€’œ');
  });

  it('is read as one says where the guess is wrong', () => {
    const bytes = new TextEncoder().encode('é');
    expect(decode(bytes, 'windows-1252')).toEqual({ text: 'Ã©', encoding: 'windows-1252' });
  });

  it('is nothing of nothing', () => {
    expect(decode(new Uint8Array())).toEqual({ text: '', encoding: 'utf-8' });
  });
});
