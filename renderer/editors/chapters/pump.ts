import { fieldWords as f, sheetWords } from '../../parts/words.ts';
import type { Block } from '../chapter.ts';
import { choiceField } from '../fields/choice.ts';
import { dayField } from '../fields/moment.ts';
import { amountField, depthField } from '../fields/number.ts';
import { textField } from '../fields/text.ts';

export const pumpBlocks = (): readonly Block[] => [
  {
    kind: 'form',
    heading: f.pump,
    base: 'pump',
    fields: [
      choiceField('kind', f.kind, sheetWords().pumps),
      textField('model', f.model),
      textField('serial', f.serial),
      depthField('intake', f.intake),
      depthField('cylinderTop', f.cylinderTop),
      amountField('bodyDiameter', f.bodyDiameter, 'mm'),
      amountField('riserDiameter', f.riserDiameter, 'mm'),
      textField('riserMaterial', f.riserMaterial),
      textField('rods', f.rods),
      dayField('installedOn', f.installedOn),
      amountField('rate', f.rate, 'm³/h'),
      textField('remark', f.remark),
    ],
  },
];
