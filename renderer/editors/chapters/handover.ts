import { fieldWords as f, say, sheetWords } from '../../parts/words.ts';
import type { Block } from '../chapter.ts';
import { choiceField } from '../fields/choice.ts';
import { dayField } from '../fields/moment.ts';
import { textField } from '../fields/text.ts';
import { likeTheLast } from './starts.ts';

export const handoverBlocks = (): readonly Block[] => [
  { kind: 'photos' },
  {
    kind: 'table',
    heading: f.marks,
    list: 'marks',
    columns: [
      choiceField('role', f.role, sheetWords().roles, { required: true }),
      textField('name', f.fullName),
      textField('organisation', f.organisation),
      dayField('on', f.on),
    ],
    more: [],
    starts: likeTheLast([dayField('on', f.on)], ['on']),
  },
  {
    kind: 'fold',
    heading: say.issues.pad,
    holds: () => false,
    blocks: [{ kind: 'view', view: 'marks' }],
  },
  {
    kind: 'fold',
    heading: say.issues.title,
    holds: () => false,
    blocks: [{ kind: 'view', view: 'issues' }],
  },
];
