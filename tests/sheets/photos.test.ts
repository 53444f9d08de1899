import { describe, expect, it } from 'vitest';
import { languages, type Language } from '../../core/base/language.ts';
import type { Box, ImageItem, Page } from '../../core/drawing/items.ts';
import type { PaperName } from '../../core/drawing/paper.ts';
import { sheetWordsIn } from '../../core/drawing/words/languages.ts';
import type { Photo } from '../../core/record/photos.ts';
import { photosOf, shapes, type Shape } from '../pictures/photos.ts';
import { well } from '../demo-data/wells.ts';
import { drawSheet, paperNames, type DrawnSheet } from './drawn.ts';
import { brokenBy } from './laws/index.ts';
import { common, edgesOf, groupsNamed, placedOn, textsOn } from './placed.ts';

const demo = well('shallow-direct-action-9m.json');
const before = (paper: PaperName) => drawSheet(demo, paper).drawing.pages.length;

/** The sheet of a demo well with photos. */
function sheetWith(
  { photos, images }: ReturnType<typeof photosOf>,
  paper: PaperName = 'A4',
  language: Language = 'en',
): DrawnSheet {
  return drawSheet({ ...demo, photos }, paper, language, images);
}

const photoPages = ({ drawing }: DrawnSheet) =>
  drawing.pages.filter(({ items }) => groupsNamed(items, 'photos').length > 0);
const imagesOn = (page: Page) =>
  placedOn(page).flatMap(({ item }) => (item.kind === 'image' ? [item] : []));
const says = (page: Page) => textsOn(page).map(({ item }) => item.text);

/** Whether two boxes have more in common than a pen's width. */
function overlap(a: Box, b: Box): boolean {
  const [left, top, right, foot] = common(edgesOf(a), edgesOf(b));
  return right - left > 0.2 && foot - top > 0.2;
}

/** Pairs of pictures, and of pictures and texts, that stand on each other. */
function clashes(page: Page): string[] {
  const images = imagesOn(page);
  const apart = images.flatMap((one, at) =>
    images.slice(at + 1).flatMap((other) => (overlap(one, other) ? [`${one.says}`] : [])),
  );
  const texts = textsOn(page).flatMap(({ item }) => {
    const box = { x: item.x, y: item.y - item.em * 0.7, width: item.width, height: item.em };
    return images.some((image) => overlap(image, box)) ? [item.text] : [];
  });
  return [...apart, ...texts];
}

function stretched({ width, height, data }: ImageItem, images: Record<string, unknown>): boolean {
  const own = Object.values(images) as { data: string; width: number; height: number }[];
  const picture = own.find((one) => one.data === data)!;
  return Math.abs(width / height / (picture.width / picture.height) - 1) > 1e-9;
}

const long = {
  en: 'The apron was cast in two pours, with the drain towards the vegetable garden. ',
  fr: 'La dalle a été coulée en deux fois, la rigole d’évacuation menant vers le potager de l’école. ',
  pt: 'A laje foi betonada em duas fases, com a vala de drenagem em direção à horta da escola. ',
} as const;

const mixes: readonly (readonly Shape[])[] = [
  ['landscape'],
  ['portrait'],
  ['panorama'],
  ['landscape', 'portrait', 'panorama'],
];

