import { filled } from '../../base/text/filled.ts';
import type { InLanguages } from '../../practice/practice.ts';
import { dayFigure } from '../figures.ts';
import type { Item } from '../items.ts';
import { flowed } from '../parts/flow/flow.ts';
import type { Piece } from '../parts/flow/part.ts';
import { gapPiece } from '../parts/flow/pieces.ts';
import type { BinderContent, BinderKit, LaidPart, Places } from './binder.ts';
import { columnsOf } from './columnsOf.ts';
import { binderPage, bodyOf, partTitle, partTitleHeight, under } from './page.ts';
import { chapterPieces, headingPiece, prosePieces } from './prose.ts';
import { counted, sayNumber } from './say.ts';

interface Named {
  readonly id: string;
  readonly version: string;
  readonly name: InLanguages;
}

/** Each practice or set once, with how many wells went by it; the most used first. */
function namedSays({ own, words }: BinderKit, all: readonly Named[]): string[] {
  const found = new Map<string, { readonly one: Named; wells: number }>();
  for (const one of all) {
    const key = `${one.id} ${one.version}`;
    const there = found.get(key);
    if (there) there.wells += 1;
    else found.set(key, { one, wells: 1 });
  }
  return [...found.values()]
    .sort((a, b) => b.wells - a.wells)
    .map(({ one, wells }) =>
      filled(own.colophon.named, {
        name: one.name[words.language],
        version: one.version,
        wells: counted(own.counts.wells, wells),
      }),
    );
}

function madeSays({ own }: BinderKit, content: BinderContent): string[] {
  const { colophon } = own;
  const { madeAt, madeBy, programVersion, archiveHash } = content;
  return [
    filled(colophon.madeSays, { day: dayFigure(madeAt), version: programVersion }),
    ...(madeBy === '' ? [] : [filled(colophon.madeBy, { name: madeBy })]),
    archiveHash === undefined ? colophon.noHash : filled(colophon.hash, { hash: archiveHash }),
  ];
}

function wellsSays({ own }: BinderKit, { filterSays, wells, failed }: BinderContent): string[] {
  const { colophon } = own;
  return [
    filterSays === '' ? colophon.allWells : filled(colophon.filter, { filter: filterSays }),
    filled(colophon.counts, { n: String(wells.length), failed: String(failed.length) }),
    colophon.revisions,
  ];
}

/** Each failed well with its page and what is wrong. */
function failedPieces(
  kit: BinderKit,
  { wells, failed }: BinderContent,
  places: Places,
  width: number,
): Piece[] {
  if (failed.length === 0) return [];
  const { own } = kit;
  const numbers = new Map(wells.map((well) => [well.id, sayNumber(kit, well)]));
  return [
    headingPiece(kit, own.colophon.failed, width),
    ...failed.flatMap(({ wellId, sentence }) => {
      const page = places.pageOf(wellId);
      const number = numbers.get(wellId) ?? own.noNumber;
      return prosePieces(kit, `${number}${kit.words.colon} ${sentence}`, width).map(
        (piece): Piece => ({
          ...piece,
          draw: (x, y): Item[] => [
            ...piece.draw(x, y),
            { kind: 'link', box: { x, y, width, height: piece.height }, to: { page } },
          ],
        }),
      );
    }),
    gapPiece(3),
  ];
}

/** From what and how the binder was made, and where its figures come from. */
export function layColophon(kit: BinderKit, content: BinderContent, places: Places): LaidPart {
  const { colophon, parts } = kit.own;
  const body = bodyOf(kit);
  const columns = columnsOf(under(body, partTitleHeight), 2, 8);
  const { width } = columns[0]!;
  const chapter = (title: string, says: readonly string[]) => [
    ...chapterPieces(kit, title, says, width),
    gapPiece(3),
  ];
  const sets = namedSays(kit, content.wells.flatMap(({ quality }) => quality?.set ?? [])); // prettier-ignore
  const practices = namedSays(kit, content.wells.map(({ practice }) => practice)); // prettier-ignore
  const pieces = [
    ...chapter(colophon.made, madeSays(kit, content)),
    ...chapter(colophon.wells, wellsSays(kit, content)),
    ...failedPieces(kit, content, places, width),
    ...chapter(colophon.practices, practices),
    ...chapter(colophon.guidelines, sets.length > 0 ? sets : [colophon.noSamples]),
    ...chapter(colophon.how, colophon.howSays),
    ...chapter(colophon.sources, colophon.sourcesSays),
    ...prosePieces(kit, kit.own.cover.caution, width, { face: 'bold' }),
  ];
  const pages = flowed(pieces, columns).map((items) =>
    binderPage(kit, content, parts.colophon, [partTitle(kit, parts.colophon, body), ...items]),
  );
  return { pages, marks: [] };
}
