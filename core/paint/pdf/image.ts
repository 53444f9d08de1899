import type { ImageItem } from '../../drawing/items.ts';
import { heldPicture } from './inside.ts';
import { makeOpaque, packPicture } from './opaque.ts';
import type { Book, Sheet } from './sheet.ts';

function formatOf(data: string): 'PNG' | 'JPEG' {
  if (data.startsWith('data:image/png')) return 'PNG';
  if (data.startsWith('data:image/jpeg')) return 'JPEG';
  throw new Error(`A picture is neither PNG nor JPEG: ${data.slice(0, 30)}`);
}

/** PNG files are taken in as bare dots: made opaque, then packed. JPEG stays as it is. */
function settle(
  { doc, deflate, againstArchival }: Book,
  name: string,
  format: 'PNG' | 'JPEG',
): void {
  const picture = heldPicture(doc, name);
  if (!picture) return;
  if (format === 'PNG') {
    makeOpaque(picture);
    packPicture(picture, deflate);
  }
  // Colours for printing inks have no place beside a profile for red, green and blue.
  if (picture.colorSpace === 'DeviceCMYK') againstArchival.add('inkColours');
}

/** Equal pictures are held once, under a name of ours: jsPDF tells them apart by a short sum. */
export function paintImage({ book }: Sheet, { x, y, width, height, data }: ImageItem): void {
  const { doc, imagesIn } = book;
  const known = imagesIn.get(data);
  const name = known ?? `picture-${imagesIn.size + 1}`;
  imagesIn.set(data, name);
  const format = formatOf(data);
  doc.addImage(data, format, x, y, width, height, name, 'NONE');
  if (known === undefined) settle(book, name, format);
}
