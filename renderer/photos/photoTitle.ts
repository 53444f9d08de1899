import type { NumberedPhoto } from '../../core/record/photos.ts';
import { say } from '../parts/words.ts';

/** What a photo is called where it cannot be seen: its caption, else its place among the others. */
export function photoTitle({ photo, at }: NumberedPhoto): string {
  return photo.caption?.trim() || say.photos.withoutCaption(at + 1);
}
