import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { jpegSegments, jpegSize } from '../../core/base/picture/jpeg.ts';
import type { Photo } from '../../core/record/photos.ts';
import { exif } from '../core/base/picture/sampleJpeg.ts';
import { valueOf } from '../electron/archive/sample.ts';
import { jpegOf } from '../pictures/jpeg.ts';
import { pngOf, type Paint } from '../pictures/png.ts';
import { openPdf } from '../reading/pdf.ts';
import { eventually, field, openWell } from './desk.ts';
import { startProgram, type Program } from './program.ts';

let program: Program;
let page: Page;

/** Milliseconds that building the page and starting the browser may take on a busy machine. */
const patience = 120_000;

beforeAll(async () => {
  program = await startProgram();
}, patience);
afterEach(async () => {
  await page.context().close();
  expect(program.complaints).toEqual([]);
}, patience);
afterAll(() => program.close(), patience);

const slope: Paint = (x, y) => [x % 256, y % 256, (x + y) % 256];
/** White at the upper left as it is stored, black elsewhere. */
const corner: Paint = (x, y) => (x < 40 && y < 40 ? [255, 255, 255] : [0, 0, 0]);

/** Stored lying; the camera's note says that it was held upright (turned a quarter clockwise). */
const upright = jpegOf(160, 80, corner, exif('2026:03:14 09:30:00'));
const large = pngOf(2400, 1200, slope);
const scan = Buffer.from('%PDF-1.4\n1 0 obj <<>> endobj\ntrailer <<>>\n%%EOF\n');

const file = (name: string, buffer: Buffer, mimeType = 'image/jpeg') => ({
  name,
  mimeType,
  buffer,
});

async function openPhotos(number: string, width = 1280) {
  page = await openWell(program, number, width, 900);
  page.setDefaultTimeout(15_000);
  await page.getByRole('tab', { name: 'Handover' }).click();
  await page.getByRole('heading', { name: 'Photos and scans' }).waitFor();
}

async function choose(...files: ReturnType<typeof file>[]) {
  const asked = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose files' }).click();
  await (await asked).setFiles(files);
}

/** Lets files go over an element, as a file manager would. */
async function drop(selector: string, files: ReturnType<typeof file>[]) {
  const given = files.map(({ name, mimeType, buffer }) => ({
    name,
    mimeType,
    text: buffer.toString('base64'),
  }));
  await page.locator(selector).evaluate((element, all) => {
    const dataTransfer = new DataTransfer();
    for (const { name, mimeType, text } of all) {
      const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
      dataTransfer.items.add(new File([bytes], name, { type: mimeType }));
    }
    for (const kind of ['dragenter', 'dragover', 'drop'])
      element.dispatchEvent(new DragEvent(kind, { bubbles: true, cancelable: true, dataTransfer }));
  }, given);
}

async function storedPhotos(number: string): Promise<readonly Photo[]> {
  const [row] = valueOf(await program.service.call('wells.list', { search: number }));
  const { working } = valueOf(await program.service.call('wells.open', { id: row!.id }));
  const { desk } = valueOf(await program.service.call('wells.desk', { id: row!.id }));
  expect(working.edit).toBeGreaterThanOrEqual(0);
  return desk.record.photos ?? [];
}

const copyOf = async (hash: string) =>
  valueOf(await program.service.call('attachments.printCopy', { hash }));

describe('files chosen', () => {
  it('are kept as they are, with a smaller copy that has nothing but the picture', async () => {
    await openPhotos('KV-25-011');
    await choose(file('large.png', large, 'image/png'));
    await page.getByText('was added').waitFor();
    await eventually(() => storedPhotos('KV-25-011')).toHaveLength(1);
    const [photo] = await storedPhotos('KV-25-011');
    expect(photo).toMatchObject({
      file: 'large.png',
      mediaType: 'image/png',
      bytes: large.length,
      width: 2400,
      height: 1200,
    });
    const original = valueOf(await program.service.call('attachments.get', { hash: photo!.hash! }));
    expect(Buffer.from(original.data, 'base64').equals(large)).toBe(true);
    const copy = await copyOf(photo!.hash!);
    expect(copy).toMatchObject({ width: 1600, height: 800, mediaType: 'image/jpeg' });
    expect(copy.data.length).toBeLessThan(original.data.length);
  });

  it('stand upright as the camera was held, on its day, without the camera’s notes', async () => {
    await openPhotos('KV-25-014');
    await choose(file('held upright.jpg', upright));
    await eventually(() => storedPhotos('KV-25-014')).toHaveLength(1);
    const [photo] = await storedPhotos('KV-25-014');
    expect(photo).toMatchObject({ width: 80, height: 160, takenOn: '2026-03-14' });
    const bytes = Buffer.from((await copyOf(photo!.hash!)).data, 'base64');
    expect(jpegSize(bytes)).toEqual({ width: 80, height: 160 });
    const app1 = [...jpegSegments(bytes)].filter(({ marker }) => marker === 0xe1);
    expect(app1).toEqual([]);
    // The white corner has gone to the upper right.
    const shades = await page.locator('.photos img').evaluate(async (img) => {
      await (img as HTMLImageElement).decode();
      const canvas = new OffscreenCanvas(80, 160);
      const pen = canvas.getContext('2d')!;
      pen.drawImage(img as HTMLImageElement, 0, 0, 80, 160);
      const { data } = pen.getImageData(0, 0, 80, 160);
      return [4 + 80 * 4, 76 + 80 * 4, 4 + 80 * 156].map((point) => data[4 * point]!);
    });
    expect(shades.map((shade) => shade > 128)).toEqual([false, true, false]);
  });

  it('are refused by name, each with what to do, and the good ones among them come in', async () => {
    await openPhotos('KV-26-002');
    await choose(
      file('IMG 1.heic', Buffer.from('\0\0\0\x18ftypheic\0\0\0\0', 'latin1'), 'image/heic'),
      file('notes.txt', Buffer.from('text'), 'text/plain'),
      file('broken.jpg', upright.subarray(0, 40)),
      file('good.jpg', upright),
      file('the same.jpg', upright),
      file('scan.pdf', scan, 'application/pdf'),
    );
    await page.getByText('“IMG 1.heic” is a HEIC picture').waitFor();
    await page.getByText('“notes.txt” is neither a JPEG').waitFor();
    await page.getByText('“broken.jpg” cannot be read').waitFor();
    await page.getByText('it is number 1 here already').waitFor();
    await page.getByText('PDF scans are kept and not printed').waitFor();
    await eventually(async () => (await storedPhotos('KV-26-002')).map(({ file }) => file)).toEqual(
      ['good.jpg', 'scan.pdf'],
    );
    await page.getByText('PDF: kept in the archive, not printed').waitFor();
    expect(await page.locator('.photos .facts strong').allTextContents()).toEqual([
      'Photo 1',
      'not on papers',
    ]);
  });

  it('are given back as they came', async () => {
    await openPhotos('KV-26-004');
    await choose(file('kept.jpg', upright));
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: /Save the original/ }).click();
    const stream = await (await saved).createReadStream();
    const parts: Buffer[] = [];
    for await (const part of stream) parts.push(part as Buffer);
    expect(Buffer.concat(parts).equals(upright)).toBe(true);
    expect((await saved).suggestedFilename()).toBe('kept.jpg');
  });
});

