import type { WellRecord } from '../../../core/record/schema.ts';
import { fieldWords as f, say } from '../../parts/words.ts';
import type { FoldBlock, FormBlock, TableBlock } from '../chapter.ts';
import { choiceField } from '../fields/choice.ts';
import { numbersField } from '../fields/list.ts';
import { amountField, countField, depthField, numberField } from '../fields/number.ts';
import { textField } from '../fields/text.ts';
import { likeTheLast } from './starts.ts';

const share = { least: 0, most: 100 };

const inputs = (): FormBlock => ({
  kind: 'form',
  heading: say.layingOut.inputs,
  base: 'layingOut',
  fields: [
    amountField('rate', f.designRate, 'm³/h'),
    depthField('drySeasonLevel', f.drySeasonLevel),
    amountField('seasonalSwing', f.seasonalSwing, 'm'),
    numbersField('lowMonths', f.lowMonths, f.monthNumbers),
    amountField('drawdown', f.drawdown, 'm'),
    amountField('stickUp', f.stickUp, 'm'),
    amountField('grainMin', f.grainMin, 'mm'),
    amountField('grainMax', f.grainMax, 'mm'),
    textField('remark', f.remark),
  ],
});

const sizeFields = () => [
  amountField('length', f.length, 'm'),
  amountField('outside', f.outside, 'mm'),
  amountField('wall', f.wall, 'mm'),
];
const jointFields = () => [
  textField('material', f.pipeMaterial),
  textField('joint', f.joint),
  amountField('insertion', f.insertion, 'm'),
];
const alike = ['outside', 'wall', 'material', 'joint', 'insertion'];

const pipes = (): TableBlock => ({
  kind: 'table',
  heading: f.sitePipes,
  list: 'layingOut.pipes',
  columns: [
    choiceField('kind', f.kind, say.layingOut.pipeKinds, { required: true }),
    countField('count', f.count),
    ...sizeFields(),
    amountField('slotWidth', f.slotWidth, 'mm'),
  ],
  more: [
    ...jointFields(),
    numberField('openArea', f.openArea, { unit: '%' }, share),
    textField('label', f.pipeLabel),
    textField('remark', f.remark),
  ],
  starts: likeTheLast([...sizeFields(), ...jointFields()], ['length', ...alike]),
});

/** Laying out is at hand as long as nothing stands in the hole. */
const isAhead = ({ identity, strings = [] }: WellRecord) =>
  identity?.state === 'drilled' || (identity?.state === 'laidOut' && strings.length === 0);

/** What the completion is laid out from, what is proposed, and what became of it. */
export const layingOut = (): FoldBlock => ({
  kind: 'fold',
  heading: say.layingOut.title,
  isOpen: isAhead,
  holds: (path) => path.startsWith('layingOut'),
  blocks: [
    inputs(),
    pipes(),
    { kind: 'view', view: 'proposals' },
    { kind: 'view', view: 'differences' },
  ],
});
