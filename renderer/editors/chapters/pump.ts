import { fieldWords as f, say, sheetWords } from '../../parts/words.ts';
import type { Block, FoldBlock } from '../chapter.ts';
import { choiceField, flagField } from '../fields/choice.ts';
import { dayField } from '../fields/moment.ts';
import { amountField, depthField } from '../fields/number.ts';
import { textField } from '../fields/text.ts';

const servicePaths =
  /^(site\.(litresPerPersonDay|repair|mains|sunHours)|pump\.(outletHeight|deliveryLength))$/;

/** Kinds of pump that suit the well, and what they are chosen from besides the other chapters. */
const choice = (): FoldBlock => ({
  kind: 'fold',
  heading: say.pumpChoice.title,
  holds: (path) => servicePaths.test(path),
  blocks: [
    {
      kind: 'form',
      heading: say.pumpChoice.inputs,
      base: '',
      fields: [
        amountField('site.litresPerPersonDay', f.litresPerPersonDay, f.litresADay),
        choiceField('site.repair', f.repair, say.pumpChoice.repair),
        flagField('site.mains', f.mains),
        amountField('site.sunHours', f.sunHours, f.hoursADay),
        amountField('pump.outletHeight', f.outletHeight, 'm'),
        amountField('pump.deliveryLength', f.deliveryLength, 'm'),
      ],
    },
    { kind: 'view', view: 'pumps' },
  ],
});

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
  choice(),
];
