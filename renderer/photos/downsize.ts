/** Pixels of a copy's long side: some 230 dots an inch where one picture fills an A4. */
export const longSide = 1600;

/**
 * JPEG quality of a copy. From 0.8 up its blocks cannot be told on paper at that fineness, and a
 * file takes about a sixth of the bytes of quality 1 (common practice).
 */
const quality = 0.82;

/** A copy for print and the size of the picture that it was made from. */
export interface Downsized {
  /** JPEG, without any of the data that a camera writes beside its picture. */
  readonly copy: Blob;
  /** Pixels of the copy. */
  readonly copySize: PixelSize;
  /** Pixels of the picture, turned upright. */
  readonly size: PixelSize;
}

export interface PixelSize {
  readonly width: number;
  readonly height: number;
}

/** The size of a copy: never larger than the picture. */
export function copySizeOf({ width, height }: PixelSize): PixelSize {
  const share = Math.min(1, longSide / Math.max(width, height));
  const scaled = (pixels: number) => Math.max(1, Math.round(pixels * share));
  return { width: scaled(width), height: scaled(height) };
}

async function drawn(picture: ImageBitmap, { width, height }: PixelSize): Promise<Blob> {
  const canvas = new OffscreenCanvas(width, height);
  const pen = canvas.getContext('2d')!;
  // A JPEG has nothing see-through: what is, becomes paper.
  pen.fillStyle = '#ffffff';
  pen.fillRect(0, 0, width, height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(picture, 0, 0, width, height);
  return canvas.convertToBlob({ type: 'image/jpeg', quality });
}

/** Throws a DOMException when the browser cannot read the picture. */
export async function downsize(file: Blob): Promise<Downsized> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  try {
    const size = { width: picture.width, height: picture.height };
    const copySize = copySizeOf(size);
    return { copy: await drawn(picture, copySize), copySize, size };
  } finally {
    picture.close();
  }
}
