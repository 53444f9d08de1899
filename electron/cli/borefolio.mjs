#!/usr/bin/env node
/**
 * The command `borefolio`. Plain JavaScript for Node 18 and newer, so that an old Node gets a
 * sentence and not a syntax error. In a clone the sources run as they are; an installed package
 * runs its bundle, since Node runs no TypeScript below node_modules.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const neededMajor = 24;
const here = path.dirname(fileURLToPath(import.meta.url));
const top = path.resolve(here, '../..');
const bundle = path.join(top, 'dist/cli/borefolio.js');
const source = path.join(here, 'main.ts');
const installed = here.split(path.sep).includes('node_modules');
const program = installed || !existsSync(source) ? bundle : source;

/** The project's own Node, where it is installed. */
const ownNode = path.join(
  top,
  'node_modules/node/bin',
  process.platform === 'win32' ? 'node.exe' : 'node',
);

async function runHere() {
  const { main } = await import(pathToFileURL(program).href);
  await main(process.argv.slice(2));
}

function runUnderOwnNode() {
  // Ctrl-C reaches the child too, which then ends in good order.
  process.on('SIGINT', () => {});
  const { status } = spawnSync(ownNode, process.argv.slice(1), { stdio: 'inherit' });
  process.exitCode = status ?? 1;
}

if (!existsSync(program)) {
  console.error('Borefolio is not built: run `npm run build` in its folder first.');
  process.exitCode = 2;
} else if (Number.parseInt(process.versions.node, 10) >= neededMajor) {
  await runHere();
} else if (existsSync(ownNode)) {
  runUnderOwnNode();
} else {
  console.error(
    `Borefolio needs Node ${neededMajor} or newer; this is ${process.versions.node}. Install a newer Node, or run \`npm run setup\` in Borefolio’s folder.`,
  );
  process.exitCode = 2;
}
