/** Programs of the system that the tests drive, and how they come onto the machine. */
import { accessSync, constants, existsSync } from 'node:fs';
import path from 'node:path';
import { say, Stopped } from '../../electron/launch/project.mjs';
import { runCommand } from '../../electron/launch/runCommand.mjs';

/**
 * @typedef {object} Tool
 * @property {readonly string[]} programs any one of them will do; names on the path or full paths
 * @property {string} debian the package that brings it
 * @property {string} why
 */

/** @type {readonly Tool[]} */
export const tools = [
  {
    programs: [
      'chromium',
      'chromium-browser',
      'google-chrome',
      'google-chrome-stable',
      'microsoft-edge',
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
      '/Applications/Chromium.app/Contents/MacOS/Chromium',
    ],
    debian: 'chromium',
    why: 'a Chromium-type browser, to drive the page',
  },
  { programs: ['pdftoppm'], debian: 'poppler-utils', why: 'pdftoppm, to look at printed sheets' },
  { programs: ['pdfsig'], debian: 'poppler-utils', why: 'pdfsig, to check seals' },
  {
    programs: ['openssl'],
    debian: 'openssl',
    why: 'openssl, to make certificates and check seals',
  },
  { programs: ['qpdf'], debian: 'qpdf', why: 'qpdf, to check that PDF files are sound' },
  { programs: ['zbarimg'], debian: 'zbar-tools', why: 'zbarimg, to read the code on a sheet' },
  { programs: ['Xvfb'], debian: 'xvfb', why: 'Xvfb, a display that needs no screen' },
];

/** @param {string} file */
function isProgram(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** @param {string} name @param {string} searchPath the PATH variable */
export function isOnPath(name, searchPath) {
  if (path.isAbsolute(name)) return isProgram(name);
  return searchPath.split(path.delimiter).some((folder) => isProgram(path.join(folder, name)));
}

/** @param {string} searchPath */
export function missingTools(searchPath) {
  return tools.filter(({ programs }) => !programs.some((name) => isOnPath(name, searchPath)));
}

/** @param {readonly Tool[]} missing */
function packagesOf(missing) {
  return [...new Set(missing.map(({ debian }) => debian))];
}

/** What to tell a person who has to install them by hand. @param {readonly Tool[]} missing */
export function sayMissing(missing) {
  const packages = packagesOf(missing).join(' ');
  const needs = missing.map(({ why }) => why).join('; ');
  return `The tests need ${needs}. Install it and run the tests again (on Debian: sudo apt-get install ${packages}).`;
}

/** @param {readonly Tool[]} missing */
async function installByApt(missing) {
  const packages = packagesOf(missing);
  say(`Installing ${packages.join(', ')} …`);
  const options = {
    quiet: true,
    seconds: 900,
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  };
  await runCommand('apt-get', ['update'], options);
  const { output } = await runCommand(
    'apt-get',
    ['install', '-y', '--no-install-recommends', ...packages],
    options,
  );
  return output;
}

/** Makes sure that the programs are there; true, or a sentence that says what to install. */
export async function ensureSystemTools() {
  const here = () => missingTools(process.env['PATH'] ?? '');
  if (here().length === 0) return true;
  const mayInstall = existsSync('/usr/bin/apt-get') && process.getuid?.() === 0;
  const output = mayInstall ? await installByApt(here()) : '';
  const still = here();
  if (still.length > 0) throw new Stopped(`${output}${sayMissing(still)}`);
  return true;
}
