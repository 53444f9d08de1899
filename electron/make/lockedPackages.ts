/** What package-lock.json says of one installed package. */
export interface LockedPackage {
  readonly version: string;
  /** SPDX expression, as the package states it. */
  readonly license?: string;
  /** True where only development needs it. */
  readonly dev?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
}

/** Packages by their folder, `node_modules/one/node_modules/two`. */
export type Locked = Readonly<Record<string, LockedPackage>>;

/** `node_modules/one/node_modules/@scope/two` is of the package `@scope/two`. */
export function nameOf(folder: string): string {
  return folder.slice(folder.lastIndexOf('node_modules/') + 'node_modules/'.length);
}

/** The folder in which a package finds another one: the nearest, from its own folder up. */
function folderOf(locked: Locked, from: string, name: string): string | undefined {
  for (let base = from; ; base = base.slice(0, Math.max(0, base.lastIndexOf('/node_modules/')))) {
    const folder = base === '' ? `node_modules/${name}` : `${base}/node_modules/${name}`;
    if (locked[folder]) return folder;
    if (base === '') return undefined;
  }
}

/** Some packages and all that they need, by folder. */
function withNeeds(locked: Locked, names: readonly string[]): ReadonlySet<string> {
  const found = new Set<string>();
  const visit = (from: string, name: string): void => {
    const folder = folderOf(locked, from, name);
    if (folder === undefined || found.has(folder)) return;
    found.add(folder);
    for (const need of Object.keys(locked[folder]?.dependencies ?? {})) visit(folder, need);
  };
  for (const name of names) visit('', name);
  return found;
}

/** Splits packages into those that ship with the program and those that only make and test it.
 * `bundled` names development packages whose code ends up in what ships. */
export function splitShipped(
  locked: Locked,
  bundled: readonly string[],
): { readonly shipped: string[]; readonly development: string[] } {
  const inBundles = withNeeds(locked, bundled);
  const folders = Object.keys(locked)
    .filter((folder) => folder !== '')
    .sort();
  const ships = (folder: string) => !locked[folder]?.dev || inBundles.has(folder);
  return { shipped: folders.filter(ships), development: folders.filter((one) => !ships(one)) };
}
