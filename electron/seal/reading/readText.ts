import type { SealText } from '../pdf/composeSeal.ts';
import type { Span } from '../pdf/scan.ts';
import { readMoment, readString } from '../pdf/strings.ts';

/** What a signature's dictionary says in words; what it does not say, or not legibly, is absent. */
export type SignatureText = Partial<Pick<SealText, 'name' | 'role' | 'place' | 'at'>>;

export function readSignatureText(text: string, entries: ReadonlyMap<string, Span>): SignatureText {
  const read = <K extends string>(
    key: string,
    as: K,
    reading: (value: string) => string | undefined = readString,
  ): Partial<Record<K, string>> => {
    const span = entries.get(key);
    try {
      const value = span && reading(text.slice(span.start, span.end));
      return value ? ({ [as]: value } as Record<K, string>) : {};
    } catch {
      return {};
    }
  };
  return {
    ...read('Name', 'name'),
    ...read('Reason', 'role'),
    ...read('Location', 'place'),
    ...read('M', 'at', readMoment),
  };
}
