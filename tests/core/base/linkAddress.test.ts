import { describe, expect, it } from 'vitest';
import { linkAddress } from '../../../core/base/linkAddress.ts';

describe('the address of a link', () => {
  it('is written in ASCII, what is encoded already left as it is', () => {
    expect(linkAddress('https://example.org/é?q=a%20b c')).toBe(
      'https://example.org/%C3%A9?q=a%20b%20c',
    );
    expect(linkAddress('https://example.org/\ud800x')).toBe('https://example.org/x');
  });

  it('may be on the web or of a mailbox and nothing else', () => {
    expect(linkAddress('HTTP://example.org')).toBe('HTTP://example.org');
    expect(linkAddress('mailto:a@example.org')).toBe('mailto:a@example.org');
    for (const address of ['javascript:alert(1)', ' https://example.org', 'file:///etc', 'data:,x'])
      expect(linkAddress(address)).toBeUndefined();
  });
});
