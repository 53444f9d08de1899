/** The encoder that pages and Node both have, and that the core's types do not. */
const { TextEncoder } = globalThis as unknown as {
  readonly TextEncoder: new () => { encode(text: string): Uint8Array };
};

/** Text and bytes, one after the other, as bytes; text in UTF-8. */
export function bytesOf(contents: readonly (string | Uint8Array)[]): Uint8Array {
  const encoder = new TextEncoder();
  const parts = contents.map((one) => (typeof one === 'string' ? encoder.encode(one) : one));
  const bytes = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}
