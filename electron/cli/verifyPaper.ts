import { ok, type Result } from '../../core/base/result.ts';
import { readPaperMark, type PaperMark } from '../seal/readPaperMark.ts';
import { readSeals } from '../seal/readSeals.ts';
import { heldRecord, type HeldRecord } from '../service/heldRecord.ts';
import type { ExitCode, World } from './command.ts';
import { openGiven } from './openGiven.ts';

export interface PaperWish {
  readonly pdf: Uint8Array;
  /** The archive that may hold the record. */
  readonly archive?: string;
  readonly json: boolean;
}

function lookUp(file: string, mark: PaperMark, world: World): Result<HeldRecord> {
  const opened = openGiven(file, world);
  if (!opened.ok) return opened;
  try {
    return heldRecord(opened.value, mark);
  } finally {
    opened.value.close();
  }
}

function sayMark({ wellNumber, revision, recordHash }: PaperMark): string {
  if (wellNumber === undefined && recordHash === undefined)
    return 'The file does not say which well it shows.';
  const named = wellNumber === undefined ? 'A well without a number' : `Well ${wellNumber}`;
  const state = revision === undefined ? 'no revision of an archive' : `revision ${revision}`;
  return `${named}, ${state}. Hash of its record: ${recordHash ?? 'none'}`;
}

function sayHeld(held: HeldRecord): string {
  switch (held.held) {
    case 'same':
      return held.revision === held.newest
        ? `The archive holds this very record as revision ${held.revision}, the newest.`
        : `The archive holds this very record as revision ${held.revision}; by now there is revision ${held.newest}.`;
    case 'other':
      return `The archive has the well, and none of its ${held.newest} revisions is this record.`;
    case 'noWell':
      return 'The archive has no well of this number.';
    case 'unsaid':
      return 'Whether the archive holds the record cannot be told: the file does not say which it shows.';
  }
}

/** Which record a paper shows, who sealed it, whether it is whole, whether an archive holds it. */
export function verifyPaper({ pdf, archive, json }: PaperWish, world: World): Result<ExitCode> {
  const mark = readPaperMark(pdf);
  const found = readSeals(pdf);
  const held = archive === undefined ? undefined : lookUp(archive, mark, world);
  if (held && !held.ok) return held;
  if (json)
    world.give(JSON.stringify({ paper: mark, seals: found, archive: held?.value }, undefined, 2));
  else {
    world.print(sayMark(mark));
    for (const { sentence } of found.seals) world.print(sentence);
    world.print(found.sentence);
    if (held) world.print(sayHeld(held.value));
  }
  const same = held === undefined || held.value.held === 'same';
  return ok(found.whole && same ? 0 : 1);
}
