/** Layer of what stands in no named group; every file has it. */
export const mainLayer = '0';

/** The layer of a group by its name; undefined for a group without. */
export function layerName(name: string | undefined): string | undefined {
  const letters = name?.toUpperCase().replace(/[^A-Z0-9_-]+/g, '_');
  return letters ? letters.slice(0, 31) : undefined;
}
