import type { PaperMm } from '../../base/units.ts';
import { looseCap } from '../../model/tally.ts';
import type { StringModel, WellModel } from '../../model/wellModel.ts';
import type { Item } from '../items.ts';
import type { Kit } from '../kit.ts';
import { black, dashed, solid, white } from '../pens.ts';
import { line, polygon, polyline, rectangle } from '../shapes.ts';
import { levelSign, shownLevels } from './section/waterLevels.ts';
import type { SwitchedColumn } from './columnNames.ts';
import { sampledAsWhole, sampleSign } from './log/samples.ts';
import { strikeSign } from './log/strikes.ts';

/** One line of the legend: a sign in a box of 8 by 3.9 mm, and its words. */
export interface LegendEntry {
  readonly says: string;
  draw(x: PaperMm, y: PaperMm): Item[];
}

/** Draws a sign from the upper left corner of its box. */
type Sign = (x: PaperMm, y: PaperMm) => Item[];

/** As the section draws it, on a full line: the level at rest. */
const rest: Sign = (x, y) => [
  line([x + 0.5, y + 2.4], [x + 7.5, y + 2.4], solid('narrow')),
  ...levelSign([x + 4, y + 2.4], false),
];

/** On a dashed line: a level that holds only while the pump runs. */
const pumping: Sign = (x, y) => [
  line([x + 0.5, y + 2.4], [x + 7.5, y + 2.4], dashed('narrow')),
  ...levelSign([x + 4, y + 2.4], true),
];

/** Slots through both walls, their stubs in turn left and right, as the section draws them. */
const screen: Sign = (x, y) => [
  rectangle({ x: x + 1, y, width: 0.9, height: 3.9 }, { fill: white, stroke: solid('narrow') }),
  rectangle({ x: x + 6.1, y, width: 0.9, height: 3.9 }, { fill: white, stroke: solid('narrow') }),
  ...[0.7, 1.95, 3.2].flatMap((dy, at) => [
    line([x + 1, y + dy], [x + 1.9, y + dy], solid('medium')),
    line([x + 6.1, y + dy], [x + 7, y + dy], solid('medium')),
    at % 2 === 0
      ? line([x + 1.9, y + dy], [x + 3.4, y + dy], solid('narrow'))
      : line([x + 4.6, y + dy], [x + 6.1, y + dy], solid('narrow')),
  ]),
];

/** The short tick that parts two pipes of one wall. */
const joint: Sign = (x, y) => [
  line([x + 4, y], [x + 4, y + 3.9], solid('wide')),
  line([x + 3.1, y + 2], [x + 4.9, y + 2], solid('narrow')),
];

/** A bow between casing and wall; one side is enough to know it by. */
const centraliser: Sign = (x, y) => [
  line([x + 2, y], [x + 2, y + 3.9], solid('wide')),
  line([x + 6, y], [x + 6, y + 3.9], solid('wide')),
  polyline(
    [
      [x + 2.2, y + 0.4],
      [x + 5.6, y + 1.6],
      [x + 5.6, y + 2.4],
      [x + 2.2, y + 3.6],
    ],
    { ...solid('medium'), join: 'round' },
  ),
];

/** A closed foot, with a little of the casing that it closes. */
const cap: Sign = (x, y) => [
  line([x + 2, y], [x + 2, y + 3], solid('wide')),
  line([x + 6, y], [x + 6, y + 3], solid('wide')),
  rectangle({ x: x + 1.75, y: y + 2.6, width: 4.5, height: 0.9 }, { fill: black }),
];

/** The pump's foot: what hangs over it is riser. */
const intake: Sign = (x, y) => [
  line([x + 3.5, y], [x + 3.5, y + 2.2], solid('thin')),
  line([x + 4.5, y], [x + 4.5, y + 2.2], solid('thin')),
  polygon(
    [
      [x + 4, y + 2.2],
      [x + 3.1, y + 3.8],
      [x + 4.9, y + 3.8],
    ],
    { fill: black },
  ),
];

/** A cap with a length is a piece; one without is held by the string. Both look the same. */
function isCapped(string: StringModel): boolean {
  return looseCap(string) !== undefined || string.pieces.some(({ kind }) => kind === 'cap');
}

/** Steps that reach the farther the coarser the ground is. */
const grain: Sign = (x, y) => [
  rectangle({ x, y, width: 2.4, height: 1.9 }, { fill: white, stroke: solid('narrow') }),
  rectangle({ x, y: y + 1.9, width: 6, height: 2 }, { fill: white, stroke: solid('narrow') }),
];

function isSampled({ samples, strata }: WellModel): boolean {
  return samples.length > 0 || strata.some((one) => sampledAsWhole(one, []));
}

/** Signs that the sheet uses, in the order of the columns. */
export function signEntries(
  kit: Kit,
  model: WellModel,
  shown: readonly SwitchedColumn[],
): LegendEntry[] {
  const { legend } = kit.words;
  const pieces = model.strings.flatMap((one) => one.pieces);
  const levels = shownLevels(model.levels);
  const candidates: readonly (readonly [boolean, string, Sign])[] = [
    [
      shown.includes('strikes') && model.strikes.length > 0,
      legend.strike,
      (x, y) => strikeSign([x + 6.5, y + 2], 5),
    ],
    [
      shown.includes('samples') && isSampled(model),
      legend.sample,
      (x, y) => [sampleSign([x + 4, y + 2])],
    ],
    [shown.includes('grain'), legend.grain, grain],
    [levels.some(({ state }) => state !== 'pumping'), legend.rest, rest],
    [levels.some(({ state }) => state === 'pumping'), legend.pumping, pumping],
    [pieces.some(({ kind }) => kind === 'screen'), legend.screen, screen],
    [pieces.length > 1, legend.joint, joint],
    [pieces.some(({ centralisersM }) => centralisersM.length > 0), legend.centraliser, centraliser],
    [model.strings.some(isCapped), legend.cap, cap],
    [model.pump?.intakeM !== undefined, legend.intake, intake],
  ];
  return candidates.filter(([used]) => used).map(([, says, draw]) => ({ says, draw }));
}
