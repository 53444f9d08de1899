import type { WellRecord } from '../../record/schema.ts';
import type { Drawing } from '../items.ts';

/** What a paper is told of its making and its record. */
export interface Making {
  /** ISO 8601 moment at which the paper is made. */
  readonly madeAt: string;
  /** 32 hexadecimal digits. */
  readonly paperId: string;
  /** Revision of the record in the archive, from 1; absent for a loose file. */
  readonly revision?: number;
  /** SHA-256 of the record, 64 hexadecimal digits; absent where nobody reckoned it. */
  readonly recordHash?: string;
}

type Mark = Pick<
  Drawing,
  'title' | 'author' | 'madeAt' | 'paperId' | 'wellNumber' | 'revision' | 'recordHash'
>;

/** Which paper this is, of which well and which state of it, for readers of the file. */
export function paperMark({ identity, site }: WellRecord, making: Making): Mark {
  const { madeAt, paperId, revision, recordHash } = making;
  const { number, name, supervisor } = identity ?? {};
  return {
    title: [number, name ?? site?.village].filter(Boolean).join(' – '),
    author: supervisor ?? '',
    madeAt,
    paperId,
    ...(number !== undefined && { wellNumber: number }),
    ...(revision !== undefined && { revision }),
    ...(recordHash !== undefined && { recordHash }),
  };
}
