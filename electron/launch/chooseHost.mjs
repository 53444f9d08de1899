/**
 * @typedef {object} Surroundings
 * @property {boolean} display a window can be shown
 * @property {boolean} electron Electron's runtime is there
 * @property {boolean} fetched fetching it was tried in this run
 *
 * @typedef {'electron' | 'fetchElectron' | 'window' | 'papers'} Host
 *   electron: the desktop program · fetchElectron: get the runtime, then choose again ·
 *   window: an app window of a browser · papers: write the sheets and serve the page
 */

/**
 * What to open. The runtime is fetched only where its window could be shown.
 * @param {Surroundings} surroundings
 * @returns {Host}
 */
export function chooseHost({ display, electron, fetched }) {
  if (!display) return 'papers';
  if (electron) return 'electron';
  return fetched ? 'window' : 'fetchElectron';
}
