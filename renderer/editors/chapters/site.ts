import { choiceWords, fieldWords as f, say } from '../../parts/words.ts';
import type { Block } from '../chapter.ts';
import { choiceField } from '../fields/choice.ts';
import { dayField } from '../fields/moment.ts';
import { amountField, countField, depthField, numberField } from '../fields/number.ts';
import { textField } from '../fields/text.ts';

const degrees = (name: string, label: string, most: number) =>
  numberField(name, label, { unit: '°' }, { least: -most, most });

export const siteBlocks = (): readonly Block[] => [
  {
    kind: 'form',
    heading: f.place,
    base: 'site',
    fields: [
      textField('country', f.country),
      textField('region', f.region),
      textField('district', f.district),
      textField('commune', f.commune),
      textField('village', f.village),
      textField('spot', f.spot),
      degrees('latitude', f.latitude, 90),
      degrees('longitude', f.longitude, 180),
      textField('positionMethod', f.positionMethod),
      amountField('positionAccuracy', f.positionAccuracy, '± m'),
      depthField('elevation', f.elevation),
      textField('elevationDatum', f.elevationDatum),
      dayField('agreedOn', f.agreedOn),
    ],
  },
  {
    kind: 'form',
    heading: f.people,
    base: 'site',
    fields: [
      countField('households', f.households),
      numberField('users', f.users, {}, { least: 0 }),
      textField('committee.name', f.committee),
      textField('committee.chair', f.chair),
      textField('committee.caretaker', f.caretaker),
      textField('committee.telephone', f.telephone),
    ],
  },
  {
    kind: 'table',
    heading: f.surroundings,
    list: 'site.surroundings',
    columns: [
      choiceField('kind', f.kind, choiceWords.surroundings, { required: true }),
      amountField('distance', f.distance, 'm'),
      numberField('direction', f.direction, { unit: '°' }, { least: 0, most: 360 }),
      choiceField('slope', f.slope, choiceWords.slope),
    ],
    more: [amountField('pitBase', f.pitBase, 'm'), textField('remark', f.remark)],
  },
  {
    kind: 'fold',
    heading: say.siting.title,
    isThere: ({ site }) => (site?.surroundings ?? []).length > 0,
    holds: () => false,
    blocks: [{ kind: 'view', view: 'siting' }],
  },
];
