import type { Result } from '../../core/base/result.ts';
import {
  misused,
  textOption,
  type Command,
  type ExitCode,
  type Given,
  type World,
} from './command.ts';
import { isArchive, onlyWord, readBytes, readFirstBytes } from './readInput.ts';
import { verifyArchive } from './verifyArchive.ts';
import { verifyPaper } from './verifyPaper.ts';

function verifyFile(given: Given, world: World): Result<ExitCode> {
  const word = onlyWord(given.words, 'verify');
  if (!word.ok) return word;
  const first = readFirstBytes(word.value, world);
  if (!first.ok) return first;
  const json = given.options['json'] === true;
  const archive = textOption(given, 'archive');
  if (isArchive(first.value))
    return archive === undefined
      ? verifyArchive(word.value, json, world)
      : misused('--archive goes with a PDF: name one archive alone to check its chains.');
  if (!first.value.toString('latin1').startsWith('%PDF-'))
    return misused(`${word.value} is neither a PDF nor an archive.`);
  const pdf = readBytes(word.value, world);
  if (!pdf.ok) return pdf;
  return verifyPaper(
    { pdf: pdf.value, json, ...(archive === undefined ? {} : { archive }) },
    world,
  );
}

/** `verify`: whether a paper is as it was sealed, or an archive as it was saved. */
export const verify: Command = {
  name: 'verify',
  takes: 'PAPER.pdf [--archive ARCHIVE] | ARCHIVE',
  says: 'Tells who sealed a paper and whether it is whole, or walks an archive’s chains of hashes and goes through its issued papers; 0 where all is whole, else 1',
  options: { archive: { type: 'string' } },
  run: verifyFile,
};
