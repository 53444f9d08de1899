import { backup } from './backup.ts';
import { binder } from './binder.ts';
import { check } from './check.ts';
import type { Command } from './command.ts';
import { demoArchive } from './demoArchive.ts';
import { exportCommand } from './exportWells.ts';
import { find } from './find.ts';
import { identityMake } from './identityMake.ts';
import { importFiles } from './import.ts';
import { importTables } from './importTables.ts';
import { layOut } from './layOut.ts';
import { merge } from './merge.ts';
import { model } from './model.ts';
import { paperAsBuilt } from './paperAsBuilt.ts';
import { paperCheckPage } from './paperCheckPage.ts';
import { paperCommittee } from './paperCommittee.ts';
import { paperLayingOut } from './paperLayingOut.ts';
import { quantities } from './quantities.ts';
import { rescue } from './rescue.ts';
import { serve } from './serve.ts';
import { sign } from './sign.ts';
import { verify } from './verify.ts';

/** Every command, in the order of the help. */
export const commands: readonly Command[] = [
  check,
  find,
  model,
  quantities,
  layOut,
  paperAsBuilt,
  paperLayingOut,
  paperCommittee,
  paperCheckPage,
  binder,
  identityMake,
  sign,
  verify,
  backup,
  rescue,
  merge,
  serve,
  demoArchive,
  importFiles,
  importTables,
  exportCommand,
];
