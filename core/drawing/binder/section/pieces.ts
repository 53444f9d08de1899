import { filled } from '../../../base/text/filled.ts';
import type { PaperMm } from '../../../base/units.ts';
import type { Material } from '../../../record/materials.ts';
import { depthFigure, significantFigure } from '../../figures.ts';
import type { Item } from '../../items.ts';
import { baseline, fitted, letter, widthOf } from '../../letters.ts';
import { cellGap } from '../../parts/block.ts';
import type { Piece } from '../../parts/flow/flow.ts';
import { rowPiece, type Cell } from '../../parts/flow/pieces.ts';
import { levelSign } from '../../parts/section/waterLevels.ts';
import { lineHeight, solid, white } from '../../pens.ts';
import { corners, group, hatched, line, rectangle } from '../../shapes.ts';
import type { BinderKit, Places } from '../binder.ts';
import type { BinderWell } from '../binderWell.ts';
import { sayNumber, sayVillage } from '../say.ts';
import { metresOrDash, screensFigure } from '../tables/figures.ts';
import { linkedRow } from '../tables/linkedRow.ts';
import type { SectionFrame } from './frame.ts';
import type { SectionLine, StandingWell } from './sectionLine.ts';

/** Figures with a space every three digits, as scales are written. */
const grouped = (n: number) => String(n).replace(/\B(?=(\d{3})+$)/g, '\u00a0');

/** Wells that a sentence names, the rest counted; a number longer than this is cut. */
const mostNamed = 8;
const longestNumber: PaperMm = 32;

function absence({ own }: BinderKit, { absent }: SectionLine): string[] {
  return absent === 0 ? [] : [filled(own.section.absent, { n: String(absent) })];
}

/** Why a section has no well to draw. */
export function nothing(kit: BinderKit, section: SectionLine): string {
  const placeless = section.left.length > 0 ? [kit.own.section.none] : [];
  return [...placeless, ...absence(kit, section)].join(' ');
}

/** Scales, exaggeration and datum; what is assumed; what is left out. */
export function statements(
  kit: BinderKit,
  section: SectionLine,
  frame: SectionFrame,
  joined: boolean,
): string {
  const { own } = kit;
  const { downScale, acrossScale } = frame;
  const numbers = (wells: readonly BinderWell[]) => {
    const named = wells
      .slice(0, mostNamed)
      .map((well) => fitted(kit, sayNumber(kit, well), longestNumber));
    return [...named, ...(wells.length > mostNamed ? [`… (${wells.length})`] : [])].join(', ');
  };
  const assumed = section.wells.filter((one) => one.assumed);
  const datums = section.datums.map((datum) => (datum === '' ? own.section.noDatum : datum));
  return [
    filled(own.section.scales, {
      down: grouped(downScale),
      across: grouped(acrossScale),
      times: significantFigure(kit, acrossScale / downScale),
    }),
    section.flat ? own.section.flat : filled(own.section.datum, { datum: datums.join('; ') }),
    ...(datums.length > 1 ? [own.section.datums] : []),
    ...(section.flat || assumed.length === 0
      ? []
      : [filled(own.section.assumed, { wells: numbers(assumed.map(({ well }) => well)) })]),
    ...(section.left.length === 0
      ? []
      : [
          filled(own.section.left, {
            wells: numbers(section.left),
          }),
        ]),
    ...absence(kit, section),
    joined ? own.section.joined : own.section.notJoined,
  ].join(' ');
}

const shares = [30, 40, 20, 20, 18, 18, 34] as const;

/** Figures of the wells that a section shows; each row leads to the papers of its well. */
export function sectionTable(
  kit: BinderKit,
  wells: readonly StandingWell[],
  places: Places,
  width: PaperMm,
): Piece[] {
  const { tables, section } = kit.own;
  const whole = shares.reduce((sum, one) => sum + one, 0);
  const row = (texts: readonly string[], bold: boolean): Cell[] =>
    texts.map((text, at) => ({
      width: (shares[at]! / whole) * width,
      text,
      anchor: at < 2 ? 'start' : 'end',
      bold,
    }));
  // One line each: the plot needs the room, and names stand whole in the indexes.
  const short = (text: string, at: number) =>
    fitted(kit, text, (shares[at]! / whole) * width - cellGap);
  const { number, village, drilled, rest, screens } = tables.heads;
  const { along, ground } = section.heads;
  const head = rowPiece(kit, row([number, village, along, ground, drilled, rest, screens], true), {
    rule: 'thin',
  });
  return [
    head,
    ...wells.map(({ well, alongM, assumed }) => {
      const cells = [
        short(sayNumber(kit, well), 0),
        short(sayVillage(kit, well.village), 1),
        depthFigure(kit, Math.round(alongM)).replace(/[.,]00$/, ''),
        assumed ? '–' : depthFigure(kit, well.elevationM!),
        metresOrDash(kit, well.drilledM),
        metresOrDash(kit, well.restM),
        screensFigure(kit, well),
      ];
      return linkedRow(rowPiece(kit, row(cells, false)), width, places.pageOf(well.id));
    }),
  ];
}

const swatch = { width: 7, height: 3 } as const;

interface Entry {
  readonly says: string;
  readonly draw: (x: PaperMm, y: PaperMm) => Item[];
}

function hatchEntries(kit: BinderKit, wells: readonly StandingWell[]): Entry[] {
  const materials = new Set<Material>();
  for (const { well } of wells)
    for (const { material } of well.layers) if (material) materials.add(material);
  return [...materials].map((material) => ({
    says: kit.words.materials[material].noun,
    draw: (x, y) => {
      const box = { x, y, ...swatch };
      return [
        hatched(corners(box), material, undefined, white),
        rectangle(box, { stroke: solid('thin') }),
      ];
    },
  }));
}

function signEntries(kit: BinderKit): Entry[] {
  const { legend } = kit.words;
  return [
    { says: legend.rest, draw: (x, y) => levelSign([x + 3.5, y + 1.8], false) },
    {
      says: legend.screen,
      draw: (x, y) => [
        rectangle(
          { x: x + 2.7, y, width: 1.6, height: 3 },
          { stroke: solid('narrow'), fill: white },
        ),
        ...[0.5, 1.5, 2.5].map((dy) => line([x + 2.7, y + dy], [x + 4.3, y + dy], solid('thin'))),
      ],
    },
  ];
}

/** Materials and signs of a section in rows; a second material's mark stands among the first's. */
export function legendPieces(
  kit: BinderKit,
  wells: readonly StandingWell[],
  width: PaperMm,
): Piece[] {
  const entries = [...hatchEntries(kit, wells), ...signEntries(kit)];
  const pitch = Math.max(...entries.map(({ says }) => widthOf(kit, says))) + swatch.width + 5;
  const across = Math.max(1, Math.floor(width / pitch));
  const rows = Array.from({ length: Math.ceil(entries.length / across) }, (_, at) =>
    entries.slice(at * across, (at + 1) * across),
  );
  return rows.map((row) => ({
    height: lineHeight('small') + 1.6,
    draw: (x, y) => [
      group(
        'legend',
        row.flatMap(({ says, draw }, at) => [
          ...draw(x + at * pitch, y + 0.2),
          ...letter(kit, says, x + at * pitch + swatch.width + 1.6, y + baseline('small')),
        ]),
      ),
    ],
  }));
}
