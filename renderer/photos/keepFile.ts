import { fileKind, fileKinds, type FileKind } from '../../core/base/picture/fileKind.ts';
import { takenOn } from '../../core/base/picture/takenOn.ts';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { largestFile } from '../../core/contract/attachmentsShape.ts';
import type { PageHost } from '../../core/contract/host.ts';
import type { PhotoImage } from '../../core/drawing/parts/photos.ts';
import type { Photo } from '../../core/record/photos.ts';
import { say } from '../parts/words.ts';
import { downsize, type Downsized } from './downsize.ts';

/** A file that the archive holds now, as the record names it. */
export interface Kept {
  readonly photo: Photo & { readonly hash: string };
  /** Absent for a document. */
  readonly image?: PhotoImage;
}

export type Step = 'reducing' | 'keeping';

/** As much of a file as holds a camera's notes. */
const headBytes = 256 * 1024;

/** Bytes as base64 in the form `data:…;base64,…`. */
function asDataUrl(blob: Blob): Promise<string> {
  return new Promise((done, failed) => {
    const reader = new FileReader();
    reader.onload = () => done(reader.result as string);
    reader.onerror = () => failed(reader.error as Error);
    reader.readAsDataURL(blob);
  });
}

const base64Of = async (blob: Blob) => (await asDataUrl(blob)).replace(/^[^,]*,/, '');

/** What a file is, or why it is not taken. */
function judged({ name, size }: File, head: Uint8Array): Result<FileKind> {
  if (size > largestFile)
    return refused('tooLarge', say.photos.tooLarge(name, largestFile / 2 ** 20));
  const kind = fileKind(head);
  if (kind === 'image/heic') return refused('heic', say.photos.heic(name));
  const known = fileKinds.find((one) => one === kind);
  return known ? ok(known) : refused('unknownKind', say.photos.unknownKind(name));
}

async function reduced(file: File, kind: FileKind): Promise<Result<Downsized | undefined>> {
  if (kind === 'application/pdf') return ok(undefined);
  try {
    return ok(await downsize(file));
  } catch (thrown) {
    if (!(thrown instanceof DOMException)) throw thrown;
    return refused('unreadable', say.photos.unreadable(file.name));
  }
}

async function imageOf({ copy, copySize }: Downsized): Promise<PhotoImage> {
  return { data: await asDataUrl(copy), ...copySize };
}

/**
 * Gives a file to the archive as it is, a picture with a copy for print that is made here. Tells
 * each step as it begins. Refused, with a sentence that names the file, when it is not taken.
 */
export async function keepFile(
  host: PageHost,
  file: File,
  onStep: (step: Step) => void,
): Promise<Result<Kept>> {
  const head = new Uint8Array(await file.slice(0, headBytes).arrayBuffer());
  const kind = judged(file, head);
  if (!kind.ok) return kind;
  onStep('reducing');
  const small = await reduced(file, kind.value);
  if (!small.ok) return small;
  onStep('keeping');
  const image = small.value && (await imageOf(small.value));
  const copy = image && { copy: image.data.replace(/^[^,]*,/, '') };
  const answer = await host.send('attachments.put', { data: await base64Of(file), ...copy });
  if (!answer.ok)
    return refused(answer.error.code, say.photos.notKept(file.name, answer.error.sentence));
  const day = takenOn(head);
  const photo = {
    ...answer.value,
    file: file.name,
    ...small.value?.size,
    ...(day === undefined ? {} : { takenOn: day }),
  };
  return ok({ photo, ...(image && { image }) });
}
