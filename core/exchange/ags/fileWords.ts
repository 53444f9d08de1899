import type { AgsGroups } from './readGroups.ts';

/** What the file's own ABBR group says of a code; undefined where it says nothing. */
export type SaidByFile = (heading: string, code: string) => string | undefined;

/**
 * The abbreviations that a file explains, which win over the standard's list. Some files repeat the
 * code for want of a description, which explains nothing.
 */
export function abbreviationsOf({ groups }: AgsGroups): SaidByFile {
  const said = new Map<string, string>();
  for (const { cells } of groups.get('ABBR')?.rows ?? []) {
    const [code, description] = [cells.get('ABBR_CODE'), cells.get('ABBR_DESC') ?? ''];
    if (description !== code) said.set(`${cells.get('ABBR_HDNG')}\n${code}`, description);
  }
  return (heading, code) => said.get(`${heading}\n${code}`) || undefined;
}
