import PdfDocument from 'pdfkit';
import type { Item, PathItem, RegionItem, Segment, TextItem } from '../../../core/drawing/items.ts';
import type { FaceId } from '../../../core/base/text/metrics.ts';
import type { LaidPaper } from '../../../electron/binder/workFolder.ts';

const k = 72 / 25.4;
type Doc = InstanceType<typeof PdfDocument>;

function outline(doc: Doc, segments: readonly Segment[]): void {
  for (const [kind, ...at] of segments) {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = at.map((mm) => mm * k);
    if (kind === 'M') doc.moveTo(a, b);
    else if (kind === 'L') doc.lineTo(a, b);
    else if (kind === 'C') doc.bezierCurveTo(a, b, c, d, e, f);
    else doc.closePath();
  }
}

function path(doc: Doc, { segments, stroke, fill }: PathItem): void {
  if (!stroke && !fill) return;
  if (stroke) doc.lineWidth(stroke.width * k);
  const dash = stroke?.dash?.map((mm) => mm * k) ?? [];
  if (dash.length > 0) doc.dash(dash[0]!, { space: dash[1] ?? dash[0]! });
  outline(doc, segments);
  if (stroke && fill) doc.fillAndStroke(fill, stroke.ink);
  else if (fill) doc.fill(fill);
  else if (stroke) doc.stroke(stroke.ink);
  if (dash.length > 0) doc.undash();
}

/** A grey field stands for the hatch: less work than a pattern. */
function region(doc: Doc, { segments }: RegionItem): void {
  outline(doc, segments);
  doc.fill('#d0d0d0');
}

function text(doc: Doc, { x, y, text: says, face, em, ink, turn }: TextItem): void {
  doc.save();
  if (turn) doc.rotate(turn, { origin: [x * k, y * k] });
  doc
    .font(face)
    .fontSize(em * k)
    .fillColor(ink);
  doc.text(says, x * k, y * k, { lineBreak: false, baseline: 'alphabetic' });
  doc.restore();
}

function paint(doc: Doc, item: Item): void {
  if (item.kind === 'path') path(doc, item);
  else if (item.kind === 'region') region(doc, item);
  else if (item.kind === 'text') text(doc, item);
  else if (item.kind === 'group') {
    doc.save();
    if (item.clip) {
      const { x, y, width, height } = item.clip;
      doc.rect(x * k, y * k, width * k, height * k).clip();
    }
    item.items.forEach((one) => paint(doc, one));
    doc.restore();
  }
}

/** Bytes of the papers' pages made by pdfkit, from the same items; pictures and links left out. */
export async function withPdfkit(
  papers: readonly LaidPaper[],
  fontFiles: Readonly<Record<FaceId, Uint8Array>>,
): Promise<number> {
  const doc = new PdfDocument({ autoFirstPage: false });
  let bytes = 0;
  doc.on('data', (chunk: Buffer) => (bytes += chunk.length));
  const ended = new Promise((resolve) => doc.on('end', resolve));
  for (const [face, file] of Object.entries(fontFiles)) doc.registerFont(face, Buffer.from(file));
  for (const { width, height, items } of papers.flatMap(({ pages }) => pages)) {
    doc.addPage({ size: [width * k, height * k], margin: 0 });
    items.forEach((item) => paint(doc, item));
  }
  doc.end();
  await ended;
  return bytes;
}
