import type { RegionItem } from '../../drawing/items.ts';
import { patternName } from './hatch.ts';
import { write } from './inside.ts';
import { layOutline } from './path.ts';
import type { Sheet } from './sheet.ts';

/**
 * The ground first, the hatch over it. The pattern is chosen by operators of our own: jsPDF would
 * put them between an outline and its filling, where the PDF standard (ISO 32000-1, 8.2) has none.
 */
export function paintRegion(sheet: Sheet, { segments, hatch, ground }: RegionItem): void {
  if (!segments.length) return;
  const { doc } = sheet.book;
  const name = patternName(sheet, hatch);
  if (ground) {
    doc.setFillColor(ground);
    layOutline(doc, segments);
    doc.fill();
  }
  write(doc, `/Pattern cs /${name} scn`);
  layOutline(doc, segments);
  doc.fill();
}
