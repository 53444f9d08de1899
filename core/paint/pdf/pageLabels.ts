import { onCatalog, write } from './inside.ts';
import { textString } from './objects.ts';
import type { Book } from './sheet.ts';

/** How pages are called from one on, until the next range. */
export interface LabelRange {
  /** Page of the document, from 1. */
  readonly page: number;
  /** Absent where the prefix is all. */
  readonly style?: 'roman' | 'arabic';
  readonly prefix?: string;
  /** Number of its first page; 1 where absent. */
  readonly from?: number;
}

const styles = { roman: ' /S /r', arabic: ' /S /D' } as const;

function labelOf({ page, style, prefix, from }: LabelRange): string {
  const says = [
    style ? styles[style] : '',
    prefix === undefined ? '' : ` /P ${textString(prefix)}`,
    from === undefined ? '' : ` /St ${from}`,
  ];
  return `${page - 1} <<${says.join('').trim()}>>`;
}

/** Has the names of the pages written (ISO 32000-1, 12.4.2); the first range begins at page 1. */
export function writePageLabels({ doc }: Book, ranges: readonly LabelRange[]): void {
  if (ranges.length === 0) return;
  onCatalog(doc, () => write(doc, `/PageLabels <</Nums [${ranges.map(labelOf).join(' ')}]>>`));
}
