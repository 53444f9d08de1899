import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkConsistency, troublesOf } from '../../../core/record/consistency.ts';
import { readRecord } from '../../../core/record/read.ts';
import { wellRecord } from '../../../core/record/schema.ts';
import { anyRecord } from './anyRecord.ts';

/** Every way into a JSON value. */
function ways(value: unknown): (string | number)[][] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => {
    const step = Array.isArray(value) ? Number(key) : key;
    return [[step], ...ways(part).map((way) => [step, ...way])];
  });
}

/** The document with one value put in another's place. */
function spoilt(document: unknown, way: readonly (string | number)[], value: unknown): unknown {
  const copy = JSON.parse(JSON.stringify(document)) as Record<string | number, unknown>;
  let holder = copy;
  for (const step of way.slice(0, -1)) holder = holder[step] as typeof copy;
  holder[way.at(-1)!] = value;
  return copy;
}

const spoiltRecord = fc
  .tuple(anyRecord, fc.nat(), fc.jsonValue({ maxDepth: 1 }))
  .map(([record, pick, value]) => {
    const all = ways(record);
    return spoilt(record, all[pick % all.length]!, value);
  });

describe('a record', () => {
  it('comes out of reading as it went in, unknown keys and all', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const text = JSON.stringify(record);
        const reading = readRecord(JSON.parse(text));
        expect(reading.kind).toBe('ok');
        expect(reading.kind === 'ok' && JSON.stringify(reading.record)).toBe(text);
      }),
      { seed: 20, numRuns: 100 },
    );
  });

  it('is valid after reading, whatever one field was spoilt with', () => {
    fc.assert(
      fc.property(spoiltRecord, (document) => {
        const reading = readRecord(document);
        if (reading.kind !== 'ok') return;
        expect(wellRecord.safeParse(reading.record).error).toBeUndefined();
        expect(JSON.stringify(reading.document)).toBe(JSON.stringify(document));
        for (const { path, sentence } of troublesOf(reading))
          expect(sentence.startsWith(`${path}: `)).toBe(true);
      }),
      { seed: 21, numRuns: 200 },
    );
  });

  it('can be checked for contradictions, whatever it holds', () => {
    fc.assert(
      fc.property(anyRecord, (record) => {
        const reading = readRecord(record);
        if (reading.kind === 'ok') checkConsistency(reading.record);
      }),
      { seed: 22, numRuns: 50 },
    );
  });
});

describe('readRecord', () => {
  it('throws at nothing', () => {
    fc.assert(
      fc.property(fc.anything({ withBigInt: true, withDate: true, withMap: true }), (anything) => {
        expect(['ok', 'tooNew', 'failed']).toContain(readRecord(anything).kind);
      }),
      { seed: 23, numRuns: 500 },
    );
  });
});
