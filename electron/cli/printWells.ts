import { ok, type Result } from '../../core/base/result.ts';
import type { Sheet } from '../service/sheet.ts';
import type { ExitCode, World } from './command.ts';
import { tellErrors } from './recordErrors.ts';
import { uniqueNames } from '../files/uniqueNames.ts';
import type { WellToPrint } from './wellsToPrint.ts';

/** How one paper is made of each of several wells. */
export interface Printing {
  /** Name of the file in a folder. */
  readonly nameOf: (well: WellToPrint) => string;
  readonly draw: (well: WellToPrint) => Result<Sheet>;
  /** Takes each sheet in turn, with a name that no other has. */
  readonly put: (sheet: Sheet, name: string) => Promise<Result<void>>;
}

/** The revision that a paper says it shows; none for a record in a file of its own. */
export function revisionOf({ revision }: WellToPrint): { readonly revision?: number } {
  return revision === undefined ? {} : { revision };
}

/** Makes a paper of each well, one after the other; gives 1 where a record has errors. */
export async function printWells(
  wells: readonly WellToPrint[],
  { nameOf, draw, put }: Printing,
  world: World,
): Promise<Result<ExitCode>> {
  const names = uniqueNames(wells.map(nameOf));
  let erring = false;
  for (const [at, well] of wells.entries()) {
    const sheet = draw(well);
    if (!sheet.ok) return sheet;
    const taken = await put(sheet.value, names[at]!);
    if (!taken.ok) return taken;
    erring = tellErrors(well.calledBy, well.troubles, sheet.value.findings, world) || erring;
  }
  return ok(erring ? 1 : 0);
}
