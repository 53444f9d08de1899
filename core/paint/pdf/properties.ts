import { jsPDF } from 'jspdf';
import { printable } from '../../base/text/printable.ts';
import { onCatalog, setPdfVersion, write } from './inside.ts';
import { pdfMoment } from './objects.ts';
import type { About } from './sheet.ts';

/** Programs, as Info and metadata both name them. */
export const creator = 'Borefolio';
export const producer = `jsPDF ${jsPDF.version}`;

function checkForm(what: string, value: string, form: RegExp): string {
  if (!form.test(value)) throw new Error(`A drawing's ${what} cannot be ${value}`);
  return value;
}

/** A text as the document states it of itself, in Info and in its metadata alike. */
export const stated = (text: string) => printable(text).trim();

/**
 * What the document says of itself. It asks viewers to print at 100 %: the sheet is to scale.
 * Without its id and moment jsPDF would put in chance and the clock.
 */
export function setProperties(doc: jsPDF, about: About): void {
  const { title, author, subject } = about;
  setPdfVersion(doc, '1.7');
  doc.setDocumentProperties({
    title: stated(title),
    author: stated(author),
    subject: stated(subject),
    creator,
  });
  doc.viewerPreferences({ PrintScaling: 'None', DisplayDocTitle: true });
  doc.setFileId(checkForm('paperId', about.paperId, /^[0-9a-f]{32}$/i));
  doc.setCreationDate(pdfMoment(about.madeAt));
  const { recordHash } = about;
  if (recordHash !== undefined) checkForm('recordHash', recordHash, /^[0-9a-f]{64}$/i);
  // jsPDF's own setter knows a closed list of languages and passes over the others in silence.
  const language = checkForm('language', about.language, /^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$/);
  onCatalog(doc, () => write(doc, `/Lang (${language})`));
}
