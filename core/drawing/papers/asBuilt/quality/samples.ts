import type { PaperMm } from '../../../../base/units.ts';
import type { WellRecord } from '../../../../record/schema.ts';
import { momentFigure, plainFigure } from '../../../figures.ts';
import type { Piece } from '../../../parts/flow/part.ts';
import { gapPiece, textPieces, titlePiece } from '../../../parts/flow/pieces.ts';
import { tablePieces } from '../../../parts/flow/table.ts';
import type { QualityKit } from './figures.ts';

const moment = (at: string | undefined) => (at === undefined ? '–' : momentFigure(at));

/** Who took each sample, where and when, and who analysed it. */
export function samplePieces(
  kit: QualityKit,
  { quality = [] }: WellRecord,
  width: PaperMm,
): Piece[] {
  const { samples } = kit.own;
  const columns = [
    { title: samples.number, width: 8 },
    { title: samples.taken, width: 26 },
    { title: samples.by, width: 26 },
    { title: samples.place, width: 24 },
    { title: samples.laboratory, width: 32 },
    { title: samples.received, width: 26 },
    { title: samples.remark, width: width - 142 },
  ];
  const rows = quality.map((sample, at) => ({
    cells: [
      String(at + 1),
      moment(sample.takenAt),
      sample.takenBy ?? '–',
      sample.place ?? '–',
      sample.laboratory ?? '–',
      moment(sample.receivedAt),
      sample.remark ?? '',
    ],
    source: `quality[${at}]`,
  }));
  return [titlePiece(kit, samples.title, width), ...tablePieces(kit, columns, rows), gapPiece(2.4)];
}

/** Every disinfection of the record. */
export function disinfectionPieces(
  kit: QualityKit,
  { disinfection = [] }: WellRecord,
  width: PaperMm,
): Piece[] {
  const words = kit.own.disinfection;
  const figure = (value: number | undefined) =>
    value === undefined ? '–' : plainFigure(kit, value, 2);
  const columns = [
    { title: words.day, width: 23 },
    { title: words.product, width: 26 },
    { title: words.strength, width: 16 },
    { title: words.mass, width: 15 },
    { title: words.dose, width: 15 },
    { title: words.contact, width: 17 },
    { title: words.pumpedOff, width: 23 },
    { title: words.residual, width: 16 },
    { title: words.remark, width: width - 151 },
  ];
  const rows = disinfection.map((dose, at) => ({
    cells: [
      moment(dose.at),
      dose.product ?? '–',
      figure(dose.strength),
      figure(dose.productMass),
      figure(dose.dose),
      figure(dose.contactHours),
      moment(dose.pumpedOffAt),
      figure(dose.residual),
      dose.remark ?? '',
    ],
    source: `disinfection[${at}]`,
  }));
  const body =
    rows.length === 0 ? textPieces(kit, words.none, width) : tablePieces(kit, columns, rows);
  return [titlePiece(kit, words.title, width), ...body, gapPiece(2.4)];
}
