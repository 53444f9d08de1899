import type { PaperMm } from '../../base/units.ts';
import type { WellModel } from '../../model/wellModel.ts';
import { minutesBetween } from '../../record/moment.ts';
import type { WellRecord } from '../../record/schema.ts';
import { dayFigure, depthFigure, momentFigure, plainFigure } from '../figures.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { fitted, lettered, widthOf, wrapped } from '../letters.ts';
import { lineHeight } from '../pens.ts';
import { group } from '../shapes.ts';
import { blockPad, blockTitle, blockTitleHeight, type Block } from './block.ts';
import { fact, type Fact } from './fact.ts';
import { testFacts } from './testFacts.ts';

/** All that is told here of the well as resolved. */
type Levels = Pick<WellModel, 'levels'>;

/** `6.123456° S, 34.000000° E`. */
function angle(kit: Kit, degrees: number, positive: string, negative: string): string {
  const figure = plainFigure(kit, Math.abs(degrees), 6);
  return `${figure}° ${degrees < 0 ? negative : positive}`;
}

/** Position in degrees of WGS 84, as receivers show them; heights and accuracies in metres. */
function siteFacts(kit: Kit, { site }: WellRecord): Fact[] {
  const { facts, compass } = kit.words;
  if (!site) return [];
  const { latitude, longitude, positionAccuracy, elevation, elevationDatum, users, households } =
    site;
  const position =
    latitude === undefined || longitude === undefined
      ? []
      : [
          angle(kit, latitude, compass.north, compass.south),
          angle(kit, longitude, compass.east, compass.west),
        ];
  const accuracy =
    positionAccuracy === undefined ? '' : `± ${plainFigure(kit, positionAccuracy, 1)} m`;
  return [
    ...fact(facts.position, position.length > 0 ? [...position, accuracy] : [], 'site.latitude'),
    ...fact(
      facts.elevation,
      elevation === undefined ? [] : [`${plainFigure(kit, elevation, 1)} m`, elevationDatum],
      'site.elevation',
    ),
    ...fact(
      facts.users,
      [
        users === undefined ? '' : String(users),
        households === undefined ? '' : `${households} ${facts.households}`,
      ],
      'site.users',
    ),
  ];
}

/** A hole drilled in one day shows that day once. */
function boreFacts(kit: Kit, { bore, identity }: WellRecord): Fact[] {
  const { facts, methods } = kit.words;
  if (!bore) return [];
  const dates = [...new Set([bore.startedOn, bore.finishedOn].filter(Boolean))].join(' – ');
  return [
    ...fact(
      facts.method,
      [bore.method && methods[bore.method], bore.rig, bore.fluid, bore.additive],
      'bore.method',
    ),
    ...fact(facts.drilled, [dates, identity?.driller], 'bore.startedOn'),
  ];
}

/** Hours of all steps together, and how clear the water was after the last: NTU, sand in mg/L. */
function developmentFacts(kit: Kit, { development }: WellRecord): Fact[] {
  const last = development?.at(-1);
  if (!development || !last) return [];
  const minutes = development.reduce(
    (sum, { startedAt, endedAt }) =>
      sum + (startedAt && endedAt ? (minutesBetween(startedAt, endedAt) ?? 0) : 0),
    0,
  );
  const hours = minutes > 0 ? `${plainFigure(kit, minutes / 60, 1)} ${kit.words.hours}` : '';
  const turbidity =
    last.turbidity === undefined ? '' : `${plainFigure(kit, last.turbidity, 1)} NTU`;
  const sand =
    last.sand === undefined ? '' : `${kit.words.facts.sand} ${plainFigure(kit, last.sand, 1)} mg/L`;
  return fact(kit.words.facts.development, [hours, turbidity, sand], 'development');
}

/** The last sample and the last dose, since the sheet shows the well as it was left. */
function waterFacts(kit: Kit, { quality, disinfection }: WellRecord): Fact[] {
  const { facts } = kit.words;
  const sample = quality?.at(-1);
  const dose = disinfection?.at(-1);
  const results = sample?.results?.length;
  return [
    ...fact(
      facts.quality,
      [
        sample?.takenAt && dayFigure(sample.takenAt),
        sample?.laboratory,
        results ? `${results} ${facts.results}` : '',
      ],
      'quality',
    ),
    ...fact(
      facts.disinfection,
      [
        dose?.at && dayFigure(dose.at),
        dose?.dose === undefined ? '' : `${plainFigure(kit, dose.dose, 0)} mg/L`,
        dose?.contactHours === undefined
          ? ''
          : `${plainFigure(kit, dose.contactHours, 1)} ${kit.words.hours}`,
      ],
      'disinfection',
    ),
  ];
}

