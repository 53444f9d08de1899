/** Makes one binder in a process of its own and tells its times and its memory, as JSON. */
import path from 'node:path';
import type { BinderProgress, BinderWish } from '../../../core/contract/binderShape.ts';
import { usualBinder } from '../../../core/contract/usualBinder.ts';
import { openArchive } from '../../../electron/archive/open.ts';
import { makeBinder } from '../../../electron/binder/makeBinder.ts';
import { volumeFileName } from '../../../electron/binder/volumeFileName.ts';

const [file = '', folder = '', workers = '2'] = process.argv.slice(2);
const madeAt = '2026-01-15T08:00:00.000Z';
const opened = openArchive(file, { now: () => madeAt, mustExist: true });
if (!opened.ok) throw new Error(opened.error.sentence);

/** Made wells have no committee to speak of: their as-built drawings alone are bound. */
const wish: BinderWish = usualBinder('Made wells', 'en');
const began: Partial<Record<BinderProgress['stage'], number>> = {};
const start = performance.now();
const made = await makeBinder({
  archive: opened.value,
  wish,
  madeAt,
  workers: workers === '1' ? 1 : 2,
  folder: path.join(folder, 'work'),
  issuedFolder: path.join(folder, 'issued'),
  fileOf: (volume, of) => path.join(folder, volumeFileName('binder', volume, of)),
  onProgress: ({ stage }) => (began[stage] ??= performance.now()),
  signal: new AbortController().signal,
});
const end = performance.now();
opened.value.close();
if (!made.ok) throw new Error(made.error.sentence);
const { files, pages } = made.value;
console.log(
  JSON.stringify({
    pages,
    layMs: (began.plan ?? end) - start,
    planMs: (began.paint ?? end) - (began.plan ?? end),
    paintMs: end - (began.paint ?? end),
    bytes: files.reduce((sum, one) => sum + one.bytes, 0),
    // Workers are threads: their memory is the process's.
    peakBytes: process.resourceUsage().maxRSS * 1024,
  }),
);
