import { decimalMarks } from '../../../core/base/language.ts';
import { formatDepth } from '../../../core/base/numbers.ts';
import type { RecordPath } from '../../../core/base/recordPath.ts';
import type { Component } from '../../../core/record/strings.ts';
import type { WellModel } from '../../../core/model/wellModel.ts';
import type { Starts } from '../../state/field.ts';
import { speech } from '../../state/language.svelte.ts';
import { fieldWords as f, say, sheetWords } from '../../parts/words.ts';
import type { Block, FoldBlock, FormBlock, StackBlock, TableBlock } from '../chapter.ts';
import { choiceField, flagField } from '../fields/choice.ts';
import { numbersField } from '../fields/list.ts';
import { dayField } from '../fields/moment.ts';
import { amountField, countField, depthField, numberField } from '../fields/number.ts';
import { textField } from '../fields/text.ts';
import { layingOut } from './layingOut.ts';
import { settingFields } from './setting.ts';
import { fromWhereItEnded, likeTheLast } from './starts.ts';

const percent = { unit: '%' };
const share = { least: 0, most: 100 };

/** Where the pieces of a line of the tally stand, from top to foot, metres below ground. */
function stands(model: WellModel, path: RecordPath): string {
  const pieces = model.strings.flatMap((string) =>
    string.pieces.filter((piece) => piece.path === path),
  );
  if (pieces.length === 0) return '';
  const top = Math.min(...pieces.map(({ topM }) => topM));
  const bottom = Math.max(...pieces.map(({ bottomM }) => bottomM));
  const mark = decimalMarks[speech.language];
  return `${formatDepth(top, mark)} – ${formatDepth(bottom, mark)}`;
}

/** Computed litres of a fill: the sum over the zones that it became. */
function litres(model: WellModel, path: RecordPath): string {
  const zones = model.annulus.filter((zone) => zone.path === path);
  const known = zones.flatMap((zone) => zone.litres ?? []);
  if (zones.length === 0 || known.length < zones.length) return '';
  return known.reduce((sum, one) => sum + one, 0).toFixed(0);
}

const pipeFields = () => [
  amountField('length', f.length, 'm'),
  amountField('outside', f.outside, 'mm'),
  amountField('wall', f.wall, 'mm'),
];
const jointFields = () => [
  textField('material', f.pipeMaterial),
  textField('joint', f.joint),
  amountField('insertion', f.insertion, 'm'),
];

/** Pipes of a string are alike as a rule; only a fitting is no measure for the next one's length. */
function pieceAfterPiece(rows: readonly unknown[]): Starts {
  const last = rows.at(-1) as Partial<Component> | undefined;
  const fitting = last?.kind === 'cap' || last?.kind === 'reducer';
  const alike = ['outside', 'wall', 'material', 'joint', 'insertion'];
  const names = fitting ? alike : ['length', ...alike];
  return likeTheLast([...pipeFields(), ...jointFields()], names)(rows);
}

const strings = (): StackBlock => ({
  kind: 'stack',
  heading: f.strings,
  list: 'strings',
  title: f.string,
  fields: [
    textField('name', f.name),
    ...settingFields(),
    depthField('measuredDepth', f.measuredDepth),
    flagField('rope', f.rope),
    textField('remark', f.remark),
  ],
  inner: 'components',
  table: {
    heading: f.components,
    columns: [
      choiceField('kind', f.kind, sheetWords().pieces, { required: true }, say.codes.pieces),
      countField('count', f.count),
      ...pipeFields(),
    ],
    more: [
      ...jointFields(),
      amountField('slotWidth', f.slotWidth, 'mm'),
      amountField('slotSpacing', f.slotSpacing, 'mm'),
      countField('slotRows', f.slotRows),
      numberField('openArea', f.openArea, percent, share),
      numbersField('centralisers', f.centralisers, 'm'),
      amountField('inside', f.inside, 'mm'),
      amountField('upperOutside', f.upperOutside, 'mm'),
      textField('remark', f.remark),
    ],
    starts: pieceAfterPiece,
    computed: { label: f.stands, text: stands },
  },
  adds: [{ label: f.addString, item: { components: [] } }],
});

/** Words of what was filled in: a space of which nothing is recorded has no row. */
const fills = () =>
  Object.fromEntries(Object.entries(sheetWords().fills).filter(([fill]) => fill !== 'unrecorded'));

const annulus = (): TableBlock => ({
  kind: 'table',
  heading: f.annulus,
  list: 'annulus',
  columns: [
    depthField('from', f.from, { required: true }),
    depthField('to', f.to, { required: true }),
    choiceField('fill', f.fill, fills(), { required: true }, say.codes.fills),
    numberField('sacks', f.sacks, {}, { least: 0 }),
  ],
  more: [
    amountField('sackMass', f.sackMass, 'kg'),
    amountField('litres', f.litres, 'L'),
    amountField('grainMin', f.grainMin, 'mm'),
    amountField('grainMax', f.grainMax, 'mm'),
    amountField('waterCement', f.waterCement, f.byMass),
    flagField('sanitary', f.sanitary),
    flagField('insideHole', f.insideHole),
    countField('around', f.around),
    textField('placed', f.placed),
    textField('remark', f.remark),
  ],
  starts: fromWhereItEnded,
  sort: { by: ['from'], label: say.table.sort },
  intervals: true,
  computed: { label: f.computed, text: litres },
});

const headworks = (): FormBlock => ({
  kind: 'form',
  heading: f.headworks,
  base: 'headworks',
  fields: [
    amountField('padLength', f.padLength, 'm'),
    amountField('padWidth', f.padWidth, 'm'),
    amountField('padThickness', f.padThickness, 'm'),
    amountField('casingAboveGround', f.casingAboveGround, 'm'),
    amountField('drainLength', f.drainLength, 'm'),
    numberField('drainSlope', f.drainSlope, percent, share),
    textField('soakaway', f.soakaway),
    textField('fence', f.fence),
    flagField('plate', f.plate),
    dayField('builtOn', f.builtOn),
    textField('remark', f.remark),
  ],
});

const pours = (): FoldBlock => ({
  kind: 'fold',
  heading: say.layingOut.pours.title,
  isThere: ({ annulus = [] }) => annulus.length > 0,
  holds: (path) => /^annulus\[\d+\]\.pours/.test(path),
  blocks: [{ kind: 'view', view: 'pours' }],
});

const quantities = (): FoldBlock => ({
  kind: 'fold',
  heading: say.layingOut.quantities.title,
  holds: () => false,
  blocks: [{ kind: 'view', view: 'quantities' }],
});

export const completionBlocks = (): readonly Block[] => [
  layingOut(),
  strings(),
  annulus(),
  pours(),
  headworks(),
  quantities(),
];
