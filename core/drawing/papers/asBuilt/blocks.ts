import type { Finding } from '../../../base/finding.ts';
import { sayFinding } from '../../../practice/catalogue.ts';
import type { Practice } from '../../../practice/practice.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { WellRecord } from '../../../record/schema.ts';
import { explanationOf } from '../../../record/explained.ts';
import { describeStratum } from '../../describe.ts';
import type { Item } from '../../items.ts';
import type { Stratum } from '../../../model/wellModel.ts';
import { layLegend } from '../../parts/legend.ts';
import { layNotes, type Note } from '../../parts/notesBlock.ts';
import { blockPad, type Block } from '../../parts/block.ts';
import { lineHeight, solid } from '../../pens.ts';
import { line } from '../../shapes.ts';
import { rangeFigure } from '../../figures.ts';
import { again, type Kit } from '../../kit.ts';
import { baseline, letter, lettered, wrapped } from '../../letters.ts';
import { lasting, particularsOf, quantitiesOf, tallyOf } from './blockParts.ts';
import type { SheetInput } from './sheetInput.ts';

const gutter: PaperMm = 3;
/** What the rule above blocks takes. */
const ruleHeight: PaperMm = 1;

/** Blocks side by side, with a rule above and rules between; as high as the highest. */
function beside(blocks: readonly (Block & { width: PaperMm })[], width: PaperMm): Block {
  const height = Math.max(...blocks.map((one) => one.height)) + ruleHeight;
  return {
    height,
    draw: (x, y) => {
      let left = x;
      const items: Item[] = [line([x, y], [x + width, y], solid('medium'))];
      blocks.forEach((block, at) => {
        if (at > 0) items.push(line([left, y], [left, y + height], solid('thin')));
        items.push(...block.draw(left + gutter / 2, y + 0.6));
        left += block.width;
      });
      return items;
    },
  };
}

/** Blocks under each other. */
function stacked(blocks: readonly (Block | undefined)[]): Block {
  const present = blocks.filter((one) => one !== undefined);
  return {
    height: present.reduce((sum, { height }) => sum + height, 0),
    draw: (x, y) => {
      let top = y;
      return present.flatMap((block) => {
        const items = block.draw(x, top);
        top += block.height;
        return items;
      });
    },
  };
}

/** Whether there is anything to say beside legend, quantities and remarks. */
export function hasPanel(input: SheetInput): boolean {
  return input.model.strings.length > 0 || particularsOf(input, 80) !== undefined;
}

/** Legend beside quantities across the foot of a page; the particulars under them if they go in. */
export function layBand(input: SheetInput, width: PaperMm, withParticulars: boolean): Block {
  const { kit, model, columns } = input;
  const share = width * 0.52;
  const quantities = quantitiesOf(input, width - share - gutter);
  const legend = quantities ? share : width;
  const first = beside(
    [
      { ...layLegend(kit, model, columns, legend - gutter), width: legend },
      ...(quantities ? [{ ...quantities, width: width - legend }] : []),
    ],
    width,
  );
  const particulars = withParticulars ? particularsOf(input, width - gutter, 2) : undefined;
  return stacked([first, particulars && beside([{ ...particulars, width }], width)]);
}

/** What the remarks are made of besides descriptions that were cut. */
interface Said {
  readonly notes: string | undefined;
  readonly findings: readonly Finding[];
  readonly explanations: WellRecord['explanations'];
  /** The practice with its version; absent where nobody judged. */
  readonly judgedBy: string | undefined;
  /** What the sheet does not stand for. */
  readonly disclaimer: string;
}

/** A finding in words, with why it remains where somebody explained it. */
function sayRemaining({ words }: Kit, finding: Finding, { explanations }: Said): string {
  const { sentence } = sayFinding(finding, words.language);
  const because = explanationOf(finding, explanations);
  return because === undefined
    ? sentence
    : `${sentence} ${words.explained}${words.colon} ${because}`;
}

/** Findings that remain, most severe first. */
function findingNotes(kit: Kit, said: Said): Note[] {
  const order = ['error', 'warning'] as const;
  return order.flatMap((severity) =>
    said.findings
      .filter((one) => one.severity === severity)
      .map((one) => ({
        text: `• ${sayRemaining(kit, one, said)}`,
        source: one.path,
      })),
  );
}

/** The record's own notes, and descriptions that had to be cut on the page. */
function ownNotes(kit: Kit, { notes }: Said, cut: readonly Stratum[]): Note[] {
  const range = ({ fromM, toM }: Stratum) => `${rangeFigure(kit, fromM, toM)} m${kit.words.colon} `;
  return [
    ...(notes ? [{ text: notes, source: 'notes' }] : []),
    ...cut.map((one) => ({
      text: range(one) + describeStratum(one, kit.words),
      source: one.path,
    })),
  ];
}

