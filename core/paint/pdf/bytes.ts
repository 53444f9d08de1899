/** jsPDF takes and writes files as strings of one letter a byte. */
export function byteString(bytes: Uint8Array): string {
  // A call takes only so many arguments. Handing them over whole is ten times as fast as `...`.
  const step = 8192;
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += step)
    parts.push(Reflect.apply(String.fromCharCode, String, bytes.subarray(at, at + step)));
  return parts.join('');
}

/** The bytes of such a string. */
export function bytesOf(letters: string): Uint8Array {
  return Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
}

/** A text in UTF-8, one letter a byte. Throws on half a surrogate pair. */
export function utf8(text: string): string {
  return encodeURIComponent(text).replace(/%(..)/g, (_, digits: string) =>
    String.fromCharCode(parseInt(digits, 16)),
  );
}
