const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';

/** Three bytes, or the last one or two, as four letters. */
function quartet(bytes: Uint8Array, at: number): string {
  const [a = 0, b = 0, c = 0] = bytes.subarray(at, at + 3);
  const bits = (a << 16) | (b << 8) | c;
  const letters = [18, 12, 6, 0].map((shift) => alphabet[(bits >> shift) & 63]).join('');
  const absent = Math.max(0, at + 3 - bytes.length);
  return letters.slice(0, 4 - absent) + '='.repeat(absent);
}

/** RFC 4648, section 4, with padding; written here because the core has neither host's own. */
export function base64(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += 3) parts.push(quartet(bytes, at));
  return parts.join('');
}
