/** How often the caller is looked for, milliseconds. */
const everyMs = 500;

/**
 * Asks this program to end when npm, which started it, has ended: npm and its shell do not hand
 * every signal on, and a server that nobody sees must not stay behind.
 */
export function endWithCaller() {
  if (!process.env['npm_lifecycle_event']) return;
  const caller = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === caller) return;
    clearInterval(watch);
    process.kill(process.pid, 'SIGTERM');
  }, everyMs);
  watch.unref();
}
