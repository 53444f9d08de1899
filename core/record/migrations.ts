import type { Result } from '../base/result.ts';
import type { Migration, RecordDocument } from './migrations/migration.ts';
import { currentVersion } from './schema.ts';
import { stringsAndLevels } from './migrations/stringsAndLevels.ts';

/** All steps, oldest first. */
export const migrations: readonly Migration[] = checked([stringsAndLevels], currentVersion);

/** Gives the steps back when they rise by one from 1 to `latest`; anything else is a defect. */
export function checked(steps: readonly Migration[], latest: number): readonly Migration[] {
  steps.forEach(({ version, name }, at) => {
    if (version !== at + 1)
      throw new Error(`Migration ${name} makes version ${version} where ${at + 1} is next`);
  });
  if (steps.length !== latest)
    throw new Error(`Migrations end at version ${steps.length}; the schema is at ${latest}`);
  return steps;
}

/** A step that could not be done. */
export interface FailedStep {
  readonly version: number;
  readonly name: string;
  readonly reason: string;
}

function step(written: RecordDocument, { version, name, change }: Migration) {
  try {
    return { ok: true, value: { ...change(written), schemaVersion: version } } as const;
  } catch (fault) {
    const reason = fault instanceof Error ? fault.message : String(fault);
    return { ok: false, error: { version, name, reason } } as const;
  }
}

/** Brings a document from its version to the latest, or says which step failed and why. */
export function migrate(written: RecordDocument, from: number): Result<RecordDocument, FailedStep> {
  let reached = written;
  for (const migration of migrations.slice(from)) {
    const outcome = step(reached, migration);
    if (!outcome.ok) return outcome;
    reached = outcome.value;
  }
  return { ok: true, value: reached };
}