/** Says at the right of a block's title by what the well was judged; on a line alone under none. */
function aside(kit: Kit, judgedBy: string, body: Block, width: PaperMm): Block {
  const alone = body.height === 0;
  return {
    height: alone ? lineHeight('small') + blockPad : body.height,
    draw: (x, y) => [
      ...letter(kit, judgedBy, alone ? x : x + width, y + baseline('small') + 0.2, {
        anchor: alone ? 'start' : 'end',
        widest: alone ? width : width * 0.75,
      }),
      ...body.draw(x, y),
    ],
  };
}

/** The disclaimer under all that is said, in full. */
function layDisclaimer(kit: Kit, text: string, width: PaperMm): Block {
  const lines = wrapped(kit, text, width);
  return {
    height: lines.length * lineHeight('small') + blockPad / 2,
    draw: (x, y) => lettered(kit, lines, x, y - blockPad / 2),
  };
}

function laySaid(
  kit: Kit,
  said: Said,
  cut: readonly Stratum[],
  width: PaperMm,
  room: PaperMm,
): Block | undefined {
  const inner = width - gutter;
  const layOwn = (height: PaperMm) =>
    layNotes(kit, kit.words.notes, ownNotes(kit, said, cut), inner, height);
  const disclaimer = layDisclaimer(kit, said.disclaimer, inner);
  const inside = room - ruleHeight - disclaimer.height;
  const left = inside - (layOwn(0)?.height ?? 0);
  const findings = layNotes(kit, kit.words.findings, findingNotes(kit, said), inner, left);
  const notes = layOwn(inside - (findings?.height ?? 0));
  const { judgedBy } = said;
  const body = stacked([findings, notes]);
  const judged = judgedBy === undefined ? body : aside(kit, judgedBy, body, inner);
  return beside([{ ...stacked([judged, disclaimer]), width }], width);
}

const remarks = lasting(laySaid);

function findingsOf({ model, judgement }: SheetInput): Finding[] {
  const all = [...model.findings, ...(judgement?.findings ?? [])];
  return all.filter(({ severity }) => severity !== 'note');
}

/** Whether more is to be said than by what the well was judged. */
export function hasRemarks(input: SheetInput): boolean {
  return Boolean(input.record.notes) || findingsOf(input).length > 0;
}

/** By which practice, with its version, a well is judged. */
export function judgedByLine({ words }: Kit, { name, version }: Practice): string {
  return `${words.judgedBy}${words.colon} ${name[words.language]} ${version}`;
}

/**
 * Findings and notes across a width, no higher than the room; a title and a line of each stand in
 * any case, so that what is left out is counted.
 */
export function layRemarks(
  input: SheetInput,
  cut: readonly Stratum[],
  width: PaperMm,
  room: PaperMm,
): Block | undefined {
  const { kit, record, judgement } = input;
  const judgedBy = judgement && judgedByLine(kit, judgement.practice);
  const { notes, explanations } = record;
  const disclaimer = input.template?.disclaimer ?? kit.words.disclaimer;
  const said = { notes, findings: findingsOf(input), explanations, judgedBy, disclaimer };
  return again(kit, 'remarks', remarks, said, cut, width, room);
}

function layLegendAndQuantities(
  input: SheetInput,
  width: PaperMm,
  room: PaperMm,
): (Block | undefined)[] {
  const legend = layLegend(input.kit, input.model, input.columns, width);
  return [legend, quantitiesOf(input, width, room - legend.height)];
}

/** A panel, and how many rows of the tally it shows where it has no room for all. */
export interface Panel extends Block {
  readonly tallyShows?: number;
}

/**
 * What does not stand under the well, in two columns: for a page of its own or the side of an A3.
 * `withLegend` also brings legend and quantities.
 */
export function layPanel(
  input: SheetInput,
  cut: readonly Stratum[],
  width: PaperMm,
  room: PaperMm,
  withLegend = true,
): Panel {
  const half = width / 2;
  const inner = half - gutter;
  const kept = layRemarks(input, cut, width, 0)?.height ?? 0;
  const height = room - kept - ruleHeight;
  const particulars = particularsOf(input, inner);
  const beforeTally = withLegend ? (particulars?.height ?? 0) : 0;
  const tally = tallyOf(input, inner, height - beforeTally);
  const left = withLegend ? layLegendAndQuantities(input, inner, height) : [particulars];
  const right = withLegend ? [particulars, tally] : [tally];
  const columns = beside(
    [
      { ...stacked(left), width: half },
      { ...stacked(right), width: half },
    ],
    width,
  );
  const whole = stacked([columns, layRemarks(input, cut, width, room - columns.height)]);
  return { ...whole, ...(tally?.shows !== undefined && { tallyShows: tally.shows }) };
}
