import { sayUnit } from '../../../../base/sayUnit.ts';
import type { PaperMm } from '../../../../base/units.ts';
import type { Estimate, Interval, MethodResult } from '../../../../hydraulics/results.ts';
import { sayBasis, sayCheck, sayFigure } from '../../../../hydraulics/sayHydraulics.ts';
import type { RecordPath } from '../../../../base/recordPath.ts';
import { bound } from '../../../letters.ts';
import type { Piece } from '../../../parts/flow/part.ts';
import { gapPiece, textPieces, titlePiece } from '../../../parts/flow/pieces.ts';
import { tablePieces, type FlowRow } from '../../../parts/flow/table.ts';
import type { TestKit } from './testKit.ts';

export function figureWithUnit(kit: TestKit, value: number, unit: string): string {
  return sayFigure(value, kit.language) + (unit === '1' ? '' : bound + sayUnit(unit, kit.language));
}

function intervalWords(kit: TestKit, interval: Interval | undefined): string {
  if (!interval) return '–';
  const { lowest, highest } = interval;
  const low = sayFigure(lowest, kit.language);
  if (highest === undefined) return `≥${bound}${low}`;
  const high = sayFigure(highest, kit.language);
  return low === high ? low : `${low}${bound}– ${high}`;
}

function estimateRow(kit: TestKit, { id, value, unit, interval }: Estimate): FlowRow {
  return {
    cells: [
      kit.analysis.quantities[id],
      figureWithUnit(kit, value, unit),
      intervalWords(kit, interval),
    ],
  };
}

/** Values with their intervals; `what` stands above the quantities. */
export function estimateTable(
  kit: TestKit,
  what: string,
  estimates: readonly Estimate[],
  width: PaperMm,
): Piece[] {
  const { heads } = kit.own;
  const columns = [
    { title: what, width: width * 0.37 },
    { title: heads.value, width: width * 0.29 },
    { title: heads.interval, width: width * 0.34 },
  ];
  return tablePieces(
    kit,
    columns,
    estimates.map((one) => estimateRow(kit, one)),
  );
}

/** Which readings a method went by. */
function usedWords({ own, language }: TestKit, { used }: MethodResult): string {
  const to = sayFigure(used.toMin, language);
  if (used.chosen === 'last') return own.usedLast.replace('{to}', to);
  return own.used
    .replace('{from}', sayFigure(used.fromMin, language))
    .replace('{to}', to)
    .replace('{count}', String(used.count))
    .replace('{chosen}', own.chosen[used.chosen]);
}

/** What one method makes of a test: values, window, how far it holds, source. */
export function methodPieces(
  kit: TestKit,
  result: MethodResult,
  width: PaperMm,
  source: RecordPath,
): Piece[] {
  const { own, analysis, words, language } = kit;
  const bases = [...new Set(result.estimates.flatMap(({ interval }) => interval?.basis ?? []))];
  const by = bases.map((one) => sayBasis(one, language)).join('; ');
  const from = `${own.source}${words.colon} ${analysis.sources[result.source]}.`;
  return [
    titlePiece(kit, analysis.methods[result.method], width),
    ...estimateTable(kit, own.heads.quantity, result.estimates, width),
    ...textPieces(kit, usedWords(kit, result), width, { source }),
    ...(by === '' ? [] : textPieces(kit, `${own.intervalBy}${words.colon} ${by}.`, width)),
    ...result.checks.flatMap((one) => {
      const says = sayCheck(one, language);
      return one.holds
        ? textPieces(kit, `• ${says}`, width)
        : textPieces(kit, `• ${own.notMet}${words.colon} ${says}`, width, { face: 'bold' });
    }),
    ...textPieces(kit, from, width),
    gapPiece(1.6),
  ];
}
