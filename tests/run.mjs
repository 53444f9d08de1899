/**
 * `npm test`: installs, builds, checks types and style, runs every test, and ends with one line
 * of the form `N passed, N failed`. Each step runs even when one before it failed, so that one
 * run tells everything.
 */
import { mkdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { ensureBuilt } from '../electron/launch/build.mjs';
import { endWithCaller } from '../electron/launch/endWithCaller.mjs';
import { ensureInstalled } from '../electron/launch/install.mjs';
import { runMain, say, Stopped, top } from '../electron/launch/project.mjs';
import { runCommand, runNpm } from '../electron/launch/runCommand.mjs';
import { currentEnvironment, underCurrentNode } from '../electron/launch/underCurrentNode.mjs';
import { closingLine, countTests } from './run/countTests.mjs';
import { ensureSystemTools } from './run/systemTools.mjs';

const report = 'out/tests.json';

async function runVitest() {
  mkdirSync(path.join(top, 'out'), { recursive: true });
  rmSync(path.join(top, report), { force: true });
  const { code } = await runCommand(
    process.execPath,
    [
      path.join(top, 'node_modules/vitest/vitest.mjs'),
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
      ...process.argv.slice(2),
    ],
    { env: currentEnvironment() },
  );
  return countTests(path.join(top, report), code);
}

/** @param {string} title @param {() => Promise<boolean>} body true when it went well */
async function step(title, body) {
  say(`\n── ${title}`);
  try {
    if (await body()) return 0;
  } catch (error) {
    if (!(error instanceof Stopped)) throw error;
    console.error(error.message);
  }
  console.error(`✗ ${title}`);
  return 1;
}

/** @param {string} script of package.json */
const npmScript = async (script) =>
  (await runNpm(['run', '--silent', script], { env: currentEnvironment() })).code === 0;

async function runAll() {
  let failedSteps = 0;
  failedSteps += await step('Programs that the tests need', ensureSystemTools);
  failedSteps += await step('Build', async () => (await ensureBuilt(), true));
  failedSteps += await step('Types', () => npmScript('check:types'));
  failedSteps += await step('Style', () => npmScript('lint'));
  say('\n── Tests');
  const counts = await runVitest();
  const { line, code } = closingLine(counts, failedSteps);
  say(`\n${line}`);
  return code;
}

endWithCaller();
await runMain(async () => {
  try {
    await ensureInstalled();
  } catch (error) {
    // Nothing could run, yet whoever reads the last line must learn that this failed.
    process.on('exit', () => say('0 passed, 1 failed'));
    throw error;
  }
  return underCurrentNode(runAll);
});
