import { formatShort } from '../../../base/numbers.ts';
import type { WellRecord } from '../../../record/schema.ts';

/** What of a paper its code tells besides what stands in the record. */
export interface CodeFacts {
  /** Revision of the record in the archive, from 1. */
  readonly revision?: number;
  /** SHA-256 of the record, hexadecimal. */
  readonly recordHash?: string;
}

/** RFC 5870, 3.3: what the value of a parameter may hold besides letters and figures. */
const plain = /[A-Za-z0-9\-_.!~*'()[\]:&+$]/;

/** More of a number than this is not told: the code would get too fine to be read. */
const mostBytes = 32;

/** A value as a parameter may hold it, its other letters as per cent signs of their UTF-8. */
function parameterValue(text: string): string {
  let value = '';
  // Half a pair of surrogates has no UTF-8.
  for (const letter of text.normalize('NFC').replace(/\p{Cs}/gu, '')) {
    const written = plain.test(letter) ? letter : encodeURIComponent(letter);
    if (value.length + written.length > mostBytes) break;
    value += written;
  }
  return value;
}

const degrees = (value: number) => formatShort(value, 6, '.');

/** `geo:` with its uncertainty in metres after RFC 5870; undefined without a whole position. */
function placeOf({ site }: WellRecord): string[] {
  const { latitude, longitude, positionAccuracy } = site ?? {};
  if (latitude === undefined || longitude === undefined) return [];
  const uncertainty =
    positionAccuracy === undefined ? [] : [`u=${formatShort(positionAccuracy, 1, '.')}`];
  return [`geo:${degrees(latitude)},${degrees(longitude)}`, ...uncertainty];
}

/**
 * What the code on a sheet tells: a `geo:` address of the well (RFC 5870, WGS 84) with its number,
 * revision and the hash of its record as parameters; the parameters alone where no position is
 * known. Undefined where there is nothing to tell a well by.
 */
export function wellCodeText(record: WellRecord, facts: CodeFacts): string | undefined {
  const number = parameterValue(record.identity?.number?.trim() ?? '');
  const place = placeOf(record);
  const { revision, recordHash } = facts;
  if (place.length === 0 && number === '' && recordHash === undefined) return undefined;
  const told = [
    ...place,
    ...(number === '' ? [] : [`well=${number}`]),
    ...(revision === undefined ? [] : [`rev=${revision}`]),
    ...(recordHash === undefined ? [] : [`sha256=${recordHash}`]),
  ];
  return told.join(';');
}
