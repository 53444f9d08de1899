import { createHash } from 'node:crypto';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Answer, CallName } from '../../../core/contract/calls.ts';
import {
  inlineHeaders,
  keptFor,
  madeFiles,
  mostKept,
  type MadeFiles,
} from '../../../electron/loopback/madeFiles.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const textOf = (n: number) => `%PDF-1.7 ${n}`;
const hashOf = (n: number) => createHash('sha256').update(textOf(n)).digest('hex');

function keep(files: MadeFiles, n: number, name = 'papers.asBuilt') {
  const value = { fileName: `${n}.pdf`, pdf: Buffer.from(textOf(n)).toString('base64') };
  files.keep(name, { ok: true, value } as Answer<CallName>);
}

const kept = (files: MadeFiles, ...all: number[]) =>
  all.filter((n) => files.get(hashOf(n))?.fileName === `${n}.pdf`);

it('keeps the newest papers, one that was made again among them', () => {
  const files = madeFiles();
  for (let n = 1; n <= mostKept; n += 1) keep(files, n);
  keep(files, 1);
  keep(files, 5);
  expect(kept(files, 1, 2, 3, 4, 5)).toEqual([1, 3, 4, 5]);
});

it('forgets each after a while, counted from when it was made last', () => {
  const files = madeFiles();
  keep(files, 1);
  keep(files, 2);
  vi.advanceTimersByTime(keptFor - 1);
  keep(files, 2);
  expect(kept(files, 1, 2)).toEqual([1, 2]);
  vi.advanceTimersByTime(1);
  expect(kept(files, 1, 2)).toEqual([2]);
  vi.advanceTimersByTime(keptFor);
  expect(kept(files, 1, 2)).toEqual([]);
});

it('keeps nothing of other calls and nothing of a refusal', () => {
  const files = madeFiles();
  keep(files, 1, 'issues.open');
  const error = { code: 'noSuchWell', sentence: 'There is no such well.' };
  files.keep('papers.asBuilt', { ok: false, error });
  expect(kept(files, 1)).toEqual([]);
});

it('says any file name in letters that a header may hold (RFC 8187, 3.2.1)', () => {
  const pdf = new Uint8Array();
  const named = (fileName: string) => inlineHeaders({ fileName, pdf })['Content-Disposition'];
  expect(named('Forage é (1)\r\n".pdf')).toBe(
    "inline; filename*=UTF-8''Forage%20%C3%A9%20%281%29%0D%0A%22.pdf",
  );
  expect(named('\ud800*')).toBe("inline; filename*=UTF-8''%EF%BF%BD%2A");
});
