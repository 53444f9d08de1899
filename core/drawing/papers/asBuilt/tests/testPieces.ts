import type { PaperMm } from '../../../../base/units.ts';
import type { MethodId } from '../../../../hydraulics/codes.ts';
import type { TestAnalysis } from '../../../../hydraulics/results.ts';
import { sayAssumption } from '../../../../hydraulics/sayHydraulics.ts';
import type { RecordPath } from '../../../../base/recordPath.ts';
import { group } from '../../../shapes.ts';
import type { Kit } from '../../../kit.ts';
import type { Block } from '../../../parts/block.ts';
import type { Piece } from '../../../parts/flow/part.ts';
import { gapPiece, textPieces, titlePiece } from '../../../parts/flow/pieces.ts';
import { drawPlot, type Plot } from '../../../parts/plots/plot.ts';
import type { Closeness } from '../closeness.ts';
import { factPieces } from './facts.ts';
import {
  linearPlot,
  logLogPlot,
  pumpingSemiLog,
  recoverySemiLog,
  resultBy,
  stepsPlot,
} from './plotsOf.ts';
import { residualsPlot } from './residualsOf.ts';
import { methodPieces } from './results.ts';
import { safeRatePieces } from './safeRate.ts';
import { testKit, type ShownTests, type TestKit } from './testKit.ts';

/** Heights of plots with their titles, by how closely a page is set. */
const heights: Readonly<Record<Closeness, PlotHeights>> = {
  0: { plot: 52, residuals: 30 },
  1: { plot: 47, residuals: 28 },
  2: { plot: 43, residuals: 26 },
};
/** The share of the width that a plot takes. */
const plotShare = 0.54;
const gutter: PaperMm = 4;

interface PlotHeights {
  readonly plot: PaperMm;
  /** Of a method's residuals, under the plot of its fit. */
  readonly residuals: PaperMm;
}

interface StackedPlot {
  readonly plot: Plot;
  readonly height: PaperMm;
}

/** Plots one under the other with what stands beside them. */
function besidePlots(
  kit: TestKit,
  plots: readonly StackedPlot[],
  words: readonly Block[],
  width: PaperMm,
  source: RecordPath,
): Piece[] {
  const wide = width * plotShare;
  const said = words.reduce((sum, { height }) => sum + height, 0);
  const plotted = plots.reduce((sum, { height }) => sum + height, 0);
  const height = Math.max(plotted, said) + 2;
  if (plots.length === 0 && words.length === 0) return [];
  return [
    {
      height,
      draw: (x, y) => {
        let top = y;
        const beside = words.flatMap((block) => {
          const items = block.draw(x + wide + gutter, top);
          top += block.height;
          return items;
        });
        let under = y;
        const drawn = plots.map(({ plot, height }) => {
          const box = { x, y: under, width: wide, height };
          under += height;
          return drawPlot(kit, plot, box);
        });
        return [...drawn, group('results', beside, { source })];
      },
    },
  ];
}

/** Results of some methods, one under the other. */
function resultsBeside(
  kit: TestKit,
  test: TestAnalysis,
  methods: readonly MethodId[],
  width: PaperMm,
): Piece[] {
  return methods.flatMap((method) => {
    const result = resultBy(test, method);
    return result ? methodPieces(kit, result, width, test.path) : [];
  });
}

function stacked(plot: Plot | undefined, height: PaperMm): StackedPlot[] {
  return plot ? [{ plot, height }] : [];
}

/** A plot of fits over the residuals of each. */
function withResiduals(
  kit: TestKit,
  test: TestAnalysis,
  { plot, methods }: Row,
  high: PlotHeights,
): StackedPlot[] {
  return [
    ...stacked(plot, high.plot),
    ...methods.flatMap((method) => stacked(residualsPlot(kit, test, method, plot), high.residuals)),
  ];
}

interface Row {
  readonly plot: Plot | undefined;
  readonly methods: readonly MethodId[];
}

/** The plots of a test after the first, with the methods that each shows. */
function rowsOf(kit: TestKit, test: TestAnalysis): Row[] {
  switch (test.kind) {
    case 'constantRate':
      return [
        { plot: pumpingSemiLog(kit, test), methods: ['cooperJacob'] },
        { plot: logLogPlot(kit, test), methods: ['theis', 'logan'] },
      ];
    case 'recovery':
      return [{ plot: recoverySemiLog(kit, test), methods: ['theisRecovery'] }];
    case 'step':
      return [{ plot: stepsPlot(kit, test), methods: ['hantushBierschenk', 'edenHazel'] }];
  }
}

/** Every assumption of all tests, each once, with the numbers of the tests that rest on it. */
function assumptionPieces(
  kit: TestKit,
  analyses: readonly TestAnalysis[],
  width: PaperMm,
): Piece[] {
  const said = new Map<string, number[]>();
  for (const { index, results } of analyses) {
    const own = results.flatMap(({ assumptions }) =>
      assumptions.map((one) => sayAssumption(one, kit.language)),
    );
    for (const one of new Set(own)) said.set(one, [...(said.get(one) ?? []), index + 1]);
  }
  if (said.size === 0) return [];
  const lines = [...said].map(([one, tests]) => `(${tests.join(', ')}) ${one}`);
  return [
    titlePiece(kit, kit.own.assumptionsByTest, width),
    ...textPieces(kit, lines.join(' '), width, { source: 'tests' }),
    gapPiece(3),
  ];
}

function onTest(kit: TestKit, test: TestAnalysis, width: PaperMm, high: PlotHeights): Piece[] {
  const { own } = kit;
  const side = width * (1 - plotShare) - gutter;
  const title = `${test.index + 1}. ${own.kinds[test.kind]}`;
  const first = [
    ...factPieces(kit, test, side),
    ...resultsBeside(kit, test, ['specificCapacity'], side),
  ];
  return [
    titlePiece(kit, title, width),
    ...besidePlots(kit, stacked(linearPlot(kit, test), high.plot), first, width, test.path),
    ...rowsOf(kit, test).flatMap((row) => {
      const plots = withResiduals(kit, test, row, high);
      const said = resultsBeside(kit, test, row.methods, side);
      return besidePlots(kit, plots, said, width, test.path);
    }),
    gapPiece(1),
  ];
}

/** What the pages of pumping tests show: each test with its plots, then the safe rate. */
export function testPieces(
  base: Kit,
  { analyses, safe }: ShownTests,
  width: PaperMm,
  closeness: Closeness,
): Piece[] {
  const kit = testKit(base);
  return [
    ...textPieces(kit, kit.own.reservation, width),
    gapPiece(1.6),
    ...analyses.flatMap((test) => onTest(kit, test, width, heights[closeness])),
    ...assumptionPieces(kit, analyses, width),
    ...(safe ? safeRatePieces(kit, safe, width) : []),
  ];
}
