import type { PracticeFile } from '../practice/practice.ts';

/** A practice of the user as the archive keeps it. */
export interface OwnPractice {
  readonly file: PracticeFile;
  /** ISO 8601. */
  readonly changedAt: string;
}

/** One that the archive keeps but this version cannot read, as from a newer one. */
export interface UnreadPractice {
  readonly id: string;
  readonly sentence: string;
}

export interface PracticeCalls {
  'practices.list': {
    takes: Record<string, never>;
    gives: { practices: readonly OwnPractice[]; unread: readonly UnreadPractice[] };
  };
  /** Keeps a practice in place of the one with its id. Refused with every fault that it has. */
  'practices.put': { takes: { practice: object }; gives: OwnPractice };
  /** Refused while another one is based on it. Wells that name it get the general one. */
  'practices.remove': { takes: { id: string }; gives: null };
}
