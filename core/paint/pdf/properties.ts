import type { jsPDF } from 'jspdf';
import type { Drawing } from '../../drawing/items.ts';
import { onCatalog, setPdfVersion, write } from './inside.ts';

/** PDF's way of writing a moment, always in universal time so that no machine's zone shows. */
function pdfMoment(madeAt: string): string {
  const moment = new Date(madeAt);
  if (Number.isNaN(moment.getTime())) throw new Error(`${madeAt} is no ISO 8601 moment`);
  return `D:${moment.toISOString().slice(0, 19).replace(/\D/g, '')}+00'00'`;
}

function checkForm(what: string, value: string, form: RegExp): string {
  if (!form.test(value)) throw new Error(`A drawing's ${what} cannot be ${value}`);
  return value;
}

/**
 * What the document says of itself. It asks viewers to print at 100 %: the sheet is to scale.
 * Without its id and moment jsPDF would put in chance and the clock.
 */
export function setProperties(doc: jsPDF, drawing: Drawing): void {
  const { title, author, subject } = drawing;
  setPdfVersion(doc, '1.7');
  doc.setDocumentProperties({ title, author, subject, creator: 'Borefolio' });
  doc.viewerPreferences({ PrintScaling: 'None', DisplayDocTitle: true });
  doc.setFileId(checkForm('paperId', drawing.paperId, /^[0-9a-f]{32}$/i));
  doc.setCreationDate(pdfMoment(drawing.madeAt));
  // jsPDF's own setter knows a closed list of languages and passes over the others in silence.
  const language = checkForm('language', drawing.language, /^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$/);
  onCatalog(doc, () => write(doc, `/Lang (${language})`));
}
