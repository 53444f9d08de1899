import type { jsPDF } from 'jspdf';
import type { PathItem, Segment, Stroke } from '../../drawing/items.ts';

/** Lays an outline down, to be filled, stroked or clipped by what follows. */
export function layOutline(doc: jsPDF, segments: readonly Segment[]): void {
  for (const segment of segments)
    switch (segment[0]) {
      case 'M':
        doc.moveTo(segment[1], segment[2]);
        break;
      case 'L':
        doc.lineTo(segment[1], segment[2]);
        break;
      case 'C':
        doc.curveTo(segment[1], segment[2], segment[3], segment[4], segment[5], segment[6]);
        break;
      case 'Z':
        doc.close();
        break;
    }
}

/** Sets all of the pen, so that nothing of an earlier stroke shows. */
function setStroke(doc: jsPDF, { ink, width, dash, cap, join }: Stroke): void {
  doc.setDrawColor(ink);
  doc.setLineWidth(width);
  doc.setLineDashPattern([...(dash ?? [])], 0);
  doc.setLineCap(cap ?? 'butt');
  doc.setLineJoin(join ?? 'miter');
}

export function paintPath(doc: jsPDF, { segments, stroke, fill }: PathItem): void {
  if (!segments.length || (!stroke && !fill)) return;
  if (stroke) setStroke(doc, stroke);
  if (fill) doc.setFillColor(fill);
  layOutline(doc, segments);
  if (stroke && fill) doc.fillStroke();
  else if (fill) doc.fill();
  else doc.stroke();
}
