import { describe, expect, it } from 'vitest';
import { hasDisplay } from '../../../electron/launch/display.mjs';

describe('whether a window can be shown', () => {
  it('is told on Linux by either kind of display', () => {
    expect(hasDisplay('linux', { DISPLAY: ':0' })).toBe(true);
    expect(hasDisplay('linux', { WAYLAND_DISPLAY: 'wayland-0' })).toBe(true);
    expect(hasDisplay('linux', {})).toBe(false);
    expect(hasDisplay('linux', { DISPLAY: '' })).toBe(false);
  });

  it('counts a display that a remote shell forwards', () => {
    expect(hasDisplay('linux', { DISPLAY: ':10', SSH_CONNECTION: 'a b' })).toBe(true);
  });

  it('is taken for granted on Windows and macOS, save in a remote shell', () => {
    expect(hasDisplay('win32', {})).toBe(true);
    expect(hasDisplay('darwin', {})).toBe(true);
    expect(hasDisplay('darwin', { SSH_TTY: 'ttys001' })).toBe(false);
  });
});
