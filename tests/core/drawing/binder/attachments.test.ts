import { describe, expect, it } from 'vitest';
import {
  attachmentsOf,
  type HeldState,
} from '../../../../core/drawing/binder/attachments/attachments.ts';
import { layAttachments } from '../../../../core/drawing/binder/attachments/layAttachments.ts';
import type { BoundPaper } from '../../../../core/drawing/binder/boundPapers.ts';
import type { Photo } from '../../../../core/record/photos.ts';
import { hashOf, photosOf } from '../../../pictures/photos.ts';
import { placedOn, textsOn } from '../../../sheets/placed.ts';
import { kitIn } from './madeBinder.ts';

const { photos, images } = photosOf(3, ['landscape', 'portrait'], { caption: 'The pad' });
const report: Photo = {
  hash: hashOf(77),
  file: 'water.pdf',
  mediaType: 'application/pdf',
  bytes: 1_234_567,
  caption: 'Laboratory report',
  takenOn: '2026-01-20',
};
const leftOut: Photo = { ...photos[0]!, hash: hashOf(8), file: 'people.jpg', print: false };
const all = [...photos, report, leftOut];

function pagesFor(
  papers: readonly BoundPaper[],
  of: readonly Photo[] = all,
  held: HeldState = 'held',
) {
  const attachments = attachmentsOf(of, papers, { images, heldOf: () => held });
  return layAttachments(kitIn('en'), { number: 'KV-1', name: 'School' }, attachments);
}

const picturesOn = (papers: readonly BoundPaper[]) =>
  pagesFor(papers).map((page) => placedOn(page).filter(({ item }) => item.kind === 'image').length);
const said = (...takes: Parameters<typeof pagesFor>) =>
  pagesFor(...takes)
    .map((page) =>
      textsOn(page)
        .map(({ item }) => item.text)
        .join(' '),
    ) // prettier-ignore
    .join(' ');

describe('the attachments of a well', () => {
  it('show pictures two to a page where no as-built drawing of the binder does', () => {
    expect(picturesOn(['committee'])).toEqual([2, 1]);
    expect(picturesOn(['committee', 'asBuilt'])).toEqual([0]);
  });

  it('begin the list of files on the page of a picture that stands alone, else on its own', () => {
    const [first, second] = pagesFor(['committee'], [...photos, report]);
    const text = (page: typeof first) => textsOn(page!).map(({ item }) => item.text);
    expect(text(first)).not.toContain('water.pdf');
    expect(text(second)).toContain('water.pdf');
    const two = [...photos.slice(0, 2), report];
    expect(pagesFor(['committee'], two).map((page) => text(page).includes('water.pdf'))).toEqual([
      false,
      true,
    ]);
  });

  it('have the caption and number of each picture, and whose they are', () => {
    const text = said(['layingOut'], photos);
    for (const one of ['KV-1 – School', 'Photo 1', 'Photo 3', 'The pad'])
      expect(text).toContain(one);
  });

  it('list documents with size, day and hash, and what was left out by hand', () => {
    const text = said(['asBuilt']);
    for (const one of ['water.pdf', 'Laboratory report', 'PDF', '1.23 MB', '2026-01-20'])
      expect(text).toContain(one);
    expect(text).toContain('00000000 00000000');
    expect(text).toMatch(/a document .*people\.jpg .*left out of +papers by +hand/);
  });

  it('say of a file that the archive lacks, or that was changed, that it does', () => {
    expect(said(['asBuilt'], [report], 'absent')).toMatch(/not in this +archive/);
    expect(said(['asBuilt'], [report], 'changed')).toMatch(/changed outside +the program/);
    const { hash, ...nameless } = report;
    expect(hash).toBeDefined();
    expect(said(['asBuilt'], [nameless])).toMatch(/not in this +archive/);
  });

  it('take no page where nothing is attached, or all of it is shown', () => {
    expect(pagesFor(['committee'], [])).toEqual([]);
    expect(pagesFor(['asBuilt'], photos)).toEqual([]);
    expect(attachmentsOf(undefined, [], { images, heldOf: () => 'held' }).files).toEqual([]);
  });
});
