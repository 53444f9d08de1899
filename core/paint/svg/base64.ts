const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Two letters for every twelve bits: half as many look-ups as letter by letter. */
const pairs = Array.from(
  { length: 4096 },
  (_, bits) => alphabet.charAt(bits >> 6) + alphabet.charAt(bits & 63),
);

/** The last one or two bytes, padded. */
function ending(bytes: Uint8Array): string {
  const [a, b] = bytes;
  if (a === undefined) return '';
  const bits = (a << 16) | ((b ?? 0) << 8);
  const letters = pairs[bits >> 12]! + pairs[bits & 4095]!;
  return b === undefined ? `${letters.slice(0, 2)}==` : `${letters.slice(0, 3)}=`;
}

/** RFC 4648, section 4, with padding; written here because the core has neither host's own. */
export function base64(bytes: Uint8Array): string {
  const whole = bytes.length - (bytes.length % 3);
  let text = '';
  for (let at = 0; at < whole; at += 3) {
    const bits = (bytes[at]! << 16) | (bytes[at + 1]! << 8) | bytes[at + 2]!;
    text += pairs[bits >> 12]! + pairs[bits & 4095]!;
  }
  return text + ending(bytes.subarray(whole));
}
