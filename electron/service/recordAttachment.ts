import type { Language } from '../../core/base/language.ts';
import type { Attachment } from '../../core/paint/pdf/attachment.ts';
import type { WellRecord } from '../../core/record/schema.ts';
import { recordFileName } from './paperNames.ts';

/** What a reader of the PDF is told of the file. */
const says: Readonly<Record<Language, string>> = {
  en: 'The record of the well from which this paper was made',
  fr: 'Le dossier de l’ouvrage à partir duquel ce document a été établi',
  pt: 'O registo do furo a partir do qual este documento foi feito',
};

/** What the paper was made with, as far as the file within it tells of it. */
interface MadeWith {
  readonly language?: Language;
  readonly revision?: number;
  /** ISO 8601. */
  readonly madeAt: string;
  readonly attachRecord?: boolean;
}

/**
 * The record as a file within its paper, where that was asked for. SHA-256 of its bytes is the
 * hash that the paper names.
 */
export function recordAttachment(record: WellRecord, made: MadeWith): Attachment | undefined {
  const { language = 'en', revision, madeAt, attachRecord = false } = made;
  if (!attachRecord) return undefined;
  return {
    fileName: recordFileName(record, revision),
    bytes: Buffer.from(JSON.stringify(record)),
    mediaType: 'application/json',
    says: says[language],
    changedAt: madeAt,
  };
}
