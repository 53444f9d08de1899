import { z } from 'zod';
import type { WellRecord } from '../record/schema.ts';
import type { CallName, Takes } from './calls.ts';

/** What each call of one area takes, as schemas. A call without one does not compile. */
export type ArgumentsOf<Area extends string> = {
  readonly [N in Extract<CallName, `${Area}.${string}`>]: z.ZodType<Takes<N>>;
};

/** A well's id in the archive. */
export const wellId = z.string().min(1).max(64);

/** Revisions count from 1. */
export const revision = z.number().int().min(1);

function isObject(value: unknown): value is WellRecord {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/**
 * A record is let in as it is, so that half-typed work and a newer version's keys are kept. What
 * is wrong in it comes back as troubles with their places.
 */
export const record = z.custom<WellRecord>(isObject, 'a record is a JSON object');
