/**
 * @typedef {object} Lock
 * @property {Record<string, { version?: string, optional?: boolean, link?: boolean }>} packages
 */

/**
 * Folders of packages that the lock file asks for and that are not installed in that version.
 * Optional ones (mostly other machines' native parts) may be absent.
 * @param {Lock} asked package-lock.json
 * @param {Lock | undefined} installed what npm notes of its last install; absent before the first
 * @returns {string[]}
 */
export function missingPackages(asked, installed) {
  return Object.entries(asked.packages)
    .filter(([folder, { optional, version }]) => {
      if (folder === '') return false;
      const there = installed?.packages[folder];
      return there === undefined ? !optional : there.version !== version;
    })
    .map(([folder]) => folder);
}
