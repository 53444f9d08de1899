import type { Rule } from '../rule.ts';
import { aquifersJoined } from './aquifersJoined.ts';
import { aquifersScreened } from './aquifersScreened.ts';
import { clayThin } from './clayThin.ts';
import { gapNarrow } from './gapNarrow.ts';
import { openAbove } from './openAbove.ts';
import { packBare } from './packBare.ts';
import { packLow } from './packLow.ts';
import { pouredLittle, pouredMuch } from './poured.ts';
import { sealNone } from './sealNone.ts';
import { sealShort } from './sealShort.ts';

/** Rules on what stands between the wall of the hole and the casing. */
export const coverRules: readonly Rule[] = [
  packBare,
  packLow,
  clayThin,
  sealNone,
  sealShort,
  openAbove,
  aquifersJoined,
  aquifersScreened,
  gapNarrow,
  pouredLittle,
  pouredMuch,
];
