import { wells } from './0010-wells.ts';
import { search } from './0020-search.ts';
import { working } from './0030-working.ts';
import { lists } from './0040-lists.ts';
import { attachments } from './0050-attachments.ts';
import { practices } from './0060-practices.ts';
import { guidelines } from './0070-guidelines.ts';
import { issues } from './0080-issues.ts';
import { reasons } from './0100-reasons.ts';
import { numbers } from './0110-numbers.ts';
import { mappings } from './0120-mappings.ts';
import { logWords } from './0140-log-words.ts';
import { paperHashes } from './0150-paper-hashes.ts';
import { longLists } from './0160-long-lists.ts';
import { binders } from './0170-binders.ts';
import { whollyUnknown } from './0180-wholly-unknown.ts';
import { templates } from './0190-templates.ts';
import { plainWords } from './0200-plain-words.ts';
import { inOrder } from './step.ts';

/** Every step there is, first to last. */
export const steps = inOrder([
  wells,
  search,
  working,
  lists,
  attachments,
  practices,
  guidelines,
  issues,
  reasons,
  numbers,
  mappings,
  logWords,
  paperHashes,
  longLists,
  binders,
  whollyUnknown,
  templates,
  plainWords,
]);

/** Version of an archive that has taken every step. */
export const newestVersion = steps.at(-1)!.number;
