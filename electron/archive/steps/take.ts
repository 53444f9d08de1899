import type { WriteHandle } from '../handles.ts';
import type { Step } from './step.ts';

/** Marks the file as ours in its header: `Bore` in ASCII. */
export const applicationId = 0x426f7265;

/** Takes the steps that the file has not taken, each in a transaction with its version. */
export function takeSteps(db: WriteHandle, steps: readonly Step[]): void {
  const version = db.pragma('user_version', { simple: true }) as number;
  for (const { number, sql } of steps.filter((step) => step.number > version))
    db.transaction(() => {
      db.exec(sql);
      db.pragma(`application_id = ${applicationId}`);
      db.pragma(`user_version = ${number}`);
    }).immediate();
}
