import { ok } from '../../core/base/result.ts';
import { resolveWell } from '../../core/model/resolveWell.ts';
import type { Command } from './command.ts';
import { tellErrors } from './recordErrors.ts';
import { onlyWord, readRecordFile } from './readInput.ts';

/** `model`: the resolved well as JSON; core/model/wellModel.ts says what each field is. */
export const model: Command = {
  name: 'model',
  takes: 'RECORD.json',
  says: 'Prints the resolved geometry and quantities as JSON (depths in m, sizes in mm, litres)',
  options: {},
  run({ words }, world) {
    const file = onlyWord(words, 'model');
    if (!file.ok) return file;
    const read = readRecordFile(file.value, world);
    if (!read.ok) return read;
    const resolved = resolveWell(read.value.record);
    world.give(JSON.stringify(resolved, null, 2));
    const erring = tellErrors(file.value, read.value.troubles, resolved.findings, world);
    return ok(erring ? 1 : 0);
  },
};
