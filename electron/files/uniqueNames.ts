import path from 'node:path';

/**
 * Names of files, so that none overwrites another: the second `a.pdf` becomes `a (2).pdf`. Names
 * that differ in letter case only are one file on some systems.
 */
export function uniqueNames(names: readonly string[]): string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    const { name: stem, ext } = path.parse(name);
    let free = name;
    for (let count = 2; taken.has(free.toLowerCase()); count += 1)
      free = `${stem} (${count})${ext}`;
    taken.add(free.toLowerCase());
    return free;
  });
}
