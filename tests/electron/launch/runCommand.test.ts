import { describe, expect, it } from 'vitest';
import { runCommand } from '../../../electron/launch/runCommand.mjs';

const script = (text: string, options = {}) =>
  runCommand(process.execPath, ['-e', text], { quiet: true, ...options });

describe('running a program', () => {
  it('gives its exit code and what it printed', async () => {
    const outcome = await script('console.log("out"); console.error("err"); process.exit(3)');
    expect(outcome.code).toBe(3);
    expect(outcome.output).toContain('out');
    expect(outcome.output).toContain('err');
  });

  it('gives 127 for a program that is not there', async () => {
    expect((await runCommand('no-such-program-here', [], { quiet: true })).code).toBe(127);
  });

  it('ends it, and what it started, when its time is over', async () => {
    // The grandchild holds the same output, so the outcome comes only when it has ended too.
    const wait = 'setInterval(() => {}, 1000)';
    const text = `
      require('node:child_process')
        .spawn(process.execPath, ['-e', '${wait}'], { stdio: 'inherit' });
      console.log('started'); ${wait}`;
    const outcome = await script(text, { seconds: 1.5 });
    expect(outcome).toMatchObject({ timedOut: true, output: 'started\n' });
  });
});
