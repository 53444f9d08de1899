import { filled } from '../../../base/text/filled.ts';
import type { CommitteeKit } from './committeeKit.ts';

function partsOfDay({ own }: CommitteeKit, at: string): Record<string, string> | undefined {
  const [, year, number, day] = /^(\d{4})-(\d\d)-(\d\d)/.exec(at) ?? [];
  const month = own.months[Number(number) - 1];
  if (year === undefined || number === undefined || day === undefined || month === undefined)
    return undefined;
  return { year, number, month, short: month.slice(0, 3), day: String(Number(day)) };
}

/** A day in words, as in 3 May 2026; as it was written where it is no whole day. */
export function dayInWords(kit: CommitteeKit, at: string): string {
  const parts = partsOfDay(kit, at);
  if (!parts) return at;
  return filled(parts['day'] === '1' ? kit.own.firstDay : kit.own.day, parts);
}

/** The same for a narrow place. */
export function dayInShort(kit: CommitteeKit, at: string): string {
  const parts = partsOfDay(kit, at);
  return parts ? filled(kit.own.shortDay, parts) : at;
}
