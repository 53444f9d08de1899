import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { currentNode, say, Stopped, top } from './project.mjs';
import { runCommand } from './runCommand.mjs';
import { sourceStamp } from './sourceStamp.mjs';
import { currentEnvironment } from './underCurrentNode.mjs';

const stampFile = path.join(top, 'dist/stamp.txt');

/** Whether what is built is of the sources as they are. */
export function isBuilt(stamp = sourceStamp(top)) {
  return existsSync(stampFile) && readFileSync(stampFile, 'utf8') === stamp;
}

/** Builds the page and the programs where a source changed since the last build. */
export async function ensureBuilt() {
  const stamp = sourceStamp(top);
  if (isBuilt(stamp)) return;
  say('Building …');
  const { code, output } = await runCommand(
    currentNode() ?? process.execPath,
    [path.join(top, 'electron/make/build.ts')],
    { quiet: true, env: currentEnvironment() },
  );
  if (code !== 0) throw new Stopped(`${output}\nThe build failed; the lines above say where.`);
  writeFileSync(stampFile, stamp);
}
