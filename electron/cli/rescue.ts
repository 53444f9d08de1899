import path from 'node:path';
import { ok } from '../../core/base/result.ts';
import { rescueArchive, type Rescued } from '../archive/rescue/rescue.ts';
import { misused, textOption, type Command, type World } from './command.ts';
import { onlyWord } from './readInput.ts';

function say(file: string, rescued: Rescued, world: World): void {
  const { wells, revisions, files, papers, typed, changedFiles, unknown, remarks } = rescued;
  world.print(
    `${file} holds ${wells} wells with ${revisions} revisions, ${files} files and ${papers} issued papers.`,
  );
  if (typed > 0) world.print(`Typed and in no revision yet: ${typed} wells, as they were typed.`);
  for (const { sentence } of remarks) world.print(sentence);
  if (changedFiles > 0)
    world.print(`${changedFiles} files were no longer what was kept, and were left out.`);
  if (unknown > 0) world.print(`Of ${unknown} rows nobody can tell what they are.`);
  world.print('Look the wells through, and compare them with the newest backup.');
}

/** `rescue`: what is left of a damaged archive, in a new one. */
export const rescue: Command = {
  name: 'rescue',
  takes: 'DAMAGED -o NEW.borefolio',
  says: 'Reads what is left of a damaged archive into a new one and says what is lost; 1 where something is',
  options: { output: { type: 'string', short: 'o' } },
  run(given, world) {
    const word = onlyWord(given.words, 'rescue');
    if (!word.ok) return word;
    const output = textOption(given, 'output');
    if (output === undefined)
      return misused('Name the new archive: rescue DAMAGED -o NEW.borefolio.');
    const damaged = path.resolve(world.folder, word.value);
    const rescued = rescueArchive(damaged, path.resolve(world.folder, output), world);
    if (!rescued.ok) return rescued;
    if (given.options['json'] === true) world.give(JSON.stringify(rescued.value, undefined, 2));
    else say(output, rescued.value, world);
    const { remarks, changedFiles, unknown } = rescued.value;
    return ok(remarks.length + changedFiles + unknown === 0 ? 0 : 1);
  },
};
