import type { PriceKey } from '../costOf.ts';
import type { GroupId, ownMissingWhats, QuantityId, QuantityUnit } from '../quantity.ts';

/** A unit beside one, and beside any other number. */
export interface UnitWords {
  readonly one: string;
  readonly many: string;
}

/** All words of one language. A language that lacks one does not compile. */
export interface QuantityWords {
  readonly groups: Readonly<Record<GroupId, string>>;
  readonly names: Readonly<Record<QuantityId, string>>;
  readonly units: Readonly<Record<QuantityUnit, UnitWords>>;
  readonly missing: Readonly<Record<(typeof ownMissingWhats)[number], string>>;
  readonly prices: Readonly<Record<PriceKey, string>>;
  /** Between wall and casing, where nobody wrote what stands there. */
  readonly unrecorded: string;
  /** Whether a number takes the singular: in French 0 and 1.5 do, elsewhere 1 alone. */
  readonly isSingular: (value: number) => boolean;
}
