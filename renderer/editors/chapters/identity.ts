import { fieldWords as f, sheetWords } from '../../parts/words.ts';
import type { Block } from '../chapter.ts';
import { choiceField, type Choices } from '../fields/choice.ts';
import { guidelineNames } from '../guidelineNames.ts';
import { practiceNames } from '../practiceNames.ts';
import { longField, textField } from '../fields/text.ts';

/**
 * A record that names no practice is judged by the general one for its way of drilling; its samples
 * are compared with the general guideline values where it names no set of them.
 */
export const wellBlocks = (
  practices: Choices = practiceNames([]),
  guidelines: Choices = guidelineNames([]),
): readonly Block[] => [
  {
    kind: 'form',
    heading: f.well,
    base: 'identity',
    fields: [
      textField('number', f.number),
      textField('name', f.name),
      choiceField('state', f.state, sheetWords().states),
      textField('purpose', f.purpose),
      textField('programme', f.programme),
      textField('contract', f.contract),
      textField('permit', f.permit),
      textField('client', f.client),
      textField('contractor', f.contractor),
      textField('driller', f.driller),
      textField('supervisor', f.supervisor),
      choiceField('practice', f.practice, practices),
      choiceField('guidelines', f.guidelines, guidelines),
    ],
  },
  { kind: 'form', heading: f.notes, base: '', fields: [longField('notes', f.notes)] },
];
