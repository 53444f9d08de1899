/** Signs of the Western code page 1252 at 80 to 9F, hexadecimal; the rest is as in Unicode. */
const high = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

/** A letter's byte in the code page; undefined where it has none. */
export function byteOf(letter: string): number | undefined {
  const point = letter.codePointAt(0)!;
  if (point < 0x80 || (point >= 0xa0 && point <= 0xff)) return point;
  const at = high.indexOf(letter);
  return at < 0 ? undefined : 0x80 + at;
}

/** Text as bytes of the code page. Throws on a letter that it lacks. */
export function encode(text: string): Uint8Array {
  return Uint8Array.from(text, (letter) => {
    const byte = byteOf(letter);
    if (byte === undefined) throw new Error(`The code page has no ${letter}`);
    return byte;
  });
}
