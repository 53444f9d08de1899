import type { GuidelineFile } from '../water/guidelines/guidelineSet.ts';

/** A set of guideline values of the user as the archive keeps it. */
export interface OwnGuidelines {
  readonly file: GuidelineFile;
  /** ISO 8601. */
  readonly changedAt: string;
}

/** One that the archive keeps but this version cannot read, as from a newer one. */
export interface UnreadGuidelines {
  readonly id: string;
  readonly sentence: string;
}

export interface GuidelineCalls {
  'guidelines.list': {
    takes: Record<string, never>;
    gives: { sets: readonly OwnGuidelines[]; unread: readonly UnreadGuidelines[] };
  };
  /** Keeps a set in place of the one with its id. Refused with every fault that it has. */
  'guidelines.put': { takes: { set: object }; gives: OwnGuidelines };
  /** Refused while another one is based on it. Wells that name it get the general one. */
  'guidelines.remove': { takes: { id: string }; gives: null };
}
