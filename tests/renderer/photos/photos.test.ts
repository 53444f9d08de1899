// @vitest-environment jsdom
import { all, button, clear, click, field, one, openFolder, settled, show, texts, type } from '../mounted.ts'; // prettier-ignore
import { afterEach, describe, expect, it } from 'vitest';
import type { PageHost } from '../../../core/contract/host.ts';
import type { Photo } from '../../../core/record/photos.ts';
import { fileSize } from '../../../renderer/photos/fileSize.ts';
import { copySizeOf } from '../../../renderer/photos/downsize.ts';
import Photos from '../../../renderer/photos/Photos.svelte';
import { speech } from '../../../renderer/state/language.svelte.ts';
import { hashOf } from '../../pictures/photos.ts';

const photos: Photo[] = [
  { hash: hashOf(1), file: 'pump.jpg', bytes: 2_345_678, caption: 'The pump' },
  { hash: hashOf(2), file: 'map.pdf', mediaType: 'application/pdf', bytes: 900 },
  { hash: hashOf(3), file: 'pad.jpg', print: false },
];

/** A host that has the picture of the first photo alone, and notes what is asked of it. */
function hostOf(asked: string[] = []): PageHost {
  const send = (_name: string, { hash }: { hash: string }) => {
    asked.push(hash);
    const value = { data: '/9j/', mediaType: 'image/jpeg', width: 4, height: 3 };
    const missing = { code: 'noSuchFile', sentence: 'None.' };
    return Promise.resolve(
      hash === hashOf(1) ? { ok: true, value } : { ok: false, error: missing },
    );
  };
  return { send, onEvent: () => () => undefined } as unknown as PageHost;
}

function open(list: Photo[] = photos, readOnly = false, asked: string[] = []) {
  const folder = openFolder({ photos: list }, readOnly);
  show(Photos, { host: hostOf(asked), folder });
  return folder;
}

afterEach(async () => {
  speech.language = 'en';
  await clear();
});

describe('the block of photos', () => {
  it('shows each with number, file, size and what it is called', async () => {
    open();
    await settled();
    expect(texts('.facts')).toEqual([
      'Photo 1 pump.jpg 2.3 MB',
      'not on papers map.pdf 1 kB',
      'not on papers pad.jpg',
    ]);
    expect(one<HTMLImageElement>('img').alt).toBe('The pump');
    expect(one<HTMLImageElement>('img').src).toBe('data:image/jpeg;base64,/9j/');
  });

  it('says of a PDF that it is not printed and of a lost picture that it is not here', async () => {
    open();
    await settled();
    expect(texts('.picture .none')).toEqual([
      'PDF: kept in the archive, not printed',
      'This archive does not hold the picture.',
    ]);
  });

  it('asks for each picture once and for no PDF', async () => {
    const asked: string[] = [];
    const folder = open(photos, false, asked);
    await settled();
    await type('photos[0].caption', 'The pump head');
    await settled();
    expect(asked).toEqual([hashOf(1), hashOf(3)]);
    expect(folder.desk.record.photos![0]!.caption).toBe('The pump head');
  });

  it('keeps a day that cannot be read as it was typed, and says why', async () => {
    const folder = open();
    await type('photos[0].takenOn', 'last week');
    field('photos[0].takenOn').blur();
    await settled();
    expect(texts('.said').join()).toContain('“last week” is not a day');
    expect(folder.desk.record.photos![0]!.takenOn).toBeUndefined();
  });

  it('takes a photo off the papers and puts it back as it was before', async () => {
    const folder = open();
    const box = one<HTMLInputElement>('[data-photo="0"] input[type=checkbox]');
    await click(box);
    expect(folder.desk.record.photos![0]!.print).toBe(false);
    await click(box);
    expect('print' in folder.desk.record.photos![0]!).toBe(false);
    expect(all('[data-photo="1"] input[type=checkbox]')).toEqual([]);
  });

  it('moves a photo, its typed words with it, and keeps the hand on it', async () => {
    const folder = open();
    await type('photos[0].takenOn', 'soon');
    await click(one('[data-photo="0"] .later'));
    expect(folder.desk.record.photos!.map(({ file }) => file)).toEqual(['map.pdf', 'pump.jpg', 'pad.jpg']); // prettier-ignore
    expect(field('photos[1].takenOn').value).toBe('soon');
    expect(document.activeElement).toBe(one('[data-photo="1"] .later'));
    await click(one('[data-photo="1"] .later'));
    expect(document.activeElement).toBe(one('[data-photo="2"] .picture'));
  });

  it('takes a photo out and has it back by undo', async () => {
    const folder = open();
    await click(all('button').find((each) => each.ariaLabel === 'Remove: The pump')!);
    expect(folder.desk.record.photos).toHaveLength(2);
    expect(document.activeElement).toBe(one('[data-photo="0"] .picture'));
    folder.undo();
    await settled();
    expect(folder.desk.record.photos).toEqual(photos);
  });

  it('offers nothing that changes it where the archive can only be read', async () => {
    open(photos, true);
    await settled();
    expect(all('.choose, .sooner, .later, .drop, input[type=file]')).toEqual([]);
    expect(one<HTMLInputElement>('input[type=checkbox]').disabled).toBe(true);
    expect(texts('button').filter((text) => text === 'Save the original')).toHaveLength(3);
  });

  it('speaks the language in use', async () => {
    open([]);
    expect(texts('.none')).toEqual(['No photo or scan yet.']);
    speech.language = 'fr';
    await settled();
    expect(button('Choisir des fichiers')).toBeTruthy();
    speech.language = 'pt';
    await settled();
    expect(texts('h3')).toEqual(['Fotografias e digitalizações']);
  });
});

describe('the size of a file', () => {
  it('is told in kilobytes, and in megabytes from a thousand of them', () => {
    expect([0, 400, 1500, 999_499].map(fileSize)).toEqual(['1 kB', '1 kB', '2 kB', '999 kB']);
    expect([999_500, 2_345_678, 41_000_000].map(fileSize)).toEqual(['1 MB', '2.3 MB', '41 MB']);
    speech.language = 'fr';
    expect(fileSize(2_345_678)).toBe('2,3 Mo');
  });
});

describe('the size of a copy', () => {
  it('is at most 1600 pixels long, in the picture’s shape, and never enlarged', () => {
    expect(copySizeOf({ width: 4000, height: 3000 })).toEqual({ width: 1600, height: 1200 });
    expect(copySizeOf({ width: 3000, height: 4000 })).toEqual({ width: 1200, height: 1600 });
    expect(copySizeOf({ width: 1600, height: 20 })).toEqual({ width: 1600, height: 20 });
    expect(copySizeOf({ width: 640, height: 480 })).toEqual({ width: 640, height: 480 });
    expect(copySizeOf({ width: 40_000, height: 3 })).toEqual({ width: 1600, height: 1 });
  });
});
