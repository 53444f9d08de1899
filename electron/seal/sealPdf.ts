import { createHash } from 'node:crypto';
import { ok, refused, type Result } from '../../core/base/result.ts';
import { signStatement, writeSignedData } from './cms/signedData.ts';
import { inTime } from './identity/signerOf.ts';
import { drawLines } from './lettering/drawLines.ts';
import { isFit } from './pdf/box.ts';
import { composeSeal, type ComposedSeal, type SealText } from './pdf/composeSeal.ts';
import { readDocument, type PdfDocument } from './pdf/document.ts';
import { Unparsed } from './pdf/scan.ts';
import { readSeals } from './readSeals.ts';
import type { SealDetails, SealPdf, Signer } from './seal.ts';

const notSealable = () =>
  refused(
    'notSealable',
    'This file is not laid out in a way that a seal can be added to. Seal a PDF that Borefolio has written, as it was written.',
  );

const badBox = () =>
  refused(
    'badBox',
    'The seal’s box does not fit: it has to lie on a page of the file and be no larger than 120 mm by 60 mm.',
  );

/** Bytes that a signature may take: its certificates, and what else stands in it, generously. */
function roomFor({ certificate, issuers, key }: Signer): number {
  const certificates = [certificate, ...issuers].reduce((sum, { length }) => sum + length + 64, 0);
  const bits = key.asymmetricKeyDetails?.modulusLength ?? 1200;
  return 512 * Math.ceil((certificates + bits / 8 + 1024) / 512);
}

function textOf(signer: Signer, { role, place, at, shown }: SealDetails): SealText {
  return {
    name: signer.name,
    role,
    // An empty text would be read back as none.
    ...(place ? { place } : {}),
    at,
    ...(shown ? { shown: { box: shown.box, drawing: drawLines(shown) } } : {}),
    room: roomFor(signer),
  };
}

/** Puts the signature into its place. The digest is over all the rest. */
function signed(document: PdfDocument, { update, gap }: ComposedSeal, signer: Signer): Uint8Array {
  const bytes = Buffer.concat([document.bytes, Buffer.from(update, 'latin1')]);
  const hash = createHash('sha256').update(bytes.subarray(0, gap.start));
  const digest = new Uint8Array(hash.update(bytes.subarray(gap.end)).digest());
  const statement = { ...signer, digest };
  const signature = writeSignedData(statement, signStatement(statement, signer.key));
  const place = bytes.subarray(gap.start + 1, gap.end - 1);
  if (2 * signature.length > place.length) throw new Error('A signature needs more room');
  place.write(Buffer.from(signature).toString('hex'), 'latin1');
  return new Uint8Array(bytes);
}

function sealed(pdf: Uint8Array, signer: Signer, details: SealDetails): Result<Uint8Array> {
  const document = readDocument(pdf);
  if (details.shown && !isFit(document, details.shown.box)) return badBox();
  return ok(signed(document, composeSeal(document, textOf(signer, details)), signer));
}

/** Adds a seal (PAdES baseline B) behind a PDF. */
export const sealPdf: SealPdf = (pdf, signer, details) => {
  const valid = inTime(signer, details.at);
  if (!valid.ok) return valid;
  const before = readSeals(pdf);
  if (before.state !== 'none' && !before.whole)
    return refused(
      'brokenBefore',
      `Nothing was sealed: the seals that the file has are no longer whole. ${before.sentence}`,
    );
  try {
    return sealed(pdf, signer, details);
  } catch (error) {
    if (error instanceof Unparsed) return notSealable();
    throw error;
  }
};
