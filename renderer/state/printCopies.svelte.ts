import type { PageHost } from '../../core/contract/host.ts';
import { shownPhotos, type PhotoImage, type PhotoImages } from '../../core/drawing/parts/photos.ts';
import type { WellRecord } from '../../core/record/schema.ts';

/** Pictures of one folder as papers show them, each fetched once. */
export class PrintCopies {
  readonly #host: PageHost;
  #held = $state.raw<Readonly<Record<string, PhotoImage | 'missing'>>>({});
  /** Hashes that were asked for; nothing shows them. */
  readonly #asked: Record<string, true> = {};

  constructor(host: PageHost) {
    this.#host = host;
  }

  /** The picture; undefined while it is fetched, which a look at it begins. */
  at(hash: string): PhotoImage | 'missing' | undefined {
    if (!this.#asked[hash]) void this.#fetch(hash);
    return this.#held[hash];
  }

  /** The pictures that a record's papers show, as far as they are here. */
  imagesFor({ photos, marks = [] }: WellRecord): PhotoImages {
    const shown = [...shownPhotos(photos, {}).map(({ photo }) => photo), ...marks];
    const hashes = shown.flatMap(({ hash }) => hash ?? []);
    const here = hashes.map((hash) => [hash, this.at(hash)] as const);
    return Object.fromEntries(here.filter(isHere));
  }

  /** Takes a picture that the page made itself. */
  put(hash: string, image: PhotoImage) {
    this.#asked[hash] = true;
    this.#hold(hash, image);
  }

  #hold(hash: string, image: PhotoImage | 'missing') {
    this.#held = { ...this.#held, [hash]: image };
  }

  async #fetch(hash: string) {
    this.#asked[hash] = true;
    const answer = await this.#host.send('attachments.printCopy', { hash });
    if (answer.ok) {
      const { data, mediaType, width, height } = answer.value;
      this.#hold(hash, { data: `data:${mediaType};base64,${data}`, width, height });
    } else if (answer.error.code === 'noSuchFile') this.#hold(hash, 'missing');
    // Nobody answered: the next look asks again.
    else delete this.#asked[hash];
  }
}

function isHere(
  entry: readonly [string, PhotoImage | 'missing' | undefined],
): entry is readonly [string, PhotoImage] {
  return entry[1] !== undefined && entry[1] !== 'missing';
}

/** By folder, so that its pictures go when it is closed. */
const copies = new WeakMap<object, PrintCopies>();

/** The pictures of an open folder: one store for all that shows them. */
export function printCopiesOf(host: PageHost, folder: object): PrintCopies {
  const known = copies.get(folder) ?? new PrintCopies(host);
  copies.set(folder, known);
  return known;
}
