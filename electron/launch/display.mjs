/**
 * Whether a window can be shown.
 * @param {NodeJS.Platform} platform
 * @param {Record<string, string | undefined>} env
 */
export function hasDisplay(platform, env) {
  const remote = Boolean(env['SSH_CONNECTION'] || env['SSH_TTY']);
  // macOS and Windows always have a screen, but a remote shell cannot open a window on it.
  if (platform === 'darwin' || platform === 'win32') return !remote;
  return Boolean(env['DISPLAY'] || env['WAYLAND_DISPLAY']);
}
