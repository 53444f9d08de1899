import { say } from '../parts/words.ts';

/** A file's size as people say it: kilobytes up to a thousand, then megabytes with one decimal. */
export function fileSize(bytes: number): string {
  const kilobytes = Math.max(1, Math.round(bytes / 1000));
  if (kilobytes < 1000) return say.photos.kilobytes(String(kilobytes));
  const figure = new Intl.NumberFormat(say.tag, { maximumFractionDigits: 1 });
  return say.photos.megabytes(figure.format(bytes / 1e6));
}
