import { hash } from 'node:crypto';

/** What a revision's hash covers, besides the hash before it. */
export interface Link {
  readonly wellId: string;
  readonly number: number;
  readonly changedAt: string;
  /** The record's JSON as it stands in the file. */
  readonly record: string;
  /** Who made it, and why; empty where nobody said. */
  readonly author: string;
  readonly reason: string;
}

/** Stands for the revision before the first. */
export const chainStart = '0'.repeat(64);

/**
 * SHA-256, hexadecimal, over the previous revision's hash and this one, so that no old revision
 * can change without every later hash telling. Written as JSON: parts cannot run together. One of
 * which nobody said who and why has the hash that it had before that was kept.
 */
export function linkHash(previous: string, link: Link): string {
  const { wellId, number, changedAt, record, author, reason } = link;
  const said = author === '' && reason === '' ? [] : [author, reason];
  return hash('sha256', JSON.stringify([previous, wellId, number, changedAt, record, ...said]));
}
