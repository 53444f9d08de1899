import type { PageHost } from '../../core/contract/host.ts';
import type { Photo } from '../../core/record/photos.ts';
import { say } from '../parts/words.ts';
import { download } from '../sheet/download.ts';

/** Hands a file as it was given to the browser's downloads; a sentence where that fails. */
export async function saveOriginal(
  host: PageHost,
  { hash = '', file }: Photo,
): Promise<string | undefined> {
  const answer = await host.send('attachments.get', { hash });
  if (!answer.ok) return say.photos.noOriginal(answer.error.sentence);
  const { data, mediaType } = answer.value;
  download(file ?? `${hash.slice(0, 8)}.${mediaType.split('/')[1]}`, data, mediaType);
  return undefined;
}
