import type { RegionItem } from '../../drawing/items.ts';
import { patternName } from './hatch.ts';
import { layOutline, setFill } from './path.ts';
import type { Sheet } from './sheet.ts';

/** The ground first, the hatch over it. */
export function paintRegion(sheet: Sheet, { segments, hatch, ground }: RegionItem): void {
  if (!segments.length) return;
  const { content } = sheet;
  const name = patternName(sheet, hatch);
  if (ground) {
    setFill(content, ground);
    layOutline(content, segments);
    content.write('f');
  }
  content.set('fill', `/Pattern cs /${name} scn`);
  layOutline(content, segments);
  content.write('f');
}