describe('photo pages', () => {
  it('are none without photos, and none where every photo is left out', () => {
    for (const paper of paperNames) {
      const { photos, images } = photosOf(3, ['landscape'], { print: false });
      expect(photoPages(sheetWith({ photos: [], images: {} }, paper))).toEqual([]);
      expect(sheetWith({ photos, images }, paper).drawing.pages).toHaveLength(before(paper));
    }
  });

  it.each([1, 4, 7, 13])('hold %i photos of every shape and keep every law', (count) => {
    for (const paper of paperNames)
      for (const mix of mixes) {
        const given = photosOf(count, mix, {
          caption: 'Seen from the road',
          takenOn: '2026-03-14',
        });
        const sheet = sheetWith(given, paper);
        expect(brokenBy(sheet)).toEqual({});
        const pages = photoPages(sheet);
        const images = pages.flatMap(imagesOn);
        expect(images.map(({ source }) => source)).toEqual(
          given.photos.map((_, at) => `photos[${at}]`),
        );
        expect(images.filter((one) => stretched(one, given.images))).toEqual([]);
        expect(pages.flatMap(clashes)).toEqual([]);
      }
  });

  it.each(languages)('have room for long captions in %s and cut none of them', (language) => {
    for (const paper of paperNames)
      for (const mix of mixes) {
        const caption = long[language].repeat(4).trim();
        const sheet = sheetWith(photosOf(7, mix, { caption }), paper, language);
        expect(brokenBy(sheet)).toEqual({});
        const pages = photoPages(sheet);
        expect(pages.flatMap(clashes)).toEqual([]);
        const words = pages.flatMap(says).join(' ').replace(/\s+/g, ' ');
        expect(words.split(caption)).toHaveLength(8);
      }
  });

  it.each(languages)('say in %s where a caption goes on that no page can hold', (language) => {
    const caption = long[language].repeat(60);
    const sheet = sheetWith(photosOf(5, ['portrait'], { caption }), 'A4', language);
    expect(brokenBy(sheet)).toEqual({});
    const pages = photoPages(sheet);
    expect(pages.flatMap(clashes)).toEqual([]);
    const cut = pages.flatMap(says).filter((text) => text.startsWith('… '));
    expect(cut).toEqual(Array(5).fill(`… ${sheetWordsIn(language).photos.cut}`));
    for (const { height } of pages.flatMap(imagesOn)) expect(height).toBeGreaterThan(25);
  });

  it('carry six wide or four tall photos on an A4, and as many on each page as can be', () => {
    const counts = (count: number, shape: Shape) =>
      photoPages(sheetWith(photosOf(count, [shape]))).map((page) => imagesOn(page).length);
    expect(counts(6, 'landscape')).toEqual([6]);
    expect(counts(4, 'portrait')).toEqual([4]);
    expect(counts(7, 'landscape')).toEqual([4, 3]);
    expect(counts(13, 'landscape')).toEqual([5, 5, 3]);
    expect(counts(13, 'portrait')).toEqual([4, 4, 4, 1]);
  });

  it('show a single photo as large as the page allows', () => {
    const [page] = photoPages(sheetWith(photosOf(1, ['landscape'])));
    expect(imagesOn(page!)[0]!.width).toBeGreaterThan(170);
  });

  it('number the photos that are printed, and name file and alternative text after them', () => {
    const { photos, images } = photosOf(3, ['landscape']);
    const some: Photo[] = [photos[0]!, { ...photos[1]!, print: false }, photos[2]!];
    some[2] = { ...some[2]!, caption: 'The pump', takenOn: '2026-03-14' };
    const [page] = photoPages(sheetWith({ photos: some, images }));
    expect(says(page!).filter((text) => /^Photo \d|^2026-03-14|pump/.test(text))).toEqual([
      'Photo 1',
      'Photo 2',
      '2026-03-14',
      'The pump',
    ]);
    expect(imagesOn(page!).map(({ says }) => says)).toEqual(['Photo 1', 'The pump']);
  });

  it('count in the title blocks of all pages', () => {
    const sheet = sheetWith(photosOf(7, ['landscape']));
    const { pages } = sheet.drawing;
    expect(pages).toHaveLength(before('A4') + 2);
    pages.forEach((page, at) => expect(says(page)).toContain(`${at + 1} of ${pages.length}`));
  });
});

describe('a photo whose picture is not at hand', () => {
  it.each(languages)('has a frame of its shape with a sentence and its file in %s', (language) => {
    for (const paper of paperNames)
      for (const mix of mixes) {
        const { photos } = photosOf(7, mix, { caption: 'Kept elsewhere' });
        const sheet = sheetWith({ photos, images: {} }, paper, language);
        expect(brokenBy(sheet)).toEqual({});
        const pages = photoPages(sheet);
        expect(pages.flatMap(imagesOn)).toEqual([]);
        const words = pages.flatMap(says).join(' ');
        expect(words.split(sheetWordsIn(language).photos.missing)).toHaveLength(8);
        for (const { file } of photos) expect(words).toContain(file);
      }
  });

  it('leaves the others their pictures', () => {
    const { photos, images } = photosOf(2, ['portrait']);
    const { [photos[0]!.hash!]: first } = images;
    const sheet = sheetWith({ photos, images: { [photos[0]!.hash!]: first! } });
    expect(photoPages(sheet).flatMap(imagesOn)).toHaveLength(1);
  });

  it('may have no hash, no size and no name at all', () => {
    expect(brokenBy(sheetWith({ photos: [{}, { width: 0, height: 0 }], images: {} }))).toEqual({});
  });
});

it('shapes differ, so that stretching would show', () => {
  expect(new Set(Object.values(shapes).map(([width, height]) => width / height)).size).toBe(3);
});
