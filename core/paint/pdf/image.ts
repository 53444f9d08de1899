import type { ImageItem } from '../../drawing/items.ts';
import type { Sheet } from './sheet.ts';

function formatOf(data: string): 'PNG' | 'JPEG' {
  if (data.startsWith('data:image/png')) return 'PNG';
  if (data.startsWith('data:image/jpeg')) return 'JPEG';
  throw new Error(`A picture is neither PNG nor JPEG: ${data.slice(0, 30)}`);
}

/** Equal pictures are held once, under a name of ours: jsPDF tells them apart by a short sum. */
export function paintImage({ book }: Sheet, { x, y, width, height, data }: ImageItem): void {
  const { doc, imagesIn } = book;
  const name = imagesIn.get(data) ?? `picture-${imagesIn.size + 1}`;
  imagesIn.set(data, name);
  doc.addImage(data, formatOf(data), x, y, width, height, name);
}
