import { resolveWell } from '../../core/model/resolveWell.ts';
import { readDocument } from '../../electron/service/stored.ts';
import { demoText } from './demoRecord.ts';
import type { Trial } from './trial.ts';

function readChecked() {
  const read = readDocument(JSON.parse(demoText));
  if (!read.ok) throw new Error(read.error.sentence);
  return read.value.record;
}

export const trial: Trial = {
  title: 'Reading a record of sixty intervals',
  says: 'What checking every field, and resolving the well, cost over parsing the JSON alone.',
  rivals: [
    { name: 'JSON parsed only', run: () => JSON.parse(demoText) as unknown },
    { name: 'read and checked', run: readChecked },
    { name: 'read, checked and resolved', run: () => resolveWell(readChecked()) },
  ],
};
