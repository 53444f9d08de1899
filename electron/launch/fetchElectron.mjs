/**
 * Fetches Electron's runtime into the electron package. Ends with exit code 1 when no byte has
 * come for a while, since a network may take a connection and then say nothing.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { top } from './project.mjs';

const patienceSeconds = 20;
const folder = path.join(top, 'node_modules/electron');
// The downloader is the electron package's own, so it is looked for from there.
const require = createRequire(path.join(folder, 'package.json'));
const read = (/** @type {string} */ file) =>
  JSON.parse(readFileSync(path.join(folder, file), 'utf8'));

let heard = Date.now();
const watch = setInterval(() => {
  if (Date.now() - heard < patienceSeconds * 1000) return;
  console.error(`Nothing came for ${patienceSeconds} seconds.`);
  process.exit(1);
}, 1000);

let shown = 0;
/** @param {{ percent: number }} progress share of the whole, 0 to 1 */
async function note({ percent }) {
  heard = Date.now();
  const tenth = Math.floor(percent * 10);
  if (tenth > shown) console.log(`… ${tenth * 10} %`);
  shown = Math.max(shown, tenth);
}

try {
  const { downloadArtifact } = await import(pathToFileURL(require.resolve('@electron/get')).href);
  await downloadArtifact({
    version: read('package.json').version,
    artifactName: 'electron',
    platform: process.platform,
    arch: process.arch,
    checksums: read('checksums.json'),
    downloadOptions: { quiet: true, getProgressCallback: note },
  });
  clearInterval(watch);
  // The package's own script finds the download in the cache and unpacks it.
  require('./install.js');
} catch (error) {
  const cause = error instanceof Error && error.cause instanceof Error ? error.cause : error;
  console.error(cause instanceof Error ? cause.message : String(cause));
  process.exit(1);
}
