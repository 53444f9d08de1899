import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { base64 } from '../../../../core/paint/svg/base64.ts';

describe('base64', () => {
  // RFC 4648, section 10.
  it.each([
    ['', ''],
    ['f', 'Zg=='],
    ['fo', 'Zm8='],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg=='],
    ['fooba', 'Zm9vYmE='],
    ['foobar', 'Zm9vYmFy'],
  ])('writes %j as %j', (text, letters) => {
    expect(base64(new TextEncoder().encode(text))).toBe(letters);
  });

  it('agrees with the host on any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 100 }), (bytes) => {
        expect(base64(bytes)).toBe(Buffer.from(bytes).toString('base64'));
      }),
    );
  });
});
