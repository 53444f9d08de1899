/**
 * Types one edit after another, makes a revision of every fifth, and says the number of each once
 * it was told that it is on disk.
 */
import { openArchive } from '../../../electron/archive/open.ts';
import { retype, valueOf } from './sample.ts';

const archive = valueOf(openArchive(process.argv[2]!, { now: () => new Date().toISOString() }));
const notes = 'as long as a well’s record. '.repeat(500);
const schemaVersion = 1;
if (valueOf(archive.count()) === 0) valueOf(archive.create('a', { schemaVersion, notes }));
for (;;) {
  const at = valueOf(archive.working('a')).edit + 1;
  const { edit } = valueOf(retype(archive, 'a', { schemaVersion, notes, at }));
  process.stdout.write(`${edit}\n`);
  if (edit % 5 === 0) valueOf(archive.save('a', edit));
}