describe('files dropped', () => {
  it('on the block come in; beside it they leave the page where it is', async () => {
    await openPhotos('KV-25-019');
    await drop('.photos', [file('dropped.jpg', upright), file('second.png', pngOf(9, 9, slope))]);
    await eventually(() => storedPhotos('KV-25-019')).toHaveLength(2);
    const address = page.url();
    await drop('.sheet', [file('beside.jpg', jpegOf(16, 16, slope))]);
    expect(page.url()).toBe(address);
    expect(await storedPhotos('KV-25-019')).toHaveLength(2);
  });
});

describe('photos in the folder', () => {
  it('take a caption and a day, change places, go and come back, by keyboard', async () => {
    await openPhotos('KV-26-009');
    await choose(file('a.jpg', upright), file('b.png', pngOf(40, 30, slope), 'image/png'));
    await field(page, 'photos[1].caption').fill('The pump');
    await field(page, 'photos[1].takenOn').fill('2026-04-02');
    await eventually(async () => (await storedPhotos('KV-26-009'))[1]).toMatchObject({
      caption: 'The pump',
      takenOn: '2026-04-02',
    });
    const sooner = page.getByRole('button', { name: 'Sooner: The pump' });
    await sooner.focus();
    await page.keyboard.press('Enter');
    await eventually(async () => (await storedPhotos('KV-26-009')).map(({ file }) => file)).toEqual(
      ['b.png', 'a.jpg'],
    );
    const focused = () =>
      page.evaluate(() =>
        document.activeElement?.closest('[data-photo]')?.getAttribute('data-photo'),
      );
    await eventually(focused).toBe('0');
    await page.getByRole('button', { name: 'Remove: The pump' }).click();
    await eventually(() => storedPhotos('KV-26-009')).toHaveLength(1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await eventually(() => storedPhotos('KV-26-009')).toHaveLength(2);
    await page.locator('.photos img[alt="The pump"]').waitFor();
    expect(await page.locator('.photos img[alt="photo without caption 2"]').count()).toBe(1);
  });

  it('open large, turn by arrows and close by Escape', async () => {
    await openPhotos('KV-26-009');
    await page.getByRole('button', { name: 'Show larger: The pump' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByText('1 / 2').waitFor();
    await page.keyboard.press('ArrowRight');
    await dialog.getByText('2 / 2').waitFor();
    await page.keyboard.press('ArrowRight');
    await dialog.locator('img[alt="photo without caption 2"]').waitFor();
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
    await eventually(focused).toBe('Show larger: photo without caption 2');
  });

  it('stand on the sheet beside, and in the PDF', async () => {
    await openPhotos('KV-26-009');
    await page.locator('[data-photo="0"] textarea').focus();
    await page.locator('#sheet image').first().waitFor();
    expect(await page.locator('#sheet image').count()).toBe(2);
    await page.locator('[data-photo="1"]').getByLabel('Show on papers').uncheck();
    await eventually(() => page.locator('#sheet image').count()).toBe(1);
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name: /PDF/ }).click();
    const stream = await (await saved).createReadStream();
    const parts: Buffer[] = [];
    for await (const part of stream) parts.push(part as Buffer);
    const bytes = new Uint8Array(Buffer.concat(parts));
    const pdf = await openPdf(bytes);
    const last = await (await pdf.getPage(pdf.numPages)).getTextContent();
    const words = last.items.map((item) => ('str' in item ? item.str : '')).join(' ');
    expect(words).toContain('Photo 1');
    expect(words).toContain('The pump');
    expect(words).not.toContain('Photo 2');
  });

  it('are there again when the page was loaded anew', async () => {
    await openPhotos('KV-26-009');
    await page.reload();
    await page.getByRole('tab', { name: 'Handover' }).click();
    await page.locator('.photos img[alt="The pump"]').waitFor();
  });
});
