import { z } from 'zod';
import { languages } from '../base/language.ts';
import type { Change } from '../base/patch.ts';
import { moveKinds, type Move } from '../record/desk.ts';
import { record, revision, wellId, type ArgumentsOf } from './areas.ts';

/** Edits count from 1; 0 stands for a well that was never edited. */
const edit = z.number().int().min(0);

const index = z.number().int().min(0);

const inRecord = z.strictObject({
  at: z.tuple([z.literal('record')], z.union([z.string(), index])),
  to: z.json().exactOptional(),
});

const inTyped = z.strictObject({
  at: z.tuple([z.literal('typed'), z.string()]),
  to: z.string().exactOptional(),
});

/** A place on the desk, never the desk as a whole. */
const change: z.ZodType<Change> = z.union([inRecord, inTyped]);

const move: z.ZodType<Move> = z.strictObject({
  kind: z.enum(moveKinds),
  patch: z.array(change),
});

/** Why a revision is made, as a person wrote it. */
const reason = z.string().max(500);

export const wellsArguments = {
  'wells.list': z.strictObject({ search: z.string().max(200).exactOptional() }),
  'wells.open': z.strictObject({ id: wellId }),
  'wells.openRevision': z.strictObject({ id: wellId, revision }),
  'wells.desk': z.strictObject({ id: wellId }),
  'wells.edit': z.strictObject({ id: wellId, upon: edit, moves: z.array(move).min(1) }),
  'wells.save': z.strictObject({ id: wellId, upon: edit, reason: reason.exactOptional() }),
  'wells.compare': z.strictObject({
    id: wellId,
    before: revision,
    now: revision,
    language: z.enum(languages),
  }),
  'wells.revert': z.strictObject({ id: wellId, revision, reason: reason.exactOptional() }),
  'wells.leave': z.strictObject({ id: wellId, upon: edit }),
  'wells.create': z.strictObject({ record }),
  'wells.revisions': z.strictObject({ id: wellId }),
} satisfies ArgumentsOf<'wells'>;
