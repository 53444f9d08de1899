import { paperNamespace, type PaperStatement } from '../../core/paint/pdf/paperNamespace.ts';
import { dictionaryOf, objectAt, readDocument, referenceAt, valueAt } from './pdf/document.ts';

/** What a paper says of the record that it shows. What it does not say is absent. */
export interface PaperMark {
  readonly wellNumber?: string;
  /** From 1. */
  readonly revision?: number;
  /** SHA-256, hexadecimal, as `recordHash` gives it. */
  readonly recordHash?: string;
}

/** The document's metadata (ISO 32000-1, 14.3.2), which is kept uncompressed. */
function metadataOf(pdf: Uint8Array): string {
  const document = readDocument(pdf);
  const catalog = dictionaryOf(document, referenceAt(document, document.trailer.get('Root')));
  const number = referenceAt(document, catalog.get('Metadata'));
  const { end } = objectAt(document, number);
  const length = Number(valueAt(document, dictionaryOf(document, number).get('Length')!));
  const [opening] = /^\s*stream\r?\n/.exec(document.text.slice(end, end + 20)) ?? [''];
  const from = end + opening.length;
  return Buffer.from(pdf.subarray(from, from + length)).toString('utf8');
}

const signs: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&' };

function statement(metadata: string, name: PaperStatement): string | undefined {
  const { prefix } = paperNamespace;
  const found = new RegExp(`<${prefix}:${name}>([^<]*)</${prefix}:${name}>`).exec(metadata);
  return found?.[1]?.replace(/&(lt|gt|amp);/g, (_, sign: string) => signs[sign]!);
}

function markIn(metadata: string): PaperMark {
  const wellNumber = statement(metadata, 'wellNumber');
  const revision = Number(statement(metadata, 'revision'));
  const recordHash = statement(metadata, 'recordHash');
  return {
    ...(wellNumber ? { wellNumber } : {}),
    ...(Number.isInteger(revision) && revision > 0 ? { revision } : {}),
    ...(/^[0-9a-f]{64}$/.test(recordHash ?? '') ? { recordHash: recordHash! } : {}),
  };
}

/** Reads which record a paper shows. Empty for a file that does not say so. Never throws. */
export function readPaperMark(pdf: Uint8Array): PaperMark {
  try {
    return markIn(metadataOf(pdf));
  } catch {
    return {};
  }
}
