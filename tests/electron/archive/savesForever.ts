/** Saves one revision after another and says each number once it was told that it is saved. */
import { openArchive } from '../../../electron/archive/open.ts';

const opened = openArchive(process.argv[2]!, {
  now: () => new Date().toISOString(),
});
if (!opened.ok) throw new Error(opened.error.sentence);
const archive = opened.value;
const notes = 'as long as a well’s record. '.repeat(500);
const known = archive.open('a');
let revision = known.ok ? known.value.revision : 0;
for (;;) {
  const document = { notes, at: revision + 1 };
  const saved =
    revision === 0 ? archive.create('a', document) : archive.save('a', revision, document);
  if (!saved.ok) throw new Error(saved.error.sentence);
  revision = saved.value.revision;
  process.stdout.write(`${revision}\n`);
}
