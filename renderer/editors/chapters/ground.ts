import { choiceWords, fieldWords as f, sheetWords } from '../../parts/words.ts';
import type { Block, FormBlock, TableBlock } from '../chapter.ts';
import { choiceField, flagField, suggestField } from '../fields/choice.ts';
import { secondsField } from '../fields/list.ts';
import { dayField, momentField } from '../fields/moment.ts';
import { amountField, depthField } from '../fields/number.ts';
import { longField, textField } from '../fields/text.ts';
import { fromWhereItEnded } from './starts.ts';

const nouns = () =>
  Object.fromEntries(Object.entries(sheetWords().materials).map(([key, { noun }]) => [key, noun]));
const required = { required: true };

const log = (): TableBlock => ({
  kind: 'table',
  heading: f.log,
  list: 'log',
  columns: [
    depthField('from', f.from, required),
    depthField('to', f.to, required),
    suggestField('material', f.material, nouns()),
    textField('colour', f.colour),
    amountField('minutesPerMetre', f.minutesPerMetre, 'min/m'),
  ],
  more: [
    secondsField('qualifiers', f.qualifiers, nouns(), sheetWords().degrees),
    choiceField('grain', f.grain, sheetWords().grains),
    textField('consistency', f.consistency),
    choiceField('moisture', f.moisture, sheetWords().moisture),
    choiceField('weathering', f.weathering, sheetWords().weathering),
    flagField('fractured', f.fractured),
    choiceField('boundary', f.boundary, choiceWords.boundary),
    flagField('sampled', f.sampled),
    textField('sampleLabel', f.sampleLabel),
    choiceField('grainScheme', f.grainScheme, choiceWords.grainScheme),
    longField('remarks', f.remarks),
    longField('words', f.words),
  ],
  starts: fromWhereItEnded,
  sortBy: 'from',
});

const bore = (): FormBlock => ({
  kind: 'form',
  heading: f.bore,
  base: 'bore',
  fields: [
    choiceField('method', f.method, sheetWords().methods),
    textField('rig', f.rig),
    dayField('startedOn', f.startedOn),
    dayField('finishedOn', f.finishedOn),
    depthField('depthReached', f.depthReached),
    depthField('depthFound', f.depthFound),
    textField('fluid', f.fluid),
    textField('additive', f.additive),
    amountField('fluidLost', f.fluidLost, 'L'),
    textField('remark', f.remark),
  ],
});

const sections = (): TableBlock => ({
  kind: 'table',
  heading: f.sections,
  list: 'bore.sections',
  columns: [
    depthField('from', f.from, required),
    depthField('to', f.to, required),
    amountField('diameter', f.diameter, 'mm', required),
    choiceField('method', f.method, sheetWords().methods),
  ],
  more: [],
  starts: fromWhereItEnded,
  sortBy: 'from',
});

const strikes = (): TableBlock => ({
  kind: 'table',
  heading: f.strikes,
  list: 'strikes',
  columns: [
    depthField('depth', f.depth, required),
    depthField('rise', f.rise),
    amountField('flow', f.flow, 'm³/h'),
    momentField('at', f.at),
  ],
  more: [amountField('afterMinutes', f.afterMinutes, 'min'), textField('remark', f.remark)],
  sortBy: 'depth',
});

export const groundBlocks = (): readonly Block[] => [log(), strikes(), bore(), sections()];
