import { filled } from '../../../base/text/filled.ts';
import type { Metres, PaperMm } from '../../../base/units.ts';
import type { StringModel } from '../../../model/wellModel.ts';
import { hatchForFill } from '../../hatches/index.ts';
import { depthFigure, litreFigure, plainFigure } from '../../figures.ts';
import { bound } from '../../letters.ts';
import { sizeWords } from '../../parts/section/casingCallouts.ts';
import { fillWords } from '../../parts/section/fillCallouts.ts';
import type { FillStep } from './fillSteps.ts';
import { saidNumbers, type PaintMark } from './paintMarks.ts';
import type { PipeStep, StringSteps } from './pipeSteps.ts';
import type { SheetKit } from './sheetKit.ts';
import type { Cell, Column, Row, Table } from './table.ts';

/** A depth as the crew reads it: what stands above ground bears a plus. */
export function levelFigure(kit: SheetKit, depthM: Metres): string {
  const figure = depthFigure(kit, Math.abs(depthM));
  return depthM < 0 && /[1-9]/.test(figure) ? `+${figure}` : figure;
}

const figure = (text: string, bold = false): Cell => ({ kind: 'figure', text, bold });
const words = (text: string, bold = false): Cell => ({ kind: 'words', text, bold });
const tick: Cell = { kind: 'tick' };
const writing: Cell = { kind: 'line' };

function pipeRow(kit: SheetKit, step: PipeStep): Row {
  const { own } = kit;
  const kind = own.kinds[step.kind];
  const length = step.lengthM === undefined ? '–' : depthFigure(kit, step.lengthM);
  return {
    cells: [
      figure(String(step.number), true),
      words(step.cut ? `${kind}, ${own.cutTo}` : kind, step.cut || step.kind === 'screen'),
      { kind: 'figure', text: length, bold: step.cut, framed: step.cut },
      figure(depthFigure(kit, step.runningM), true),
      figure(levelFigure(kit, step.topM)),
      tick,
      writing,
    ],
    source: step.path,
  };
}

/** `uPVC 125 × 4.8`, of the string's lowest plain pipe, as far as it is known. */
function stringSize(kit: SheetKit, { pieces }: StringModel): string {
  const pipe = pieces.findLast(({ kind }) => kind === 'plain') ?? pieces[0];
  return pipe ? [pipe.material, sizeWords(kit, pipe)].filter(Boolean).join(' ') : '';
}

/** `1. Surface casing: uPVC 125 × 4.8`, over the pipes of each of several strings. */
function stringRow(kit: SheetKit, string: StringModel): Row {
  const number = `${string.index + 1}. ${string.name ?? kit.own.string}`;
  const over = [number, stringSize(kit, string)].filter(Boolean).join(`${kit.words.colon} `);
  return { cells: [], over, source: string.path };
}

/** The pipes of all strings in the order they go in, on a table of the given width. */
export function pipeTable(kit: SheetKit, strings: readonly StringSteps[], width: PaperMm): Table {
  const { own } = kit;
  const { pipes } = own;
  const columns: Column[] = [
    { width: 9, head: pipes.number },
    { width: 25.5, head: pipes.pipe },
    { width: 16.5, head: pipes.length, anchor: 'end' },
    { width: 18, head: pipes.running, anchor: 'end' },
    { width: 18, head: pipes.joint, anchor: 'end' },
    { width: 7, head: '' },
    { width: width - 94, head: pipes.measured },
  ];
  const several = strings.length > 1;
  const rows = strings.flatMap(({ string, steps }): Row[] => [
    ...(several ? [stringRow(kit, string)] : []),
    ...steps.map((step) => pipeRow(kit, step)),
  ]);
  const size = several || !strings[0] ? '' : stringSize(kit, strings[0].string);
  const title = [pipes.title, size].filter(Boolean).join(`${kit.words.colon} `);
  const none: Row = { cells: [], over: pipes.none };
  return { name: 'pipes', title, columns, rows: rows.length > 0 ? rows : [none] };
}

function markWords(kit: SheetKit, { what, underTopM }: PaintMark, brief: boolean): string {
  const { marks } = kit.own;
  if (what !== 'ground') return marks[what];
  if (brief || underTopM === undefined) return marks.groundAlone;
  return filled(marks.ground, { under: depthFigure(kit, underTopM) });
}

/** What to paint on the pipes, in few words on a table that is narrow. */
export function markTable(
  kit: SheetKit,
  all: readonly PaintMark[],
  anyPipes: boolean,
  width: PaperMm,
): Table {
  const { marks } = kit.own;
  const brief = width < 80;
  const columns: Column[] = [
    { width: brief ? 26.6 : width - 56.2, head: '' },
    { width: brief ? width - 45.8 : 34, head: '' },
    { width: brief ? 14 : 17, head: '', anchor: 'end' },
    { width: 5.2, head: '' },
  ];
  const each: Row[] = anyPipes ? [{ cells: [], over: marks.each }] : [];
  const rows = all.map((mark): Row => ({
    cells: [
      words(markWords(kit, mark, brief), mark.what === 'ground'),
      words(filled(marks.pipes, { numbers: saidNumbers(mark.pipes) }), true),
      figure(depthFigure(kit, mark.fromLowerEndM), true),
      tick,
    ],
    source: mark.path,
  }));
  return { name: 'paint', title: marks.title, columns, rows: [...each, ...rows] };
}

function fillRow(kit: SheetKit, step: FillStep): Row {
  const { zone } = step;
  const { fills } = kit.own;
  const kg =
    step.sackKg === undefined ? '' : `×${bound}${plainFigure(kit, step.sackKg, 1)}${bound}kg`;
  const sacks: Cell =
    step.sacks === undefined
      ? figure(step.sackKg === undefined ? '' : '–')
      : { kind: 'sacks', count: plainFigure(kit, step.sacks, 1), each: kg };
  return {
    cells: [
      { kind: 'letter', text: step.letter, hatch: hatchForFill(zone.fill) },
      words(zone.fill === 'unrecorded' ? fills.nothing : fillWords(kit, zone), zone.sanitary),
      figure(levelFigure(kit, zone.toM)),
      figure(levelFigure(kit, step.topM), true),
      figure(step.fromCasingTopM === undefined ? '–' : depthFigure(kit, step.fromCasingTopM), true),
      figure(step.litres === undefined ? '–' : litreFigure(kit, step.litres)),
      words(''),
      sacks,
      tick,
      writing,
      writing,
    ],
    source: zone.path,
  };
}

/** Levels and amounts of the fills in the order they go in, over the whole width. */
export function fillTable(kit: SheetKit, steps: readonly FillStep[]): Table {
  const { fills } = kit.own;
  const columns: Column[] = [
    { width: 13.5, head: '' },
    { width: 34.5, head: fills.fill },
    { width: 17.2, head: fills.foot, anchor: 'end' },
    { width: 18, head: fills.top, anchor: 'end' },
    { width: 18, head: fills.fromCasing, anchor: 'end' },
    { width: 14, head: fills.litres, anchor: 'end' },
    { width: 2, head: '' },
    { width: 21.8, head: fills.sacks },
    { width: 6, head: '' },
    { width: 14, head: fills.poured },
    { width: 17, head: fills.sounded },
  ];
  const none: Row = { cells: [], over: fills.none };
  const rows = steps.map((step) => fillRow(kit, step));
  return { name: 'fills', title: fills.title, columns, rows: rows.length > 0 ? rows : [none] };
}