/** What hangs in the well and what was built over it, in metres. */
function pumpFacts(kit: Kit, { pump, headworks }: WellRecord): Fact[] {
  const { facts, pumps } = kit.words;
  const intake =
    pump?.intake === undefined
      ? ''
      : `${kit.words.legend.intake} ${depthFigure(kit, pump.intake)} m`;
  const pad =
    headworks?.padLength === undefined || headworks.padWidth === undefined
      ? ''
      : `${facts.pad} ${plainFigure(kit, headworks.padLength, 2)} × ${plainFigure(kit, headworks.padWidth, 2)} m`;
  const drain =
    headworks?.drainLength === undefined
      ? ''
      : `${facts.drain} ${plainFigure(kit, headworks.drainLength, 1)} m`;
  return [
    ...fact(
      facts.pump,
      [pump?.kind && pumps[pump.kind], pump?.model, intake, pump?.installedOn],
      'pump',
    ),
    ...fact(facts.headworks, [pad, drain, headworks?.soakaway, headworks?.fence], 'headworks'),
  ];
}

/** The last rest level below ground, with the reading that it came from where that differs. */
function levelFacts(kit: Kit, { levels }: Levels): Fact[] {
  const rest = levels.filter(({ state }) => state === undefined || state === 'static').at(-1);
  if (!rest) return [];
  const read =
    rest.datum === 'casingTop'
      ? `${depthFigure(kit, rest.readM)} m ${kit.words.facts.below} ${kit.words.casingTop}`
      : '';
  return fact(
    kit.words.facts.rest,
    [`${depthFigure(kit, rest.depthM)} m`, rest.at && momentFigure(rest.at), read],
    rest.path,
  );
}

/** All facts in the order in which a well is made: site, hole, water, pump. */
export function factsOf(kit: Kit, record: WellRecord, model: Levels): Fact[] {
  return [
    ...siteFacts(kit, record),
    ...boreFacts(kit, record),
    ...levelFacts(kit, model),
    ...developmentFacts(kit, record),
    ...testFacts(kit, record),
    ...waterFacts(kit, record),
    ...pumpFacts(kit, record),
  ];
}

/** Width of the column of names; longer names make it wider. */
const leastNames: PaperMm = 19;

function namesWidth(kit: Kit, facts: readonly Fact[]): PaperMm {
  return Math.max(leastNames, ...facts.map(({ what }) => widthOf(kit, what) + 1.2));
}

/** A fact that needs more lines is cut and says so: one long remark may not push the rest out. */
const mostLines = 6;
const between: PaperMm = 4;

/** The lines of a fact, the last of them cut with an ellipsis where it needs too many. */
function factLines(kit: Kit, { says }: Fact, width: PaperMm): string[] {
  const lines = wrapped(kit, says, width);
  if (lines.length <= mostLines) return lines;
  const last = lines.slice(mostLines - 1).join(' ');
  return [...lines.slice(0, mostLines - 1), fitted(kit, last, width)];
}

interface FactRow extends Fact {
  readonly lines: readonly string[];
}

/** Splits rows into two columns of about the same height, in reading order. */
function halves(rows: readonly FactRow[]): [FactRow[], FactRow[]] {
  const total = rows.reduce((sum, { lines }) => sum + lines.length, 0);
  let count = 0;
  const cut = rows.findIndex(({ lines }) => {
    count += lines.length;
    return count >= total / 2;
  });
  return [rows.slice(0, cut + 1), rows.slice(cut + 1)];
}

/** Names and facts side by side, from the upper left corner down. */
function drawFacts(
  kit: Kit,
  rows: readonly FactRow[],
  names: PaperMm,
  x: PaperMm,
  y: PaperMm,
): Item[] {
  let top = y;
  return rows.flatMap(({ what, lines, source }) => {
    const items = [
      ...lettered(kit, [what], x, top, { source }),
      ...lettered(kit, lines, x + names, top, { source }),
    ];
    top += lines.length * lineHeight('small');
    return items;
  });
}

/** What else a reader needs to know of the well, in one or two columns; undefined if nothing. */
export function layParticulars(
  kit: Kit,
  record: WellRecord,
  model: Levels,
  width: PaperMm,
  columns: 1 | 2 = 1,
): Block | undefined {
  const each = columns === 1 ? width : (width - between) / 2;
  const facts = factsOf(kit, record, model);
  const names = namesWidth(kit, facts);
  const rows = facts.map((one) => ({ ...one, lines: factLines(kit, one, each - names) }));
  if (rows.length === 0) return undefined;
  const parts = columns === 1 ? [rows] : halves(rows);
  const heights = parts.map((part) => part.reduce((sum, { lines }) => sum + lines.length, 0));
  return {
    height: blockTitleHeight + Math.max(...heights) * lineHeight('small') + blockPad,
    draw: (x, y) => [
      group('particulars', [
        ...blockTitle(kit, kit.words.facts.title, x, y, width),
        ...parts.flatMap((part, at) =>
          drawFacts(kit, part, names, x + at * (each + between), y + blockTitleHeight),
        ),
      ]),
    ],
  };
}
