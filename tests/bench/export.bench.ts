import { writerOf } from '../../core/exchange/writers.ts';
import { writtenFormats, type WrittenFormat } from '../../core/exchange/writtenFormats.ts';
import { readDocument } from '../../electron/service/stored.ts';
import { demoText } from './demoRecord.ts';
import type { Trial } from './trial.ts';

const read = readDocument(JSON.parse(demoText));
if (!read.ok) throw new Error(read.error.sentence);
const { record } = read.value;
const madeAt = '2026-01-15T08:00:00Z';
const wells = 20;

/** Writes the same well so many times; what is known last is left away. */
function write(format: WrittenFormat): number {
  const writer = writerOf(format, { name: 'wells', madeAt });
  let letters = 0;
  for (let well = 0; well < wells; well += 1)
    for (const { content } of writer.well({ record, revision: 1, changedAt: madeAt }).added)
      letters += content.length;
  return letters;
}

export const trial: Trial = {
  title: `Writing ${wells} wells of sixty intervals in open formats`,
  says: 'What each format costs over the records as they are, losses found and told with it. Wells are written one after the other, so that an archive of any size goes through; a workbook alone is whole in memory. Reading the archive and the disk are not in it.',
  rivals: ['jsonl' as const, ...writtenFormats.filter((one) => one !== 'jsonl')].map((format) => ({
    name: format,
    run: () => write(format),
  })),
};
