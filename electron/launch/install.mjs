/**
 * Installs the project's packages and its own Node. Only the scripts named here run during the
 * install, whatever the npm client thinks of package.json's `allowScripts`: older clients ignore
 * that list, and would try to compile native parts that come ready made.
 */
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { missingPackages } from './missingPackages.mjs';
import { isCurrentNode, ownNode, runMain, say, Stopped, top } from './project.mjs';
import { runNpm } from './runCommand.mjs';

/** Packages whose install script is needed: `node` brings the binary of this machine's kind. */
const scripted = ['node'];

/** @param {string} file from the top @returns {any} undefined where it is absent or broken */
function readJson(file) {
  try {
    return JSON.parse(readFileSync(path.join(top, file), 'utf8'));
  } catch {
    return undefined;
  }
}

function packagesInPlace() {
  const asked = readJson('package-lock.json');
  if (!asked) throw new Stopped('package-lock.json is missing or damaged: get a fresh copy of it.');
  const missing = missingPackages(asked, readJson('node_modules/.package-lock.json'));
  return missing.length === 0;
}

async function installPackages() {
  say('Installing the packages; the first time this takes a minute or two …');
  const { code } = await runNpm(['ci', '--ignore-scripts', '--loglevel=error']);
  if (code !== 0)
    throw new Stopped(
      'The packages could not be installed; the lines above are npm’s own. Check that this machine reaches its package registry, then try again.',
    );
}

async function installNode() {
  say('Installing the project’s own Node …');
  const { code, output } = await runNpm(
    ['rebuild', ...scripted, '--ignore-scripts=false', '--loglevel=error'],
    { quiet: true },
  );
  if (code === 0 && existsSync(ownNode())) return;
  if (isCurrentNode(process.versions.node)) return;
  throw new Stopped(
    `${output}\nThe project’s own Node could not be installed, and the system’s (${process.versions.node}) is too old: install Node 24 or newer, then try again.`,
  );
}

/** Installs what is not there yet; quick when everything is. */
export async function ensureInstalled() {
  if (!packagesInPlace()) await installPackages();
  if (!existsSync(ownNode())) await installNode();
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  await runMain(async () => {
    await ensureInstalled();
    say('Everything is installed.');
    return 0;
  });
